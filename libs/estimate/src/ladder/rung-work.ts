import { andThen, inOrder, mapValue, success, type Outcome } from '#lib/kernel';
import { growthQuantile } from '#lib/extent';
import type { ResinStepRequest } from '#lib/resin';
import type { OperationFlags } from '#lib/work';
import type { MoneyRange } from '../document/estimate-document.js';
import { timeRanges, type TimeRanges } from '../document/range.js';
import type { Job } from '../job/job.js';
import { scheduleOf, type ScheduleWork } from '../stages/calendar-stage.js';
import type { CostWork } from '../stages/cost-context.js';
import { comparedCost, costOf } from '../stages/cost-stage.js';
import type { ExtentWork } from '../stages/extent-stage.js';
import { driverAmountsOf, type JobQuantities } from '../stages/labour-drivers.js';
import { scaledFigure } from '../stages/scaled-figure.js';
import type { PlannedExtent } from '../stages/replan-stage.js';
import { labourOf, type LabourWork } from '../stages/labour-stage.js';
import type { NeedContext } from '../stages/needs.js';
import { pricedWork, type PricingWork } from '../stages/pricing-stage.js';
import { potsAndWaits, potsOf, type ProcessWork } from '../stages/process-stage.js';

/** What a rung is counted and bought by. */
export interface RungPlan {
  readonly job: Job;
  readonly quantities: JobQuantities;
  readonly flags: OperationFlags;
  readonly steps: readonly ResinStepRequest[];
  readonly core: NeedContext['core'];
  readonly laminate: NeedContext['laminate'];
  readonly cards: NeedContext['cards'];
  readonly needsBesides: NeedContext['needsBesides'];
}

/** Hours, pots, days and money of a rung, by the same functions as any other. */
export interface RungWork {
  readonly process: ProcessWork;
  readonly labour: LabourWork;
  readonly schedule: ScheduleWork;
  readonly pricing: PricingWork;
  readonly cost: CostWork;
}

/** Bags, props and boards of an opening that is not planned yet, by its area. Source: [FROM-MEMORY]. */
const roughPressed = ({ quantities: { openedM2 } }: RungPlan): NeedContext['pressed'] => ({
  'press-bag': Math.ceil(10 * openedM2.value),
  'prop': Math.ceil(10 * openedM2.value),
  'prop-board-m': 5 * openedM2.value,
});

/** As wished from above; a closed deck presses nothing, and from below core is held up. */
const roughlyPressedBy = ({ job, quantities }: RungPlan): NeedContext['pressedBy'] => {
  const { access, press } = job.answers.method;
  if (quantities.openedM2.value === 0) return 'nothing';
  return access.value === 'from-below' && press.value !== 'vacuum' ? 'jacks' : press.value;
};

/** How far the damage may reach beyond what is recorded. */
export type RungExtent = Pick<ExtentWork, 'law' | 'grade' | 'recordedM2' | 'mostM2'>;

export const workRung = (plan: RungPlan, extent: RungExtent): Outcome<RungWork> =>
  andThen(pricedRung(plan, extent, potsAndWaits), (work) =>
    mapValue(
      costOf({ ...work, demand: work.process.batches.demand }, work.pricing.lines),
      (cost): RungWork => {
        const { process, labour, schedule, pricing } = work;
        return { process, labour, schedule, pricing, cost };
      },
    ),
  );

/** What a rung that is not planned would take. */
export interface ComparedRung {
  readonly times: TimeRanges;
  readonly price: MoneyRange;
}

/** By the same functions, without what nobody is shown of it. */
export const compareRung = (plan: RungPlan, extent: RungExtent): Outcome<ComparedRung> =>
  andThen(pricedRung(plan, extent, potsAlone), (work) =>
    mapValue(
      comparedCost({ ...work, demand: work.process.batches.demand }, work.pricing.lines),
      ({ risk, range }) => ({ times: timeRanges(risk), price: range }),
    ),
  );

const potsAlone = (job: Job, steps: RungPlan['steps']) =>
  mapValue(potsOf(job, steps), (batches) => ({ batches }));

/** A rung up to its priced lines; `process` says how much of pots and waits is worked out. */
const pricedRung = <P extends Pick<RungWork['process'], 'batches'>>(
  plan: RungPlan,
  extent: RungExtent,
  process: (job: Job, steps: RungPlan['steps']) => Outcome<P>,
) =>
  inOrder({ ...plan, extent, isRough: true })
    .then('planned', (work) => success(roughExtents(work)))
    .then('process', ({ job, steps }) => process(job, steps))
    .then('schedule', (work) => scheduleOf({ ...work, labour: work, turns: 1, sessions: 1 }))
    .then('labour', ({ job, quantities, flags, schedule }) =>
      labourOf(job, { quantities, flags, visits: schedule.visits }),
    )
    .then('pricing', (work) =>
      pricedWork(
        { ...work, pressed: roughPressed(work), pressedBy: roughlyPressedBy(work) },
        work.process.batches.demand,
        work,
      ),
    )
    .done();

/** Areas with the extent, edges with its root, what is counted not at all: enough to compare rungs, never to price one. */
function roughExtents({ quantities, extent, cards }: RungPlan & { readonly extent: RungExtent }) {
  const factors = [growthQuantile(extent.law, 0.05), 1, growthQuantile(extent.law, 0.95)];
  return [...new Set(factors)]
    .sort((a, b) => a - b)
    .map((extentFactor): PlannedExtent => {
      const again = extentFactor === 1 ? quantities : roughlyAt(quantities, extentFactor);
      return {
        extentFactor,
        quantities: again,
        drivers: driverAmountsOf(again),
        fittingCount: cards.length,
        panelM2: extent.mostM2,
      };
    });
}

const roughlyAt = (quantities: JobQuantities, factor: number): JobQuantities => ({
  ...quantities,
  openedM2: scaledFigure(quantities.openedM2, factor),
  baredM2: scaledFigure(quantities.baredM2, factor),
  keptCoreM2: scaledFigure(quantities.keptCoreM2, factor),
  driedM2: scaledFigure(quantities.driedM2, factor),
  coredM2: scaledFigure(quantities.coredM2, factor),
  solidL: scaledFigure(quantities.solidL, factor),
  looseSkinM2: scaledFigure(quantities.looseSkinM2, factor),
  heldSkinM2: scaledFigure(quantities.heldSkinM2, factor),
  looseCoreM2: scaledFigure(quantities.looseCoreM2, factor),
  heldCoreM2: scaledFigure(quantities.heldCoreM2, factor),
  laminateM2: scaledFigure(quantities.laminateM2, factor),
  extraPlyM2: scaledFigure(quantities.extraPlyM2, factor),
  fairedM2: scaledFigure(quantities.fairedM2, factor),
  liningM2: scaledFigure(quantities.liningM2, factor),
  cutM: scaledFigure(quantities.cutM, Math.sqrt(factor)),
  taperM: scaledFigure(quantities.taperM, Math.sqrt(factor)),
  injectedM2: scaledFigure(quantities.injectedM2, factor),
  injectionHoles: scaledFigure(quantities.injectionHoles, factor),
});
