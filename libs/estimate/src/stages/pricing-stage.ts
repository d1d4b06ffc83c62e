import { andThen, mapValue, type Outcome } from '#lib/kernel';
import { materialsOf, type Coating } from '#lib/catalogue';
import {
  labourLines,
  packLines,
  yardLines,
  type LeftOver,
  type LineRequest,
  type PackLines,
  type RollUpRequest,
} from '#lib/costing';
import { sumOf, type Figure } from '#lib/provenance';
import type { ResinDemand } from '#lib/resin';
import { takeOff, type Need } from '#lib/takeoff';
import type { CauseClass } from '../job/defect-record.js';
import type { Job } from '../job/job.js';
import { isHeated, isShaded } from './visit-work.js';
import type { ScheduleWork } from './calendar-stage.js';
import { livesAssumed, withWear } from './judged-lives.js';
import { hoursFigure, type LabourWork } from './labour-stage.js';
import { consumableDriversOf, consumableFlagsOf, needsOf, type NeedContext } from './needs.js';

export interface PricingWork {
  /** Every need with what is bought for it. */
  readonly needs: readonly Need[];
  readonly lines: readonly LineRequest[];
  /** Needs that nothing on the price list covers. */
  readonly missing: readonly string[];
  readonly assumptions: readonly Figure[];
}

/** Goods and services: the tax groups that every set of labour rates carries. */
export const taxGroups = { goods: 'parts', services: 'labour' } as const;

/** Hours of the crew, and the days on which they fall. */
export interface TimedWork {
  readonly labour: LabourWork;
  readonly schedule: Pick<ScheduleWork, 'visits' | 'chargedDays'>;
}

/** Every priced line of the job, before loadings. */
export function pricedWork(
  context: NeedContext,
  demand: ResinDemand,
  timed: TimedWork,
): Outcome<PricingWork> {
  const { job } = context;
  const consumables = [
    ...materialsOf(job.catalogue, 'consumable'),
    ...materialsOf(job.catalogue, 'safety'),
    ...materialsOf(job.catalogue, 'fastener'),
  ];
  const taken = takeOff({
    items: needsOf(context, demand),
    consumables,
    drivers: consumableDriversOf(context, timed.labour.meanH, demand.totals.totalL),
    flags: consumableFlagsOf(context, timed.labour.flags.skin),
  });
  return andThen(taken, ({ needs, assumptions }) =>
    andThen(partsFor(context, needs, demand), (parts) =>
      mapValue(servicesFor(context, timed), (services) => ({
        needs: parts.needs,
        ...worn(job, [...services, ...parts.lines], assumptions),
        missing: parts.missing,
      })),
    ),
  );
}

function worn(
  { record: { pricing } }: Job,
  lines: readonly LineRequest[],
  assumptions: readonly Figure[],
): Pick<PricingWork, 'lines' | 'assumptions'> {
  const terms = pricing?.depreciation;
  return terms === undefined
    ? { lines, assumptions }
    : { lines: withWear(terms, lines), assumptions: [...assumptions, ...livesAssumed(terms, lines)] };
}

/** The cheapest whole packs, freight counted; resin and hardener are bought in their ratio. */
const partsFor = ({ job }: NeedContext, needs: readonly Need[], demand: ResinDemand): Outcome<PackLines> =>
  packLines({
    needs,
    priceList: job.priceList,
    taxGroup: taxGroups.goods,
    causeClass: causeOf(job.record.cause?.causeClass),
    billing: job.answers.pricing.goods.value,
    leftOver: (material) => leftOverOf(job, material),
    matches: [{ resin: demand.resin, hardener: demand.hardener, massRatio: demand.partsByMass / 100 }],
  });

/** Paint in the colour of this boat is of no use to the next; gear outlasts the job; all else goes back on the shelf. */
function leftOverOf({ catalogue }: Job, code: string): LeftOver {
  const material = catalogue.materials.find((one) => one.code === code);
  if (material?.kind === 'coating')
    return ownColour.has(material.coating) ? { kind: 'of-no-use' } : { kind: 'kept' };
  return material !== undefined && 'servesJobs' in material && material.servesJobs !== undefined
    ? { kind: 'outlasts', servesJobs: material.servesJobs }
    : { kind: 'kept' };
}

const ownColour: ReadonlySet<Coating['coating']> = new Set(['topcoat', 'nonskid', 'gelcoat']);

function servicesFor(
  { job, quantities }: NeedContext,
  { labour, schedule }: TimedWork,
): Outcome<readonly LineRequest[]> {
  const services = {
    rates: job.labourRates,
    taxGroup: taxGroups.services,
    causeClass: causeOf(job.record.cause?.causeClass),
  };
  const worked = labour.operations.map(({ driverFigure, ...operation }) => ({
    ...operation,
    driverAmount: driverFigure,
  }));
  return mapValue(labourLines(worked, services), (lines) => [
    ...lines,
    // A deck that is not cut needs neither lift-out, lay days nor a tent: the work is done where the craft lies.
    ...(labour.flags.skin === 'closed' || labour.flags.skin === 'inject'
      ? []
      : yardLines(
          {
            shelter: job.answers.conditions.shelter.value,
            place: job.answers.conditions.place.value,
            isHeated: isHeated(job),
            isShaded: isShaded(job),
            days: schedule.chargedDays,
            workedDays: schedule.visits,
            labourH: billedH(labour),
            openedM2: quantities.openedM2,
          },
          services,
        )),
  ]);
}

/** An unstated cause is taken as already there: the class that promises an insured least. */
export const causeOf = (stated: CauseClass | undefined): CauseClass => stated ?? 'pre-existing';

/** A yard's tools wear by its own hours. */
const billedH = ({ operations }: LabourWork): Figure<'h'> =>
  sumOf(
    'h',
    'hours billed',
    Object.fromEntries(
      operations.filter(({ isOwn }) => !isOwn).map((operation) => [operation.code, hoursFigure(operation)]),
    ),
  );

/** How the lines of this job are rolled up. */
export const pricingTerms = (
  { priceList, labourRates }: Job,
  lines: readonly LineRequest[],
): Omit<RollUpRequest, 'contingency'> => ({
  currency: priceList.currency,
  lines,
  taxGroups: labourRates.taxGroups,
  overheadPercent: labourRates.overheadPercent,
  profitPercent: labourRates.profitPercent,
});
