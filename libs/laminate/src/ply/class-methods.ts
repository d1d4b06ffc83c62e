import { constituentSets, resinShearOf, type FibreConstants, type ResinConstants } from './constituents.js';
import type { PlyBreakingStrain, PlyElastic, PlyStrength } from './ply.js';
import type { PlyBasis, PlyLayup, PlyMethod, PlyProperties, Remark } from './ply-method.js';
import { volumeFractionOf } from './ply-thickness.js';
import { crossPly, matFrom, type Mixture } from './micromechanics.js';

const glCite = { source: 'GL-HSC-2012-LAMINATES', clause: 'C3.8.2' } as const;
const bvCite = { source: 'BV-NR546-2022', clause: 'section 5' } as const;
const lrCite = { source: 'LR-SSC-2020', clause: 'Pt 8 Ch 3, 1.8.3' } as const;

/**
 * Unidirectional ply of the GL rules from its constituents.
 *
 * E2 = E_m/(1-ν_m²) (1 + 0.85 φ²)/((1-φ)^1.25 + φ E_m/(E_f (1-ν_m²))), G12 = G_m (1 + 0.8 φ^0.8)/((1-φ)^1.25 + φ G_m/G_f).
 * Source: [GL-HSC-2012-LAMINATES] C3.8.2
 * Worked: test/reference/cases/laminate-plies.ts
 */
export function glUnidirectional({ fibre, resin, fibreVolumeFraction: v }: Mixture): PlyElastic {
  const held = resin.youngMPa / (1 - resin.poissonRatio ** 2);
  const shear = resinShearOf(resin);
  const gap = (1 - v) ** 1.25;
  return {
    youngAlongMPa: v * fibre.youngMPa + (1 - v) * resin.youngMPa,
    youngAcrossMPa: (held * (1 + 0.85 * v * v)) / (gap + (v * held) / fibre.youngMPa),
    shearModulusMPa: (shear * (1 + 0.8 * v ** 0.8)) / (gap + (v * shear) / fibre.shearModulusMPa),
    poissonRatio: v * fibre.poissonRatio + (1 - v) * resin.poissonRatio,
  };
}

/** Class coefficients on E1, E2, G12 and ν12 of E-glass. */
const bvCoefficients = { along: 1, across: 0.8, shear: 0.9, poisson: 0.9 } as const;

/**
 * Unidirectional ply of the BV rules: the form of GL with class coefficients, and shear of the cylinder assemblage.
 *
 * Source: [BV-NR546-2022] section 5
 * Worked: test/reference/cases/laminate-plies.ts
 */
export function bvUnidirectional({ fibre, resin, fibreVolumeFraction: v }: Mixture): PlyElastic {
  const held = resin.youngMPa / (1 - resin.poissonRatio ** 2);
  const shear = resinShearOf(resin);
  const ratio = fibre.shearModulusMPa / shear;
  const eta = (ratio - 1) / (ratio + 1);
  return {
    youngAlongMPa: bvCoefficients.along * (fibre.youngMPa * v + resin.youngMPa * (1 - v)),
    youngAcrossMPa:
      (bvCoefficients.across * held * (1 + 0.85 * v * v)) /
      ((1 - v) ** 1.25 + (held / fibre.youngAcrossMPa) * v),
    shearModulusMPa: (bvCoefficients.shear * shear * (1 + eta * v)) / (1 - eta * v),
    poissonRatio: bvCoefficients.poisson * (fibre.poissonRatio * v + resin.poissonRatio * (1 - v)),
  };
}

/**
 * Unidirectional ply of the LR rules: mixture along, series across, cylinder assemblage in shear.
 *
 * Source: [LR-SSC-2020] Pt 8 Ch 3, 1.8.3
 */
export function lrUnidirectional({ fibre, resin, fibreVolumeFraction: v }: Mixture): PlyElastic {
  const shear = resin.youngMPa / (2 * (1 + resin.poissonRatio));
  const ratio = fibre.shearModulusMPa / shear;
  return {
    youngAlongMPa: fibre.youngMPa * v + resin.youngMPa * (1 - v),
    youngAcrossMPa:
      (fibre.youngMPa * resin.youngMPa) / (resin.youngMPa * v + fibre.youngMPa - fibre.youngMPa * v),
    shearModulusMPa: (shear * (ratio * (1 + v) + (1 - v))) / (ratio * (1 - v) + (1 + v)),
    poissonRatio: fibre.poissonRatio * v + resin.poissonRatio * (1 - v),
  };
}

const strains = (percent: readonly [number, number, number, number, number]): PlyBreakingStrain => ({
  tensionAlong: percent[0] / 100,
  tensionAcross: percent[1] / 100,
  compressionAlong: percent[2] / 100,
  compressionAcross: percent[3] / 100,
  shear: percent[4] / 100,
});

/** Breaking strains of E-glass plies, section 5 table 6: tension 1, 2, compression 1, 2, shear in plane, per cent. */
const bvBreakingStrain: Readonly<Record<PlyLayup, PlyBreakingStrain>> = {
  unidirectional: strains([2.7, 0.53, 1.8, 1.55, 1.8]),
  woven: strains([1.8, 1.8, 1.8, 1.8, 1.5]),
  mat: strains([1.55, 1.55, 1.55, 1.55, 2]),
};

const sameFactor = (direct: number, shear: number): PlyBreakingStrain => ({
  tensionAlong: direct,
  compressionAlong: direct,
  tensionAcross: direct,
  compressionAcross: direct,
  shear,
});

/** Partial factors C_R by mode; the other factors of the rule are the same for old and new skin and cancel. */
const bvPartialFactors: Readonly<Record<PlyLayup, PlyBreakingStrain>> = {
  unidirectional: {
    tensionAlong: 2.1,
    compressionAlong: 2.1,
    tensionAcross: 1.25,
    compressionAcross: 1.25,
    shear: 1.6,
  },
  woven: sameFactor(2.4, 1.8),
  mat: sameFactor(2, 2.2),
};

const bvResinCoefficient = { polyester: 0.8, vinylester: 0.9, epoxy: 1 } as const;

const strengthFrom = (elastic: PlyElastic, strain: PlyBreakingStrain): PlyStrength => ({
  tensionAlongMPa: strain.tensionAlong * elastic.youngAlongMPa,
  compressionAlongMPa: strain.compressionAlong * elastic.youngAlongMPa,
  tensionAcrossMPa: strain.tensionAcross * elastic.youngAcrossMPa,
  compressionAcrossMPa: strain.compressionAcross * elastic.youngAcrossMPa,
  shearMPa: strain.shear * elastic.shearModulusMPa,
});

const scaled = (strain: PlyBreakingStrain, factor: number): PlyBreakingStrain => ({
  tensionAlong: strain.tensionAlong * factor,
  compressionAlong: strain.compressionAlong * factor,
  tensionAcross: strain.tensionAcross * factor,
  compressionAcross: strain.compressionAcross * factor,
  shear: strain.shear * factor,
});

const WOVEN_SPLIT = 0.5;

function bvPly({ layup, fibreMassFraction, resin }: PlyBasis): PlyProperties {
  const { glass, resins } = constituentSets.bv;
  const own = resins[resin.chemistry];
  const mixture = mixtureOf(fibreMassFraction, glass, own);
  const unidirectional = bvUnidirectional(mixture);
  const elastic =
    layup === 'unidirectional'
      ? unidirectional
      : layup === 'woven'
        ? crossPly(unidirectional, WOVEN_SPLIT)
        : matFrom(unidirectional);
  const breakingStrain = scaled(bvBreakingStrain[layup], bvResinCoefficient[resin.chemistry]);
  return {
    ...elastic,
    ...densitiesOf(mixture),
    method: 'class-bv',
    cite: bvCite,
    breakingStrain,
    strength: strengthFrom(elastic, breakingStrain),
    partialFactors: bvPartialFactors[layup],
    remarks: [],
  };
}

const noStrength = (society: string, cite: Remark['cite']): Remark => ({
  about: 'strength',
  words: `no ply strengths of ${society} were readable, so none are given`,
  cite,
});

const matRemark = (cite: Remark['cite']): Remark => ({
  about: 'mat',
  words:
    'the rule gives the modulus of mat, 3/8 E1 + 5/8 E2; its Poisson ratio is taken as 0.3 and it is isotropic in plane',
  cite,
});

function glPly({ layup, fibreMassFraction, resin }: PlyBasis): PlyProperties {
  const mixture = mixtureOf(fibreMassFraction, constituentSets.gl.glass, resin);
  const unidirectional = glUnidirectional(mixture);
  const elastic =
    layup === 'mat'
      ? matFrom(unidirectional)
      : layup === 'woven'
        ? crossPly(unidirectional, WOVEN_SPLIT)
        : unidirectional;
  const remarks = [noStrength('this edition', glCite), ...(layup === 'mat' ? [matRemark(glCite)] : [])];
  return { ...elastic, ...densitiesOf(mixture), method: 'class-gl', cite: glCite, remarks };
}

function lrPly({ layup, fibreMassFraction, resin }: PlyBasis): PlyProperties {
  const mixture = mixtureOf(fibreMassFraction, constituentSets.gl.glass, resin);
  const unidirectional = lrUnidirectional(mixture);
  const poisson: Remark = {
    about: 'poissonRatio',
    words: 'the rule text read gives no Poisson ratio: the rule of mixtures is taken',
    cite: { source: 'JONES-1999', clause: 'chapter 3' },
  };
  const fibre: Remark = {
    about: 'fibre',
    words: 'the rule leaves fibre constants to the builder: 2540 kg/m3, 73 GPa and 30 GPa are taken',
    cite: glCite,
  };
  return {
    ...(layup === 'woven' ? crossPly(unidirectional, WOVEN_SPLIT) : unidirectional),
    ...densitiesOf(mixture),
    method: 'class-lr',
    cite: lrCite,
    remarks: [noStrength('this edition', lrCite), poisson, fibre],
  };
}

export const mixtureOf = (
  fibreMassFraction: number,
  fibre: FibreConstants,
  resin: ResinConstants,
): Mixture => ({
  fibre,
  resin,
  fibreVolumeFraction: volumeFractionOf(fibreMassFraction, fibre.densityKgPerM3, resin.densityKgPerM3),
});

const densitiesOf = ({ fibre, resin, fibreVolumeFraction }: Mixture) => ({
  fibreVolumeFraction,
  fibreDensityKgPerM3: fibre.densityKgPerM3,
  resinDensityKgPerM3: resin.densityKgPerM3,
});

const anyResin = ['polyester', 'vinylester', 'epoxy'] as const;

export const classMethods: readonly PlyMethod[] = [
  {
    name: 'class-bv',
    title: 'Class society, set BV',
    cite: bvCite,
    layups: ['mat', 'woven', 'unidirectional'],
    chemistries: anyResin,
    from: 0.2,
    upTo: 0.75,
    wovenAs: 'one-ply',
    propertiesOf: bvPly,
  },
  {
    name: 'class-gl',
    title: 'Class society, set GL',
    cite: glCite,
    layups: ['mat', 'woven', 'unidirectional'],
    chemistries: anyResin,
    from: 0.2,
    upTo: 0.75,
    wovenAs: 'two-half-plies',
    propertiesOf: glPly,
  },
  {
    name: 'class-lr',
    title: 'Class society, set LR',
    cite: lrCite,
    layups: ['woven', 'unidirectional'],
    chemistries: anyResin,
    from: 0.2,
    upTo: 0.75,
    wovenAs: 'two-half-plies',
    propertiesOf: lrPly,
  },
];
