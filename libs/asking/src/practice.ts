import type { Cite } from '#lib/provenance';
import type { Default } from './question.js';

/** Usual in the trade, no published source. */
export const commonPractice: Cite = { source: 'COMMON-PRACTICE' };
/** A value that was not looked up. */
export const fromMemory: Cite = { source: 'FROM-MEMORY' };

/** A default that the trade would take. */
export const practice = <const T>(value: T, because: string): Default<T> => ({
  value,
  because,
  cite: commonPractice,
});

/** A default that was not looked up, with the spread that goes with it. */
export const remembered = (
  value: number,
  spread: { readonly low: number; readonly high: number; readonly because: string },
): Default => ({ value, ...spread, cite: fromMemory });
