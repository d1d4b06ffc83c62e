import { ask, askCode, askEach, askText, askWhich, practice, type Answers } from '#lib/asking';
import { askWear, goodsBillings } from '#lib/costing';
import { labourQuestion } from './place.js';

export const pricingQuestions = {
  priceList: askCode({
    meaning: 'price list',
    description: 'Code of the price list that goods are priced from.',
    otherwise: 'unknown',
  }),
  labourRates: askCode({
    meaning: 'labour rates',
    description: 'Code of the labour rates that hours are priced with.',
    otherwise: 'unknown',
  }),
  goods: askWhich({
    meaning: 'how goods are charged',
    note: 'As used: what the job takes of each pack, the part of an opened one that will be past its date, and the wear of gear. As bought: whole packs and all gear. The basket is of whole packs either way.',
    choices: goodsBillings,
    otherwise: (answers: Answers) =>
      answers.of(labourQuestion).value === 'owner'
        ? practice('as-bought', 'an owner has no shelf: he pays for whole packs and gear')
        : practice('as-used', 'a yard charges what it takes off its shelf and the wear of its gear'),
  }),
  contingencyPercent: ask({
    unit: '%',
    meaning: 'contingency',
    note: 'Absent: P80 less what is expected.',
    range: { from: 0, upTo: 100 },
    otherwise: 'unknown',
  }),
  authorisationPercent: ask({
    unit: '%',
    meaning: 'hours above those expected that need a new word of the owner',
    range: { from: 0, upTo: 100 },
    otherwise: practice(15, 'yards ask again when the time changes by more than that'),
  }),
  foundOverRecorded: askEach({
    meaning: 'found over recorded area of own closed jobs',
    note: 'They take over from the judged growth as they come: n of them weigh n/(n + 15).',
    least: 1,
    most: 1000,
    of: ask({ unit: '1', meaning: 'found over recorded area of a job', range: { from: 0, upTo: 50 } }),
    otherwise: 'unknown',
  }),
  deductible: askText({
    meaning: 'what the insured bears himself',
    note: 'Exact decimal text in the currency of the price list.',
    atMost: 20,
    form: { pattern: /^\d{1,12}(?:\.\d{1,4})?$/, words: 'an amount such as 500.00' },
    otherwise: 'unknown',
  }),
  seed: ask({
    unit: '1',
    meaning: 'seed of the simulation',
    description: 'Seed of older records, of no effect now: the figures are integrated over a fixed lattice.',
    range: { from: 0, upTo: 4_294_967_295 },
    isWhole: true,
    otherwise: 'unknown',
  }),
  samples: ask({
    unit: '1',
    meaning: 'draws of the simulation',
    description:
      'Number of draws of older records, of no effect now: the figures are integrated over a fixed lattice.',
    range: { from: 1000, upTo: 100_000 },
    isWhole: true,
    otherwise: 'unknown',
  }),
  depreciation: askWear(
    'Wear of the parts that are replaced; shown beside the price, which it does not change.',
  ),
};
