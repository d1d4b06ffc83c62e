import { andThen, success, type Outcome } from '#lib/kernel';
import type { Catalogue } from '#lib/catalogue';
import type { PanelCheck } from '#lib/panel';
import type { BondPressurePlan, CalendarPlan } from '#lib/process';
import { calendarOf } from './calendar-stage.js';
import { panelCheckOf } from './check-stage.js';
import { coreFor } from './core-stage.js';
import { costOf, type CostWork } from './cost-stage.js';
import type { DefectRecord } from './defect-record.js';
import { documentOf } from './document.js';
import type { EstimateWithWhy } from './estimate.js';
import { extentOf, type ExtentWork } from './extent-stage.js';
import { jobOf, type Job } from './job.js';
import { flagsOf, quantitiesOf } from './labour-drivers.js';
import { labourOf, type LabourWork } from './labour-stage.js';
import { laminateFor } from './laminate-stage.js';
import { pricedWork, type PricingWork } from './pricing-stage.js';
import { pressOf, processOf, type ProcessWork } from './process-stage.js';
import type { ResinContext } from './resin-steps.js';
import { scopeOf, type ScopeWork } from './scope-stage.js';
import { oldSkinsOf, type OldSkins } from './skins.js';
import { weatherOf, type WeatherWork } from './weather-stage.js';

/** Everything worked out for one job, before it becomes a document. */
export interface WorkedJob extends ResinContext {
  readonly extent: ExtentWork;
  readonly skins: OldSkins;
  readonly press: BondPressurePlan;
  readonly process: ProcessWork;
  readonly panel: PanelCheck;
  readonly labour: LabourWork;
  readonly pricing: PricingWork;
  readonly cost: CostWork;
  readonly calendar: CalendarPlan;
  readonly weather: WeatherWork;
}

/**
 * The main job: from what somebody knows about a soft deck to a priced, explained estimate.
 *
 * Pure: the same record, catalogue and engine version give the same document to the last digit. Refuses with every
 * problem at once when the record cannot be estimated; what merely does not fit is a finding or a failed check inside.
 */
export const estimate = (
  record: DefectRecord,
  catalogue: Catalogue,
  engineVersion: string,
): Outcome<EstimateWithWhy> =>
  andThen(jobOf(record, catalogue), (job) =>
    andThen(workOut(job), (worked) => success(documentOf(worked, engineVersion))),
  );

/** The stages in the order in which each needs the one before. */
export const workOut = (job: Job): Outcome<WorkedJob> =>
  andThen(extentOf(job), (extent) =>
    andThen(scopeOf(job, extent.zones), (scope) =>
      andThen(oldSkinsOf(job), (skins) => workOutMaterials(job, { extent, scope, skins })),
    ),
  );

interface Ground {
  readonly extent: ExtentWork;
  readonly scope: ScopeWork;
  readonly skins: OldSkins;
}

const workOutMaterials = (job: Job, ground: Ground): Outcome<WorkedJob> =>
  andThen(coreFor(job, ground.scope), (core) =>
    andThen(laminateFor(job, ground.scope, { skins: ground.skins, coreMm: core.coreMm }), (laminate) => {
      const quantities = quantitiesOf(job, ground.scope, laminate);
      return workOutWork({ job, scope: ground.scope, core, laminate, quantities }, ground);
    }),
  );

const workOutWork = (context: ResinContext, ground: Ground): Outcome<WorkedJob> =>
  andThen(pressOf(context.job, context.scope), (press) =>
    andThen(processOf(context), (process) =>
      andThen(
        panelCheckOf({ ...context, skins: ground.skins, clampPressureKPa: press.requiredKPa }),
        (panel) => workOutCost({ ...context, ...ground, press, process, panel }),
      ),
    ),
  );

type BeforeCost = Omit<WorkedJob, 'labour' | 'pricing' | 'cost' | 'calendar' | 'weather'>;

const workOutCost = (work: BeforeCost): Outcome<WorkedJob> =>
  andThen(
    labourOf(work.job, work.quantities, flagsOf(work.job, work.scope, work.press.innerSkin.props.needed)),
    (labour) =>
      andThen(calendarOf({ ...work, labour }), (calendar) =>
        andThen(weatherOf({ ...work, calendar }), (weather) =>
          andThen(
            pricedWork(
              { ...work, fittingCount: work.scope.plan.fittings.length },
              work.process.batches.demand,
              { labour, calendar },
            ),
            (pricing) =>
              andThen(costOf(work, pricing.lines), (cost) =>
                success({ ...work, labour, pricing, cost, calendar, weather }),
              ),
          ),
        ),
      ),
  );
