import { Defect } from '#lib/kernel';
import type { Cite } from '#lib/provenance';
import type { ResinChemistry, ResinConstants } from './constituents.js';
import type { PlyBreakingStrain, PlyElastic, PlyStrength } from './ply.js';

export const plyMethodNames = [
  'class-bv',
  'small-craft-yardstick',
  'class-gl',
  'class-lr',
  'micromechanics',
] as const;
const plyMethodWords: Readonly<Record<(typeof plyMethodNames)[number], string>> = {
  'class-bv': 'the rules of a classification society',
  'small-craft-yardstick': 'the yardstick for small craft',
  'class-gl': 'the rules of a classification society',
  'class-lr': 'the rules of a classification society',
  'micromechanics': 'micromechanics of fibre and resin',
};
/** A method as a sentence names it; what it gives cites the rule itself. @throws {Defect} when there is no such method */
export function plyMethodInWords(method: string): string {
  const known = plyMethodNames.find((name) => name === method);
  if (known === undefined) throw new Defect(`There is no ply method ${method}`);
  return plyMethodWords[known];
}

export type PlyMethodName = (typeof plyMethodNames)[number];
export type PlyLayup = 'mat' | 'woven' | 'unidirectional';

export interface PlyBasis {
  readonly layup: PlyLayup;
  readonly fibreMassFraction: number;
  readonly resin: ResinConstants;
}

/** Something the method's source does not give, or that we had to take from elsewhere. */
export interface Remark {
  readonly about: string;
  readonly words: string;
  readonly cite: Cite;
}

export interface PlyProperties extends PlyElastic {
  readonly method: PlyMethodName;
  readonly cite: Cite;
  readonly fibreVolumeFraction: number;
  readonly fibreDensityKgPerM3: number;
  readonly resinDensityKgPerM3: number;
  /** Absent where the source gives no strengths; `remarks` then says so. */
  readonly strength?: PlyStrength;
  readonly breakingStrain?: PlyBreakingStrain;
  /** The source's own partial factors by mode; strains are divided by them when skins are compared. */
  readonly partialFactors?: PlyBreakingStrain;
  readonly interlaminarShearMPa?: number;
  readonly flexuralStrengthMPa?: number;
  readonly remarks: readonly Remark[];
}

/** One source's way from constituents to a ply, with where it may be used. */
export interface PlyMethod {
  readonly name: PlyMethodName;
  readonly title: string;
  readonly cite: Cite;
  readonly layups: readonly PlyLayup[];
  readonly chemistries: readonly ResinChemistry[];
  /** Fibre mass fractions the method is used for. */
  readonly from: number;
  readonly upTo: number;
  /** Whether a woven ply is one ply of the source or two half plies of fibres at right angles. */
  readonly wovenAs: 'one-ply' | 'two-half-plies';
  readonly propertiesOf: (basis: PlyBasis) => PlyProperties;
}
