import type { Range } from './estimate-document.js';

/** The three quantiles that are printed, without what else a simulation knows. */
export const rangeOf = ({ p10, p50, p90 }: Range): Range => ({ p10, p50, p90 });

/** Hours and days as one simulation draws them. */
export interface TimeRanges {
  readonly labourH: Range;
  readonly workingDays: Range;
  readonly calendarDays: Range;
}

export const timeRanges = ({ labourH, workingDays, calendarDays }: TimeRanges): TimeRanges => ({
  labourH: rangeOf(labourH),
  workingDays: rangeOf(workingDays),
  calendarDays: rangeOf(calendarDays),
});
