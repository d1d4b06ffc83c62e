import { andThen, mapValue, type Outcome } from '#lib/kernel';
import {
  commercialRounding,
  jobRisk,
  moneyNear,
  percentOf,
  rollUp as rolledUp,
  type CostRollUp,
  type JobAtExtent,
  type JobRisk,
  type LineRequest,
  type NewAreaWork,
} from '#lib/costing';
import { withDays, type CalendarPlan } from '#lib/calendar';
import { growthLaw, newAreas, type EvidenceGrade, type GrowthLaw } from '#lib/extent';
import { decimalFrom, exactMoney, moneyJson, proportionOf, type MoneyJson } from '#lib/money';
import { labourFor } from '#lib/work';
import type { Totals } from '../document/estimate-document.js';
import { totalsFor } from '../sections/totals-section.js';
import type { Job } from '../job/job.js';
import type { ScheduleWork } from './calendar-stage.js';
import type { ExtentWork } from './extent-stage.js';
import { isByCalendarDay, jobAtExtents, type ExtentsContext } from './job-at-extents.js';
import { pricingTerms } from './pricing-stage.js';

export interface CostWork {
  /** Lines, loadings and provisional sums: the price, without contingency. */
  readonly rollUp: CostRollUp;
  readonly risk: JobRisk;
  /** P10 and so on of the money, without tax. */
  readonly range: { readonly p10: MoneyJson; readonly p80: MoneyJson; readonly p90: MoneyJson };
  /** What the contingency would be with better evidence; only where there is better. */
  readonly better: readonly { readonly grade: EvidenceGrade; readonly risk: JobRisk }[];
  readonly totals: Totals;
  /** The walk of the tasks with the days that the money was worked out with. */
  readonly calendar: CalendarPlan;
}

export interface CostContext extends ExtentsContext {
  readonly job: Job;
  readonly extent: Pick<ExtentWork, 'law' | 'grade' | 'recordedM2' | 'mostM2'>;
  readonly schedule: ScheduleWork;
  /** Compared with others only: what better evidence would save is not asked. */
  readonly isRough?: boolean;
}

/** Loadings, what will probably be found besides, risk and tax over the priced lines; one simulation for money, hours and days. */
export const costOf = (context: CostContext, lines: readonly LineRequest[]): Outcome<CostWork> =>
  andThen(rolledUp(pricingTerms(context.job, lines)), (bare) => {
    const extents = jobAtExtents(context, bare);
    const risk = riskFor(context, bare, { extents, law: context.extent.law, grade: context.extent.grade });
    const near = (major: number): MoneyJson => nearMoney(bare, major);
    const provisional = near(risk.growth + risk.newAreas).amount;
    return mapValue(rolledUp({ ...pricingTerms(context.job, lines), provisional }), (rollUp) => {
      const better = context.isRough === true ? [] : betterEvidence(context, bare, extents);
      return {
        rollUp,
        risk,
        range: { p10: near(risk.cost.p10), p80: near(risk.cost.p80), p90: near(risk.cost.p90) },
        better,
        totals: totalsFor({ context, bare, rollUp, risk, better, extents }),
        calendar: withDays(context.schedule, risk),
      };
    });
  });

export const nearMoney = (rollUp: CostRollUp, major: number): MoneyJson =>
  moneyJson(moneyNear(major, exactMoney(rollUp.net).currency, commercialRounding));

interface RiskCase {
  readonly extents: readonly JobAtExtent[];
  readonly law: GrowthLaw;
  readonly grade: EvidenceGrade;
}

function riskFor(context: CostContext, bare: CostRollUp, { extents, law, grade }: RiskCase): JobRisk {
  const { job, schedule } = context;
  return jobRisk({
    extents,
    law,
    base: Number(bare.net.amount),
    wantsKinds: context.isRough !== true && grade === context.extent.grade,
    newAreas: { ...newAreas(grade, job.answers.soundedDeck.value), ...newAreaWork(context, extents) },
    perCalendarDay: perCalendarDay(job, bare),
    days: schedule.daysAt,
  });
}

const perCalendarDay = (job: Job, bare: CostRollUp): number => {
  const daily = bare.lines
    .filter((line) => isByCalendarDay(job, line))
    .reduce((sum, { unitRate }) => sum + Number(unitRate.amount), 0);
  const direct = Number(bare.direct.amount);
  return direct === 0 ? daily : (daily * Number(bare.net.amount)) / direct;
};

/** Of a spot alone, so much is still spent when the boat is masked, sheltered and being worked on already. */
const SHARED_SET_UP = 0.6;

/** A spot elsewhere on the deck, by the same operations and rates as the rest. */
function newAreaWork({ job, labour, schedule }: CostContext, extents: readonly JobAtExtent[]): NewAreaWork {
  const { eachM2 } = newAreas('single-symptom', 'part');
  const aroundM = 4 * Math.sqrt(eachM2);
  const fairedM2 = eachM2 * 1.5;
  const found = labourFor(
    {
      'opened-m2': eachM2,
      'cut-m': aroundM,
      'taper-m': aroundM,
      'laminate-m2': fairedM2,
      'faired-m2-cycle': fairedM2 * 4,
      'primed-m2-coat': fairedM2 * 2,
      'topcoat-m2-coat': fairedM2 * 2,
      'finish-m2': fairedM2,
      'nonskid-m2': labour.flags.nonskid === 'yes' ? fairedM2 : 0,
    },
    { ...labour.flags, shelter: 'shed' },
  );
  const operations = found.ok ? found.value : [];
  const labourH = SHARED_SET_UP * operations.reduce((sum, { meanH }) => sum + meanH, 0);
  const recorded = extents.find(({ extentFactor }) => extentFactor === 1) ?? extents[0];
  const perHour = recorded.labourH === 0 ? 0 : recorded.labour / recorded.labourH;
  const handsADay = job.answers.crew.people.value * job.answers.crew.hoursPerDay.value;
  const workingDays = labourH / handsADay;
  const around = schedule.daysAt(1, 1, 0.5);
  const daysAWorkingDay =
    around.workingDays === 0 ? 1 : Math.min(2, around.calendarDays / around.workingDays);
  return {
    labourH,
    cost: labourH * perHour + goodsPerM2(extents) * eachM2,
    days: { workingDays, calendarDays: workingDays * daysAWorkingDay },
  };
}

/** What one square metre more takes of goods: over all extents, because packs come whole. */
function goodsPerM2(extents: readonly JobAtExtent[]): number {
  const [least, most] = [extents[0], extents[extents.length - 1]];
  const moreM2 = most.openedM2 - least.openedM2;
  return moreM2 <= 0 ? 0 : Math.max(0, (most.goods - least.goods) / moreM2);
}

const ladder: readonly EvidenceGrade[] = [
  'single-symptom',
  'sounded-and-metered',
  'mapped-with-plugs',
  'opened-and-measured',
];

/** The same job with the evidence that is still to be had: what it would take off the contingency. */
function betterEvidence(
  context: CostContext,
  bare: CostRollUp,
  extents: readonly JobAtExtent[],
): CostWork['better'] {
  const { grade, recordedM2, mostM2 } = context.extent;
  return ladder.slice(ladder.indexOf(grade) + 1).map((better) => ({
    grade: better,
    risk: riskFor(context, bare, {
      extents,
      grade: better,
      law: growthLaw({ grade: better, recordedM2, mostM2 }),
    }),
  }));
}

/** The range and the contingency are net of tax; the reader pays tax on them in the proportion of the price. */
export function taxedLike({ net, gross }: CostRollUp): (amount: MoneyJson) => MoneyJson {
  const [whole, share] = [exactMoney(net).minor, exactMoney(gross).minor];
  return (amount) =>
    whole === 0n ? amount : moneyJson(proportionOf(exactMoney(amount), share, whole, commercialRounding));
}

/** As stated, a percentage of the price without tax; else P80 less the price. */
export const contingencyOf = ({ job }: CostContext, rollUp: CostRollUp, risk: JobRisk): MoneyJson => {
  const stated = job.record.pricing?.contingencyPercent;
  const percent = stated === undefined ? undefined : decimalFrom(String(stated));
  return percent === undefined
    ? nearMoney(rollUp, risk.contingency)
    : moneyJson(percentOf(exactMoney(rollUp.net), percent, commercialRounding));
};
