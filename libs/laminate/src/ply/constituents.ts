import type { Cite } from '#lib/provenance';

export type ResinChemistry = 'epoxy' | 'polyester' | 'vinylester';

/** Cured resin. Without a shear modulus it is taken as isotropic: G = E / 2(1 + ν). */
export interface ResinConstants {
  readonly chemistry: ResinChemistry;
  readonly densityKgPerM3: number;
  readonly youngMPa: number;
  readonly poissonRatio: number;
  readonly shearModulusMPa?: number;
}

export interface FibreConstants {
  readonly densityKgPerM3: number;
  readonly youngMPa: number;
  /** Across the fibre; equal to `youngMPa` for glass. */
  readonly youngAcrossMPa: number;
  readonly poissonRatio: number;
  readonly shearModulusMPa: number;
}

export interface ConstituentSet {
  readonly cite: Cite;
  readonly glass: FibreConstants;
  readonly resins: Readonly<Partial<Record<ResinChemistry, ResinConstants>>>;
}

const isotropic = (
  densityKgPerM3: number,
  youngMPa: number,
  poissonRatio: number,
  shearModulusMPa: number,
): FibreConstants => ({ densityKgPerM3, youngMPa, youngAcrossMPa: youngMPa, poissonRatio, shearModulusMPa });

/** Constituents as each body prints them; they differ, and are never mixed. */
export const constituentSets = {
  bv: {
    cite: { source: 'BV-NR546-2022', clause: 'section 5' },
    glass: isotropic(2570, 73_100, 0.238, 30_000),
    resins: {
      polyester: {
        chemistry: 'polyester',
        densityKgPerM3: 1200,
        youngMPa: 3550,
        poissonRatio: 0.38,
        shearModulusMPa: 1350,
      },
      vinylester: {
        chemistry: 'vinylester',
        densityKgPerM3: 1100,
        youngMPa: 3350,
        poissonRatio: 0.26,
        shearModulusMPa: 1400,
      },
      epoxy: {
        chemistry: 'epoxy',
        densityKgPerM3: 1250,
        youngMPa: 3100,
        poissonRatio: 0.39,
        shearModulusMPa: 1500,
      },
    },
  },
  gl: {
    cite: { source: 'GL-HSC-2012-LAMINATES', clause: 'C3.8.2' },
    glass: isotropic(2540, 73_000, 0.18, 30_000),
    resins: {
      polyester: {
        chemistry: 'polyester',
        densityKgPerM3: 1200,
        youngMPa: 3000,
        poissonRatio: 0.316,
        shearModulusMPa: 1140,
      },
    },
  },
} as const satisfies Readonly<Record<string, ConstituentSet>>;

export const resinShearOf = (resin: ResinConstants): number =>
  resin.shearModulusMPa ?? resin.youngMPa / (2 * (1 + resin.poissonRatio));
