export interface ShearBeam {
  readonly span: number;
  /** Bending stiffness per unit width. */
  readonly bending: number;
  /** Shear stiffness per unit width. */
  readonly shear: number;
}

export interface BeamPressure {
  readonly pressure: number;
  readonly from: number;
  readonly to: number;
}

export interface BeamFields {
  readonly w: number;
  readonly slope: number;
  readonly m: number;
  readonly q: number;
}

/**
 * A simply supported strip with shear deformation under a pressure on a part of its span, per unit width.
 *
 * Source: [PANEL-DERIVED] four integrations of the load in brackets of Macaulay; the shear part is M/S.
 * Worked: libs/panel/src/plate/partly-loaded-beam.spec.ts
 */
export function partlyLoadedBeam(
  { span, bending, shear }: ShearBeam,
  { pressure, from, to }: BeamPressure,
  at: number,
): BeamFields {
  const reaction = pressure * (to - from) * (1 - (from + to) / (2 * span));
  const load = (power: number, y: number): number => bracket(y - from, power) - bracket(y - to, power);
  const m = reaction * at - (pressure * load(2, at)) / 2;
  const startSlope = (reaction * span * span) / 6 - (pressure * load(4, span)) / (24 * span);
  const slope = startSlope - (reaction * at * at) / 2 + (pressure * load(3, at)) / 6;
  const bent = startSlope * at - (reaction * at ** 3) / 6 + (pressure * load(4, at)) / 24;
  return { w: bent / bending + m / shear, slope: slope / bending, m, q: reaction - pressure * load(1, at) };
}

const bracket = (distance: number, power: number): number => (distance > 0 ? distance ** power : 0);
