import { withDays, type CalendarPlan } from '#lib/calendar';
import { andThen, mapValue, type Outcome } from '#lib/kernel';
import type { FittingCard } from '#lib/methods';
import type { Job } from '../job/job.js';
import { closedCards, closedPlan, type ClosedLeak } from './closed-plan.js';
import type { LadderWork } from './method-ladder.js';
import { growthOfAPlug } from './priced-ladder.js';
import { workRung, type RungPlan, type RungWork } from './rung-work.js';

/** A job that leaves the deck closed: fittings, holes, gaps and strips, without core sheets, laminate or panel check. */
export interface ClosedJob extends RungWork {
  readonly job: Job;
  readonly ladder: LadderWork;
  readonly plan: RungPlan & ClosedLeak;
  readonly calendar: CalendarPlan;
  readonly cards: readonly FittingCard[];
}

export const workOutClosed = (job: Job, ladder: LadderWork): Outcome<ClosedJob> => {
  const plan = closedPlan(job, ladder.combination);
  return andThen(workRung(plan, ladder.extent ?? growthOfAPlug), (work) =>
    mapValue(work.schedule.plan(), (walked) => ({
      ...work,
      job,
      ladder,
      plan,
      calendar: withDays(walked, work.schedule.momentAfter, work.cost.risk),
      cards: closedCards(job, ladder.combination).all,
    })),
  );
};
