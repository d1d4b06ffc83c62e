import { ask, askDecimal } from '#lib/asking';

/** Wear of a part. */
export const depreciationQuestions = {
  ageYears: ask({ unit: 'years', meaning: 'age of the part', range: { from: 0, upTo: 200 } }),
  lifeYears: ask({
    unit: 'years',
    meaning: 'straight-line life of the part, where no percentage is given',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  percent: askDecimal({
    meaning: 'percentage taken off the price of the part',
    description: 'Percentage taken off the price of the part, 0 to 100.',
    example: '20',
    otherwise: 'unknown',
  }),
};
