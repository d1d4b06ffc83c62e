import { normalCdf } from '#lib/kernel';

/** Ten points of Gauss and Legendre on (0, 1), half of them: the others lie opposite. Source: [ABRAMOWITZ-STEGUN-1964] table 25.4 */
const POINTS: readonly (readonly [at: number, weight: number])[] = [
  [0.1488743389816312, 0.2955242247147529],
  [0.4333953941292472, 0.2692667193099963],
  [0.6794095682990244, 0.219086362515982],
  [0.8650633666889845, 0.1494513491505806],
  [0.9739065285171717, 0.0666713443086881],
];

/** Nearer to 1 than this the two are one. */
const ONE = 0.9995;

/**
 * How much likelier than by chance two standard normal numbers of correlation r lie below h and k together, which is also the
 * covariance of the two events: 1/(2 pi) times the integral of exp(-(h^2 + k^2 - 2 h k sin a) / (2 cos^2 a)) from a = 0 to asin r.
 *
 * h, k   -   standard normal scores
 * r      -   correlation, -1 to 1
 *
 * Valid:  to 1e-6 for every r.
 * Source: [DREZNER-WESOLOWSKY-1990]
 * Worked: libs/extent/src/map/bivariate.spec.ts
 */
export function tiedBelow(h: number, k: number, r: number): number {
  if (r >= ONE) return normalCdf(Math.min(h, k)) - normalCdf(h) * normalCdf(k);
  if (r <= -ONE) return Math.max(0, normalCdf(h) + normalCdf(k) - 1) - normalCdf(h) * normalCdf(k);
  const half = Math.asin(r) / 2;
  const [squares, product] = [(h * h + k * k) / 2, h * k];
  let sum = 0;
  for (const [at, weight] of POINTS) {
    const [low, high] = [Math.sin(half * (1 - at)), Math.sin(half * (1 + at))];
    sum +=
      weight *
      (Math.exp((low * product - squares) / (1 - low * low)) +
        Math.exp((high * product - squares) / (1 - high * high)));
  }
  return (half * sum) / (2 * Math.PI);
}
