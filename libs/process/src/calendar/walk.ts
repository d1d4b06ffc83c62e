import type { GateKind } from '../operations/operation.js';
import { slotOfAge, type Setting } from './course.js';
import type { NetworkTask } from './network.js';
import { SLOT_H, whenDone, whenStarts, workedBy, type Workable } from './slots.js';

/** The network with numbers in place of names, ready to be walked thousands of times. */
export interface WalkPlan {
  readonly tasks: readonly NetworkTask[];
  readonly setting: Setting;
  readonly before: readonly Int32Array[];
  readonly next: readonly Int32Array[];
  readonly gates: readonly Workable[];
  readonly hands: Float64Array;
  /** Likely hours from the start of a task to the end of the job: the longer, the sooner it is taken up. */
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
  const next = tasks.map((_, index) => Int32Array.from(tasks.flatMap((__, other) => (before[other].includes(index) ? [other] : []))));
  const hands = Float64Array.from(tasks, ({ mostHands }) => Math.min(people, mostHands));
  const gates = tasks.map(({ gate }) => gateOf(setting, gate));
  return { tasks, setting, before, next, gates, hands, tail: tails(tasks, next, hands) };
}

const gateOf = (setting: Setting, gate: GateKind): Workable => setting.workable[gate];

function tails(tasks: readonly NetworkTask[], next: readonly Int32Array[], hands: Float64Array): Float64Array {
  const tail = new Float64Array(tasks.length);
  for (let index = tasks.length - 1; index >= 0; index -= 1) {
    const after = next[index].reduce((longest, other) => Math.max(longest, tail[other]), 0);
    tail[index] = after + (tasks[index].hours.likely / hands[index]) * 3 + likelyWaitH(tasks[index]);
  }
  return tail;
}

const likelyWaitH = ({ wait }: NetworkTask): number =>
  wait.kind === 'none' ? 0 : wait.kind === 'cure' ? wait.ageH.likely : wait.hours.likely;

/**
 * One calendar by the serial rule: of the tasks whose predecessors are ready, the crew takes the one that can start first,
 * on a tie the one with the longest way to go; waits fill with whatever needs no deck.
 *
 * Valid:  one crew that stays together; finish-to-start precedences.
 * Source: [KELLEY-WALKER-1959] precedence; the serial rule is common practice in scheduling
 * Worked: libs/process/src/calendar/calendar.spec.ts
 */
export function walk(plan: WalkPlan, draw: Draw): Walk {
  const count = plan.tasks.length;
  const state = { start: new Float64Array(count), end: new Float64Array(count), ready: new Float64Array(count), waitedFor: new Int32Array(count).fill(-1) };
  const open = Int32Array.from(plan.before, ({ length }) => length);
  const eligible = plan.before.flatMap(({ length }, index) => (length === 0 ? [index] : []));
  let [crewFree, crewLast, isComplete] = [0, -1, true];
  while (eligible.length > 0) {
    const pick = chooseNext(plan, { state, eligible, crewFree, draw });
    eligible.splice(eligible.indexOf(pick.task), 1);
    isComplete = settle(plan, draw, { state, pick, crewLast, crewFree }) && isComplete;
    if (draw.hours[pick.task] > 0) [crewFree, crewLast] = [state.end[pick.task], pick.task];
    for (const other of plan.next[pick.task]) {
      open[other] -= 1;
      if (open[other] === 0) eligible.push(other);
    }
  }
  return { ...state, finish: state.ready.reduce((latest, at) => Math.max(latest, at), 0), isComplete };
}

interface WalkState {
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly ready: Float64Array;
  readonly waitedFor: Int32Array;
}

interface Pick {
  readonly task: number;
  readonly start: number;
  readonly driver: number;
  readonly readyAt: number;
}

function chooseNext(plan: WalkPlan, { state, eligible, crewFree, draw }: { readonly state: WalkState; readonly eligible: readonly number[]; readonly crewFree: number; readonly draw: Draw }): Pick {
  let best: Pick = { task: -1, start: Number.POSITIVE_INFINITY, driver: -1, readyAt: 0 };
  for (const task of eligible) {
    const found = earliest(plan, task, { state, crewFree, draw, notAfter: best.start });
    if (found === undefined) continue;
    const isSooner = found.start < best.start - 1e-9;
    const isTie = Math.abs(found.start - best.start) <= 1e-9;
    if (best.task === -1 || isSooner || (isTie && plan.tail[task] > plan.tail[best.task])) best = found;
  }
  return best;
}

interface Search {
  readonly state: WalkState;
  readonly crewFree: number;
  readonly draw: Draw;
  /** A start already found; what cannot come before it is not looked at. */
  readonly notAfter: number;
}

function earliest(plan: WalkPlan, task: number, { state, crewFree, draw, notAfter }: Search): Pick | undefined {
  let [readyAt, driver] = [0, -1];
  for (const before of plan.before[task]) {
    if (state.ready[before] > readyAt || driver === -1) [readyAt, driver] = [Math.max(readyAt, state.ready[before]), before];
  }
  if (draw.hours[task] === 0) return { task, start: readyAt, driver, readyAt };
  const from = Math.max(readyAt, crewFree);
  if (from > notAfter + 1e-9) return undefined;
  const start = whenStarts(plan.gates[task], workedBy(plan.gates[task], from)) ?? plan.setting.clock.count;
  return { task, start, driver, readyAt };
}

interface Settling {
  readonly state: WalkState;
  readonly pick: Pick;
  readonly crewLast: number;
  readonly crewFree: number;
}

function settle(plan: WalkPlan, draw: Draw, { state, pick, crewLast, crewFree }: Settling): boolean {
  const { task } = pick;
  const { clock, forecastEndSlot } = plan.setting;
  const gate = plan.gates[task];
  const isBeyondForecast = pick.start >= forecastEndSlot && plan.tasks[task].gate !== 'none';
  const start = isBeyondForecast && draw.lostDays[task] > 0 ? afterLostDays(plan, gate, pick.start, draw.lostDays[task]) : pick.start;
  const end = draw.hours[task] === 0 ? start : whenDone(gate, workedBy(gate, start) + draw.hours[task] / plan.hands[task] / SLOT_H);
  state.start[task] = start;
  state.end[task] = end ?? clock.count;
  const ready = readyAfter(plan, task, { end: state.end[task], wait: draw.waits[task] });
  state.ready[task] = ready ?? clock.count;
  state.waitedFor[task] = draw.hours[task] > 0 && crewFree > pick.readyAt ? crewLast : pick.driver;
  return end !== undefined && ready !== undefined;
}

function afterLostDays(plan: WalkPlan, gate: Workable, start: number, lostDays: number): number {
  const target = plan.setting.clock.workday[Math.min(Math.floor(start), plan.setting.clock.count - 1)] + lostDays;
  const { workday } = plan.setting.clock;
  let slot = Math.floor(start);
  while (slot < workday.length - 1 && workday[slot] < target) slot += 1;
  return whenStarts(gate, workedBy(gate, slot)) ?? plan.setting.clock.count;
}

function readyAfter({ tasks, setting }: WalkPlan, task: number, { end, wait }: { readonly end: number; readonly wait: number }): number | undefined {
  const { kind } = tasks[task].wait;
  if (kind === 'none') return end;
  return kind === 'cure' ? slotOfAge(setting.ages, end, wait) : end + wait / SLOT_H;
}
