import { problem, type Problem } from '#lib/kernel';

export interface Range {
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly upTo?: number;
}

/** A finite number inside the range, or the fault that names the range. */
export function rangeFaults(at: string, value: unknown, range: Range): readonly Problem[] {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return [problem('not-a-number', at, { value: String(value), hint: hintOf(range) })];
  }
  const isInside =
    (range.above === undefined || value > range.above) &&
    (range.from === undefined || value >= range.from) &&
    (range.below === undefined || value < range.below) &&
    (range.upTo === undefined || value <= range.upTo);
  return isInside ? [] : [problem('out-of-range', at, { value, range: wordsOf(range) })];
}

/** The same for a value that may be absent. */
export const optionalRangeFaults = (at: string, value: unknown, range: Range): readonly Problem[] =>
  value === undefined ? [] : rangeFaults(at, value, range);

export function countFaults(at: string, count: number, least: number, most: number): readonly Problem[] {
  if (count > most) return [problem('too-many', at, { count, most })];
  return count < least ? [problem('too-few', at, { count, least })] : [];
}

const hintOf = (range: Range): string => (Object.keys(range).length === 0 ? '' : ` ${wordsOf(range)}`);

export function wordsOf({ above, from, below, upTo }: Range): string {
  const lower = above === undefined ? (from === undefined ? [] : [`${from} or more`]) : [`above ${above}`];
  const upper = below === undefined ? (upTo === undefined ? [] : [`at most ${upTo}`]) : [`below ${below}`];
  return [...lower, ...upper].join(' and ');
}
