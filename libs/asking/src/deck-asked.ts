import { remembered } from './practice.js';

/** What every room asks of a deck in the same words and ranges. Less than the lower limits is a slip of unit. */
export const skinThicknessAsked = {
  unit: 'mm',
  description: 'Thickness of the skin: mm, or text with a unit.',
  range: { from: 0.1, upTo: 60 },
  example: '1/8 in',
} as const;

export const coreThicknessAsked = {
  unit: 'mm',
  description: 'Thickness of the core: mm, or text with a unit.',
  range: { from: 1, upTo: 200 },
  example: '1/2 in',
} as const;

/** The height between the skins: the core with its bond lines. */
export const cavityAsked = {
  unit: 'mm',
  meaning: 'cavity between the skins',
  note: 'From the inner skin to the underside of the outer skin, where measured: the core with its old bond lines.',
  range: { from: 1, upTo: 220 },
} as const;

export const fittingHolesAsked = {
  unit: '1',
  meaning: 'holes through the deck',
  range: { from: 0, upTo: 200 },
  isWhole: true,
} as const;

export const fittingBaseAsked = {
  unit: 'mm',
  meaning: 'size of its base',
  description: 'Largest size of its base on deck.',
  range: { from: 1, upTo: 3000 },
} as const;

/** Pressure in kPa that a bed needs where nobody states one. */
export const closesABed = remembered(1, {
  low: 0.5,
  high: 2,
  because:
    'a flexible skin and a thin bed close under 0.5 to 1 kPa, 50 to 100 kg/m2; more sags the skin below',
});

/** The same where nobody can set a prop below. */
export const sagsLeast = remembered(0.5, {
  low: 0.5,
  high: 1,
  because: 'no prop can be set below: the least that closes a thin bed, so that the skin sags least',
});
