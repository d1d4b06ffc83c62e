import { andThen, mapValue, type Outcome } from '#lib/kernel';
import { MOST_CORE_MOISTURE_PERCENT } from '#lib/cure';
import type { VariantResult } from '#lib/costing';
import { containsPoint, distanceToEdge, areaMm2, type Region } from '#lib/geometry';
import { growthQuantile, type Reading } from '#lib/extent';
import type { ResinStepRequest } from '#lib/resin';
import { assumed, derived, productOf, type Figure } from '#lib/provenance';
import { fraction, m2FromMm2, mm2, type In } from '#lib/units';
import { scheduleOf, type ScheduleWork } from './stages/calendar-stage.js';
import type { PlannedExtent } from './stages/replan-stage.js';
import { costOf } from './stages/cost-stage.js';
import type { DefectRecord } from './job/defect-record.js';
import { extentOf, type ExtentWork } from './stages/extent-stage.js';
import type { Job } from './job/job.js';
import type { KeptWork } from './kept-work.js';
import {
  driverAmountsOf,
  injectionFlags,
  injectionQuantities,
  scaledFigure,
  type JobQuantities,
} from './stages/labour-drivers.js';
import { labourOf, type LabourWork } from './stages/labour-stage.js';
import { pricedWork } from './stages/pricing-stage.js';
import { potsAndWaits, type ProcessWork } from './stages/process-stage.js';

/** A rule of the trade that speaks against injecting, and why here. */
export interface InjectionRefusal {
  readonly rule: string;
  readonly why: string;
}

/** Injection is for small, dry, unloaded debonding only, one to two square feet in all. Source: [INJECTION-LIMITS]. */
const MOST_INJECTED_M2 = 0.2;
/** Core that a fitting stands on or near is replaced by something dense. */
const FITTING_REACH_MM = 300;
/**
 * The rule that refuses injection for this record, or nothing.
 *
 * Source: [TRADE-INJECTION] area, dryness and fittings
 * Worked: libs/estimate/src/variants.spec.ts
 */
export function injectionRefusal({
  zones = [],
  fittings = [],
  survey,
}: DefectRecord): InjectionRefusal | undefined {
  const regions = zones.map(({ outline }): Region => [{ outer: outline, holes: [] }]);
  const plugs = (survey?.readings ?? []).filter((reading) => reading.kind === 'plug');
  if (zones.length === 0 || plugs.length === 0)
    return {
      rule: 'injection-needs-plug',
      why: 'injection is considered only where a zone is drawn and a plug shows dry, sound core',
    };
  if (zones.some(({ condition }) => condition !== 'dry-debonded'))
    return { rule: 'injection-on-rot', why: 'resin does not mend wet or rotten core: take it out' };
  const wet = plugs.find((plug) => regions.some((region) => containsPoint(region, plug.at)) && !isDry(plug));
  if (wet !== undefined)
    return {
      rule: 'injection-on-rot',
      why: `the plug at ${wet.at.join(', ')} is ${wet.condition}${wet.moisturePercent === undefined ? '' : ` with ${wet.moisturePercent} % of moisture`}: resin does not mend wet or rotten core`,
    };
  const unproven = zones.find((_, index) => !plugs.some(({ at }) => containsPoint(regions[index], at)));
  if (unproven !== undefined)
    return { rule: 'injection-needs-plug', why: `no plug shows the core of zone ${unproven.id}` };
  const areaM2 = zoneAreaM2(zones);
  if (areaM2 > MOST_INJECTED_M2)
    return {
      rule: 'injection-too-large',
      why: `${areaM2.toFixed(2)} m2 is more than the ${MOST_INJECTED_M2} m2 that injection is trusted with`,
    };
  const near = fittings.find(({ at }) =>
    regions.some((region) => containsPoint(region, at) || distanceToEdge(at, region) <= FITTING_REACH_MM),
  );
  return near === undefined
    ? undefined
    : {
        rule: 'injection-under-fitting',
        why: `${near.id} stands on or within ${FITTING_REACH_MM} mm of the zone: its core is replaced by something dense`,
      };
}

/** By what its core looks like; a moisture that was measured besides can overrule it. */
const isDry = ({ condition, moisturePercent }: Extract<Reading, { kind: 'plug' }>): boolean =>
  (condition === 'debonded-dry' || condition === 'dry-sound') &&
  (moisturePercent === undefined || moisturePercent <= MOST_CORE_MOISTURE_PERCENT);

const zoneAreaM2 = (zones: NonNullable<DefectRecord['zones']>): In<'m2'> =>
  m2FromMm2(mm2(zones.reduce((sum, { outline }) => sum + areaMm2([{ outer: outline, holes: [] }]), 0)));

/** An injection worked out like any other way of doing the job: hours, pots, days, lines, risk. */
export const workOutInjection = (job: Job, kept: KeptWork): Outcome<Injected> =>
  andThen(extentOf(job, kept), (extent) => {
    const quantities = injectionQuantities(job, injectedOf(job));
    return andThen(potsAndWaits(job, stepsFor(job, quantities)), (process) =>
      andThen(injectionSchedule(job, { extent, quantities, process }), ({ planned, schedule }) =>
        andThen(
          labourOf(job, { quantities, flags: injectionFlags(job), visits: schedule.visits }),
          (labour) => injectedFor({ job, quantities, extent, process, labour, planned, schedule }),
        ),
      ),
    );
  });

interface Injecting {
  readonly extent: ExtentWork;
  readonly quantities: JobQuantities;
  readonly process: ProcessWork;
}

interface InjectionSchedule {
  readonly planned: readonly PlannedExtent[];
  readonly schedule: ScheduleWork;
}

/** Where more is hollow than was sounded, more is injected: holes, resin and finish go with the area. */
const injectionSchedule = (
  job: Job,
  { extent, quantities, process }: Injecting,
): Outcome<InjectionSchedule> => {
  const at = (extentFactor: number): PlannedExtent => {
    const again = injectionQuantities(job, {
      injectedM2: scaledFigure(quantities.injectedM2, extentFactor),
      injectionHoles: scaledFigure(quantities.injectionHoles, extentFactor),
    });
    return {
      extentFactor,
      quantities: again,
      drivers: driverAmountsOf(again),
      fittingCount: 0,
      panelM2: extent.mostM2,
    };
  };
  const factors = [growthQuantile(extent.law, 0.05), 1, growthQuantile(extent.law, 0.95)];
  const planned = [...new Set(factors)].sort((a, b) => a - b).map(at);
  return mapValue(
    scheduleOf({ job, planned, quantities, labour: { flags: injectionFlags(job) }, process }),
    (schedule) => ({ planned, schedule }),
  );
};

export type Injected = Pick<VariantResult, 'rollUp' | 'risk' | 'days' | 'massKg' | 'note'>;

interface InjectionWork {
  readonly job: Job;
  readonly quantities: JobQuantities;
  readonly extent: ExtentWork;
  readonly process: ProcessWork;
  readonly labour: LabourWork;
  readonly planned: readonly PlannedExtent[];
  readonly schedule: ScheduleWork;
}

function injectedFor({
  job,
  quantities,
  extent,
  process,
  labour,
  planned,
  schedule,
}: InjectionWork): Outcome<Injected> {
  const noSheets = { sheets: [] };
  const noPlies = { plies: [], plyCount: 0, sessions: 0, largestPlyM2: quantities.laminateM2 };
  const priced = pricedWork(
    {
      job,
      quantities,
      core: noSheets,
      laminate: noPlies,
      cards: [],
      pressed: {},
      pressedBy: 'nothing',
    },
    process.batches.demand,
    { labour, schedule },
  );
  const costContext = {
    job,
    extent,
    planned,
    labour,
    schedule,
    laminate: noPlies,
    demand: process.batches.demand,
  };
  return andThen(priced, ({ lines }) =>
    mapValue(costOf(costContext, lines), ({ rollUp, range, risk }) => ({
      rollUp,
      risk: range,
      days: risk.calendarDays.p50,
      massKg: resinLeftKg(process),
      note: trustNote,
    })),
  );
}

const trustNote =
  'The panel is taken to be as built again: that holds only where resin has filled the gap, which sounding afterwards must show. Wet or dark core out of any hole ends the injection.';

/** Holes on a square grid of six inches; four at least, so that resin seen in a neighbour shows where it has run. */
function injectedOf(job: Job): Pick<JobQuantities, 'injectedM2' | 'injectionHoles'> {
  const zones = job.record.zones ?? [];
  const injectedM2: Figure<'m2'> = derived('m2', zoneAreaM2(zones), 'area injected under', {
    formula: 'geometry.area',
    title: 'Area of the zones drawn',
    symbol: 'A',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });
  const perM2 = assumed<string>('1/m2', fraction(43), 'injection holes in a square metre', {
    at: '/method',
    because: 'one hole to each square of 6 in',
    cite: { source: 'TRADE-INJECTION' },
    low: 24,
    high: 172,
  });
  const holes = productOf<string>('1', 'holes of the grid', { area: injectedM2, perM2 });
  return {
    injectedM2,
    injectionHoles: derived('1', fraction(Math.max(LEAST_HOLES, Math.ceil(holes.value))), 'injection holes', {
      formula: 'scope.count',
      title: 'Holes of the grid, four at least',
      symbol: 'n',
      cite: { source: 'TRADE-INJECTION' },
      inputs: { holes },
    }),
  };
}

const LEAST_HOLES = 4;
/** A quarter of an inch. */
const HOLE_MM = 6.35;

const stepsFor = (
  { answers }: Job,
  { injectedM2, injectionHoles }: JobQuantities,
): readonly ResinStepRequest[] => [
  { step: 'inject', areaM2: injectedM2.value },
  {
    step: 'potting',
    title: 'Fill the injection holes',
    holes: injectionHoles.value,
    diameterMm: HOLE_MM,
    depthMm: answers.outerSkin.thicknessMm.value,
  },
];

/** Waste does not stay in the deck. */
export const resinLeftKg = ({ batches }: ProcessWork): number =>
  batches.demand.steps.reduce(
    (sum, { totalKg, netL, totalL }) => sum + (totalL === 0 ? 0 : totalKg * (netL / totalL)),
    0,
  );
