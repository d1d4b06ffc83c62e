import type { CalendarPlan } from '#lib/calendar';
import type { PanelCheck } from '#lib/panel';
import type { BondPressurePlan } from '#lib/press';
import type { BesideWork } from './ladder/beside-opening.js';
import type { LadderWork } from './ladder/method-ladder.js';
import type { CoreWork } from './stages/core-stage.js';
import type { ScheduleWork } from './stages/calendar-stage.js';
import type { PlannedExtent } from './stages/replan-stage.js';
import type { CostWork } from './stages/cost-context.js';
import type { ExtentWork } from './stages/extent-stage.js';
import type { LabourWork } from './stages/labour-stage.js';
import type { PricingWork } from './stages/pricing-stage.js';
import type { ProcessWork } from './stages/process-stage.js';
import type { ResinContext } from './stages/resin-steps.js';
import type { OldSkins } from './stages/skins.js';
import type { WeatherWork } from './stages/weather-stage.js';

/** Everything worked out for one job, before it becomes a document. */
export interface WorkedJob extends ResinContext {
  readonly core: CoreWork;
  readonly beside: BesideWork;
  readonly ladder: LadderWork;
  readonly extent: ExtentWork;
  readonly skins: OldSkins;
  readonly press: BondPressurePlan;
  readonly process: ProcessWork;
  readonly panel: PanelCheck;
  readonly labour: LabourWork;
  readonly pricing: PricingWork;
  readonly cost: CostWork;
  readonly planned: readonly PlannedExtent[];
  readonly schedule: ScheduleWork;
  readonly calendar: CalendarPlan;
  readonly weather: WeatherWork;
}
