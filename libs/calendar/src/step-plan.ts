import type { Setting } from './course.js';
import type { NetworkTask } from './network.js';
import type { Workable } from './slots.js';

/** The network with numbers in place of names, ready to be walked thousands of times. */
export interface StepPlan {
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

export function stepPlan(
  tasks: readonly NetworkTask[],
  setting: Setting,
  { people, workShare }: Crew,
): StepPlan {
  const place = new Map(tasks.map(({ code }, index) => [code, index]));
  const before = tasks.map(({ after }) => Int32Array.from(after.flatMap((code) => place.get(code) ?? [])));
  const next = followersOf(before);
  const hands = Float64Array.from(tasks, ({ mostHands }) => Math.min(people, mostHands));
  const gates = tasks.map(({ gate }) => setting.workable[gate]);
  const bonds = next.map((others, index) =>
    Uint8Array.from(others, (other) => bondOf(tasks[index], tasks[other])),
  );
  return { tasks, setting, before, next, bonds, gates, hands, workShare };
}

function followersOf(before: readonly Int32Array[]): readonly Int32Array[] {
  const followers: number[][] = before.map(() => []);
  before.forEach((those, task) => {
    for (const one of new Set(those)) followers[one].push(task);
  });
  return followers.map((places) => Int32Array.from(places));
}

/** How a task follows another. */
export const BOND = { ready: 0, wet: 1, tacky: 2 } as const;

function bondOf({ code, tacky }: NetworkTask, { wetOn, tackyOn }: NetworkTask): number {
  if (wetOn.includes(code)) return BOND.wet;
  return tacky !== undefined && tackyOn.includes(code) ? BOND.tacky : BOND.ready;
}
