import {
  randomStream,
  triangularMean,
  triangularQuantile,
  type RandomStream,
  type ThreePoint,
} from '#lib/kernel';
import type { NetworkTask } from './network.js';
import type { Draw } from './step-plan.js';
import { fewestVisits } from './visits.js';
import { walkTables } from './walk-steps.js';
import { walk, type Walk, type WalkPlan } from './walk.js';

export interface Simulation {
  /** Slots, sorted. */
  readonly finishes: Float64Array;
  /** Days on which the crew must come, sorted. */
  readonly workedDays: Float64Array;
  /** Share of the calendars in which each task decided the finish. */
  readonly criticality: Float64Array;
  readonly incomplete: number;
}

/**
 * The spread is half common to the whole job (same crew, same boat): with this chance a task takes the job's own quantile
 * instead of one of its own, which leaves each task its distribution and correlates any two by the square of it, a half.
 * From memory.
 */
const COMMON_SHARE = Math.SQRT1_2;

/** Thousands of calendars drawn from the three-point spreads, wholly decided by the seed. */
export function simulate(
  plan: WalkPlan,
  {
    seed,
    runs,
    lossFraction,
  }: { readonly seed: number; readonly runs: number; readonly lossFraction: number },
): Simulation {
  const random = randomStream(seed);
  const [finishes, workedDays, hits] = [
    new Float64Array(runs),
    new Float64Array(runs),
    new Float64Array(plan.tasks.length),
  ];
  const draw: Draw = {
    hours: new Float64Array(plan.tasks.length),
    waits: new Float64Array(plan.tasks.length),
    lostDays: new Float64Array(plan.tasks.length),
  };
  const tables = walkTables(plan);
  let incomplete = 0;
  for (let run = 0; run < runs; run += 1) {
    drawInto(plan.tasks, draw, random, lossFraction);
    const calendar = walk(plan, draw, tables);
    finishes[run] = calendar.finish;
    for (const task of chainOf(calendar)) hits[task] += 1 / runs;
    incomplete += calendar.isComplete ? 0 : 1;
    workedDays[run] = fewestVisits(plan, draw, tables);
  }
  return { finishes: finishes.sort(), workedDays: workedDays.sort(), criticality: hits, incomplete };
}

function drawInto(
  tasks: readonly NetworkTask[],
  draw: Draw,
  random: RandomStream,
  lossFraction: number,
): void {
  const common = random();
  for (let task = 0; task < tasks.length; task += 1) {
    const { hours, wait } = tasks[task];
    const quantile = random() < COMMON_SHARE ? common : random();
    draw.hours[task] = triangularQuantile(hours, quantile);
    draw.waits[task] =
      wait.kind === 'none' ? 0 : triangularQuantile(wait.kind === 'cure' ? wait.ageH : wait.hours, random());
    draw.lostDays[task] =
      lossFraction === 0 ? 0 : Math.floor(Math.log(1 - random()) / Math.log(lossFraction));
  }
}

const pointsOf = ({ wait }: NetworkTask): ThreePoint | undefined =>
  wait.kind === 'none' ? undefined : wait.kind === 'cure' ? wait.ageH : wait.hours;

/** The draw of mean values, without chance. */
export const expectedDraw = (tasks: readonly NetworkTask[]): Draw => ({
  hours: Float64Array.from(tasks, ({ meanH }) => meanH),
  waits: Float64Array.from(tasks, (task) => {
    const points = pointsOf(task);
    return points === undefined ? 0 : triangularMean(points);
  }),
  lostDays: new Float64Array(tasks.length),
});

/** All hours longer or shorter by one factor, and every wait at one quantile. */
export const scenarioDraw = (
  tasks: readonly NetworkTask[],
  { hoursFactor, waitQuantile }: { readonly hoursFactor: number; readonly waitQuantile: number },
): Draw => ({
  hours: Float64Array.from(tasks, ({ meanH }) => meanH * hoursFactor),
  waits: Float64Array.from(tasks, (task) => {
    const points = pointsOf(task);
    return points === undefined ? 0 : triangularQuantile(points, waitQuantile);
  }),
  lostDays: new Float64Array(tasks.length),
});

/** From the task that is ready last back along what each one waited for. */
export function chainOf({ ready, waitedFor }: Walk): readonly number[] {
  let task = ready.reduce((latest, at, index) => (at >= ready[latest] ? index : latest), 0);
  const chain: number[] = [];
  while (task !== -1 && chain.length <= ready.length) {
    chain.push(task);
    task = waitedFor[task];
  }
  return chain.reverse();
}

export function daysWorked(
  { setting: { clock } }: WalkPlan,
  { start, end }: Walk,
  { draw: { hours }, seen }: { readonly draw: Draw; readonly seen: Uint8Array },
): number {
  let count = 0;
  for (let task = 0; task < start.length; task += 1) {
    if (hours[task] === 0) continue;
    const last = clock.workday[Math.max(0, Math.min(Math.ceil(end[task]) - 1, clock.count - 1))];
    for (let day = clock.workday[Math.min(Math.floor(start[task]), clock.count - 1)]; day <= last; day += 1) {
      if (seen[day] === 0) count += 1;
      seen[day] = 1;
    }
  }
  return count;
}

export const percentile = (sorted: Float64Array, share: number): number => {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below] * (1 - (place - below)) + sorted[above] * (place - below);
};
