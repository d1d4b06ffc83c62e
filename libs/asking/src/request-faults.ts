import { liesWithin, problem, rangeInWords, type Problem, type Range, laidOver } from '#lib/kernel';

/** A range with the unit that its words need; a number without a unit has none. */
export interface Bounds extends Range {
  readonly unit?: string;
}

/** The bounds of what is asked in several places. */
export const within = ({ range, unit }: { readonly range: Range; readonly unit: string }): Bounds =>
  laidOver(range, { unit });

/** What is wrong with one number of a request; an absent one is missing. */
export function numberFaults(at: string, value: unknown, bounds: Bounds): readonly Problem[] {
  const { unit = '1' } = bounds;
  if (value === undefined) return [problem('missing', at, { expected: `a number in ${unit}` })];
  if (typeof value !== 'number' || !Number.isFinite(value))
    return [problem('not-a-number', at, { value: String(value), hint: unit === '1' ? '' : ` in ${unit}` })];
  return liesWithin(value, bounds)
    ? []
    : [problem('out-of-range', at, { value, range: rangeInWords(bounds, unit) })];
}

/** The same for a number of things. */
export const wholeFaults = (at: string, value: unknown, bounds: Bounds): readonly Problem[] => {
  const found = numberFaults(at, value, bounds);
  return found.length > 0 || Number.isInteger(value)
    ? found
    : [problem('not-a-number', at, { hint: ' without a fraction', value: String(value) })];
};

/** The same for a number that may be left out. */
export const optionalFaults = (at: string, value: number | undefined, bounds: Bounds): readonly Problem[] =>
  value === undefined ? [] : numberFaults(at, value, bounds);

/** One of a closed list. */
export const choiceFaults = (at: string, value: unknown, choices: readonly string[]): readonly Problem[] =>
  choices.some((choice) => choice === value)
    ? []
    : [problem('not-one-of', at, { value: String(value), choices: choices.join(', ') })];

export function repeatFaults(at: string, key: string, values: readonly string[]): readonly Problem[] {
  return values.flatMap((value, index) =>
    values.indexOf(value) === index ? [] : [problem('duplicate', `${at}/${index}/${key}`, { value })],
  );
}

/** Words of a list that stand in it twice. */
export const repeatedFaults = (at: string, values: readonly unknown[]): readonly Problem[] =>
  values.flatMap((value, index) =>
    values.indexOf(value) === index ? [] : [problem('duplicate', `${at}/${index}`, { value: String(value) })],
  );

export const countFaults = (
  at: string,
  count: number,
  { least, most }: { readonly least: number; readonly most: number },
): readonly Problem[] => {
  if (count < least) return [problem('too-few', at, { count, least })];
  return count > most ? [problem('too-many', at, { count, most })] : [];
};
