import type { ThreePoint } from '#lib/kernel';
import type { Cite } from '#lib/provenance';
import type { Wait } from '../operation.js';

export const fromMemory: Cite = {
  source: 'FROM-MEMORY',
  note: 'unit rate of a skilled hand under cover; the bill of all of them was held to the totals of six told jobs',
};
/** What is done once on a job, by its size. */
export const sizedFromMemory: Cite = {
  source: 'FROM-MEMORY',
  note: 'done once, for a spot, a panel and a deck, level between logs of told jobs; straight in the logarithm of the area',
};
export const commonPractice: Cite = { source: 'COMMON-PRACTICE' };
export const splitFromMemory: Cite = {
  source: 'FROM-MEMORY',
  note: 'one rate for out and back, shared two fifths to three fifths',
};

export const threePoint = (low: number, likely: number, high: number): ThreePoint => ({ low, likely, high });

export const noWait: Wait = { kind: 'none' };
export const untilReleased: Wait = { kind: 'cure', until: 'release' };
export const untilSandable: Wait = { kind: 'cure', until: 'sandable' };

/** Work of a deck that is opened; one that is injected keeps its skin. */
export const deckOpened = { skin: ['re-bed', 'relay'] } as const;
