import type { Ply, PlyElastic } from '../ply/ply.js';

/** A symmetric 3 x 3 matrix packed as [11, 12, 16, 22, 26, 66]. */
export type Symmetric = Float64Array;

export interface Stiffness {
  readonly plyCount: number;
  readonly thicknessMm: number;
  /** Interfaces from the mid-plane, first ply lowest: `plyCount + 1` of them. */
  readonly heightsMm: Float64Array;
  /** Six members a ply. */
  readonly qBarMPa: Float64Array;
  /** cos and sin of each ply's angle, two a ply. */
  readonly turns: Float64Array;
  readonly aNPerMm: Symmetric;
  readonly bN: Symmetric;
  readonly dNmm: Symmetric;
}

/**
 * Stiffness of a laminate: A = Σ Q̄ₖ (zₖ - zₖ₋₁), B = ½ Σ Q̄ₖ (zₖ² - zₖ₋₁²), D = ⅓ Σ Q̄ₖ (zₖ³ - zₖ₋₁³).
 *
 * Q̄  derived          MPa    transformed reduced stiffness of ply k
 * z   heightsMm        mm     interfaces from the mid-plane, first ply lowest
 * A   aNPerMm          N/mm   extension;  B  bN  N  coupling;  D  dNmm  N mm  bending
 *
 * Valid:  thin, perfectly bonded, linear elastic plies in plane stress.
 * Source: [JONES-1999] chapter 4
 * Worked: test/reference/cases/laminate-theory.ts
 */
export function stiffnessOf(plies: readonly Ply[]): Stiffness {
  const stack = emptyStack(plies.length);
  let height = -totalThickness(plies) / 2;
  stack.heightsMm[0] = height;
  for (let k = 0; k < plies.length; k += 1) {
    writeTurn(stack.turns, 2 * k, plies[k].angleDeg);
    writeQBar(plies[k], stack.turns, stack.qBarMPa, k);
    const top = height + plies[k].thicknessMm;
    addPly(stack, k, height, top);
    height = top;
    stack.heightsMm[k + 1] = top;
  }
  return { ...stack, plyCount: plies.length, thicknessMm: 2 * -stack.heightsMm[0] };
}

const emptyStack = (count: number) => ({
  heightsMm: new Float64Array(count + 1),
  qBarMPa: new Float64Array(6 * count),
  turns: new Float64Array(2 * count),
  aNPerMm: new Float64Array(6),
  bN: new Float64Array(6),
  dNmm: new Float64Array(6),
});

function totalThickness(plies: readonly Ply[]): number {
  let total = 0;
  for (let k = 0; k < plies.length; k += 1) total += plies[k].thicknessMm;
  return total;
}

/** Differences of powers are taken as products, so that a thin ply far from the mid-plane loses no digits. */
function addPly(stack: ReturnType<typeof emptyStack>, k: number, low: number, top: number): void {
  const thickness = top - low;
  const middle = (top + low) / 2;
  const third = thickness * (middle * middle + (thickness * thickness) / 12);
  for (let i = 0; i < 6; i += 1) {
    const q = stack.qBarMPa[6 * k + i];
    stack.aNPerMm[i] += q * thickness;
    stack.bN[i] += q * thickness * middle;
    stack.dNmm[i] += q * third;
  }
}

/** Quarter turns are exact, so that a 90 degree ply couples nothing. */
export function writeTurn(target: Float64Array, offset: number, angleDeg: number): void {
  const reduced = ((angleDeg % 180) + 180) % 180;
  const angle = reduced * (Math.PI / 180);
  target[offset] = reduced === 90 ? 0 : Math.cos(angle);
  target[offset + 1] = Math.sin(angle);
}

/**
 * Reduced stiffness of ply k turned into the laminate's axes: reads its cos and sin at 2k, writes six members at 6k.
 *
 * Q11 = E1/(1 - ν12 ν21), Q12 = ν12 E2/(1 - ν12 ν21), Q66 = G12, then the fourth-power law.
 * Source: [JONES-1999] chapter 2
 */
export function writeQBar(ply: PlyElastic, turns: Float64Array, target: Float64Array, k: number): void {
  const cos = turns[2 * k];
  const sin = turns[2 * k + 1];
  const offset = 6 * k;
  const shrink = 1 - (ply.poissonRatio * ply.poissonRatio * ply.youngAcrossMPa) / ply.youngAlongMPa;
  const q11 = ply.youngAlongMPa / shrink;
  const q22 = ply.youngAcrossMPa / shrink;
  const q12 = ply.poissonRatio * q22;
  const q66 = ply.shearModulusMPa;
  const c2 = cos * cos;
  const s2 = sin * sin;
  const cs = cos * sin;
  const mixed = q12 + 2 * q66;
  target[offset] = q11 * c2 * c2 + 2 * mixed * c2 * s2 + q22 * s2 * s2;
  target[offset + 1] = (q11 + q22 - 4 * q66) * c2 * s2 + q12 * (c2 * c2 + s2 * s2);
  target[offset + 2] = cs * ((q11 - mixed) * c2 + (mixed - q22) * s2);
  target[offset + 3] = q11 * s2 * s2 + 2 * mixed * c2 * s2 + q22 * c2 * c2;
  target[offset + 4] = cs * ((q11 - mixed) * s2 + (mixed - q22) * c2);
  target[offset + 5] = (q11 + q22 - 2 * (q12 + q66)) * c2 * s2 + q66 * (c2 * c2 + s2 * s2);
}
