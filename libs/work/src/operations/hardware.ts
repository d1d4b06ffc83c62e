import type { Cite } from '#lib/provenance';
import { threePoint } from './cites.js';

/** Hours of a fitting stand on its card; here is what becomes of one hour of it. */
const spread: Cite = {
  source: 'FROM-MEMORY',
  note: 'hours of the cards of the fittings; half to twice, because nobody knows how the nuts sit',
};

export const takingOff = { hours: threePoint(0.5, 1, 2), cite: spread };

/** Base cleaned, bedded and bolted. */
export const settingAgain = {
  hours: threePoint(0.5, 1, 2),
  cite: {
    ...spread,
    note: 'hours of the cards, those of a row of like fittings held to two pulpits and six stanchions set on prepared holes in 4 h',
  },
};

/** Where the deck stays closed, base and deck are cleaned before the holes are dug, and what is left of the hours is the bedding. */
export const cleaningFirst = { hours: threePoint(0.15, 0.3, 0.6), cite: spread };
export const beddingThen = { hours: threePoint(0.35, 0.7, 1.4), cite: spread };

/** 0.3 h below for a base that takes an hour to set. */
export const holdingNuts = {
  hours: threePoint(0.1, 0.3, 0.3),
  cite: { source: 'FROM-MEMORY', note: 'a second person for 0.3 h at one four-bolt base' } as const,
};
