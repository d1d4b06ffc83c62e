/** Limits of a number: `above` and `below` exclude the limit, `from` and `upTo` include it. */
export interface Range {
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly upTo?: number;
}

/** The one test of a bounded number; whatever is not finite lies in no range. */
export const liesWithin = (value: number, { above, from, below, upTo }: Range): boolean =>
  Number.isFinite(value) &&
  (above === undefined || value > above) &&
  (from === undefined || value >= from) &&
  (below === undefined || value < below) &&
  (upTo === undefined || value <= upTo);

/** The one way to say a range: "above 0 and at most 60 mm". A bare number has the unit '1'. */
export function rangeInWords({ above, from, below, upTo }: Range, unit: string): string {
  const lower = above !== undefined ? [`above ${above}`] : from !== undefined ? [`${from} or more`] : [];
  const upper = below !== undefined ? [`below ${below}`] : upTo !== undefined ? [`at most ${upTo}`] : [];
  const words = [...lower, ...upper].join(' and ');
  return words === '' ? `a finite number of ${unit}` : `${words} ${unit === '1' ? '' : unit}`.trim();
}
