import { ask, askEach, practice } from '#lib/asking';
import type { Cite } from '#lib/provenance';

export const judgement: Cite = { source: 'FROM-MEMORY', note: 'judgement; no published figure was found' };

const chance = { unit: '1', range: { from: 0.01, upTo: 0.99 } } as const;

/** How readings become a map, as the caller may choose; what is taken otherwise is said by the map itself. */
export const mapQuestions = {
  cutProbability: ask({
    ...chance,
    meaning: 'chance of bad core from which deck lies inside the zones',
    description:
      'Core this likely to be bad, or more, lies inside the zones. Absent: chosen by expected hours.',
    otherwise: 'unknown',
  }),
  leaveCostHPerM2: ask({
    unit: 'h/m2',
    meaning: 'hours that a square metre of bad core left under a closed deck costs in the end',
    range: { from: 16, upTo: 2000 },
    otherwise: {
      value: 120,
      low: 50,
      high: 300,
      because:
        'a second repair opens, cores and closes that square metre again with a cut of its own (about 25 h), the patch has grown by then (about double), and a deck set up and finished anew for it takes as much again',
      cite: judgement,
    },
  }),
  contourProbabilities: askEach({
    meaning: 'further contours of the map',
    least: 0,
    most: 12,
    of: ask({ ...chance, meaning: 'chance of bad core on the contour' }),
    otherwise: practice<readonly number[]>([0.1, 0.5, 0.9], 'hardly, as likely as not, nearly certain'),
  }),
  usualBadShare: ask({
    ...chance,
    meaning: 'share of such a panel that is bad before any reading',
    otherwise: {
      value: 0.25,
      because: 'somebody had a reason to survey it, and most of a deck is sound',
      cite: judgement,
    },
  }),
  draws: ask({
    unit: '1',
    meaning: 'draws behind the range of the area',
    range: { from: 100, upTo: 5000 },
    isWhole: true,
    otherwise: practice(500, 'enough for the range of an area'),
  }),
  seed: ask({
    unit: '1',
    meaning: 'seed of those draws',
    note: 'The same seed gives the same range.',
    range: { from: 0, upTo: 4_294_967_295 },
    isWhole: true,
    otherwise: practice(20_011, 'any seed will do, as long as it is the same'),
  }),
};
