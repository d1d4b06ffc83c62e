import type { Compliance } from './compliance.js';
import type { Ply } from '../ply/ply.js';
import type { Stiffness } from './stiffness.js';

/** Forces per width (N/mm) and moments per width (N), each [x, y, shear]. */
export interface Loads {
  readonly forcesNPerMm: readonly [number, number, number];
  readonly momentsN: readonly [number, number, number];
}

/** Even change from the state in which the laminate was free of stress. */
export interface Climate {
  readonly temperatureChangeK: number;
  /** Moisture taken up, as a fraction of mass. */
  readonly moistureChange: number;
}

export interface Response {
  /** [εx, εy, γxy] of the mid-plane. */
  readonly midStrain: Float64Array;
  /** [κx, κy, κxy], 1/mm. */
  readonly curvaturePerMm: Float64Array;
  /** Nine numbers a ply: [σ1, σ2, τ12] at bottom, middle and top, MPa, in the ply's axes. */
  readonly stressMPa: Float64Array;
  /** Nine numbers a ply: total strain in the ply's axes. */
  readonly strain: Float64Array;
  /** Nine numbers a ply: total strain in the laminate's axes. */
  readonly strainXy: Float64Array;
}

export const noLoads: Loads = { forcesNPerMm: [0, 0, 0], momentsN: [0, 0, 0] };
export const noClimate: Climate = { temperatureChangeK: 0, moistureChange: 0 };

interface Laminate {
  readonly plies: readonly Ply[];
  readonly stiffness: Stiffness;
  readonly compliance: Compliance;
}

/**
 * Strains and stresses of every ply under forces, moments, temperature and moisture.
 *
 * [ε0; κ] = [a b; bᵀ d] [N + N_T; M + M_T], N_T = Σ Q̄ ε_free t; σ = Q (ε - ε_free).
 *
 * Valid:  small strains, even temperature and moisture through the thickness.
 * Source: [JONES-1999] chapter 4
 * Worked: test/reference/cases/laminate-theory.ts
 */
export function responseOf(laminate: Laminate, loads: Loads, climate: Climate): Response {
  const { plies, stiffness } = laminate;
  const free = new Float64Array(3 * plies.length);
  const pull = Float64Array.of(...loads.forcesNPerMm, ...loads.momentsN);
  addFreeGrowth(laminate, climate, free, pull);
  const result = emptyResponse(plies.length);
  strainsFrom(laminate.compliance, pull, result);
  for (let k = 0; k < stiffness.plyCount; k += 1) {
    for (let level = 0; level < 3; level += 1) writeLevel(laminate, free, k * 3 + level, result);
  }
  return result;
}

const emptyResponse = (count: number): Response => ({
  midStrain: new Float64Array(3),
  curvaturePerMm: new Float64Array(3),
  stressMPa: new Float64Array(9 * count),
  strain: new Float64Array(9 * count),
  strainXy: new Float64Array(9 * count),
});

function addFreeGrowth(
  { plies, stiffness }: Laminate,
  climate: Climate,
  free: Float64Array,
  pull: Float64Array,
): void {
  for (let k = 0; k < plies.length; k += 1) {
    const { expansion } = plies[k];
    if (expansion === undefined) continue;
    const along =
      expansion.thermalAlongPerK * climate.temperatureChangeK +
      expansion.moistureAlong * climate.moistureChange;
    const across =
      expansion.thermalAcrossPerK * climate.temperatureChangeK +
      expansion.moistureAcross * climate.moistureChange;
    const c = stiffness.turns[2 * k];
    const s = stiffness.turns[2 * k + 1];
    free[3 * k] = c * c * along + s * s * across;
    free[3 * k + 1] = s * s * along + c * c * across;
    free[3 * k + 2] = 2 * c * s * (along - across);
    addGrowthForces(stiffness, free, k, pull);
  }
}

function addGrowthForces(
  { heightsMm, qBarMPa }: Stiffness,
  free: Float64Array,
  k: number,
  pull: Float64Array,
): void {
  const thickness = heightsMm[k + 1] - heightsMm[k];
  const q = qBarMPa.subarray(6 * k, 6 * k + 6);
  const growth = free.subarray(3 * k, 3 * k + 3);
  const middle = (heightsMm[k + 1] + heightsMm[k]) / 2;
  for (let row = 0; row < 3; row += 1) {
    const stress = times(q, row, growth);
    pull[row] += stress * thickness;
    pull[3 + row] += stress * thickness * middle;
  }
}

/** Row of a packed symmetric matrix, by a vector. */
function times(m: Float64Array, row: number, v: Float64Array): number {
  const [i, j, l] = packedRows[row];
  return m[i] * v[0] + m[j] * v[1] + m[l] * v[2];
}

const packedRows = [
  [0, 1, 2],
  [1, 3, 4],
  [2, 4, 5],
] as const;

function strainsFrom({ aMmPerN, bPerN, dPerNmm }: Compliance, pull: Float64Array, result: Response): void {
  const forces = pull.subarray(0, 3);
  const moments = pull.subarray(3, 6);
  for (let row = 0; row < 3; row += 1) {
    result.midStrain[row] =
      times(aMmPerN, row, forces) +
      bPerN[3 * row] * pull[3] +
      bPerN[3 * row + 1] * pull[4] +
      bPerN[3 * row + 2] * pull[5];
    result.curvaturePerMm[row] =
      times(dPerNmm, row, moments) +
      bPerN[row] * pull[0] +
      bPerN[3 + row] * pull[1] +
      bPerN[6 + row] * pull[2];
  }
}

function writeLevel(
  { plies, stiffness }: Laminate,
  free: Float64Array,
  place: number,
  result: Response,
): void {
  const k = Math.floor(place / 3);
  const level = place % 3;
  const { heightsMm, turns } = stiffness;
  const z =
    level === 0 ? heightsMm[k] : level === 1 ? (heightsMm[k] + heightsMm[k + 1]) / 2 : heightsMm[k + 1];
  const base = 3 * place;
  for (let i = 0; i < 3; i += 1)
    result.strainXy[base + i] = result.midStrain[i] + z * result.curvaturePerMm[i];
  turnStrain(result, base, turns[2 * k], turns[2 * k + 1]);
  const along = result.strainXy[base] - free[3 * k];
  const across = result.strainXy[base + 1] - free[3 * k + 1];
  const shear = result.strainXy[base + 2] - free[3 * k + 2];
  writeStress(plies[k], result.stressMPa, base, {
    along,
    across,
    shear,
    c: turns[2 * k],
    s: turns[2 * k + 1],
  });
}

function turnStrain({ strainXy: xy, strain: into }: Response, base: number, c: number, s: number): void {
  into[base] = c * c * xy[base] + s * s * xy[base + 1] + c * s * xy[base + 2];
  into[base + 1] = s * s * xy[base] + c * c * xy[base + 1] - c * s * xy[base + 2];
  into[base + 2] = 2 * c * s * (xy[base + 1] - xy[base]) + (c * c - s * s) * xy[base + 2];
}

interface Turned {
  readonly along: number;
  readonly across: number;
  readonly shear: number;
  readonly c: number;
  readonly s: number;
}

function writeStress(
  ply: Ply,
  into: Float64Array,
  base: number,
  { along, across, shear, c, s }: Turned,
): void {
  const e1 = c * c * along + s * s * across + c * s * shear;
  const e2 = s * s * along + c * c * across - c * s * shear;
  const shrink = 1 - (ply.poissonRatio * ply.poissonRatio * ply.youngAcrossMPa) / ply.youngAlongMPa;
  into[base] = (ply.youngAlongMPa * e1 + ply.poissonRatio * ply.youngAcrossMPa * e2) / shrink;
  into[base + 1] = (ply.youngAcrossMPa * (e2 + ply.poissonRatio * e1)) / shrink;
  into[base + 2] = ply.shearModulusMPa * (2 * c * s * (across - along) + (c * c - s * s) * shear);
}
