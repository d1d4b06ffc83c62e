/**
 * Beams with shear: w = kb W L^3/(EI) + ks W L/(GA), W the whole load.
 *
 * Source: [WOOD-HANDBOOK-2010] table 9-1.
 * Worked: test/reference/cases/panel-sandwich.ts
 */
export interface BeamCase {
  readonly loading: 'uniform' | 'midspan' | 'quarter-points' | 'tip';
  readonly ends: 'simply-supported' | 'clamped' | 'cantilever';
  readonly at: 'midspan' | 'load' | 'tip';
  readonly kb: number;
  readonly ks: number;
}

export const beamCases: readonly BeamCase[] = [
  { loading: 'uniform', ends: 'simply-supported', at: 'midspan', kb: 5 / 384, ks: 1 / 8 },
  { loading: 'uniform', ends: 'clamped', at: 'midspan', kb: 1 / 384, ks: 1 / 8 },
  { loading: 'midspan', ends: 'simply-supported', at: 'midspan', kb: 1 / 48, ks: 1 / 4 },
  { loading: 'midspan', ends: 'clamped', at: 'midspan', kb: 1 / 192, ks: 1 / 4 },
  { loading: 'quarter-points', ends: 'simply-supported', at: 'midspan', kb: 11 / 768, ks: 1 / 8 },
  { loading: 'quarter-points', ends: 'simply-supported', at: 'load', kb: 1 / 96, ks: 1 / 8 },
  { loading: 'uniform', ends: 'cantilever', at: 'tip', kb: 1 / 8, ks: 1 / 2 },
  { loading: 'tip', ends: 'cantilever', at: 'tip', kb: 1 / 3, ks: 1 },
];

export interface BeamSection {
  /** N.mm2 */
  readonly bendingNMm2: number;
  /** N */
  readonly shearN: number;
}

/** A sandwich bar with equal skins, sizes in mm, moduli in MPa. */
export interface SandwichBar {
  readonly totalMm: number;
  readonly coreMm: number;
  readonly widthMm: number;
  readonly skinModulusMPa: number;
  readonly coreShearModulusMPa: number;
}

/**
 * Stiffness of a sandwich bar: D = E (d^3 - c^3) b/12, U = G (d + c)^2 b/(4 c), d the whole depth.
 *
 * Source: [ASTM-C393] from memory; equal to the parallel axis theorem and to S = G d^2/c with d between skin middles.
 * Worked: test/reference/cases/panel-sandwich.ts
 */
export const sandwichBar = ({
  totalMm: d,
  coreMm: c,
  widthMm: b,
  skinModulusMPa: E,
  coreShearModulusMPa: G,
}: SandwichBar): BeamSection => ({
  bendingNMm2: (E * (d ** 3 - c ** 3) * b) / 12,
  shearN: (G * (d + c) ** 2 * b) / (4 * c),
});

export interface BendTestStress {
  readonly coreShearMPa: number;
  readonly skinStressMPa: number;
}

/**
 * Three-point and quarter-point bending of a sandwich bar: tau = P/((d + c) b), sigma = P L/(2 t (d + c) b), half of the
 * latter at quarter points.
 *
 * Source: [ASTM-C393] from memory; follows from equilibrium of a half bar.
 * Worked: test/reference/cases/panel-sandwich.ts
 */
export function bendTestStress(
  bar: SandwichBar,
  forceN: number,
  spanMm: number,
  points: 'three' | 'quarter',
): BendTestStress {
  const depths = (bar.totalMm + bar.coreMm) * bar.widthMm;
  const skin = (bar.totalMm - bar.coreMm) / 2;
  const bending = (forceN * spanMm) / (2 * skin * depths);
  return { coreShearMPa: forceN / depths, skinStressMPa: points === 'three' ? bending : bending / 2 };
}

/** Bending and shear stiffness from midspan deflections of one bar at two spans under the same force. */
export function stiffnessFromTwoSpans(
  forceN: number,
  spansMm: readonly [number, number],
  deflectionsMm: readonly [number, number],
): BeamSection {
  const [l1, l2] = spansMm;
  const perForce = deflectionsMm.map((deflection, at) => deflection / (forceN * spansMm[at]));
  const bendingPart = (perForce[1] - perForce[0]) / (l2 ** 2 - l1 ** 2);
  const shearPart = perForce[0] - bendingPart * l1 ** 2;
  return { bendingNMm2: 1 / (48 * bendingPart), shearN: 1 / (4 * shearPart) };
}
