import { ask, commonPractice, fromMemory, settledRight, type AnswersTo, type Settlement } from '#lib/asking';

const DECK_FLUSH = { source: 'DECK-REPAIR-PRACTICE' } as const;

/** How the new core is bedded, as the caller may choose. */
export const stackQuestions = {
  bondLineMm: ask({
    unit: 'mm',
    meaning: 'usual bond line',
    description: 'A bond line as a notched spreader leaves it.',
    range: { from: 0, upTo: 10 },
    otherwise: {
      value: 0.89,
      low: 0.25,
      high: 2.2,
      because: 'what a 1/4 in notch leaves',
      cite: { source: 'MAKER-NOTCH', note: '1/4 in notch, 0.89 l/m2' },
    },
  }),
  leastBondLineMm: ask({
    unit: 'mm',
    meaning: 'thinnest bond line',
    note: 'The thinnest that still fills, pressed hard.',
    range: { from: 0, upTo: 10 },
    otherwise: {
      value: 0.25,
      low: 0.2,
      high: 0.64,
      because: 'a tight bed on balsa, pressed',
      cite: {
        source: 'FROM-MEMORY',
        note: "a maker's calculator: 0.25 to 0.64 mm on balsa, 0.2 to 0.5 mm on foam, each side",
      },
    },
  }),
  mostBondLineMm: ask({
    unit: 'mm',
    meaning: 'thickest bond line',
    description: 'The thickest bed of filled resin.',
    range: { from: 0, upTo: 10 },
    otherwise: { value: 3, low: 1, high: 3, because: 'a paste bed of 1 to 3 mm', cite: commonPractice },
  }),
  wetLineMm: ask({
    unit: 'mm',
    meaning: 'resin under plies laid wet on the core',
    range: { from: 0, upTo: 3 },
    otherwise: {
      value: 0.1,
      low: 0,
      high: 0.2,
      because: 'the first ply lies on the core in its own resin; there is no bed of paste',
      cite: { source: 'FROM-MEMORY', note: '0 to 0.2 mm' },
    },
  }),
  lowestFlushMm: ask({
    unit: 'mm',
    meaning: 'lowest the skin may sit',
    range: { from: -20, upTo: 0 },
    otherwise: { value: -1, because: 'a millimetre low is faired', cite: commonPractice },
  }),
  highestFlushMm: ask({
    unit: 'mm',
    meaning: 'highest the skin may sit',
    range: { from: 0, upTo: 20 },
    otherwise: { value: 0, because: 'a proud skin cannot be faired away', cite: DECK_FLUSH },
  }),
};

/** Absent rules have defaults, each listed among the plan's assumptions. */
export type StackRules = AnswersTo<typeof stackQuestions>;

/** A deck that is not flat. */
export const camberQuestions = {
  radiusMm: ask({ unit: 'mm', meaning: 'radius of the camber', range: { from: 50, upTo: 1_000_000 } }),
  pieceLengthMm: ask({
    unit: 'mm',
    meaning: 'length of a piece across the camber',
    description: 'Length of a piece across the camber; absent: the side of the largest piece.',
    range: { from: 10, upTo: 5000 },
    otherwise: 'unknown',
  }),
  pressureKPa: ask({
    unit: 'kPa',
    meaning: 'pressure that holds the core down',
    range: { from: 0.01, upTo: 101 },
    otherwise: {
      value: 2,
      low: 1,
      high: 50,
      because: 'a 20 kg bag on 0.1 m2',
      cite: { source: 'ARITHMETIC', note: '20 kg x 9.81 / 0.1 m2 = 1.96 kPa' },
    },
  }),
  mostGapMm: ask({
    unit: 'mm',
    meaning: 'gap that the bed fills',
    range: { from: 0.05, upTo: 20 },
    otherwise: {
      value: 1.5,
      low: 1,
      high: 1.5,
      because: 'the largest piece lies within 1 to 1.5 mm of the skin',
      cite: fromMemory,
    },
  }),
};

export type CamberRequest = AnswersTo<typeof camberQuestions>;

/** How heavy and how wet the old core is. */
export const oldCoreQuestions = {
  densityKgPerM3: ask({
    unit: 'kg/m3',
    meaning: 'density of the old core',
    description: 'Density of the old core; absent: that of the new one.',
    range: { from: 20, upTo: 1500 },
    otherwise: 'unknown',
  }),
  moistureFraction: ask({
    unit: '1',
    meaning: 'water in the old core, parts of its dry mass: 1.5 is wetter than its own weight',
    range: { from: 0, upTo: 8 },
    otherwise: 'unknown',
  }),
};

export type OldCoreRequest = AnswersTo<typeof oldCoreQuestions>;

/** The rules in force, each entered or assumed. */
export type RuleFigures = Settlement<typeof stackQuestions>;

export const ruleFigures = ({ rules = {} }: { readonly rules?: StackRules }): RuleFigures =>
  settledRight(rules, stackQuestions, '/stackRules');
