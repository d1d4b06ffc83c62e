import { defineFormula } from '#lib/provenance';
import { fraction, mPa } from '#lib/units';
import type { PlyStrength } from './ply.js';
import type { PlyBasis, PlyMethod, PlyProperties, Remark } from './ply-method.js';
import { volumeFractionOf } from './ply-thickness.js';

const annexC = { source: 'ISO-12215-5-2008', clause: 'Annex C table C.4' } as const;

const psiInput = {
  fibreMassFraction: { symbol: 'ψ', unit: '1', meaning: 'fibre mass fraction', from: 0.25, upTo: 0.66 },
} as const;

interface Line {
  readonly id: string;
  readonly title: string;
  readonly symbol: string;
  /** ψ², ψ and constant. */
  readonly terms: readonly [number, number, number];
  readonly at: readonly [psi: number, printed: string, step: string];
}

const line = ({ id, title, symbol, terms: [square, slope, constant], at: [psi, printed, step] }: Line) =>
  defineFormula({
    id: `laminate.yardstick-${id}`,
    title: `${title}, small-craft yardstick`,
    cite: annexC,
    inputs: psiInput,
    output: { symbol, unit: 'MPa', meaning: title },
    evaluate: ({ fibreMassFraction }) =>
      mPa(square * fibreMassFraction ** 2 + slope * fibreMassFraction + constant),
    worked: [{ at: `by hand: ${step}`, given: { fibreMassFraction: psi }, printed }],
  });

/** Mat, mat with roving, woven and 0/90 laid by hand in E-glass and polyester. */
export const yardstickTension = line({
  id: 'tension',
  title: 'Ultimate tensile strength',
  symbol: 'σut',
  terms: [800, -80, 37],
  at: [0.3, '85', '72 - 24 + 37'],
});
export const yardstickCompression = line({
  id: 'compression',
  title: 'Ultimate compressive strength',
  symbol: 'σuc',
  terms: [0, 150, 72],
  at: [0.3, '117', '45 + 72'],
});
export const yardstickFlexure = line({
  id: 'flexure',
  title: 'Ultimate flexural strength',
  symbol: 'σuf',
  terms: [502, 0, 107],
  at: [0.3, '152.18', '45.18 + 107'],
});
export const yardstickShear = line({
  id: 'shear',
  title: 'Ultimate in-plane shear strength',
  symbol: 'τu',
  terms: [0, 80, 38],
  at: [0.3, '62', '24 + 38'],
});
export const yardstickYoung = line({
  id: 'young',
  title: 'In-plane modulus',
  symbol: 'E',
  terms: [0, 38_000, -5000],
  at: [0.3, '6400', '11400 - 5000'],
});
export const yardstickShearModulus = line({
  id: 'shear-modulus',
  title: 'In-plane shear modulus',
  symbol: 'G',
  terms: [0, 1700, 2240],
  at: [0.3, '2750', '510 + 2240'],
});
export const yardstickInterlaminar = line({
  id: 'interlaminar',
  title: 'Interlaminar shear strength',
  symbol: 'τu,inter',
  terms: [0, -17.5, 22.5],
  at: [0.3, '17.25', '22.5 - 5.25'],
});
export const yardstickUdTension = line({
  id: 'ud-tension',
  title: 'Tensile strength along unidirectional fibres',
  symbol: 'σut',
  terms: [880, 140, 140],
  at: [0.55, '483.2', '266.2 + 77 + 140'],
});
export const yardstickUdCompression = line({
  id: 'ud-compression',
  title: 'Compressive strength along unidirectional fibres',
  symbol: 'σuc',
  terms: [0, 250, 190],
  at: [0.55, '327.5', '137.5 + 190'],
});
export const yardstickUdYoung = line({
  id: 'ud-young',
  title: 'Modulus along unidirectional fibres',
  symbol: 'E',
  terms: [46_600, 7200, 7250],
  at: [0.5, '22500', '11650 + 3600 + 7250'],
});
export const yardstickUdShearModulus = line({
  id: 'ud-shear-modulus',
  title: 'Shear modulus of unidirectional plies',
  symbol: 'G',
  terms: [14_380, -10_560, 3840],
  at: [0.5, '2155', '3595 - 5280 + 3840'],
});

export const yardstickFormulas = [
  yardstickTension,
  yardstickCompression,
  yardstickFlexure,
  yardstickShear,
  yardstickYoung,
  yardstickShearModulus,
  yardstickInterlaminar,
  yardstickUdTension,
  yardstickUdCompression,
  yardstickUdYoung,
  yardstickUdShearModulus,
];

const valueAt = (formula: ReturnType<typeof line>, fibreMassFraction: number): number =>
  formula.evaluate({ fibreMassFraction: fraction(fibreMassFraction) });

const poissonRemark: Remark = {
  about: 'poissonRatio',
  words: 'the yardstick prints no Poisson ratio: 0.3 is taken for mat and 0.11 for woven and 0/90',
  cite: {
    source: 'FROM-MEMORY',
    note: 'typical of mat; the woven value lies beside the 0.109 that a class society gives at half glass',
  },
};

const resinRemark: Remark = {
  about: 'resin',
  words:
    'the yardstick is printed for polyester; with another resin it is used as it stands, for comparison only',
  cite: annexC,
};

/** No transverse properties of a lone unidirectional ply were readable, so the method answers for mat, woven and 0/90 only. */
export const yardstickMethod: PlyMethod = {
  name: 'small-craft-yardstick',
  title: 'Small-craft yardstick, E-glass and polyester',
  cite: annexC,
  layups: ['mat', 'woven'],
  chemistries: ['polyester', 'vinylester', 'epoxy'],
  from: 0.25,
  upTo: 0.66,
  wovenAs: 'one-ply',
  propertiesOf: yardstickPly,
};

function yardstickPly({ layup, fibreMassFraction: psi, resin }: PlyBasis): PlyProperties {
  const young = valueAt(yardstickYoung, psi);
  return {
    method: 'small-craft-yardstick',
    cite: annexC,
    youngAlongMPa: young,
    youngAcrossMPa: young,
    poissonRatio: layup === 'mat' ? 0.3 : 0.11,
    shearModulusMPa: valueAt(yardstickShearModulus, psi),
    fibreVolumeFraction: volumeFractionOf(psi, 2560, 1200),
    fibreDensityKgPerM3: 2560,
    resinDensityKgPerM3: 1200,
    strength: yardstickStrength(psi),
    interlaminarShearMPa: valueAt(yardstickInterlaminar, psi),
    flexuralStrengthMPa: valueAt(yardstickFlexure, psi),
    remarks: resin.chemistry === 'polyester' ? [poissonRemark] : [poissonRemark, resinRemark],
  };
}

function yardstickStrength(psi: number): PlyStrength {
  const tension = valueAt(yardstickTension, psi);
  const compression = valueAt(yardstickCompression, psi);
  return {
    tensionAlongMPa: tension,
    compressionAlongMPa: compression,
    tensionAcrossMPa: tension,
    compressionAcrossMPa: compression,
    shearMPa: valueAt(yardstickShear, psi),
  };
}
