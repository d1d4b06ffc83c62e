import { Defect } from '#lib/kernel';
import type { Stiffness, Symmetric } from './stiffness.js';

/** The inverse of [A B; B D]: strains and curvatures from forces and moments. `b` is not symmetric, row by row. */
export interface Compliance {
  readonly aMmPerN: Symmetric;
  readonly bPerN: Float64Array;
  readonly dPerNmm: Symmetric;
  /** Inverse of A alone: the laminate held flat. */
  readonly flatAMmPerN: Symmetric;
  /** D - B A⁻¹ B: bending stiffness with the mid-plane free to stretch. */
  readonly reducedDNmm: Symmetric;
}

/**
 * Compliance by blocks: D* = D - B A⁻¹ B, d = D*⁻¹, b = -A⁻¹ B d, a = A⁻¹ + A⁻¹ B d B A⁻¹.
 *
 * Valid:  positive plies, for which A and D* are positive definite.
 * Source: [JONES-1999] chapter 4
 */
export function complianceOf({ aNPerMm, bN, dNmm }: Stiffness): Compliance {
  const flatA = new Float64Array(6);
  invertSymmetric(aNPerMm, flatA);
  const stretch = product(full(flatA), full(bN));
  const reducedD = new Float64Array(6);
  subtractSymmetric(dNmm, product(full(bN), stretch), reducedD);
  const d = new Float64Array(6);
  invertSymmetric(reducedD, d);
  const pull = product(stretch, full(d));
  const a = new Float64Array(6);
  addSymmetric(flatA, product(pull, transposed(stretch)), a);
  return { aMmPerN: a, bPerN: negated(pull), dPerNmm: d, flatAMmPerN: flatA, reducedDNmm: reducedD };
}

/** Closed form through cofactors; throws when the matrix is not positive definite, which checked plies never give. */
export function invertSymmetric(m: Symmetric, into: Symmetric): void {
  const c11 = m[3] * m[5] - m[4] * m[4];
  const c12 = m[2] * m[4] - m[1] * m[5];
  const c16 = m[1] * m[4] - m[2] * m[3];
  const determinant = m[0] * c11 + m[1] * c12 + m[2] * c16;
  if (!(determinant > 0)) throw new Defect(`A stiffness matrix with determinant ${determinant}`);
  into[0] = c11 / determinant;
  into[1] = c12 / determinant;
  into[2] = c16 / determinant;
  into[3] = (m[0] * m[5] - m[2] * m[2]) / determinant;
  into[4] = (m[1] * m[2] - m[0] * m[4]) / determinant;
  into[5] = (m[0] * m[3] - m[1] * m[1]) / determinant;
}

const full = (m: Symmetric): Float64Array => {
  const matrix = new Float64Array(9);
  matrix[0] = m[0];
  matrix[1] = m[1];
  matrix[2] = m[2];
  matrix[3] = m[1];
  matrix[4] = m[3];
  matrix[5] = m[4];
  matrix[6] = m[2];
  matrix[7] = m[4];
  matrix[8] = m[5];
  return matrix;
};

function product(left: Float64Array, right: Float64Array): Float64Array {
  const result = new Float64Array(9);
  for (let row = 0; row < 3; row += 1) {
    for (let column = 0; column < 3; column += 1) {
      result[3 * row + column] =
        left[3 * row] * right[column] +
        left[3 * row + 1] * right[3 + column] +
        left[3 * row + 2] * right[6 + column];
    }
  }
  return result;
}

function transposed(m: Float64Array): Float64Array {
  const result = new Float64Array(9);
  for (let row = 0; row < 3; row += 1) {
    for (let column = 0; column < 3; column += 1) result[3 * column + row] = m[3 * row + column];
  }
  return result;
}

function negated(m: Float64Array): Float64Array {
  const result = new Float64Array(9);
  for (let i = 0; i < 9; i += 1) result[i] = m[i] === 0 ? 0 : -m[i];
  return result;
}

const places = [
  [0, 0],
  [0, 1],
  [0, 2],
  [1, 1],
  [1, 2],
  [2, 2],
] as const;

/** The mean of the two mirrored members keeps the result symmetric to the last bit. */
const mirrored = (m: Float64Array, i: number): number => {
  const [row, column] = places[i];
  return (m[3 * row + column] + m[3 * column + row]) / 2;
};

function subtractSymmetric(from: Symmetric, taken: Float64Array, into: Symmetric): void {
  for (let i = 0; i < 6; i += 1) into[i] = from[i] - mirrored(taken, i);
}

function addSymmetric(to: Symmetric, added: Float64Array, into: Symmetric): void {
  for (let i = 0; i < 6; i += 1) into[i] = to[i] + mirrored(added, i);
}
