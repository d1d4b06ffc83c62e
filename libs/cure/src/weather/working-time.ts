export const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
export type Weekday = (typeof weekdays)[number];

/** When the crew works, by the clock of the place. */
export interface WorkTimes {
  readonly hoursPerDay: number;
  /** Local hour at which the day begins. */
  readonly startHour: number;
  readonly workingDays: readonly Weekday[];
  /** ISO dates without work. */
  readonly daysOff?: readonly string[];
}

const DAY_MS = 24 * 3_600_000;

/** Whether the crew works at a moment of local time (milliseconds as if the place stood at UTC). */
export function worksAt(
  localMs: number,
  { hoursPerDay, startHour, workingDays, daysOff = [] }: WorkTimes,
): boolean {
  const hour = (localMs % DAY_MS) / 3_600_000;
  if (hour < startHour || hour >= startHour + hoursPerDay) return false;
  const weekday = weekdays[(Math.floor(localMs / DAY_MS) + 3) % 7];
  return (
    workingDays.includes(weekday) &&
    (daysOff.length === 0 || !daysOff.includes(new Date(localMs).toISOString().slice(0, 10)))
  );
}
