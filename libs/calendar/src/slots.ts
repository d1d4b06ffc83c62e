import { Defect } from '#lib/kernel';
import type { GateKind } from '#lib/work';
import { readInstant, zoneOffset, type ZoneOffset } from '#lib/cure';
import { clockOf, type PlaceClock } from '#lib/cure';
import { worksAt, type WorkTimes } from '#lib/cure';
import type { CalendarRequest } from './calendar-request.js';

/** Time in half-hour slots from local midnight of the start date; elapsed time, so that a change of clocks loses nothing. */
export const SLOT_H = 0.5;
const SLOT_MS = SLOT_H * 3_600_000;

export interface SlotClock {
  readonly startMs: number;
  readonly count: number;
  readonly offset: ZoneOffset;
  /** 1 where the crew works. */
  readonly works: Uint8Array;
  /** Number of the working day a slot lies in, counted from 0; the next one for slots outside work. */
  readonly workday: Int32Array;
  /** The first slot of work of the first working day that begins at or after a slot; the last slot where none does. */
  readonly nextMorning: Int32Array;
}

/** The clock of the place: of the zone asked for, else that of the forecast, else UTC. */
export function placeClock({
  timeZone,
  forecast,
}: Pick<CalendarRequest, 'timeZone' | 'forecast'>): PlaceClock {
  const zone = timeZone === undefined ? undefined : zoneOffset(timeZone);
  if (timeZone !== undefined && zone !== undefined) return { name: timeZone, offset: zone };
  return forecast === undefined ? { name: 'UTC', offset: () => 0 } : clockOf(forecast);
}

export function slotClock(request: CalendarRequest, times: WorkTimes, days: number): SlotClock {
  const { offset } = placeClock(request);
  const startMs = localMidnight(request.startDate, offset);
  const count = days * 48;
  const works = new Uint8Array(count);
  const workday = new Int32Array(count);
  let [worked, wasWorking] = [-1, false];
  const repeats = isAlikeEveryWeek(request, times) ? WEEK : count;
  for (let slot = 0; slot < count; slot += 1) {
    const isWorking =
      slot < repeats
        ? worksAt(localMsOf(startMs + slot * SLOT_MS, offset), times)
        : works[slot - repeats] === 1;
    if (isWorking && !wasWorking) worked += 1;
    works[slot] = isWorking ? 1 : 0;
    workday[slot] = isWorking ? worked : worked + 1;
    wasWorking = isWorking;
  }
  return { startMs, count, offset, works, workday, nextMorning: morningsAfter(works) };
}

function morningsAfter(works: Uint8Array): Int32Array {
  const mornings = new Int32Array(works.length);
  let next = works.length - 1;
  for (let slot = works.length - 1; slot >= 0; slot -= 1) {
    if (works[slot] === 1 && (slot === 0 || works[slot - 1] === 0)) next = slot;
    mornings[slot] = next;
  }
  return mornings;
}

const WEEK = (7 * 24) / SLOT_H;

/** Where no clock is changed and nobody is away. */
const isAlikeEveryWeek = (
  { timeZone, forecast }: Pick<CalendarRequest, 'timeZone' | 'forecast'>,
  { daysOff = [] }: WorkTimes,
): boolean => timeZone === undefined && forecast === undefined && daysOff.length === 0;

const localMsOf = (epochMs: number, offset: ZoneOffset): number => epochMs + offset(epochMs) * 60_000;

/** The moment a local date begins. */
export function localMidnight(date: string, offset: ZoneOffset): number {
  const utc = readInstant(`${date}T00:00:00Z`)?.epochMs;
  if (utc === undefined) throw new Defect(`A plan begins on a day that cannot be read: ${date}`);
  const first = utc - offset(utc) * 60_000;
  return utc - offset(first) * 60_000;
}

/** The slots in which one kind of work can go on, and the way back from worked slots to the clock. */
export interface Workable {
  /** Workable slots before each slot. */
  readonly before: Float64Array;
  /** The slot of each workable slot. */
  readonly slots: Int32Array;
}

export function workable(flags: Uint8Array): Workable {
  const before = new Float64Array(flags.length + 1);
  for (let slot = 0; slot < flags.length; slot += 1) before[slot + 1] = before[slot] + flags[slot];
  const slots = new Int32Array(before[flags.length]);
  for (let slot = 0, place = 0; slot < flags.length; slot += 1) if (flags[slot] === 1) slots[place++] = slot;
  return { before, slots };
}

/** Worked slots by the time `at` (in slots, with fraction). */
export function workedBy({ before }: Workable, at: number): number {
  const slot = Math.floor(at);
  return slot + 1 >= before.length
    ? before[before.length - 1]
    : before[slot] + (at - slot) * (before[slot + 1] - before[slot]);
}

/** The moment at which so many slots have been worked and the next begins; undefined when the horizon ends before. */
export function whenStarts({ slots }: Workable, worked: number): number | undefined {
  const whole = Math.floor(worked + 1e-9);
  return whole < slots.length ? slots[whole] + Math.max(0, worked - whole) : undefined;
}

/** The moment at which so many slots have been worked, at the end of the last. */
export function whenDone({ slots }: Workable, worked: number): number | undefined {
  const whole = Math.ceil(worked - 1e-9) - 1;
  if (whole < 0) return 0;
  return whole < slots.length ? slots[whole] + (worked - whole) : undefined;
}

export type WorkableByGate = Readonly<Record<GateKind, Workable>>;
