import { begin, handOn, settle, startOf, type WalkTables } from './walk-steps.js';
import type { Draw } from './step-plan.js';
import type { WalkPlan } from './walk.js';

/**
 * The fewest days on which the crew must come, over the orders of the plan. Whoever comes does all that the day allows, and
 * comes again on the first morning on which nothing that was done is still waiting. The days of a calendar that takes
 * up everything as soon as it can are no measure of it: whether a small task falls on a day of its own or on that of
 * another there depends on an hour, so that more work could take fewer days.
 *
 * Valid:  one crew that stays together; finish-to-start precedences.
 * Source: [ARITHMETIC] count of days
 * Worked: libs/calendar/src/visits.spec.ts
 */
export const fewestVisits = (plan: WalkPlan, draw: Draw, tables: WalkTables): number =>
  plan.orders.reduce(
    (fewest, order) => Math.min(fewest, visitsAlong(plan, draw, { tables, order })),
    Number.POSITIVE_INFINITY,
  );

interface Along {
  readonly tables: WalkTables;
  readonly order: Int32Array;
}

function visitsAlong(plan: WalkPlan, draw: Draw, { tables, order }: Along): number {
  let [crewFree, crewLast, allReady, visits, lastDay] = [0, -1, 0, 0, -1];
  begin(tables);
  for (const task of order) {
    tables.start[task] = startOf(plan, draw, { tables, task, crewFree });
    const hasWork = draw.hours[task] > 0;
    if (hasWork && dayOf(plan, tables.start[task]) !== lastDay) {
      const from = morningFrom(plan, Math.max(allReady, crewFree));
      tables.start[task] = startOf(plan, draw, { tables, task, crewFree: from });
    }
    settle(plan, draw, { tables, task, crewLast, crewFree });
    if (hasWork) {
      const [first, last] = [dayOf(plan, tables.start[task]), dayOf(plan, Math.ceil(tables.end[task]) - 1)];
      visits += last - first + (first === lastDay ? 0 : 1);
      [crewFree, crewLast, lastDay] = [tables.end[task], task, last];
    }
    allReady = Math.max(allReady, tables.ready[task]);
    handOn(plan, tables, task);
  }
  return visits;
}

const slotIn = ({ setting: { clock } }: WalkPlan, at: number): number =>
  Math.max(0, Math.min(Math.floor(at), clock.count - 1));

const dayOf = (plan: WalkPlan, at: number): number => plan.setting.clock.workday[slotIn(plan, at)];

const morningFrom = (plan: WalkPlan, at: number): number =>
  plan.setting.clock.nextMorning[slotIn(plan, Math.ceil(at - 1e-9))];
