import { scaled, type ThreePoint } from '#lib/kernel';
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

/**
 * So much of the unit rates as they are remembered makes the totals of the told jobs that they were held to: the rates stood
 * at their likely values there, and priced hours are means. One factor for all structure, fitted once; the page of outside
 * jobs says on which and what is left when each of them is left out.
 */
const HELD_TO_TOLD = 0.8;

/** Remembered hours per unit of structure, held to the totals of told jobs. */
export const structureRate = (low: number, likely: number, high: number): ThreePoint =>
  scaled(threePoint(low, likely, high), HELD_TO_TOLD);

export const noWait: Wait = { kind: 'none' };
export const untilReleased: Wait = { kind: 'cure', until: 'release' };
export const untilSandable: Wait = { kind: 'cure', until: 'sandable' };

/** Work of a deck that is opened; one that is injected keeps its skin. */
export const deckOpened = { skin: ['re-bed', 'relay'] } as const;

/** Nothing is cut through an overlay, under a rail or over a lining. */
export const takenOff = [
  'overlay-fill-holes',
  'overlay-scrape-screwed',
  'overlay-scrape-glued',
  'rail-off',
  'deck-bows',
  'lining-out-zipped',
  'lining-out-panel',
  'lining-out-glued',
] as const;
