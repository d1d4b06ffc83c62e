import { normalCdf } from '#lib/kernel';

type Points = readonly (readonly [at: number, weight: number])[];

/** Points of Gauss and Legendre on (0, 1), half of them: the others lie opposite. Source: [ABRAMOWITZ-STEGUN-1964] table 25.4 */
const FOUR: Points = [
  [0.3399810435848563, 0.6521451548625461],
  [0.8611363115940526, 0.3478548451374538],
];
const SIX: Points = [
  [0.2386191860831969, 0.467913934572691],
  [0.6612093864662645, 0.3607615730481386],
  [0.9324695142031521, 0.1713244923791704],
];
const TEN: Points = [
  [0.1488743389816312, 0.2955242247147529],
  [0.4333953941292472, 0.2692667193099963],
  [0.6794095682990244, 0.219086362515982],
  [0.8650633666889845, 0.1494513491505806],
  [0.9739065285171717, 0.0666713443086881],
];

/** As few points as leave less than 1e-8: what is hardly tied bends little along the way. */
const pointsFor = (correlation: number): Points =>
  correlation < 0.5 ? FOUR : correlation < 0.75 ? SIX : TEN;

/** Nearer to 1 than this the two are one. */
const ONE = 0.9995;

/**
 * How much likelier than by chance two standard normal numbers of correlation r lie below h and k together, which is also the
 * covariance of the two events: 1/(2 pi) times the integral of exp(-(h^2 + k^2 - 2 h k sin a) / (2 cos^2 a)) from a = 0 to asin r.
 *
 * h, k   -   standard normal scores
 * r      -   correlation, -1 to 1
 *
 * Valid:  to 1e-8 for r from -0.9 to 0.9, to 2e-6 from -0.99 to 0.99, to 2e-4 beyond.
 * Source: [DREZNER-WESOLOWSKY-1990]
 * Worked: libs/extent/src/map/bivariate.spec.ts
 */
export function tiedBelow(h: number, k: number, r: number): number {
  if (r >= ONE) return normalCdf(Math.min(h, k)) - normalCdf(h) * normalCdf(k);
  if (r <= -ONE) return Math.max(0, normalCdf(h) + normalCdf(k) - 1) - normalCdf(h) * normalCdf(k);
  const half = Math.asin(r) / 2;
  const [squares, product] = [(h * h + k * k) / 2, h * k];
  let sum = 0;
  for (const [at, weight] of pointsFor(Math.abs(r))) {
    const [low, high] = [Math.sin(half * (1 - at)), Math.sin(half * (1 + at))];
    sum +=
      weight *
      (Math.exp((low * product - squares) / (1 - low * low)) +
        Math.exp((high * product - squares) / (1 - high * high)));
  }
  return (half * sum) / (2 * Math.PI);
}
