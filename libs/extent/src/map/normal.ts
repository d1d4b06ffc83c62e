import type { RandomStream } from '#lib/kernel';

/**
 * Standard normal distribution function.
 *
 * Valid:  every finite x; double precision (absolute error below 1e-14).
 * Source: [WEST-2005] after [HART-1968]
 * Worked: test/reference/cases/extent-distributions.ts
 */
export function normalCdf(x: number): number {
  const size = Math.abs(x);
  if (size > 37) return x > 0 ? 1 : 0;
  const density = Math.exp((-size * size) / 2);
  const upper =
    size < 7.07106781186547
      ? (density * rational(numerator, size)) / rational(denominator, size)
      : density / (tail(size) * 2.506628274631);
  return x > 0 ? 1 - upper : upper;
}

const numerator = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
];
const denominator = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
  637.333633378831, 793.826512519948, 440.413735824752,
];

const rational = (coefficients: readonly number[], x: number): number =>
  coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);

const tail = (x: number): number => [4, 3, 2, 1].reduce((fraction, step) => x + step / fraction, x + 0.65);

const SQRT_2PI = Math.sqrt(2 * Math.PI);

export const normalDensity = (x: number): number => Math.exp((-x * x) / 2) / SQRT_2PI;

/**
 * Inverse of `normalCdf`: a rational first guess, then two Newton steps.
 *
 * Valid:  1e-15 < p < 1 - 1e-15; outside it the nearest end is taken (a probability that near to certain is certain here).
 * Source: [ABRAMOWITZ-STEGUN-1964] 26.2.23
 * Worked: test/reference/cases/extent-distributions.ts
 */
export function normalQuantile(probability: number): number {
  const p = Math.min(1 - 1e-15, Math.max(1e-15, probability));
  const t = Math.sqrt(-2 * Math.log(Math.min(p, 1 - p)));
  const guess =
    t -
    (2.515517 + 0.802853 * t + 0.010328 * t * t) /
      (1 + 1.432788 * t + 0.189269 * t * t + 0.001308 * t * t * t);
  const start = p < 0.5 ? -guess : guess;
  return [0, 1].reduce((x) => x - (normalCdf(x) - p) / normalDensity(x), start);
}

const { cos, log, sin, sqrt, PI } = Math;

/** Fills with independent standard normal numbers (Box and Muller's pairs). Source: [BOX-MULLER-1958] */
export function fillNormal(values: Float64Array, random: RandomStream): void {
  for (let index = 0; index < values.length; index += 2) {
    const radius = sqrt(-2 * log(1 - random()));
    const angle = 2 * PI * random();
    values[index] = radius * cos(angle);
    if (index + 1 < values.length) values[index + 1] = radius * sin(angle);
  }
}
