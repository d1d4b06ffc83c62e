import { Defect } from '#lib/kernel';

/** Lower factor of a symmetric positive matrix, row by row in one array. */
export interface Factor {
  readonly size: number;
  readonly lower: Float64Array;
  /** Place of the first entry of each row that is not zero. */
  readonly first: Int32Array;
}

/** Cholesky's factor; `matrix` is overwritten. Source: [ARITHMETIC]. */
export function factorOf(matrix: Float64Array, size: number): Factor {
  const first = firstEntries(matrix, size);
  for (let i = 0; i < size; i += 1) {
    const rowI = i * size;
    for (let j = first[i]; j <= i; j += 1) {
      const rowJ = j * size;
      let sum = matrix[rowI + j];
      for (let k = Math.max(first[i], first[j]); k < j; k += 1) sum -= matrix[rowI + k] * matrix[rowJ + k];
      matrix[rowI + j] = j === i ? rootOf(sum) : sum / matrix[rowJ + j];
    }
  }
  return { size, lower: matrix, first };
}

/** Zeros before the first entry of a row stay zeros in the factor. */
function firstEntries(matrix: Float64Array, size: number): Int32Array {
  return Int32Array.from({ length: size }, (_, i) => {
    let at = 0;
    while (at < i && matrix[i * size + at] === 0) at += 1;
    return at;
  });
}

function rootOf(pivot: number): number {
  if (pivot > 0) return Math.sqrt(pivot);
  throw new Defect('A stiffness matrix was not positive');
}

/** Solves in place; what is zero in the factor, and before the first entry of the right side, is passed over. */
export function solveWith({ size, lower, first }: Factor, right: Float64Array): Float64Array {
  let start = 0;
  while (start < size && right[start] === 0) start += 1;
  for (let i = start; i < size; i += 1) {
    let sum = right[i];
    for (let k = Math.max(start, first[i]); k < i; k += 1) sum -= lower[i * size + k] * right[k];
    right[i] = sum / lower[i * size + i];
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    const value = right[i] / lower[i * size + i];
    right[i] = value;
    for (let k = first[i]; k < i; k += 1) right[k] -= lower[i * size + k] * value;
  }
  return right;
}
