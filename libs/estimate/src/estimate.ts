import type { Catalogue } from '#lib/catalogue';
import { andThen, inOrder, mapValue, success, type Outcome } from '#lib/kernel';
import { documentOf } from './document/document.js';
import type { EstimateWithWhy } from './document/estimate-document.js';
import type { DefectRecord } from './job/defect-record.js';
import { jobOf, type Job } from './job/job.js';
import { calendarOf } from './stages/calendar-stage.js';
import { panelCheckOf } from './stages/check-stage.js';
import { coreFor } from './stages/core-stage.js';
import { costOf } from './stages/cost-stage.js';
import { extentOf } from './stages/extent-stage.js';
import { flagsOf, quantitiesOf } from './stages/labour-drivers.js';
import { labourOf } from './stages/labour-stage.js';
import { laminateFor } from './stages/laminate-stage.js';
import { pricedWork } from './stages/pricing-stage.js';
import { pressOf, processOf } from './stages/process-stage.js';
import { scopeOf } from './stages/scope-stage.js';
import { oldSkinsOf } from './stages/skins.js';
import { weatherOf } from './stages/weather-stage.js';
import type { WorkedJob } from './worked-job.js';

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
    mapValue(workOut(job), (worked) => documentOf(worked, engineVersion)),
  );

/** The stages in the order in which each needs the ones before. */
export const workOut = (job: Job): Outcome<WorkedJob> =>
  inOrder({ job })
    .then('extent', () => extentOf(job))
    .then('scope', ({ extent }) => scopeOf(job, extent.zones))
    .then('skins', () => oldSkinsOf(job))
    .then('core', ({ scope }) => coreFor(job, scope))
    .then('laminate', ({ scope, skins, core }) => laminateFor(job, scope, { skins, coreMm: core.coreMm }))
    .then('quantities', ({ scope, laminate }) => success(quantitiesOf(job, scope, laminate)))
    .then('press', ({ scope }) => pressOf(job, scope))
    .then('process', (work) => processOf(work))
    .then('panel', (work) => panelCheckOf({ ...work, clampPressureKPa: work.press.requiredKPa }))
    .then('labour', ({ quantities, scope, press }) =>
      labourOf(job, quantities, flagsOf(job, scope, press.innerSkin.props.needed)),
    )
    .then('calendar', (work) => calendarOf(work))
    .then('weather', (work) => weatherOf(work))
    .then('pricing', (work) =>
      pricedWork(
        { ...work, fittingCount: work.scope.plan.fittings.length },
        work.process.batches.demand,
        work,
      ),
    )
    .then('cost', (work) => costOf(work, work.pricing.lines))
    .done();
