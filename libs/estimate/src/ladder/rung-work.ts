import { andThen, inOrder, mapValue, type Outcome } from '#lib/kernel';
import type { CalendarPlan } from '#lib/calendar';
import type { ResinStepRequest } from '#lib/resin';
import type { OperationFlags } from '#lib/work';
import type { Job } from '../job/job.js';
import { calendarOf } from '../stages/calendar-stage.js';
import { costOf, type CostWork } from '../stages/cost-stage.js';
import type { ExtentWork } from '../stages/extent-stage.js';
import type { JobQuantities } from '../stages/labour-drivers.js';
import { labourOf, type LabourWork } from '../stages/labour-stage.js';
import type { NeedContext } from '../stages/needs.js';
import { pricedWork, type PricingWork } from '../stages/pricing-stage.js';
import { potsAndWaits, type ProcessWork } from '../stages/process-stage.js';

/** What a rung is counted and bought by. */
export interface RungPlan {
  readonly job: Job;
  readonly quantities: JobQuantities;
  readonly flags: OperationFlags;
  readonly steps: readonly ResinStepRequest[];
  readonly core: NeedContext['core'];
  readonly laminate: NeedContext['laminate'];
  readonly fittingCount: number;
}

/** Hours, pots, days and money of a rung, by the same functions as any other. */
export interface RungWork {
  readonly process: ProcessWork;
  readonly labour: LabourWork;
  readonly calendar: CalendarPlan;
  readonly pricing: PricingWork;
  readonly cost: CostWork;
}

/** Bags, props and boards of an opening that is not planned yet, by its area. Source: [FROM-MEMORY]. */
const roughPressed = ({ quantities: { openedM2 } }: RungPlan): NeedContext['pressed'] => ({
  'press-bag': Math.ceil(10 * openedM2.value),
  'prop': Math.ceil(10 * openedM2.value),
  'prop-board-m': 5 * openedM2.value,
});

export const workRung = (
  plan: RungPlan,
  growth: Pick<ExtentWork, 'growth'>,
  calendars: number,
): Outcome<RungWork> =>
  mapValue(
    inOrder(plan)
      .then('process', ({ job, steps }) => potsAndWaits(job, steps))
      .then('labour', ({ job, quantities, flags }) => labourOf(job, quantities, flags))
      .then('calendar', (work) => calendarOf(work, calendars))
      .then('pricing', (work) =>
        pricedWork({ ...work, pressed: roughPressed(work) }, work.process.batches.demand, work),
      )
      .then('cost', ({ job, pricing }) => costOf({ job, extent: growth }, pricing.lines))
      .done(),
    ({ process, labour, calendar, pricing, cost }) => ({ process, labour, calendar, pricing, cost }),
  );

export const rungWorkOf = (
  plan: Outcome<RungPlan>,
  growth: Pick<ExtentWork, 'growth'>,
  calendars: number,
): Outcome<RungWork> => andThen(plan, (found) => workRung(found, growth, calendars));
