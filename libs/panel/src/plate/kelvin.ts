/**
 * The Kelvin function ker(x) and its slope, by their power series.
 *
 * Valid:  0 < x <= 12; beyond, ker is smaller than 1e-4 of its value at 1 and the series loses its digits.
 * Source: [FROM-MEMORY] power series of ker and ker' (digamma form).
 * Worked: libs/panel/src/plate/kelvin.spec.ts
 */
export function kerAndSlope(x: number): { readonly ker: number; readonly slope: number } {
  const quarter = (x * x) / 4;
  const log = Math.log(x / 2);
  let power = 1;
  const sums = { ber: 0, berSlope: 0, bei: 0, beiSlope: 0, tail: 0, tailSlope: 0 };
  let harmonic = 0;
  for (let n = 0; n < TERMS; n += 1) {
    if (n > 0) {
      power *= quarter / (n * n);
      harmonic += 1 / n;
    }
    addTerm(sums, n, power, { harmonic, x });
  }
  return {
    ker: -log * sums.ber + (Math.PI / 4) * sums.bei + sums.tail,
    slope: -log * sums.berSlope - sums.ber / x + (Math.PI / 4) * sums.beiSlope + sums.tailSlope,
  };
}

const TERMS = 60;
const EULER = 0.5772156649015329;

interface Sums {
  ber: number;
  berSlope: number;
  bei: number;
  beiSlope: number;
  tail: number;
  tailSlope: number;
}

/** `power` is (x^2/4)^n / (n!)^2; even n feed ber, odd n feed bei. */
function addTerm(
  sums: Sums,
  n: number,
  power: number,
  { harmonic, x }: { readonly harmonic: number; readonly x: number },
): void {
  const sign = Math.floor(n / 2) % 2 === 0 ? 1 : -1;
  const slope = n === 0 ? 0 : (2 * n * power) / x;
  if (n % 2 === 1) {
    sums.bei += sign * power;
    sums.beiSlope += sign * slope;
    return;
  }
  sums.ber += sign * power;
  sums.berSlope += sign * slope;
  sums.tail += sign * power * (harmonic - EULER);
  sums.tailSlope += sign * slope * (harmonic - EULER);
}
