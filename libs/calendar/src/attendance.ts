import type { Default } from '#lib/asking';
import { triangularMean, triangularQuantile, type ThreePoint } from '#lib/kernel';

/** Working days that pass for each day on which the crew is on this boat. */
const usualStretch: ThreePoint = { low: 1, likely: 1.25, high: 1.9 };

/** The share of its working days on which a crew comes, where nobody says it. */
export const usualAttendance: Default = {
  value: 1 / usualStretch.likely,
  low: 1 / usualStretch.high,
  high: 1 / usualStretch.low,
  because:
    'judged: a shop of its own comes every day, a yard with other boats takes half as long again, and one owner told of nearly twice what he had planned; state 1 for a crew that does nothing else',
  cite: { source: 'JOB-DAYS-ASHORE-2014', note: 'the long end told once, the rest judged' },
};

/** What keeps a crew from a boat on its working days. */
export interface Absence {
  /** 0 to 1, where it was stated; the usual spread otherwise. */
  readonly attendanceFraction?: number;
  /** Of the working days, 0 to below 1, lost to weather. */
  readonly lossFraction: number;
  /** 1 to 7. */
  readonly workingDaysAWeek: number;
}

/**
 * Days on the calendar that are lost to weather for each day worked: of the days on which the crew comes a share f is lost,
 * so that a day of work takes 1/(1 - f) of them.
 *
 * Source: [ARITHMETIC] mean of a geometric count of days
 * Worked: test/reference/cases/calendar-waits.ts
 */
export const weatherLostPerDayWorked = ({ lossFraction, workingDaysAWeek }: Absence): number =>
  (1 / (1 - lossFraction) - 1) * (7 / workingDaysAWeek);

/**
 * Days on the calendar on which the crew stays away, for each day worked: with them a day of work takes s/(1 - f) working
 * days, where s is one over the share of its working days on which it comes.
 *
 * Source: [ARITHMETIC] mean of a geometric count of days; the spread of s is judged, see `usualAttendance`
 * Worked: test/reference/cases/calendar-waits.ts
 */
export const absentPerDayWorked = (absence: Absence, quantile: number): number =>
  absentAt(absence, triangularQuantile(stretchOf(absence), quantile));

/** The same on average. */
export const meanAbsentPerDayWorked = (absence: Absence): number =>
  absentAt(absence, triangularMean(stretchOf(absence)));

const stretchOf = ({ attendanceFraction }: Absence): ThreePoint =>
  attendanceFraction === undefined
    ? usualStretch
    : { low: 1 / attendanceFraction, likely: 1 / attendanceFraction, high: 1 / attendanceFraction };

const absentAt = ({ lossFraction, workingDaysAWeek }: Absence, stretch: number): number =>
  ((stretch - 1) / (1 - lossFraction)) * (7 / workingDaysAWeek);
