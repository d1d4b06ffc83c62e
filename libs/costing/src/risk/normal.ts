/**
 * Standard normal distribution function and its inverse.
 *
 * The inverse is the rational approximation of algorithm AS 241 (about 1 part in 10^16). The forward function is a series
 * near zero and a continued fraction in the tails; the tests hold it against integration of the density, and the inverse
 * against it.
 *
 * z  argument   1   normal score, any finite number
 * p  argument   1   probability, above 0 and below 1
 *
 * Source: [WICHURA-1988] PPND16
 * Worked: test/reference/cases/costing-risk.ts
 */
export function normalScore(p: number): number {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(centralTop, centralBottom, 0.180625 - q * q);
  const tail = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const score = tail <= 5 ? ratio(middleTop, middleBottom, tail - 1.6) : ratio(farTop, farBottom, tail - 5);
  return q < 0 ? -score : score;
}

const centralTop = [
  3.3871328727963666080, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125, 45921.953931549871457,
  67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
] as const;
const centralBottom = [
  1, 42.313330701600911252, 687.18700749205790830, 5394.1960214247511077, 21213.794301586595867, 39307.895800092710610,
  28729.085735721942674, 5226.4952788528545610,
] as const;
const middleTop = [
  1.42343711074968357734, 4.63033784615654529590, 5.76949722146069140550, 3.64784832476320460504, 1.27045825245236838258,
  0.241780725177450611770, 0.0227238449892691845833, 7.74545014278341407640e-4,
] as const;
const middleBottom = [
  1, 2.05319162663775882187, 1.67638483018380384940, 0.689767334985100004550, 0.148103976427480074590,
  0.0151986665636164571966, 5.47593808499534494600e-4, 1.05075007164441684324e-9,
] as const;
const farTop = [
  6.65790464350110377720, 5.46378491116411436990, 1.78482653991729133580, 0.296560571828504891230, 0.0265321895265761230930,
  0.00124266094738807843860, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
] as const;
const farBottom = [
  1, 0.599832206555887937690, 0.136929880922735805310, 0.0148753612908506148525, 7.86869131145613259100e-4,
  1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15,
] as const;

const horner = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);

const ratio = (top: readonly number[], bottom: readonly number[], x: number): number => horner(top, x) / horner(bottom, x);

const SERIES_UP_TO = 3;

/** P(Z <= z). */
export function normalShare(z: number): number {
  if (z < -SERIES_UP_TO) return tailShare(-z);
  if (z > SERIES_UP_TO) return 1 - tailShare(z);
  let term = z;
  let sum = z;
  for (let k = 1; Math.abs(term) > 1e-17 * Math.abs(sum) && k < 200; k += 1) {
    term *= z * z / (2 * k + 1);
    sum += term;
  }
  return 0.5 + density(z) * sum;
}

const density = (z: number): number => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);

/** Laplace's continued fraction of the upper tail, from the bottom up. */
function tailShare(z: number): number {
  let fraction = z;
  for (let k = 60; k >= 1; k -= 1) fraction = z + k / fraction;
  return density(z) / fraction;
}
