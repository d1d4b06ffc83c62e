import type { NetworkTask } from './network.js';
import type { Setting } from './course.js';
import { ordersOf } from './orders.js';
import { stepPlan, type Crew, type Draw, type StepPlan } from './step-plan.js';
import { begin, handOn, settle, startOf, walkTables, type WalkTables } from './walk-steps.js';

/** A network and the orders in which a crew may take up its tasks. */
export interface WalkPlan extends StepPlan {
  readonly orders: readonly Int32Array[];
}

/** One calendar: when each task starts, ends and is ready, in slots; and what it waited for (-1 nothing, else the task). */
export interface Walk extends Pick<WalkTables, 'start' | 'end' | 'ready' | 'waitedFor'> {
  readonly finish: number;
  readonly isComplete: boolean;
}

export function walkPlan(tasks: readonly NetworkTask[], setting: Setting, crew: Crew): WalkPlan {
  const plan = stepPlan(tasks, setting, crew);
  return { ...plan, orders: ordersOf(plan) };
}

/** The plan of a network that differs from another in its hours alone shares all else with it, its orders too. */
export function walkPlanBeside(own: WalkPlan, tasks: readonly NetworkTask[], crew: Crew): WalkPlan {
  if (tasks === own.tasks) return own;
  const isAlike =
    tasks.length === own.tasks.length && tasks.every(({ after }, place) => after === own.tasks[place].after);
  return isAlike ? { ...own, tasks } : walkPlan(tasks, own.setting, crew);
}

/**
 * One calendar: the crew takes up the tasks in the order, of those of the plan, that ends first, each as soon as it can; waits
 * fill with whatever needs no deck. The answer lies in the tables until they are filled again.
 *
 * Valid:  one crew that stays together; finish-to-start precedences.
 * Source: [KELLEY-WALKER-1959] precedence; the serial rule is common practice in scheduling
 * Worked: libs/calendar/src/calendar.spec.ts
 */
export function walk(plan: WalkPlan, draw: Draw, tables: WalkTables = walkTables(plan)): Walk {
  const [first, ...others] = plan.orders;
  let found = walkAlong(plan, draw, { tables, order: first });
  let [best, bestFinish] = [first, found.finish];
  for (const order of others) {
    found = walkAlong(plan, draw, { tables, order });
    if (found.finish < bestFinish - 1e-9) [best, bestFinish] = [order, found.finish];
  }
  // Each walk fills the same tables: they hold the last one.
  return best === plan.orders.at(-1) ? found : walkAlong(plan, draw, { tables, order: best });
}

function walkAlong(
  plan: WalkPlan,
  draw: Draw,
  { tables, order }: { readonly tables: WalkTables; readonly order: Int32Array },
): Walk {
  const { start, end, ready, waitedFor } = tables;
  let [crewFree, crewLast, isComplete, finish] = [0, -1, true, 0];
  begin(tables);
  for (const task of order) {
    start[task] = startOf(plan, draw, { tables, task, crewFree });
    isComplete = settle(plan, draw, { tables, task, crewLast, crewFree }) && isComplete;
    if (draw.hours[task] > 0) [crewFree, crewLast] = [end[task], task];
    finish = Math.max(finish, ready[task]);
    handOn(plan, tables, task);
  }
  return { start, end, ready, waitedFor, finish, isComplete };
}
