import { mPa } from '#lib/units';
import { defineFormula } from '#lib/provenance';

const given = {
  specificGravity: {
    symbol: 'SG',
    unit: '1',
    meaning: 'density of the plywood over that of water',
    from: 0.35,
    upTo: 0.75,
  },
  plyCount: { symbol: 'N', unit: '1', meaning: 'number of plies', from: 3, upTo: 15 },
} as const;

const cite = { source: 'ISO-12215-5-2004-DRAFT', clause: 'annex E, table E.2' };

/** Worked examples are cells of table E.3. */
export const plywoodFlexuralStrengthAlong = defineFormula({
  id: 'panel.plywood.flexural-strength-along',
  title: 'Flexural strength of marine plywood along the face grain',
  cite,
  inputs: given,
  output: { symbol: 'sigma_uf', unit: 'MPa', meaning: 'flexural strength along the face grain' },
  evaluate: ({ specificGravity, plyCount }) =>
    mPa(Math.sqrt(specificGravity) * (68 - 2 * plyCount + 0.03 * plyCount ** 2)),
  worked: [
    { at: 'table E.3, 0.40, 5 plies', given: { specificGravity: 0.4, plyCount: 5 }, printed: '37' },
    { at: 'table E.3, 0.60, 11 plies', given: { specificGravity: 0.6, plyCount: 11 }, printed: '38' },
  ],
});

export const plywoodFlexuralStrengthAcross = defineFormula({
  id: 'panel.plywood.flexural-strength-across',
  title: 'Flexural strength of marine plywood across the face grain',
  cite,
  inputs: given,
  output: { symbol: 'sigma_uf', unit: 'MPa', meaning: 'flexural strength across the face grain' },
  evaluate: ({ specificGravity, plyCount }) =>
    mPa(Math.sqrt(specificGravity) * (11 + 6.5 * plyCount - 0.28 * plyCount ** 2)),
  worked: [
    { at: 'table E.3, 0.40, 5 plies', given: { specificGravity: 0.4, plyCount: 5 }, printed: '23' },
    { at: 'table E.3, 0.50, 9 plies', given: { specificGravity: 0.5, plyCount: 9 }, printed: '33' },
  ],
});

/** By hand at 0.55 and 7 plies: 0.55^0.75 = 0.63866; 11400 - 4060 + 784 = 8124; 5188.5. */
export const plywoodModulusAlong = defineFormula({
  id: 'panel.plywood.modulus-along',
  title: 'Flexural modulus of marine plywood along the face grain',
  cite,
  inputs: given,
  output: { symbol: 'E', unit: 'MPa', meaning: 'flexural modulus along the face grain' },
  evaluate: ({ specificGravity, plyCount }) =>
    mPa(specificGravity ** 0.75 * (11400 - 580 * plyCount + 16 * plyCount ** 2)),
  worked: [
    { at: 'by hand, 0.55, 7 plies', given: { specificGravity: 0.55, plyCount: 7 }, printed: '5188.5' },
  ],
});

/** By hand at 0.55 and 7 plies: 0.63866 (9240 - 2695 - 1200) = 0.63866 x 5345 = 3413.7. */
export const plywoodModulusAcross = defineFormula({
  id: 'panel.plywood.modulus-across',
  title: 'Flexural modulus of marine plywood across the face grain',
  cite,
  inputs: given,
  output: { symbol: 'E', unit: 'MPa', meaning: 'flexural modulus across the face grain' },
  evaluate: ({ specificGravity, plyCount }) =>
    mPa(specificGravity ** 0.75 * (1320 * plyCount - 55 * plyCount ** 2 - 1200)),
  worked: [
    { at: 'by hand, 0.55, 7 plies', given: { specificGravity: 0.55, plyCount: 7 }, printed: '3413.7' },
  ],
});

export const plywoodFormulas = [
  plywoodFlexuralStrengthAlong,
  plywoodFlexuralStrengthAcross,
  plywoodModulusAlong,
  plywoodModulusAcross,
] as const;
