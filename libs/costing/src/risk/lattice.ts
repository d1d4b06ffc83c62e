import { normalQuantile } from '#lib/kernel';

/**
 * Points that fill a cube evenly: the i-th has the coordinates frac(i z_j / n + 1/(2n)) with n prime, so that every
 * coordinate takes each of n equally likely levels once. There is no chance in it: the same figures for everybody.
 *
 * n = 2039 and z_j = 392^j mod n, of 140 multipliers tried the one with the least P2 over seven coordinates.
 *
 * Source: [KOROBOV-1959] good lattice points; P2 as in [SLOAN-JOE-1994]
 * Worked: libs/costing/src/risk/job-risk.spec.ts
 */
export const LATTICE_POINTS = 2039;
const MULTIPLIER = 392;

/** Level of each point in one coordinate, 0 to one less than the number of points. */
export function latticeLevels(coordinate: number): Int32Array {
  let step = 1;
  for (let power = 0; power < coordinate; power += 1) step = (step * MULTIPLIER) % LATTICE_POINTS;
  return Int32Array.from({ length: LATTICE_POINTS }, (_, point) => (point * step) % LATTICE_POINTS);
}

/** Normal score at the middle of each level. */
export const latticeScores: Float64Array = Float64Array.from({ length: LATTICE_POINTS }, (_, level) =>
  normalQuantile((level + 0.5) / LATTICE_POINTS),
);
