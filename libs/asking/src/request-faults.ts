import { problem, type Problem } from '#lib/kernel';

export interface Bounds {
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly upTo?: number;
  readonly unit: string;
}

/** What is wrong with one number of a request; absent numbers are judged by `missing`. */
export function numberFaults(at: string, value: number | undefined, bounds: Bounds): readonly Problem[] {
  if (value === undefined) return [problem('missing', at, { expected: `a number in ${bounds.unit}` })];
  if (typeof value !== 'number' || !Number.isFinite(value))
    return [problem('not-a-number', at, { value: String(value), hint: ` in ${bounds.unit}` })];
  return liesWithin(value, bounds)
    ? []
    : [problem('out-of-range', at, { value, range: boundsInWords(bounds) })];
}

/** The same for a number that may be left out. */
export const optionalFaults = (at: string, value: number | undefined, bounds: Bounds): readonly Problem[] =>
  value === undefined ? [] : numberFaults(at, value, bounds);

export const liesWithin = (value: number, { above, from, below, upTo }: Bounds): boolean =>
  (above === undefined || value > above) &&
  (from === undefined || value >= from) &&
  (below === undefined || value < below) &&
  (upTo === undefined || value <= upTo);

function boundsInWords({ above, from, below, upTo, unit }: Bounds): string {
  const lower = above !== undefined ? [`above ${above}`] : from !== undefined ? [`${from} or more`] : [];
  const upper = below !== undefined ? [`below ${below}`] : upTo !== undefined ? [`at most ${upTo}`] : [];
  return `${[...lower, ...upper].join(' and ')} ${unit}`.trim();
}

/** One of a closed list. */
export const choiceFaults = (
  at: string,
  value: string | undefined,
  choices: readonly string[],
): readonly Problem[] =>
  value !== undefined && choices.includes(value)
    ? []
    : [problem('not-one-of', at, { value: String(value), choices: choices.join(', ') })];

export const optionalChoiceFaults = (
  at: string,
  value: string | undefined,
  choices: readonly string[],
): readonly Problem[] => (value === undefined ? [] : choiceFaults(at, value, choices));

export function repeatFaults(at: string, key: string, values: readonly string[]): readonly Problem[] {
  return values.flatMap((value, index) =>
    values.indexOf(value) === index ? [] : [problem('duplicate', `${at}/${index}/${key}`, { value })],
  );
}

export const countFaults = (
  at: string,
  count: number,
  { least, most }: { readonly least: number; readonly most: number },
): readonly Problem[] => {
  if (count < least) return [problem('too-few', at, { count, least })];
  return count > most ? [problem('too-many', at, { count, most })] : [];
};
