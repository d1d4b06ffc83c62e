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

/**
 * Source: [ZENKERT-1995] sandwich plates by first-order shear theory; the partial fractions are [PANEL-DERIVED].
 * Worked: test/reference/cases/panel-plates.ts
 */
export function harmonicOf(stiffness: PlateStiffness, beta: number): Harmonic {
  const numerators = new Float64Array(3 * FIELD_COUNT);
  const cubic = rationalAnswer(stiffness, beta, numerators);
  const roots = separated(rootsOf(cubic));
  const residues = new Float64Array(3 * FIELD_COUNT * 2);
  const waves = new Float64Array(6);
  for (let k = 0; k < 3; k += 1) {
    putSquareRoot(waves, roots, k);
    putResidues(residues, numerators, { leading: cubic[3], roots, k });
  }
  return { beta, roots, waves, residues };
}

/**
 * Numerators (degree 2, three coefficients a field) and common denominator (degree 3) in p, written without differences of
 * nearly equal numbers.
 */
function rationalAnswer(
  { d11, d12, d22, d66, sx, sy }: PlateStiffness,
  beta: number,
  into: Float64Array,
): Cubic {
  const b2 = beta * beta;
  const e = (d12 + d66) * beta;
  const a0 = sx + d66 * b2;
  const c0 = sy + d22 * b2;
  const slopeX0 = sx * c0 - e * sy * beta;
  const slopeX1 = sx * d66;
  const slopeY0 = sy * beta * a0;
  const slopeY1 = sy * beta * d11 - e * sx;
  const shearX0 = sx * (d66 * b2 * c0 + e * sy * beta);
  const shearX1 = sx * (d11 * c0 + d66 * d66 * b2 - e * e);
  const shearY1 = sy * (beta * (d66 * a0 + d11 * d22 * b2 - e * e) + e * sx);
  // One array of all: one for each field costs more than what stands in it.
  into.set([
    a0 * c0,
    d11 * c0 + a0 * d66 - e * e,
    d11 * d66,
    d12 * beta * slopeY0,
    d11 * slopeX0 + d12 * beta * slopeY1,
    d11 * slopeX1,
    d22 * beta * slopeY0,
    d12 * slopeX0 + d22 * beta * slopeY1,
    d12 * slopeX1,
    -d66 * (beta * slopeX0 + slopeY0),
    -d66 * (beta * slopeX1 + slopeY1),
    0,
    shearX0,
    shearX1,
    sx * d11 * d66,
    sy * beta * a0 * d22 * b2,
    shearY1,
    sy * beta * d11 * d66,
    slopeX0,
    slopeX1,
    0,
    slopeY0,
    slopeY1,
    0,
  ]);
  return [
    beta * sy * beta * a0 * d22 * b2,
    shearX0 + beta * shearY1,
    shearX1 + beta * sy * beta * d11 * d66,
    sx * d11 * d66,
  ];
}

type Cubic = readonly [number, number, number, number];

/** Roots s = -p of c0 + c1 p + c2 p^2 + c3 p^3, as (re, im) pairs. */
function rootsOf(cubic: Cubic): Float64Array {
  const [c0, c1, c2, c3] = cubic;
  const b = c2 / c3;
  const c = c1 / c3;
  const d = c0 / c3;
  const real = realRootOf(b, c, d);
  const linear = b + real;
  const constant = real === 0 ? c : -d / real;
  const discriminant = linear * linear - 4 * constant;
  const roots = new Float64Array(6);
  roots[0] = -real;
  if (discriminant >= 0) putRealPair(roots, linear, constant, Math.sqrt(discriminant));
  else {
    roots[2] = linear / 2;
    roots[3] = Math.sqrt(-discriminant) / 2;
    roots[4] = roots[2];
    roots[5] = -roots[3];
  }
  return roots;
}

/** s1, s2 with s1 + s2 = linear and s1 s2 = constant, the larger first to keep its digits. */
function putRealPair(
  roots: Float64Array,
  linear: number,
  constant: number,
  rootOfDiscriminant: number,
): void {
  const larger = (linear + Math.sign(linear || 1) * rootOfDiscriminant) / 2;
  roots[2] = larger;
  roots[4] = constant / larger;
}

/** The most negative real root of p^3 + b p^2 + c p + d, polished by Newton steps. */
function realRootOf(b: number, c: number, d: number): number {
  const shift = b / 3;
  const q = (3 * c - b * b) / 9;
  const r = (9 * b * c - 27 * d - 2 * b * b * b) / 54;
  const discriminant = q * q * q + r * r;
  const start =
    discriminant > 0
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

interface RootAt {
  readonly leading: number;
  readonly roots: Float64Array;
  readonly k: number;
}

/** Each numerator at p = -s over the derivative of the denominator there. */
function putResidues(into: Float64Array, numerators: Float64Array, { leading, roots, k }: RootAt): void {
  const sRe = roots[2 * k];
  const sIm = roots[2 * k + 1];
  const i = 2 * ((k + 1) % 3);
  const j = 2 * ((k + 2) % 3);
  const aRe = roots[i] - sRe;
  const aIm = roots[i + 1] - sIm;
  const bRe = roots[j] - sRe;
  const bIm = roots[j + 1] - sIm;
  const downRe = leading * (aRe * bRe - aIm * bIm);
  const downIm = leading * (aRe * bIm + aIm * bRe);
  const size = downRe * downRe + downIm * downIm;
  const squareRe = sRe * sRe - sIm * sIm;
  const squareIm = 2 * sRe * sIm;
  for (let field = 0; field < FIELD_COUNT; field += 1) {
    const n1 = numerators[3 * field + 1];
    const n2 = numerators[3 * field + 2];
    const topRe = numerators[3 * field] - n1 * sRe + n2 * squareRe;
    const topIm = n2 * squareIm - n1 * sIm;
    const at = 2 * (k * FIELD_COUNT + field);
    into[at] = (topRe * downRe + topIm * downIm) / size;
    into[at + 1] = (topIm * downRe - topRe * downIm) / size;
  }
}

function putSquareRoot(into: Float64Array, roots: Float64Array, k: number): void {
  const re = roots[2 * k];
  const im = roots[2 * k + 1];
  const size = Math.hypot(re, im);
  into[2 * k] = Math.sqrt(Math.max(0, (size + re) / 2));
  into[2 * k + 1] = Math.sign(im) * Math.sqrt(Math.max(0, (size - re) / 2));
}
