import { ask, askEach } from '#lib/asking';
import { LEAVE_COST } from '../cut-choice.js';

const chance = { unit: '1', range: { from: 0.01, upTo: 0.99 } } as const;

/** How readings become a map, as the caller may choose; what is taken otherwise is said by the map itself. */
export const mapQuestions = {
  cutProbability: ask({
    ...chance,
    meaning: 'chance of bad core from which deck lies inside the zones',
    description:
      'Core this likely to be bad, or more, lies inside the zones; absent: chosen by expected hours.',
    otherwise: 'unknown',
  }),
  leaveCostHPerM2: ask({
    unit: LEAVE_COST.unit,
    range: { from: LEAVE_COST.from, upTo: LEAVE_COST.upTo },
    meaning: LEAVE_COST.meaning,
    description: `The ${LEAVE_COST.meaning}; absent: ${LEAVE_COST.value} (${LEAVE_COST.because}).`,
    otherwise: 'unknown',
  }),
  contourProbabilities: askEach({
    meaning: 'further contours of the map',
    description: 'Further contours; absent: 0.1, 0.5 and 0.9.',
    least: 0,
    most: 12,
    of: ask({ ...chance, meaning: 'chance of bad core on the contour' }),
    otherwise: 'unknown',
  }),
  usualBadShare: ask({
    ...chance,
    meaning: 'share of such a panel that is bad before any reading',
    description: 'Share of such a panel that is bad before any reading; absent: 0.25.',
    otherwise: 'unknown',
  }),
  draws: ask({
    unit: '1',
    meaning: 'draws behind the range of the area',
    range: { from: 100, upTo: 5000 },
    isWhole: true,
    otherwise: 'unknown',
  }),
  seed: ask({
    unit: '1',
    meaning: 'seed of those draws',
    description: 'The same seed gives the same range.',
    range: { from: 0, upTo: 4_294_967_295 },
    isWhole: true,
    otherwise: 'unknown',
  }),
};
