import { assumed, entered, type Cite, type Figure } from '#lib/provenance';
import { m2, mm, mm2 } from '#lib/units';
import type { MosaicRules } from './request.js';

/** The rules in force. The largest piece from above is the material's own unless the caller says otherwise. */
export type MosaicNumbers = Readonly<Record<RuleKey, number>>;

export type RuleKey = Exclude<keyof MosaicRules, 'largestPieceM2'>;

interface Usual {
  readonly meaning: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly because: string;
  readonly cite: Cite;
}

const memory: Cite = { source: 'FROM-MEMORY' };
const practice: Cite = { source: 'COMMON-PRACTICE' };

const usual: Readonly<Record<RuleKey, Usual>> = {
  handPieceM2: {
    meaning: 'largest piece slid under a lip',
    value: 0.046,
    because: 'about half a square foot is slid and turned by hand without scraping its bed off',
    cite: practice,
  },
  bayM2: {
    meaning: 'core bedded in one go',
    value: 1,
    low: 0.6,
    high: 2,
    because: 'the bed must still be soft when the last piece of it is pressed',
    cite: memory,
  },
  jointGapMm: {
    meaning: 'gap at each joint',
    value: 2,
    low: 1,
    high: 3,
    because: 'room for the bedding to rise between pieces',
    cite: memory,
  },
  staggerMm: {
    meaning: 'distance between joints of neighbouring rows',
    value: 100,
    low: 50,
    high: 150,
    because: 'joints that line up make a hinge',
    cite: practice,
  },
  narrowestMm: {
    meaning: 'narrowest piece',
    value: 40,
    low: 25,
    high: 60,
    because: 'a narrower one cannot be held, coated and bedded; it is filled instead',
    cite: memory,
  },
  leastLipPieceMm: {
    meaning: 'narrowest piece slid under a lip',
    value: 100,
    low: 75,
    high: 150,
    because: 'fingers must hold it in the opening while it goes under',
    cite: memory,
  },
  leastPieceCm2: {
    meaning: 'smallest piece',
    value: 25,
    low: 16,
    high: 50,
    because: 'smaller bits are quicker filled than cut',
    cite: memory,
  },
  leastSlotMm: {
    meaning: 'narrowest slot that takes core',
    value: 75,
    low: 40,
    high: 100,
    because: 'paste, solid laminate or a strip of high density fills a narrower one',
    cite: memory,
  },
  lipFillMm: {
    meaning: 'deepest undercut that is filled rather than cored',
    value: 75,
    low: 25,
    high: 100,
    because: 'the reach of hooked tools: filler goes under the lip first, the core in the field after it',
    cite: practice,
  },
  supportClearanceMm: {
    meaning: 'distance of joints from a support',
    value: 15,
    low: 10,
    high: 25,
    because: 'the core carries its shear there',
    cite: practice,
  },
  bleedSpacingMm: {
    meaning: 'spacing of bleed holes',
    value: 100,
    low: 75,
    high: 150,
    because: 'air under unscored core gets out',
    cite: memory,
  },
  bleedDiameterMm: {
    meaning: 'diameter of bleed holes',
    value: 4,
    low: 3,
    high: 5,
    because: 'air under unscored core gets out',
    cite: memory,
  },
};

export const mosaicNumbers = (rules: MosaicRules = {}): MosaicNumbers => ({
  handPieceM2: numberOf('handPieceM2', rules),
  bayM2: numberOf('bayM2', rules),
  jointGapMm: numberOf('jointGapMm', rules),
  staggerMm: numberOf('staggerMm', rules),
  narrowestMm: numberOf('narrowestMm', rules),
  leastLipPieceMm: numberOf('leastLipPieceMm', rules),
  leastPieceCm2: numberOf('leastPieceCm2', rules),
  leastSlotMm: numberOf('leastSlotMm', rules),
  lipFillMm: numberOf('lipFillMm', rules),
  supportClearanceMm: numberOf('supportClearanceMm', rules),
  bleedSpacingMm: numberOf('bleedSpacingMm', rules),
  bleedDiameterMm: numberOf('bleedDiameterMm', rules),
});

const numberOf = (key: RuleKey, rules: MosaicRules): number => rules[key] ?? usual[key].value;

const keys: readonly RuleKey[] = [
  'handPieceM2',
  'bayM2',
  'jointGapMm',
  'staggerMm',
  'narrowestMm',
  'leastLipPieceMm',
  'leastPieceCm2',
  'leastSlotMm',
  'lipFillMm',
  'supportClearanceMm',
  'bleedSpacingMm',
  'bleedDiameterMm',
];

export const mosaicFigures = (rules: MosaicRules = {}): readonly Figure[] =>
  keys.map((key): Figure => {
    const { meaning, value, because, cite, low, high }: Usual = usual[key];
    const given = rules[key];
    const at = `/rules/${key}`;
    const spread = {
      ...(low === undefined ? {} : { low }),
      ...(high === undefined ? {} : { high }),
    };
    const why = { at, because, cite, ...spread };
    if (key.endsWith('M2')) {
      return given === undefined
        ? assumed('m2', m2(value), meaning, why)
        : entered('m2', m2(given), meaning, at);
    }
    if (key.endsWith('Cm2')) return areaFigure(given, { value, meaning }, why);
    return given === undefined
      ? assumed('mm', mm(value), meaning, why)
      : entered('mm', mm(given), meaning, at);
  });

const MM2_PER_CM2 = 100;

/** Square centimetres are for hands; figures are in square millimetres. */
function areaFigure(
  given: number | undefined,
  { value, meaning }: Pick<Usual, 'value' | 'meaning'>,
  why: { readonly at: string; readonly because: string; readonly cite: Cite },
): Figure {
  const { at, because, cite } = why;
  return given === undefined
    ? assumed('mm2', mm2(value * MM2_PER_CM2), meaning, { at, because, cite })
    : entered('mm2', mm2(given * MM2_PER_CM2), meaning, at);
}

/** Ranges that a caller's rules must keep. */
export const ruleRanges: Readonly<Record<keyof MosaicRules, readonly [number, number]>> = {
  handPieceM2: [0.0025, 4],
  largestPieceM2: [0.0025, 4],
  bayM2: [0.05, 20],
  jointGapMm: [0, 10],
  staggerMm: [0, 500],
  narrowestMm: [5, 300],
  leastLipPieceMm: [5, 500],
  leastPieceCm2: [1, 400],
  leastSlotMm: [5, 300],
  lipFillMm: [0, 500],
  supportClearanceMm: [0, 200],
  bleedSpacingMm: [20, 500],
  bleedDiameterMm: [1, 12],
};
