import type { Cite } from '#lib/provenance';
import type { ThreePoint, Wait } from './operation.js';

export const fromMemory: Cite = { source: 'FROM-MEMORY', note: 'unit rate of a skilled hand under cover, tuned to published job totals' };
export const commonPractice: Cite = { source: 'COMMON-PRACTICE' };
export const splitFromMemory: Cite = { source: 'FROM-MEMORY', note: 'one rate for out and back, shared two fifths to three fifths' };

export const threePoint = (low: number, likely: number, high: number): ThreePoint => ({ low, likely, high });
export const scaled = ({ low, likely, high }: ThreePoint, factor: number): ThreePoint =>
  threePoint(low * factor, likely * factor, high * factor);

export const noWait: Wait = { kind: 'none' };
export const untilReleased: Wait = { kind: 'cure', until: 'release' };
export const untilSandable: Wait = { kind: 'cure', until: 'sandable' };
