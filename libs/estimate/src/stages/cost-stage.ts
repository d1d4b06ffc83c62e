import { mapValue, success, type Outcome } from '#lib/kernel';
import {
  contingencyFor,
  jobRisk,
  rollUp,
  type JobRisk,
  loadingOf,
  rollUpDeciding,
  type CostRollUp,
  type JobAtExtent,
  type JobRiskRequest,
  type LineRequest,
  type NewAreaWork,
} from '#lib/costing';
import { betterGrades, growthLaw, newAreas, type EvidenceGrade, type GrowthLaw } from '#lib/extent';
import type { MoneyJson } from '#lib/money';
import { labourFor } from '#lib/work';
import { totalsFor } from '../sections/totals-section.js';
import type { MoneyRange } from '../document/estimate-document.js';
import type { Job } from '../job/job.js';
import { nearMoney, taxedRange, type CostContext, type CostWork } from './cost-context.js';
import { handsOf, paysForAbsence } from './hands.js';
import { isByCalendarDay, jobAtExtents, perMoreM2 } from './job-at-extents.js';
import { pricingTerms } from './pricing-stage.js';
import { asRecorded } from './replan-stage.js';

/** Loadings, what will probably be found besides, risk and tax over the priced lines; one simulation for money, hours and days. */
export const costOf = (context: CostContext, lines: readonly LineRequest[]): Outcome<CostWork> =>
  mapValue(rolledWithRisk(context, lines), ({ bare, rollUp: rolled, extents, risk }) => {
    const near = (major: number): MoneyJson => nearMoney(bare, major);
    const better = context.isRough === true ? [] : betterEvidence(context, bare, extents);
    return {
      rollUp: rolled,
      risk,
      range: { p10: near(risk.cost.p10), p80: near(risk.cost.p80), p90: near(risk.cost.p90) },
      better,
      hands: handsOf(context.job),
      totals: totalsFor({ context, bare, rollUp: rolled, risk, better, extents }),
    };
  });

/** What is compared of a way that is not planned. */
export interface ComparedCost {
  readonly risk: JobRisk;
  /** With tax. */
  readonly range: MoneyRange;
}

/** The same risk for a way that is only held against others: no lines, totals or kinds of risk of it are shown. */
export const comparedCost = (context: CostContext, lines: readonly LineRequest[]): Outcome<ComparedCost> =>
  mapValue(rollUp(pricingTerms(context.job, lines)), (bare) => {
    const { law, grade } = context.extent;
    const extents = jobAtExtents(context, bare);
    const risk = jobRisk(riskRequest(context, bare, { extents, law, grade }));
    return { risk, range: taxedRange(bare, risk) };
  });

/** The price and its range without the other totals, for whoever shows nothing else. */
export interface PreviewedCost extends ComparedCost {
  /** Base and what will probably be found besides, with tax. */
  readonly total: MoneyJson;
}

export const previewedCost = (context: CostContext, lines: readonly LineRequest[]): Outcome<PreviewedCost> =>
  mapValue(rolledWithRisk(context, lines), ({ rollUp: rolled, risk }) => ({
    risk,
    range: taxedRange(rolled, risk),
    total: rolled.gross,
  }));

/** Rolled up with what will probably be found besides; the risk that says how much is worked out from the bare lines. */
const rolledWithRisk = (context: CostContext, lines: readonly LineRequest[]) =>
  rollUpDeciding(pricingTerms(context.job, lines), (bare) => {
    const extents = jobAtExtents(context, bare);
    const { law, grade } = context.extent;
    const risk = jobRisk(riskRequest(context, bare, { extents, law, grade }));
    return success({ extents, risk, provisional: nearMoney(bare, risk.growth + risk.newAreas).amount });
  });

interface RiskCase {
  readonly extents: readonly JobAtExtent[];
  readonly law: GrowthLaw;
  readonly grade: EvidenceGrade;
}

function riskRequest(
  context: CostContext,
  bare: CostRollUp,
  { extents, law, grade }: RiskCase,
): JobRiskRequest {
  const { job, schedule } = context;
  return {
    extents,
    law,
    base: Number(bare.net.amount),
    hands: handsOf(job),
    wantsKinds: context.isRough !== true && grade === context.extent.grade,
    newAreas: { ...newAreas(grade, job.answers.soundedDeck.value), ...newAreaWork(context, extents) },
    perCalendarDay: perCalendarDay(job, bare),
    days: schedule.daysAt,
    absentPerDayWorked: schedule.absentPerDayWorked,
    paysForAbsence: paysForAbsence(job),
  };
}

const perCalendarDay = (job: Job, bare: CostRollUp): number => {
  const daily = bare.lines
    .filter((line) => isByCalendarDay(job, line))
    .reduce((sum, { unitRate }) => sum + Number(unitRate.amount), 0);
  return daily * loadingOf(bare);
};

/** Of a spot alone, so much is still spent when the boat is masked, sheltered and being worked on already. From memory. */
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
  const recorded = asRecorded(extents);
  const perHour = recorded.labourH === 0 ? 0 : recorded.labour / recorded.labourH;
  const handsADay = job.answers.crew.people.value * job.answers.crew.hoursPerDay.value;
  const workingDays = labourH / handsADay;
  const around = schedule.daysAt(1, 1, 0.5);
  const daysAWorkingDay =
    around.workingDays === 0 ? 1 : Math.min(2, around.calendarDays / around.workingDays);
  return {
    labourH,
    cost: labourH * perHour + perMoreM2(extents, ({ goods }) => goods) * eachM2,
    days: { workingDays, calendarDays: workingDays * daysAWorkingDay },
  };
}

/** The same job with the evidence that is still to be had: what it would take off the contingency. */
function betterEvidence(
  context: CostContext,
  bare: CostRollUp,
  extents: readonly JobAtExtent[],
): CostWork['better'] {
  const { grade, recordedM2, mostM2 } = context.extent;
  return betterGrades(grade).map((better) => ({
    grade: better,
    contingency: contingencyFor(
      riskRequest(context, bare, {
        extents,
        grade: better,
        law: growthLaw({ grade: better, recordedM2, mostM2 }),
      }),
    ),
  }));
}
