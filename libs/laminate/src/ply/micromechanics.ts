import { resinShearOf, constituentSets, type FibreConstants, type ResinConstants } from './constituents.js';
import type { PlyElastic } from './ply.js';
import type { PlyBasis, PlyMethod, PlyProperties } from './ply-method.js';
import { volumeFractionOf } from './ply-thickness.js';

export interface Mixture {
  readonly fibre: FibreConstants;
  readonly resin: ResinConstants;
  readonly fibreVolumeFraction: number;
}

/** Shape factors of Halpin and Tsai: 2 across round fibres, 1 in shear. */
export interface ShapeFactors {
  readonly across: number;
  readonly shear: number;
}

export const roundFibres: ShapeFactors = { across: 2, shear: 1 };

/**
 * P = P_m (1 + ξ η V)/(1 - η V), η = (P_f/P_m - 1)/(P_f/P_m + ξ).
 *
 * Valid:  stiff round fibres, V up to about 0.7; ξ → 0 is the series bound, ξ → ∞ the parallel bound.
 * Source: [HALPIN-TSAI-1976]
 */
export function halpinTsai(fibre: number, resin: number, v: number, xi: number): number {
  const ratio = fibre / resin;
  const eta = (ratio - 1) / (ratio + xi);
  return (resin * (1 + xi * eta * v)) / (1 - eta * v);
}

/** Rule of mixtures along the fibres and for Poisson's ratio; Halpin-Tsai across and in shear. */
export function mixedPly(
  { fibre, resin, fibreVolumeFraction: v }: Mixture,
  shape: ShapeFactors = roundFibres,
): PlyElastic {
  return {
    youngAlongMPa: v * fibre.youngMPa + (1 - v) * resin.youngMPa,
    youngAcrossMPa: halpinTsai(fibre.youngAcrossMPa, resin.youngMPa, v, shape.across),
    shearModulusMPa: halpinTsai(fibre.shearModulusMPa, resinShearOf(resin), v, shape.shear),
    poissonRatio: v * fibre.poissonRatio + (1 - v) * resin.poissonRatio,
  };
}

/** Shear of rigid fibres in a cylinder assemblage, G_m (1 + V)/(1 - V): an upper limit for very stiff fibres. */
export const rigidCylinderShear = (resinShearMPa: number, v: number): number =>
  (resinShearMPa * (1 + v)) / (1 - v);

/** Inverse rule of mixtures across the fibres, the lower bound. */
export const seriesModulus = (fibre: number, resin: number, v: number): number =>
  (fibre * resin) / (fibre * (1 - v) + resin * v);

/**
 * A fabric with the share `split` of its fibres along and the rest across, as one ply.
 *
 * A11 = C Q11 + (1-C) Q22, A22 the reverse, E1 = A11 - A12²/A22, ν12 = A12/A22.
 * Source: [BV-NR546-2022] section 5, 3.2
 * Worked: test/reference/cases/laminate-plies.ts
 */
export function crossPly(unidirectional: PlyElastic, split: number): PlyElastic {
  const { youngAlongMPa: e1, youngAcrossMPa: e2, poissonRatio: nu, shearModulusMPa } = unidirectional;
  const shrink = 1 - (nu * nu * e2) / e1;
  const a11 = (split * e1 + (1 - split) * e2) / shrink;
  const a22 = (split * e2 + (1 - split) * e1) / shrink;
  const a12 = (nu * e2) / shrink;
  return {
    youngAlongMPa: a11 - (a12 * a12) / a22,
    youngAcrossMPa: a22 - (a12 * a12) / a11,
    poissonRatio: a12 / a22,
    shearModulusMPa,
  };
}

/** Fibres at random in the plane: E = 3/8 E1 + 5/8 E2, isotropic with ν = 0.3. */
export function matFrom({ youngAlongMPa, youngAcrossMPa }: PlyElastic): PlyElastic {
  const young = 0.375 * youngAlongMPa + 0.625 * youngAcrossMPa;
  return { youngAlongMPa: young, youngAcrossMPa: young, poissonRatio: 0.3, shearModulusMPa: young / 2.6 };
}

const cite = { source: 'HALPIN-TSAI-1976' } as const;

/** The same elastic theory for every layup; strengths it cannot give. */
export const micromechanicsMethod: PlyMethod = {
  name: 'micromechanics',
  title: 'Rule of mixtures and Halpin-Tsai',
  cite,
  layups: ['mat', 'woven', 'unidirectional'],
  chemistries: ['polyester', 'vinylester', 'epoxy'],
  from: 0.15,
  upTo: 0.8,
  wovenAs: 'two-half-plies',
  propertiesOf: micromechanicsPly,
};

function micromechanicsPly({ layup, fibreMassFraction, resin }: PlyBasis): PlyProperties {
  const fibre = constituentSets.bv.glass;
  const fibreVolumeFraction = volumeFractionOf(fibreMassFraction, fibre.densityKgPerM3, resin.densityKgPerM3);
  const unidirectional = mixedPly({ fibre, resin, fibreVolumeFraction });
  const elastic =
    layup === 'unidirectional'
      ? unidirectional
      : layup === 'woven'
        ? crossPly(unidirectional, 0.5)
        : matFrom(unidirectional);
  return {
    ...elastic,
    method: 'micromechanics',
    cite,
    fibreVolumeFraction,
    fibreDensityKgPerM3: fibre.densityKgPerM3,
    resinDensityKgPerM3: resin.densityKgPerM3,
    remarks: [
      {
        about: 'strength',
        words: 'constituent theory gives no trustworthy strengths, so none are given',
        cite,
      },
      {
        about: 'fibre',
        words: 'E-glass of 2570 kg/m3, 73.1 GPa, 30 GPa in shear and ν 0.238',
        cite: constituentSets.bv.cite,
      },
    ],
  };
}
