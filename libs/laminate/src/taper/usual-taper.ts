import type { Standard } from '../assumption.js';

export interface UsualTaper extends Standard {
  readonly value: number;
}

const USUAL_RATIO = 12;
/** Room for the steps of the four thin plies that a skin of a millimetre takes, at 5 mm each. */
const LEAST_TAPER_MM = 20;
/** Gentler than any taper in use. */
const GENTLEST_RATIO = 100;

/** The taper taken when nobody says: 12:1, and on a skin so thin that this leaves no room for its plies, 20 mm wide. */
export function usualTaper(skinThicknessMm: number): UsualTaper {
  const ratio = Math.min(GENTLEST_RATIO, LEAST_TAPER_MM / skinThicknessMm);
  return ratio <= USUAL_RATIO
    ? usual
    : {
        value: ratio,
        meaning: usual.meaning,
        shown: `${ratio.toFixed(1)}:1, ${LEAST_TAPER_MM} mm wide`,
        because: `12:1 on ${skinThicknessMm} mm is too narrow for the steps of its plies, 5 mm each`,
        cite: { source: 'COMMON-PRACTICE' },
      };
}

const usual: UsualTaper = {
  value: USUAL_RATIO,
  meaning: 'taper round the edge',
  shown: '12:1',
  because: '1:12 was the best of 1:6, 1:12 and 1:20; trade guidance asks for 12:1 at least',
  cite: { source: 'ROTHBARTH-PINTO-2019' },
};
