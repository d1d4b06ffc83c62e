import type { CoreType } from '#lib/catalogue';

/** A skin as its laminate makes it: membrane values in the panel's x and y, ultimate strengths. */
export interface SkinValues {
  readonly thicknessMm: number;
  readonly modulusXMPa: number;
  readonly modulusYMPa: number;
  readonly shearModulusMPa: number;
  /** Strain across y over strain along x under a pull along x. */
  readonly poissonXY: number;
  /** Ultimate, in the weaker direction unless the one for y is given too. */
  readonly tensileStrengthMPa: number;
  readonly compressiveStrengthMPa: number;
  readonly tensileStrengthYMPa?: number;
  readonly compressiveStrengthYMPa?: number;
  readonly dryFibreKgPerM2?: number;
}

export interface CoreValues {
  readonly coreType: CoreType;
  readonly thicknessMm: number;
  readonly shearModulusMPa: number;
  readonly shearStrengthMPa: number;
  /** Compressive modulus through the thickness. */
  readonly compressiveModulusMPa: number;
  readonly compressiveStrengthMPa: number;
  /** Absent or 0: the core adds nothing in its plane. */
  readonly inPlaneModulusMPa?: number;
  readonly densityKgPerM3?: number;
}

export interface SandwichValues {
  readonly outer: SkinValues;
  readonly inner: SkinValues;
  readonly core: CoreValues;
}

export type StateName = 'as-built' | 'as-found' | 'opened' | 'repaired';
