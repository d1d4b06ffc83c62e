import { slotOfAge, type Setting } from './course.js';
import type { NetworkTask } from './network.js';
import { SLOT_H, whenDone, whenStarts, workedBy, type Workable } from './slots.js';

/** The network with numbers in place of names, ready to be walked thousands of times. */
export interface WalkPlan {
  readonly tasks: readonly NetworkTask[];
  readonly setting: Setting;
  readonly before: readonly Int32Array[];
  readonly next: readonly Int32Array[];
  /** Beside each successor, how it follows: when the task is ready, wet on it, or tacky if it comes in time. */
  readonly bonds: readonly Uint8Array[];
  readonly gates: readonly Workable[];
  readonly hands: Float64Array;
  /** Of each hour at the boat, so much goes into the job. */
  readonly workShare: number;
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

export interface Crew {
  readonly people: number;
  readonly workShare: number;
}

export function walkPlan(
  tasks: readonly NetworkTask[],
  setting: Setting,
  { people, workShare }: Crew,
): WalkPlan {
  const place = new Map(tasks.map(({ code }, index) => [code, index]));
  const before = tasks.map(({ after }) => Int32Array.from(after.flatMap((code) => place.get(code) ?? [])));
  const next = followersOf(before);
  const hands = Float64Array.from(tasks, ({ mostHands }) => Math.min(people, mostHands));
  const gates = tasks.map(({ gate }) => setting.workable[gate]);
  const bonds = next.map((others, index) =>
    Uint8Array.from(others, (other) => bondOf(tasks[index], tasks[other])),
  );
  return { tasks, setting, before, next, bonds, gates, hands, workShare, tail: tails(tasks, next, hands) };
}

/** The plan of a network that differs from another in its hours alone shares all else with it. */
export function walkPlanBeside(own: WalkPlan, tasks: readonly NetworkTask[], crew: Crew): WalkPlan {
  if (tasks === own.tasks) return own;
  const isAlike =
    tasks.length === own.tasks.length && tasks.every(({ after }, place) => after === own.tasks[place].after);
  return isAlike
    ? { ...own, tasks, tail: tails(tasks, own.next, own.hands) }
    : walkPlan(tasks, own.setting, crew);
}

function followersOf(before: readonly Int32Array[]): readonly Int32Array[] {
  const followers: number[][] = before.map(() => []);
  before.forEach((those, task) => {
    for (const one of new Set(those)) followers[one].push(task);
  });
  return followers.map((places) => Int32Array.from(places));
}

/** How a task follows another. */
const BOND = { ready: 0, wet: 1, tacky: 2 } as const;

function bondOf({ code, tacky }: NetworkTask, { wetOn, tackyOn }: NetworkTask): number {
  if (wetOn.includes(code)) return BOND.wet;
  return tacky !== undefined && tackyOn.includes(code) ? BOND.tacky : BOND.ready;
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
  /** When the tacky window that a task may use shuts, and when all its predecessors are ready if it comes later. */
  readonly shutsAt: Float64Array;
  readonly elseAt: Float64Array;
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
    shutsAt: numbers(),
    elseAt: numbers(),
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
function begin(
  { before }: WalkPlan,
  { readyAt, driver, shutsAt, elseAt, open, eligible }: WalkTables,
): number {
  let waiting = 0;
  readyAt.fill(0);
  shutsAt.fill(Number.POSITIVE_INFINITY);
  elseAt.fill(0);
  driver.fill(-1);
  for (let task = 0; task < before.length; task += 1) {
    open[task] = before[task].length;
    if (open[task] === 0) eligible[waiting++] = task;
  }
  return waiting;
}

/** The task is done: its successors know when it was ready, and those that waited for nothing else may be taken up. */
function release(
  plan: WalkPlan,
  tables: WalkTables,
  { task, waiting }: { readonly task: number; readonly waiting: number },
): number {
  const { readyAt, driver, open, eligible } = tables;
  const [next, bonds] = [plan.next[task], plan.bonds[task]];
  let count = waiting;
  for (let place = 0; place < next.length; place += 1) {
    const other = next[place];
    const at = followsAt(plan, tables, { task, other, bond: bonds[place] });
    if (driver[other] === -1 || at > readyAt[other]) [readyAt[other], driver[other]] = [at, task];
    open[other] -= 1;
    if (open[other] === 0) eligible[count++] = other;
  }
  return count;
}

interface Following {
  readonly task: number;
  readonly other: number;
  readonly bond: number;
}

/** When a successor may be taken up, as far as this task goes; where it may be laid on tacky, until when is noted. */
function followsAt(
  { tasks, setting: { ages } }: WalkPlan,
  { end, ready, shutsAt, elseAt }: WalkTables,
  { task, other, bond }: Following,
): number {
  if (bond === BOND.wet) return end[task];
  elseAt[other] = Math.max(elseAt[other], ready[task]);
  const { tacky } = tasks[task];
  if (bond === BOND.ready || tacky === undefined) return ready[task];
  const [opens, shuts] = [tacky.opensAgeH, tacky.shutsAgeH].map((ageH) => slotOfAge(ages, end[task], ageH));
  if (opens === undefined || shuts === undefined || opens >= ready[task]) return ready[task];
  shutsAt[other] = shuts;
  return opens;
}

interface Choice {
  readonly tables: WalkTables;
  readonly waiting: number;
  readonly crewFree: number;
}

/** Place among the eligible of the task to take up; its start is left in the tables. */
function soonest(plan: WalkPlan, draw: Draw, { tables, waiting, crewFree }: Choice): number {
  const { eligible, readyAt, start } = tables;
  let [best, bestStart, bestTail] = [-1, Number.POSITIVE_INFINITY, 0];
  for (let place = 0; place < waiting; place += 1) {
    const task = eligible[place];
    const hasWork = draw.hours[task] > 0;
    const from = hasWork ? Math.max(readyAt[task], crewFree) : readyAt[task];
    if (from > bestStart + 1e-9) continue;
    const found = hasWork ? inTime(plan, tables, { task, at: workFrom(plan, task, from) }) : from;
    const isTie = Math.abs(found - bestStart) <= 1e-9;
    if (best === -1 || (isTie ? plan.tail[task] > bestTail : found < bestStart))
      [best, bestStart, bestTail] = [place, found, plan.tail[task]];
  }
  start[eligible[best]] = bestStart;
  return best;
}

const workFrom = ({ gates, setting }: WalkPlan, task: number, from: number): number =>
  whenStarts(gates[task], workedBy(gates[task], from)) ?? setting.clock.count;

/** Past the tacky window it waits until what lies below can be sanded. */
const inTime = (
  plan: WalkPlan,
  { shutsAt, elseAt }: WalkTables,
  { task, at }: { readonly task: number; readonly at: number },
): number => (at > shutsAt[task] ? workFrom(plan, task, Math.max(at, elseAt[task])) : at);

interface Settling {
  readonly tables: WalkTables;
  readonly task: number;
  readonly crewLast: number;
  readonly crewFree: number;
}

function settle(plan: WalkPlan, draw: Draw, { tables, task, crewLast, crewFree }: Settling): boolean {
  const { start, end, ready, waitedFor, readyAt, driver } = tables;
  const { clock, forecastEndSlot } = plan.setting;
  const gate = plan.gates[task];
  const isBeyondForecast = start[task] >= forecastEndSlot && plan.tasks[task].gate !== 'none';
  if (isBeyondForecast && draw.lostDays[task] > 0)
    start[task] = inTime(plan, tables, {
      task,
      at: afterLostDays(plan, gate, start[task], draw.lostDays[task]),
    });
  const done =
    draw.hours[task] === 0
      ? start[task]
      : whenDone(gate, workedBy(gate, start[task]) + slotsOf(plan, task, draw.hours[task]));
  end[task] = done ?? clock.count;
  const fit = readyAfter(plan, task, { end: end[task], wait: draw.waits[task] });
  ready[task] = fit ?? clock.count;
  const couldStart = start[task] > tables.shutsAt[task] ? tables.elseAt[task] : readyAt[task];
  waitedFor[task] = draw.hours[task] > 0 && crewFree > couldStart ? crewLast : driver[task];
  return done !== undefined && fit !== undefined;
}

const slotsOf = ({ hands, workShare }: WalkPlan, task: number, hours: number): number =>
  hours / hands[task] / workShare / SLOT_H;

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
