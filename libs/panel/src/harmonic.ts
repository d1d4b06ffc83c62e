import type { PlateStiffness } from './plate.js';

/** The eight fields a harmonic answers for, in the order their residues are stored. */
export const FIELD_COUNT = 8;

/**
 * One harmonic sin(beta y) of a simply supported plate with shear deformation, solved for every wave along x at once.
 *
 * For a wave sin(alpha x) the answer is a ratio of polynomials in p = alpha^2; split into partial fractions over the
 * three roots p = -s, each wave sum over x has a closed form. A field is the sum over roots of `residue` times the
 * answer of u'' = s u to the load. Roots closer than SEPARATION are moved apart about their mean, which costs an error of
 * the order SEPARATION^2 and spares the special case of an isotropic plate, whose roots coincide.
 */
export interface Harmonic {
  readonly beta: number;
  /** Three roots s as (re, im) pairs. */
  readonly roots: Float64Array;
  /** Square roots of s with positive real part, as (re, im) pairs. */
  readonly waves: Float64Array;
  /** Residues, FIELD_COUNT per root, as (re, im) pairs: w, mx, my, mxy, qx, qy, slopeX, slopeY. */
  readonly residues: Float64Array;
}

const SEPARATION = 1e-4;

type Quadratic = readonly [number, number, number];

/**
 * Source: [ZENKERT-1995] sandwich plates by first-order shear theory; the partial fractions are [PANEL-DERIVED].
 * Worked: test/reference/cases/panel-plates.ts
 */
export function harmonicOf(stiffness: PlateStiffness, beta: number): Harmonic {
  const { numerators, cubic } = rationalAnswer(stiffness, beta);
  const roots = separated(rootsOf(cubic));
  const residues = new Float64Array(3 * FIELD_COUNT * 2);
  const waves = new Float64Array(6);
  for (let k = 0; k < 3; k += 1) {
    const [re, im] = squareRoot(roots[2 * k], roots[2 * k + 1]);
    waves[2 * k] = re;
    waves[2 * k + 1] = im;
    numerators.forEach((numerator, field) => {
      const [resRe, resIm] = residueAt(numerator, cubic[3], roots, k);
      residues[2 * (k * FIELD_COUNT + field)] = resRe;
      residues[2 * (k * FIELD_COUNT + field) + 1] = resIm;
    });
  }
  return { beta, roots, waves, residues };
}

/** Numerators (degree 2) and common denominator (degree 3) in p, written without differences of nearly equal numbers. */
function rationalAnswer({ d11, d12, d22, d66, sx, sy }: PlateStiffness, beta: number): {
  readonly numerators: readonly Quadratic[]; readonly cubic: readonly [number, number, number, number];
} {
  const b2 = beta * beta;
  const e = (d12 + d66) * beta;
  const a0 = sx + d66 * b2;
  const c0 = sy + d22 * b2;
  const deflection: Quadratic = [a0 * c0, d11 * c0 + a0 * d66 - e * e, d11 * d66];
  const slopeX: Quadratic = [sx * c0 - e * sy * beta, sx * d66, 0];
  const slopeY: Quadratic = [sy * beta * a0, sy * beta * d11 - e * sx, 0];
  const shearX: Quadratic = [
    sx * (d66 * b2 * c0 + e * sy * beta), sx * (d11 * c0 + d66 * d66 * b2 - e * e), sx * d11 * d66,
  ];
  const shearY: Quadratic = [
    sy * beta * a0 * d22 * b2, sy * (beta * (d66 * a0 + d11 * d22 * b2 - e * e) + e * sx), sy * beta * d11 * d66,
  ];
  const cubic = [
    beta * shearY[0], shearX[0] + beta * shearY[1], shearX[1] + beta * shearY[2], shearX[2],
  ] as const;
  const moment = (alongX: number, alongY: number): Quadratic => [
    alongY * beta * slopeY[0], alongX * slopeX[0] + alongY * beta * slopeY[1], alongX * slopeX[1],
  ];
  const twist: Quadratic = [
    -d66 * (beta * slopeX[0] + slopeY[0]), -d66 * (beta * slopeX[1] + slopeY[1]), 0,
  ];
  return { numerators: [deflection, moment(d11, d12), moment(d12, d22), twist, shearX, shearY, slopeX, slopeY], cubic };
}

/** Roots s = -p of c0 + c1 p + c2 p^2 + c3 p^3, as (re, im) pairs. */
function rootsOf(cubic: readonly [number, number, number, number]): Float64Array {
  const [c0, c1, c2, c3] = cubic;
  const b = c2 / c3;
  const c = c1 / c3;
  const d = c0 / c3;
  const real = realRootOf(b, c, d);
  const linear = b + real;
  const constant = real === 0 ? c : -d / real;
  const discriminant = linear * linear - 4 * constant;
  const pair = discriminant >= 0
    ? realPair(linear, constant, Math.sqrt(discriminant))
    : [linear / 2, Math.sqrt(-discriminant) / 2, linear / 2, -Math.sqrt(-discriminant) / 2];
  return Float64Array.from([-real, 0, ...pair]);
}

/** s1, s2 with s1 + s2 = linear and s1 s2 = constant, the larger first to keep its digits. */
function realPair(linear: number, constant: number, rootOfDiscriminant: number): readonly number[] {
  const larger = (linear + Math.sign(linear || 1) * rootOfDiscriminant) / 2;
  return [larger, 0, constant / larger, 0];
}

/** The most negative real root of p^3 + b p^2 + c p + d, polished by Newton steps. */
function realRootOf(b: number, c: number, d: number): number {
  const shift = b / 3;
  const q = (3 * c - b * b) / 9;
  const r = (9 * b * c - 27 * d - 2 * b * b * b) / 54;
  const discriminant = q * q * q + r * r;
  const start = discriminant > 0
    ? Math.cbrt(r + Math.sqrt(discriminant)) + Math.cbrt(r - Math.sqrt(discriminant)) - shift
    : mostNegative(q, r) - shift;
  return polished(start, b, c, d);
}

function mostNegative(q: number, r: number): number {
  const radius = Math.sqrt(-q);
  if (radius === 0) return 0;
  const angle = Math.acos(Math.max(-1, Math.min(1, r / (radius * radius * radius))));
  return 2 * radius * Math.cos((angle + 2 * Math.PI) / 3);
}

function polished(start: number, b: number, c: number, d: number): number {
  let root = start;
  for (let step = 0; step < 4; step += 1) {
    const slope = (3 * root + 2 * b) * root + c;
    const value = ((root + b) * root + c) * root + d;
    const next = root - value / slope;
    if (slope === 0 || !Number.isFinite(next) || Math.abs(next - root) > 0.1 * Math.abs(root)) return root;
    root = next;
  }
  return root;
}

function separated(roots: Float64Array): Float64Array {
  for (let i = 0; i < 3; i += 1) {
    for (let j = i + 1; j < 3; j += 1) moveApart(roots, i, j);
  }
  return roots;
}

function moveApart(roots: Float64Array, i: number, j: number): void {
  const re = (roots[2 * i] + roots[2 * j]) / 2;
  const im = (roots[2 * i + 1] + roots[2 * j + 1]) / 2;
  const gap = Math.hypot(roots[2 * i] - roots[2 * j], roots[2 * i + 1] - roots[2 * j + 1]);
  const wanted = SEPARATION * Math.hypot(re, im);
  if (gap >= wanted) return;
  roots[2 * i] = re + wanted / 2;
  roots[2 * j] = re - wanted / 2;
  roots[2 * i + 1] = im;
  roots[2 * j + 1] = im;
}

/** Numerator at p = -s over the derivative of the denominator there. */
function residueAt(numerator: Quadratic, leading: number, roots: Float64Array, k: number): readonly [number, number] {
  const sRe = roots[2 * k];
  const sIm = roots[2 * k + 1];
  const [n0, n1, n2] = numerator;
  const topRe = n0 - n1 * sRe + n2 * (sRe * sRe - sIm * sIm);
  const topIm = -n1 * sIm + 2 * n2 * sRe * sIm;
  const i = (k + 1) % 3;
  const j = (k + 2) % 3;
  const aRe = roots[2 * i] - sRe;
  const aIm = roots[2 * i + 1] - sIm;
  const bRe = roots[2 * j] - sRe;
  const bIm = roots[2 * j + 1] - sIm;
  const downRe = leading * (aRe * bRe - aIm * bIm);
  const downIm = leading * (aRe * bIm + aIm * bRe);
  const size = downRe * downRe + downIm * downIm;
  return [(topRe * downRe + topIm * downIm) / size, (topIm * downRe - topRe * downIm) / size];
}

function squareRoot(re: number, im: number): readonly [number, number] {
  const size = Math.hypot(re, im);
  const real = Math.sqrt(Math.max(0, (size + re) / 2));
  const imaginary = Math.sign(im) * Math.sqrt(Math.max(0, (size - re) / 2));
  return [real, imaginary];
}
