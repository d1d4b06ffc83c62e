import { begin, handOn, settle, startOf, walkTables, type WalkTables } from './walk-steps.js';
import type { NetworkTask } from './network.js';
import type { Draw, StepPlan } from './step-plan.js';

/** Steps of half an hour, of two hours and of a day: those of a spot, of a panel and of a deck. */
const stepHours = [0.5, 2, 6] as const;
/** Age at which the cures of all resins stand in for each other: a larger job may ask for a slower hardener. */
const CURE_AGE_H = 12;

/**
 * The orders in which a crew may take up the tasks: each is right for steps of one length. They come from precedences and
 * waits, never from the hours or the hardener of this job. An order that followed the hours could put a task before another because
 * a little more was found, and the larger job would end sooner; along a settled order, and so along the best of several,
 * more hours never end sooner.
 *
 * Valid:  one crew that stays together; finish-to-start precedences.
 * Source: [KELLEY-WALKER-1959] precedence; the serial rule is common practice in scheduling
 * Worked: libs/calendar/src/visits.spec.ts
 */
export function ordersOf(plan: StepPlan): readonly Int32Array[] {
  const found = new Map(
    stepHours.map((stepH) => soonestFirst(plan, stepH)).map((order) => [order.join(), order]),
  );
  return [...found.values()];
}

/** By the serial rule: the crew takes what can start first, on a tie what has the longest way to go. */
function soonestFirst(plan: StepPlan, stepH: number): Int32Array {
  const [draw, tables] = [drawOf(plan, stepH), walkTables(plan)];
  const tail = tailsOf(plan, draw);
  const open = plan.before.map(({ length }) => length);
  const eligible = open.flatMap((count, task) => (count === 0 ? [task] : []));
  const order: number[] = [];
  let [crewFree, crewLast] = [0, -1];
  begin(tables);
  while (eligible.length > 0) {
    const place = soonest(plan, draw, { tables, eligible, crewFree, tail });
    const [task] = eligible.splice(place, 1);
    tables.start[task] = startOf(plan, draw, { tables, task, crewFree });
    settle(plan, draw, { tables, task, crewLast, crewFree });
    if (draw.hours[task] > 0) [crewFree, crewLast] = [tables.end[task], task];
    handOn(plan, tables, task);
    order.push(task);
    for (const other of plan.next[task]) if (--open[other] === 0) eligible.push(other);
  }
  return Int32Array.from(order);
}

const drawOf = ({ tasks }: StepPlan, stepH: number): Draw => ({
  hours: Float64Array.from(tasks, ({ meanH }) => (meanH > 0 ? stepH : 0)),
  waits: Float64Array.from(tasks, usualWaitH),
  lostDays: new Float64Array(tasks.length),
});

const usualWaitH = ({ wait }: NetworkTask): number =>
  wait.kind === 'none' ? 0 : wait.kind === 'cure' ? CURE_AGE_H : wait.hours.likely;

/** Of each hour of the clock about a third is worked. */
const CLOCK_PER_WORK = 3;

/** Hours from the start of a task to the end of the job: the longer, the sooner it is taken up. */
function tailsOf({ tasks, next, hands }: StepPlan, { hours, waits }: Draw): Float64Array {
  const tail = new Float64Array(tasks.length);
  for (let task = tasks.length - 1; task >= 0; task -= 1) {
    const after = next[task].reduce((longest, other) => Math.max(longest, tail[other]), 0);
    tail[task] = after + (hours[task] / hands[task]) * CLOCK_PER_WORK + waits[task];
  }
  return tail;
}

interface Choice {
  readonly tables: WalkTables;
  readonly eligible: readonly number[];
  readonly crewFree: number;
  readonly tail: Float64Array;
}

/** Place among the eligible of the task to take up. */
function soonest(plan: StepPlan, draw: Draw, { tables, eligible, crewFree, tail }: Choice): number {
  let [best, bestStart, bestTail] = [-1, Number.POSITIVE_INFINITY, 0];
  eligible.forEach((task, place) => {
    const found = startOf(plan, draw, { tables, task, crewFree });
    const isTie = Math.abs(found - bestStart) <= 1e-9;
    if (best === -1 || (isTie ? tail[task] > bestTail : found < bestStart))
      [best, bestStart, bestTail] = [place, found, tail[task]];
  });
  return best;
}
