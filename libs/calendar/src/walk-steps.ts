import { slotOfAge } from './course.js';
import { SLOT_H, whenDone, whenStarts, workedBy, type Workable } from './slots.js';
import { BOND, type Draw, type StepPlan } from './step-plan.js';

/** The tables of one walk, made once and filled again by every walk: thousands of calendars would else be mostly allocation. */
export interface WalkTables {
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly ready: Float64Array;
  /** What each task waited for: -1 nothing, else the task. */
  readonly waitedFor: Int32Array;
  /** When the last predecessor of a task was ready, and which it was; settled once all of them are. */
  readonly readyAt: Float64Array;
  readonly driver: Int32Array;
  /** When the tacky window that a task may use shuts, and when all its predecessors are ready if it comes later. */
  readonly shutsAt: Float64Array;
  readonly elseAt: Float64Array;
}

export function walkTables({ tasks: { length } }: StepPlan): WalkTables {
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
  };
}

/** Everything as before the first task. */
export function begin({ readyAt, driver, shutsAt, elseAt }: WalkTables): void {
  readyAt.fill(0);
  shutsAt.fill(Number.POSITIVE_INFINITY);
  elseAt.fill(0);
  driver.fill(-1);
}

/** The task is done: its successors know when it was ready. */
export function handOn(plan: StepPlan, tables: WalkTables, task: number): void {
  const { readyAt, driver } = tables;
  const [next, bonds] = [plan.next[task], plan.bonds[task]];
  for (let place = 0; place < next.length; place += 1) {
    const other = next[place];
    const at = followsAt(plan, tables, { task, other, bond: bonds[place] });
    if (driver[other] === -1 || at > readyAt[other]) [readyAt[other], driver[other]] = [at, task];
  }
}

interface Following {
  readonly task: number;
  readonly other: number;
  readonly bond: number;
}

/** When a successor may be taken up, as far as this task goes; where it may be laid on tacky, until when is noted. */
function followsAt(
  { tasks, setting: { ages } }: StepPlan,
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

/** When a task can be taken up by a crew that is free from `crewFree` on; what takes no work waits for nobody. */
export function startOf(
  plan: StepPlan,
  draw: Draw,
  {
    tables,
    task,
    crewFree,
  }: { readonly tables: WalkTables; readonly task: number; readonly crewFree: number },
): number {
  const readyAt = tables.readyAt[task];
  if (draw.hours[task] === 0) return readyAt;
  return inTime(plan, tables, { task, at: workFrom(plan, task, Math.max(readyAt, crewFree)) });
}

const workFrom = ({ gates, setting }: StepPlan, task: number, from: number): number =>
  whenStarts(gates[task], workedBy(gates[task], from)) ?? setting.clock.count;

/** Past the tacky window it waits until what lies below can be sanded. */
const inTime = (
  plan: StepPlan,
  { shutsAt, elseAt }: WalkTables,
  { task, at }: { readonly task: number; readonly at: number },
): number => (at > shutsAt[task] ? workFrom(plan, task, Math.max(at, elseAt[task])) : at);

export interface Settling {
  readonly tables: WalkTables;
  readonly task: number;
  readonly crewLast: number;
  readonly crewFree: number;
}

/** From its start on, when a task ends and is ready; false where the horizon is too short for it. */
export function settle(plan: StepPlan, draw: Draw, { tables, task, crewLast, crewFree }: Settling): boolean {
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

const slotsOf = ({ hands, workShare }: StepPlan, task: number, hours: number): number =>
  hours / hands[task] / workShare / SLOT_H;

function afterLostDays(plan: StepPlan, gate: Workable, start: number, lostDays: number): number {
  const target =
    plan.setting.clock.workday[Math.min(Math.floor(start), plan.setting.clock.count - 1)] + lostDays;
  const { workday } = plan.setting.clock;
  let slot = Math.floor(start);
  while (slot < workday.length - 1 && workday[slot] < target) slot += 1;
  return whenStarts(gate, workedBy(gate, slot)) ?? plan.setting.clock.count;
}

function readyAfter(
  { tasks, setting }: StepPlan,
  task: number,
  { end, wait }: { readonly end: number; readonly wait: number },
): number | undefined {
  const { kind } = tasks[task].wait;
  if (kind === 'none') return end;
  return kind === 'cure' ? slotOfAge(setting.ages, end, wait) : end + wait / SLOT_H;
}
