/**
 * Standard normal distribution function P(Z <= z): a series near zero, Laplace's continued fraction in the tails, so that
 * small chances keep their relative accuracy (2e-13 down to one in a billion).
 *
 * Valid:  every finite z.
 * Source: [ABRAMOWITZ-STEGUN-1964] 26.2.11 (series) and 26.2.14 (continued fraction), numbers of the equations from memory
 * Worked: test/reference/cases/extent-distributions.ts
 */
export function normalCdf(z: number): number {
  if (z < -SERIES_UP_TO) return tailShare(-z);
  if (z > SERIES_UP_TO) return 1 - tailShare(z);
  let term = z;
  let sum = z;
  for (let k = 1; Math.abs(term) > 1e-17 * Math.abs(sum) && k < 200; k += 1) {
    term *= (z * z) / (2 * k + 1);
    sum += term;
  }
  return 0.5 + normalDensity(z) * sum;
}

const SERIES_UP_TO = 3;

/** Laplace's continued fraction of the upper tail, from the bottom up. */
function tailShare(z: number): number {
  let fraction = z;
  for (let k = 60; k >= 1; k -= 1) fraction = z + k / fraction;
  return normalDensity(z) / fraction;
}

const SQRT_2PI = Math.sqrt(2 * Math.PI);

export const normalDensity = (x: number): number => Math.exp((-x * x) / 2) / SQRT_2PI;

/** A chance nearer to certain than this is certain here. */
const NEAREST = 1e-15;

/**
 * Inverse of `normalCdf`: the score that so large a share lies below (about 1 part in 10^16).
 *
 * Valid:  1e-15 < p < 1 - 1e-15; outside it the nearest end is taken.
 * Source: [WICHURA-1988] PPND16
 * Worked: test/reference/cases/costing-risk.ts
 */
export function normalQuantile(probability: number): number {
  const p = Math.min(1 - NEAREST, Math.max(NEAREST, probability));
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(centralTop, centralBottom, 0.180625 - q * q);
  const tail = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const score = tail <= 5 ? ratio(middleTop, middleBottom, tail - 1.6) : ratio(farTop, farBottom, tail - 5);
  return q < 0 ? -score : score;
}

const centralTop = [
  3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
  45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
] as const;
const centralBottom = [
  1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867,
  39307.89580009271061, 28729.085735721942674, 5226.495278852854561,
] as const;
const middleTop = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
  1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833, 7.7454501427834140764e-4,
] as const;
const middleBottom = [
  1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
  0.0151986665636164571966, 5.475938084995344946e-4, 1.05075007164441684324e-9,
] as const;
const farTop = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123,
  0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
] as const;
const farBottom = [
  1, 0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525, 7.868691311456132591e-4,
  1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15,
] as const;

const horner = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);

const ratio = (top: readonly number[], bottom: readonly number[], x: number): number =>
  horner(top, x) / horner(bottom, x);
