import { ask, askCode, askFor } from '#lib/asking';
import { depreciationTermsFaults, type DepreciationTerms } from '#lib/costing';

export const pricingQuestions = {
  priceList: askCode({ meaning: 'price list', otherwise: 'unknown' }),
  labourRates: askCode({ meaning: 'labour rates', otherwise: 'unknown' }),
  contingencyPercent: ask({
    unit: '%',
    meaning: 'contingency',
    description: 'Absent: P80 minus the point estimate.',
    range: { from: 0, upTo: 100 },
    otherwise: 'unknown',
  }),
  seed: ask({
    unit: '1',
    meaning: 'seed of the simulation',
    range: { from: 0, upTo: 4_294_967_295 },
    isWhole: true,
    otherwise: 'unknown',
  }),
  samples: ask({
    unit: '1',
    meaning: 'draws of the simulation',
    range: { from: 1000, upTo: 100_000 },
    isWhole: true,
    otherwise: 'unknown',
  }),
  depreciation: askFor<DepreciationTerms, 'unknown'>({
    meaning: 'wear of the parts that are replaced',
    description: 'Wear of the parts that are replaced; shown beside the price, which it does not change.',
    faults: depreciationTermsFaults,
    otherwise: 'unknown',
  }),
};
