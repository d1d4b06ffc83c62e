import { ask, askWhich } from '#lib/asking';

export const craftQuestions = {
  craftType: askWhich({
    meaning: 'kind of craft',
    description: 'Whether she sails or is driven by motor; the pressure of the yardstick differs.',
    choices: ['sail', 'motor'],
    otherwise: 'unknown',
  }),
  lengthHullM: ask({
    unit: 'm',
    meaning: 'length of the hull',
    range: { from: 2, upTo: 120 },
    otherwise: 'unknown',
  }),
  lengthWaterlineM: ask({
    unit: 'm',
    meaning: 'length of the waterline',
    range: { from: 2, upTo: 120 },
    otherwise: 'unknown',
  }),
  massLoadedKg: ask({
    unit: 'kg',
    meaning: 'loaded mass',
    range: { above: 0, upTo: 10_000_000 },
    otherwise: 'unknown',
  }),
  designCategory: askWhich({
    meaning: 'design category',
    description: 'Design category of the craft, from A (ocean) to D (sheltered waters).',
    choices: ['A', 'B', 'C', 'D'],
    otherwise: 'unknown',
  }),
  yearBuilt: ask({
    unit: '1',
    meaning: 'year of building',
    range: { from: 1900, upTo: 2200 },
    isWhole: true,
    otherwise: 'unknown',
  }),
};
