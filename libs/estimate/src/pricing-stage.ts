import { andThen, mapValue, type Outcome } from '#lib/kernel';
import { materialsOf } from '#lib/catalogue';
import { labourLines, rollUp, yardLines, type CostRollUp, type LineRequest, type RollUpRequest } from '#lib/costing';
import { productOf, type Figure } from '#lib/provenance';
import type { ResinDemand } from '#lib/process';
import { takeOff, type Need } from '#lib/takeoff';
import type { CauseClass } from './defect-record.js';
import type { LabourWork } from './labour-stage.js';
import { consumableDriversOf, consumableFlagsOf, needsOf } from './needs.js';
import { purchaseLines, purchasesOf, type Purchase } from './purchasing.js';
import type { ResinContext } from './resin-steps.js';

export interface PricingWork {
  readonly needs: readonly Need[];
  readonly purchases: readonly Purchase[];
  readonly lines: readonly LineRequest[];
  readonly assumptions: readonly Figure[];
}

/** Goods, services and untaxed: the codes every set of labour rates carries. */
export const taxGroups = { goods: 'parts', services: 'labour' } as const;

/** Every priced line of the job, before loadings. */
export function pricedWork(context: ResinContext, demand: ResinDemand, labour: LabourWork): Outcome<PricingWork> {
  const consumables = [...materialsOf(context.job.catalogue, 'consumable'), ...materialsOf(context.job.catalogue, 'safety'), ...materialsOf(context.job.catalogue, 'fastener')];
  const taken = takeOff({
    items: needsOf(context, demand), consumables,
    drivers: consumableDriversOf(context, labour.likelyH, demand.totals.totalL), flags: consumableFlagsOf(context),
  });
  return andThen(taken, ({ needs, assumptions }) => {
    const purchases = purchasesOf(needs, context.job.priceList);
    return mapValue(linesFor(context, purchases, labour), (lines) => ({ needs, purchases, lines, assumptions }));
  });
}

function linesFor({ job, quantities }: ResinContext, purchases: readonly Purchase[], labour: LabourWork): Outcome<readonly LineRequest[]> {
  const { labourRates: rates, priceList } = job;
  const causeClass = causeOf(job.record.cause?.causeClass);
  const services = { rates, taxGroup: taxGroups.services, causeClass };
  const worked = labour.operations.map(({ driverFigure, ...operation }) => ({ ...operation, driverAmount: driverFigure }));
  return mapValue(labourLines(worked, services), (lines) => [
    ...lines,
    ...purchaseLines(purchases, { priceList, causeClass, taxGroup: taxGroups.goods }),
    ...yardLines({ shelter: job.shelter.value, days: yardDays(labour), labourH: labour.likelyH, openedM2: quantities.openedM2 }, services),
  ]);
}

/** An unstated cause is taken as already there: the class that promises an insured least. */
export const causeOf = (stated: CauseClass | undefined): CauseClass => stated ?? 'pre-existing';

const yardDays = ({ crewDays }: LabourWork): Figure => productOf<string>('day', 'days in the yard', { crewDays });

export const rolledUp = (context: ResinContext, lines: readonly LineRequest[], contingency: RollUpRequest['contingency']): Outcome<CostRollUp> =>
  rollUp({
    currency: context.job.priceList.currency, lines, taxGroups: context.job.labourRates.taxGroups,
    overheadPercent: context.job.labourRates.overheadPercent, profitPercent: context.job.labourRates.profitPercent,
    ...(contingency === undefined ? {} : { contingency }),
  });
