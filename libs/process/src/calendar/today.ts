import { readInstant } from '../weather/instant.js';
import type { PlannedTask, TodayItem } from './calendar-request.js';
import { localMidnight, type SlotClock } from './slots.js';

const DAY_MS = 24 * 3_600_000;

/** What the day holds: work, waits that run, a hold that somebody must lift, and else what comes next. */
export function todayFor(tasks: readonly PlannedTask[], today: string, { offset }: SlotClock): readonly TodayItem[] {
  const from = localMidnight(today, offset);
  const until = from + DAY_MS;
  const meets = (startAt: string, endAt: string): boolean => epoch(startAt) < until && epoch(endAt) > from;
  const work = tasks.filter((task) => task.labourH > 0 && meets(task.startAt, task.endAt)).map((task): TodayItem => ({ kind: 'work', task: task.code, text: workWords(task) }));
  const waits = tasks.filter((task) => task.waitKind !== 'none' && meets(task.endAt, task.readyAt)).map((task): TodayItem => ({ kind: task.isHoldPoint ? 'hold' : 'wait', task: task.code, text: waitWords(task) }));
  if (work.length > 0) return [...work, ...waits];
  const next = tasks.find((task) => task.labourH > 0 && epoch(task.startAt) >= until);
  return [...waits, ...(next === undefined ? [] : [{ kind: 'next', task: next.code, text: `${next.title}: from ${next.startAt.slice(0, 16).replace('T', ' ')}` } as const])];
}

const epoch = (at: string): number => readInstant(at)?.epochMs ?? 0;

const gateWords: Readonly<Record<PlannedTask['gate'], string>> = {
  none: '', 'dry-deck': '; dry deck', resin: '; check dew point, temperature until gel, and core moisture first', coating: '; check dew point and humidity first',
};

const workWords = ({ title, labourH, gate }: PlannedTask): string => `${title}: ${labourH.toFixed(1)} man-hours in all${gateWords[gate]}`;

function waitWords({ title, waitKind, readyAt }: PlannedTask): string {
  const until = readyAt.slice(0, 16).replace('T', ' ');
  switch (waitKind) {
    case 'cure': return `"${title}" cures until about ${until}; keep it warm, dry and under its pressure`;
    case 'drying': return `"${title}" dries until about ${until}; read the meter today and write it down`;
    case 'hold': return `"${title}": nothing goes on until the client has agreed to the extent`;
    default: return `"${title}" stands until about ${until}`;
  }
}
