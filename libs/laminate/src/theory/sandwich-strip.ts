/**
 * Bending of a strip of sandwich held straight across: D = Σ Q11 ∫(z - z_n)² dz, which is D11 - B11²/A11.
 *
 * Sums are kept from the lowest face: EA, EA z and EA z² + own terms; z_n = S1/S0, D = S2 - S1²/S0.
 * Valid:  plane sections, no shear deformation; exact for a strip that neither narrows nor curls across.
 * Source: [JONES-1999] chapter 4; [ZENKERT-1995] eq. 3.4 for the parts
 */
export interface StripSums {
  readonly s0: number;
  readonly s1: number;
  readonly s2: number;
}

export const emptyStrip: StripSums = { s0: 0, s1: 0, s2: 0 };

/** Adds a layer of extensional stiffness EA (N/mm) between two heights. */
export function withLayer(
  { s0, s1, s2 }: StripSums,
  stiffnessNPerMm: number,
  lowMm: number,
  thicknessMm: number,
): StripSums {
  const middle = lowMm + thicknessMm / 2;
  return {
    s0: s0 + stiffnessNPerMm,
    s1: s1 + stiffnessNPerMm * middle,
    s2: s2 + stiffnessNPerMm * (middle * middle + (thicknessMm * thicknessMm) / 12),
  };
}

export const stripBending = ({ s0, s1, s2 }: StripSums): number => s2 - (s1 * s1) / s0;

export const neutralHeight = ({ s0, s1 }: StripSums): number => s1 / s0;
