import { commercialRounding, moneyNear, percentOf, type CostRollUp, type JobRisk } from '#lib/costing';
import type { EvidenceGrade } from '#lib/extent';
import { decimalFrom, exactMoney, moneyJson, proportionOf, type MoneyJson } from '#lib/money';
import type { MoneyRange, Totals } from '../document/estimate-document.js';
import type { Job } from '../job/job.js';
import type { ScheduleWork } from './calendar-stage.js';
import type { Hands } from './hands.js';
import type { ExtentWork } from './extent-stage.js';
import type { ExtentsContext } from './job-at-extents.js';

export interface CostWork {
  /** Lines, loadings and provisional sums: the price, without contingency. */
  readonly rollUp: CostRollUp;
  readonly risk: JobRisk;
  /** P10 and so on of the money, without tax. */
  readonly range: { readonly p10: MoneyJson; readonly p80: MoneyJson; readonly p90: MoneyJson };
  /** What the contingency would be with better evidence; only where there is better. */
  readonly better: readonly { readonly grade: EvidenceGrade; readonly contingency: number }[];
  readonly totals: Totals;
  readonly hands: Hands;
}

export interface CostContext extends ExtentsContext {
  readonly job: Job;
  readonly extent: Pick<ExtentWork, 'law' | 'grade' | 'recordedM2' | 'mostM2'>;
  readonly schedule: ScheduleWork;
  /** Compared with others only: what better evidence would save is not asked. */
  readonly isRough?: boolean;
}

/** Shares of money are taken in so many whole parts. */
export const PARTS = 1_000_000;

export const nearMoney = (rollUp: CostRollUp, major: number): MoneyJson =>
  moneyJson(moneyNear(major, exactMoney(rollUp.net).currency, commercialRounding));

/** The range and the contingency are net of tax; the reader pays tax on them in the proportion of the price. */
export function taxedLike({ net, gross }: CostRollUp): (amount: MoneyJson) => MoneyJson {
  const [whole, share] = [exactMoney(net).minor, exactMoney(gross).minor];
  return (amount) =>
    whole === 0n ? amount : moneyJson(proportionOf(exactMoney(amount), share, whole, commercialRounding));
}

/** The quantiles of the money as a reader pays them. */
export function taxedRange(rollUp: CostRollUp, { cost }: JobRisk): MoneyRange {
  const withTax = taxedLike(rollUp);
  return {
    p10: withTax(nearMoney(rollUp, cost.p10)),
    p50: withTax(nearMoney(rollUp, cost.p50)),
    p80: withTax(nearMoney(rollUp, cost.p80)),
    p90: withTax(nearMoney(rollUp, cost.p90)),
  };
}

/** As stated, a percentage of the price without tax; else P80 less the price, to the cent: both together are the P80 shown. */
export const contingencyOf = ({ job }: CostContext, rollUp: CostRollUp, risk: JobRisk): MoneyJson => {
  const stated = job.record.pricing?.contingencyPercent;
  const percent = stated === undefined ? undefined : decimalFrom(String(stated));
  if (percent === undefined) {
    const p80 = exactMoney(nearMoney(rollUp, risk.cost.p80));
    const beyond = p80.minor - exactMoney(rollUp.net).minor;
    return moneyJson({ ...p80, minor: beyond > 0n ? beyond : 0n });
  }
  return moneyJson(percentOf(exactMoney(rollUp.net), percent, commercialRounding));
};
