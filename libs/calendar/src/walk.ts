import { slotOfAge, type Setting } from './course.js';
import type { NetworkTask } from './network.js';
import { SLOT_H, whenDone, whenStarts, workedBy, type Workable } from './slots.js';

/** The network with numbers in place of names, ready to be walked thousands of times. */
export interface WalkPlan {
  readonly tasks: readonly NetworkTask[];
  readonly setting: Setting;
  readonly before: readonly Int32Array[];
  readonly next: readonly Int32Array[];
  /** Beside each successor, 1 where it is laid on while the task is still wet. */
  readonly wetNext: readonly Uint8Array[];
  readonly gates: readonly Workable[];
  readonly hands: Float64Array;
  /** Mean hours from the start of a task to the end of the job: the longer, the sooner it is taken up. */
  readonly tail: Float64Array;
}

/** One calendar: when each task starts, ends and is ready, in slots; and what it waited for (-1 nothing, else the task). */
export interface Walk {
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly ready: Float64Array;
  readonly waitedFor: Int32Array;
  readonly finish: number;
  readonly isComplete: boolean;
}

/** Amounts of one calendar: man-hours and waits of each task (hours, or age in hours for a cure), and weather days lost before it. */
export interface Draw {
  readonly hours: Float64Array;
  readonly waits: Float64Array;
  readonly lostDays: Float64Array;
}

export function walkPlan(tasks: readonly NetworkTask[], setting: Setting, people: number): WalkPlan {
  const place = new Map(tasks.map(({ code }, index) => [code, index]));
  const before = tasks.map(({ after }) => Int32Array.from(after.flatMap((code) => place.get(code) ?? [])));
  const next = tasks.map((_, index) =>
    Int32Array.from(tasks.flatMap((__, other) => (before[other].includes(index) ? [other] : []))),
  );
  const hands = Float64Array.from(tasks, ({ mostHands }) => Math.min(people, mostHands));
  const gates = tasks.map(({ gate }) => setting.workable[gate]);
  const wetNext = next.map((others, index) =>
    Uint8Array.from(others, (other) => (tasks[other].wetOn.includes(tasks[index].code) ? 1 : 0)),
  );
  return { tasks, setting, before, next, wetNext, gates, hands, tail: tails(tasks, next, hands) };
}

function tails(
  tasks: readonly NetworkTask[],
  next: readonly Int32Array[],
  hands: Float64Array,
): Float64Array {
  const tail = new Float64Array(tasks.length);
  for (let index = tasks.length - 1; index >= 0; index -= 1) {
    const after = next[index].reduce((longest, other) => Math.max(longest, tail[other]), 0);
    tail[index] = after + (tasks[index].meanH / hands[index]) * 3 + likelyWaitH(tasks[index]);
  }
  return tail;
}

const likelyWaitH = ({ wait }: NetworkTask): number =>
  wait.kind === 'none' ? 0 : wait.kind === 'cure' ? wait.ageH.likely : wait.hours.likely;

/** The tables of one walk, made once and filled again by every walk: thousands of calendars would else be mostly allocation. */
export interface WalkTables {
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly ready: Float64Array;
  readonly waitedFor: Int32Array;
  /** When the last predecessor of a task was ready, and which it was; settled once all of them are. */
  readonly readyAt: Float64Array;
  readonly driver: Int32Array;
  /** Predecessors still to be done. */
  readonly open: Int32Array;
  /** Tasks that may be taken up, `waiting` of them. */
  readonly eligible: Int32Array;
}

export function walkTables({ tasks: { length } }: WalkPlan): WalkTables {
  const [numbers, places] = [() => new Float64Array(length), () => new Int32Array(length)];
  return {
    start: numbers(),
    end: numbers(),
    ready: numbers(),
    waitedFor: places(),
    readyAt: numbers(),
    driver: places(),
    open: places(),
    eligible: places(),
  };
}

/**
 * One calendar by the serial rule: of the tasks whose predecessors are ready, the crew takes the one that can start first,
 * on a tie the one with the longest way to go; waits fill with whatever needs no deck. The answer lies in the tables
 * until they are filled again.
 *
 * Valid:  one crew that stays together; finish-to-start precedences.
 * Source: [KELLEY-WALKER-1959] precedence; the serial rule is common practice in scheduling
 * Worked: libs/calendar/src/calendar.spec.ts
 */
export function walk(plan: WalkPlan, draw: Draw, tables: WalkTables = walkTables(plan)): Walk {
  const { start, end, ready, waitedFor, eligible } = tables;
  let waiting = begin(plan, tables);
  let [crewFree, crewLast, isComplete, finish] = [0, -1, true, 0];
  while (waiting > 0) {
    const place = soonest(plan, draw, { tables, waiting, crewFree });
    const task = eligible[place];
    eligible.copyWithin(place, place + 1, waiting);
    isComplete = settle(plan, draw, { tables, task, crewLast, crewFree }) && isComplete;
    if (draw.hours[task] > 0) [crewFree, crewLast] = [end[task], task];
    finish = Math.max(finish, ready[task]);
    waiting = release(plan, tables, { task, waiting: waiting - 1 });
  }
  return { start, end, ready, waitedFor, finish, isComplete };
}

/** Everything as before the first task; how many may be taken up at once. */
function begin({ before }: WalkPlan, { readyAt, driver, open, eligible }: WalkTables): number {
  let waiting = 0;
  readyAt.fill(0);
  driver.fill(-1);
  for (let task = 0; task < before.length; task += 1) {
    open[task] = before[task].length;
    if (open[task] === 0) eligible[waiting++] = task;
  }
  return waiting;
}

/** The task is done: its successors know when it was ready, and those that waited for nothing else may be taken up. */
function release(
  { next, wetNext }: WalkPlan,
  { end, ready, readyAt, driver, open, eligible }: WalkTables,
  { task, waiting }: { readonly task: number; readonly waiting: number },
): number {
  let count = waiting;
  for (let place = 0; place < next[task].length; place += 1) {
    const other = next[task][place];
    const at = wetNext[task][place] === 1 ? end[task] : ready[task];
    if (driver[other] === -1 || at > readyAt[other]) [readyAt[other], driver[other]] = [at, task];
    open[other] -= 1;
    if (open[other] === 0) eligible[count++] = other;
  }
  return count;
}

interface Choice {
  readonly tables: WalkTables;
  readonly waiting: number;
  readonly crewFree: number;
}

/** Place among the eligible of the task to take up; its start is left in the tables. */
function soonest(
  plan: WalkPlan,
  draw: Draw,
  { tables: { eligible, readyAt, start }, waiting, crewFree }: Choice,
): number {
  let [best, bestStart, bestTail] = [-1, Number.POSITIVE_INFINITY, 0];
  for (let place = 0; place < waiting; place += 1) {
    const task = eligible[place];
    const hasWork = draw.hours[task] > 0;
    const from = hasWork ? Math.max(readyAt[task], crewFree) : readyAt[task];
    if (from > bestStart + 1e-9) continue;
    const found = hasWork
      ? (whenStarts(plan.gates[task], workedBy(plan.gates[task], from)) ?? plan.setting.clock.count)
      : from;
    const isTie = Math.abs(found - bestStart) <= 1e-9;
    if (best === -1 || (isTie ? plan.tail[task] > bestTail : found < bestStart))
      [best, bestStart, bestTail] = [place, found, plan.tail[task]];
  }
  start[eligible[best]] = bestStart;
  return best;
}

interface Settling {
  readonly tables: WalkTables;
  readonly task: number;
  readonly crewLast: number;
  readonly crewFree: number;
}

function settle(
  plan: WalkPlan,
  draw: Draw,
  { tables: { start, end, ready, waitedFor, readyAt, driver }, task, crewLast, crewFree }: Settling,
): boolean {
  const { clock, forecastEndSlot } = plan.setting;
  const gate = plan.gates[task];
  const isBeyondForecast = start[task] >= forecastEndSlot && plan.tasks[task].gate !== 'none';
  if (isBeyondForecast && draw.lostDays[task] > 0)
    start[task] = afterLostDays(plan, gate, start[task], draw.lostDays[task]);
  const done =
    draw.hours[task] === 0
      ? start[task]
      : whenDone(gate, workedBy(gate, start[task]) + draw.hours[task] / plan.hands[task] / SLOT_H);
  end[task] = done ?? clock.count;
  const fit = readyAfter(plan, task, { end: end[task], wait: draw.waits[task] });
  ready[task] = fit ?? clock.count;
  waitedFor[task] = draw.hours[task] > 0 && crewFree > readyAt[task] ? crewLast : driver[task];
  return done !== undefined && fit !== undefined;
}

function afterLostDays(plan: WalkPlan, gate: Workable, start: number, lostDays: number): number {
  const target =
    plan.setting.clock.workday[Math.min(Math.floor(start), plan.setting.clock.count - 1)] + lostDays;
  const { workday } = plan.setting.clock;
  let slot = Math.floor(start);
  while (slot < workday.length - 1 && workday[slot] < target) slot += 1;
  return whenStarts(gate, workedBy(gate, slot)) ?? plan.setting.clock.count;
}

function readyAfter(
  { tasks, setting }: WalkPlan,
  task: number,
  { end, wait }: { readonly end: number; readonly wait: number },
): number | undefined {
  const { kind } = tasks[task].wait;
  if (kind === 'none') return end;
  return kind === 'cure' ? slotOfAge(setting.ages, end, wait) : end + wait / SLOT_H;
}
