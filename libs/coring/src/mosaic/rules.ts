import { ask, commonPractice, fromMemory, practice, settledRight, type AnswersTo } from '#lib/asking';
import type { Figure } from '#lib/provenance';

/** Asked with the core, used where it is divided. */
export const grainAsked = ask({
  unit: 'degrees',
  meaning: 'direction of the grain on the deck, from forward to starboard',
  range: { from: -360, upTo: 360 },
  otherwise: practice(0, 'grain runs fore and aft'),
});

/** The largest piece from above is the material's own unless the caller says otherwise. */
const largestPieceM2 = ask({
  unit: 'm2',
  meaning: 'largest piece bedded from above',
  description: "Largest piece bedded from above; absent: the material's own figure.",
  range: { from: 0.0025, upTo: 4 },
  otherwise: 'unknown',
});

/** How core is divided into pieces, as the caller may choose. */
export const mosaicQuestions = {
  handPieceM2: ask({
    unit: 'm2',
    meaning: 'largest piece slid under a lip',
    range: { from: 0.0025, upTo: 4 },
    otherwise: {
      value: 0.046,
      because: 'about half a square foot is slid and turned by hand without scraping its bed off',
      cite: commonPractice,
    },
  }),
  bayM2: ask({
    unit: 'm2',
    meaning: 'core bedded in one go',
    range: { from: 0.05, upTo: 20 },
    otherwise: {
      value: 1,
      low: 0.6,
      high: 2,
      because: 'the bed must still be soft when the last piece of it is pressed',
      cite: fromMemory,
    },
  }),
  jointGapMm: ask({
    unit: 'mm',
    meaning: 'gap at each joint',
    range: { from: 0, upTo: 10 },
    otherwise: {
      value: 2,
      low: 1,
      high: 3,
      because: 'room for the bedding to rise between pieces',
      cite: fromMemory,
    },
  }),
  staggerMm: ask({
    unit: 'mm',
    meaning: 'distance between joints of neighbouring rows',
    range: { from: 0, upTo: 500 },
    otherwise: {
      value: 100,
      low: 50,
      high: 150,
      because: 'joints that line up make a hinge',
      cite: commonPractice,
    },
  }),
  narrowestMm: ask({
    unit: 'mm',
    meaning: 'narrowest piece',
    range: { from: 5, upTo: 300 },
    otherwise: {
      value: 40,
      low: 25,
      high: 60,
      because: 'a narrower one cannot be held, coated and bedded; it is filled instead',
      cite: fromMemory,
    },
  }),
  leastLipPieceMm: ask({
    unit: 'mm',
    meaning: 'narrowest piece slid under a lip',
    range: { from: 5, upTo: 500 },
    otherwise: {
      value: 100,
      low: 75,
      high: 150,
      because: 'fingers must hold it in the opening while it goes under',
      cite: fromMemory,
    },
  }),
  leastPieceCm2: ask({
    unit: 'cm2',
    meaning: 'smallest piece',
    range: { from: 1, upTo: 400 },
    otherwise: {
      value: 25,
      low: 16,
      high: 50,
      because: 'smaller bits are quicker filled than cut',
      cite: fromMemory,
    },
  }),
  leastSlotMm: ask({
    unit: 'mm',
    meaning: 'narrowest slot that takes core',
    range: { from: 5, upTo: 300 },
    otherwise: {
      value: 75,
      low: 40,
      high: 100,
      because: 'paste, solid laminate or a strip of high density fills a narrower one',
      cite: fromMemory,
    },
  }),
  lipFillMm: ask({
    unit: 'mm',
    meaning: 'deepest undercut that is filled rather than cored',
    range: { from: 0, upTo: 500 },
    otherwise: {
      value: 75,
      low: 25,
      high: 100,
      because: 'the reach of hooked tools: filler goes under the lip first, the core in the field after it',
      cite: commonPractice,
    },
  }),
  supportClearanceMm: ask({
    unit: 'mm',
    meaning: 'distance of joints from a support',
    range: { from: 0, upTo: 200 },
    otherwise: {
      value: 15,
      low: 10,
      high: 25,
      because: 'the core carries its shear there',
      cite: commonPractice,
    },
  }),
  bleedSpacingMm: ask({
    unit: 'mm',
    meaning: 'spacing of bleed holes',
    range: { from: 20, upTo: 500 },
    otherwise: {
      value: 100,
      low: 75,
      high: 150,
      because: 'air under unscored core gets out',
      cite: fromMemory,
    },
  }),
  bleedDiameterMm: ask({
    unit: 'mm',
    meaning: 'diameter of bleed holes',
    range: { from: 1, upTo: 12 },
    otherwise: {
      value: 4,
      low: 3,
      high: 5,
      because: 'air under unscored core gets out',
      cite: fromMemory,
    },
  }),
};

export const mosaicRuleQuestions = { ...mosaicQuestions, largestPieceM2 };

/** Absent rules have defaults, each listed among the assumptions. */
export type MosaicRules = AnswersTo<typeof mosaicRuleQuestions>;

/** The rules in force, as figures that say whether the caller or a default set them. */
export const mosaicFigures = (rules: MosaicRules = {}): Readonly<Record<RuleKey, Figure>> =>
  settledRight(rules, mosaicQuestions, '/mosaicRules');

type RuleKey = keyof typeof mosaicQuestions;

/** The same as bare numbers. */
export type MosaicNumbers = Readonly<Record<RuleKey, number>>;

export function mosaicNumbers(rules: MosaicRules = {}): MosaicNumbers {
  const figures = mosaicFigures(rules);
  const numberOf = (key: RuleKey): number => figures[key].value;
  return {
    handPieceM2: numberOf('handPieceM2'),
    bayM2: numberOf('bayM2'),
    jointGapMm: numberOf('jointGapMm'),
    staggerMm: numberOf('staggerMm'),
    narrowestMm: numberOf('narrowestMm'),
    leastLipPieceMm: numberOf('leastLipPieceMm'),
    leastPieceCm2: numberOf('leastPieceCm2'),
    leastSlotMm: numberOf('leastSlotMm'),
    lipFillMm: numberOf('lipFillMm'),
    supportClearanceMm: numberOf('supportClearanceMm'),
    bleedSpacingMm: numberOf('bleedSpacingMm'),
    bleedDiameterMm: numberOf('bleedDiameterMm'),
  };
}
