import type { PlannedTask, TodayItem } from './calendar-request.js';

/** What a day's list is made from. All moments are written in the local time of the place. */
export type DatedTask = Pick<
  PlannedTask,
  'code' | 'title' | 'gate' | 'startAt' | 'endAt' | 'readyAt' | 'labourH' | 'waitKind' | 'isHoldPoint'
>;

/** What the day holds: work, waits that run, a hold that somebody must lift, and else what comes next. */
export function todayFor(tasks: readonly DatedTask[], today: string): readonly TodayItem[] {
  const [from, until] = [`${today}T00:00:00`, `${dayAfter(today)}T00:00:00`];
  const meets = (startAt: string, endAt: string): boolean =>
    wallTime(startAt) < until && wallTime(endAt) > from;
  const work = tasks
    .filter((task) => task.labourH > 0 && meets(task.startAt, task.endAt))
    .map((task): TodayItem => ({ kind: 'work', task: task.code, text: workWords(task) }));
  const waits = tasks
    .filter((task) => task.waitKind !== 'none' && meets(task.endAt, task.readyAt))
    .map((task): TodayItem => ({
      kind: task.isHoldPoint ? 'hold' : 'wait',
      task: task.code,
      text: waitWords(task),
    }));
  if (work.length > 0) return [...work, ...waits];
  const next = tasks.find((task) => task.labourH > 0 && wallTime(task.startAt) >= until);
  return [
    ...waits,
    ...(next === undefined
      ? []
      : [{ kind: 'next', task: next.code, text: `${next.title}: from ${minuteOf(next.startAt)}` } as const]),
  ];
}

/** What the clock on the wall shows: it orders the days of one place whatever the offset. */
const wallTime = (at: string): string => at.slice(0, 19);
const minuteOf = (at: string): string => at.slice(0, 16).replace('T', ' ');

function dayAfter(date: string): string {
  const day = new Date(`${date}T00:00:00Z`);
  day.setUTCDate(day.getUTCDate() + 1);
  return day.toISOString().slice(0, 10);
}

const gateWords: Readonly<Record<PlannedTask['gate'], string>> = {
  'none': '',
  'dry-deck': '; dry deck',
  'resin': '; check dew point, temperature until gel, and core moisture first',
  'coating': '; check dew point and humidity first',
};

const workWords = ({ title, labourH, gate }: DatedTask): string =>
  `${title}: ${labourH.toFixed(1)} man-hours in all${gateWords[gate]}`;

function waitWords({ title, waitKind, readyAt }: DatedTask): string {
  const until = minuteOf(readyAt);
  switch (waitKind) {
    case 'cure':
      return `"${title}" cures until about ${until}; keep it warm, dry and under its pressure`;
    case 'drying':
      return `"${title}" dries until about ${until}; read the meter today and write it down`;
    case 'hold':
      return `"${title}": nothing goes on until the client has agreed to the extent`;
    default:
      return `"${title}" stands until about ${until}`;
  }
}
