import type { Reinforcement } from '#lib/catalogue';
import type { Figure } from '#lib/provenance';
import type { LaminateSection } from './estimate.js';

/** One ply of the new laminate as the bill and the pots need it. */
export interface PlyWork {
  readonly label: string;
  readonly fabric: Reinforcement;
  readonly areaM2: Figure<'m2'>;
  /** Running length off the roll, cutting allowance apart. */
  readonly rollLengthM: number;
  readonly rollWidthMm: number;
  readonly fibreMassFraction: number;
}

export interface LaminateWork {
  readonly plies: readonly PlyWork[];
  readonly plyCount: number;
  readonly largestPlyM2: Figure<'m2'>;
  readonly section: LaminateSection;
}
