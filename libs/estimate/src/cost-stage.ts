import { andThen, mapValue, type Outcome } from '#lib/kernel';
import { costRisk, type CostRisk, type CostRollUp, type LineRequest } from '#lib/costing';
import { decimalText, exactMoney, moneyJson, proportionOf, type MoneyJson } from '#lib/money';
import type { Totals } from './estimate.js';
import { rolledUp } from './pricing-stage.js';
import type { ExtentWork } from './extent-stage.js';
import type { Job } from './job.js';
import { stageZeroLines } from './stage-zero.js';

export interface CostWork {
  readonly rollUp: CostRollUp;
  readonly risk: CostRisk;
  readonly totals: Totals;
}

/** How far the damage may still grow drives the risk. */
export interface CostContext {
  readonly job: Job;
  readonly extent: Pick<ExtentWork, 'growth'>;
}

/** Loadings, risk, contingency and tax over the priced lines. */
export function costOf(context: CostContext, lines: readonly LineRequest[]): Outcome<CostWork> {
  return andThen(rolledUp(context, lines, undefined), (bare) =>
    andThen(riskOf(context, bare), (risk) =>
      mapValue(rolledUp(context, lines, contingencyFor(context, risk)), (rollUp) => ({ rollUp, risk, totals: totalsFor(rollUp, bare, { context, risk }) }))));
}

/** Overhead and profit ride on every line alike, so the risk is measured on lines that carry their share. */
function riskOf({ job, extent: { growth } }: CostContext, bare: CostRollUp): Outcome<CostRisk> {
  const loading = loadingOf(bare);
  return costRisk({
    currency: bare.currency,
    lines: bare.lines.map(({ code, title, amount, spread, extentExponent, partOrLabour }) => ({
      code, title, amount: Number(amount.amount) * loading, spread, extentExponent, partOrLabour,
    })),
    extent: { low: growth.low, likely: growth.likely, high: growth.high },
    samples: job.record.pricing?.samples ?? DEFAULT_SAMPLES,
    seed: job.record.pricing?.seed ?? DEFAULT_SEED,
    stageZeroCost: stageZeroCost(bare),
  });
}

const loadingOf = ({ net, direct }: CostRollUp): number => Number(net.amount) / Number(direct.amount);

/** Exact decimal text: the lines up to the hold with their share of overhead and profit. */
function stageZeroCost(bare: CostRollUp): string {
  const lines = stageZeroLines(bare).reduce((sum, { amount }) => sum + exactMoney(amount).minor, 0n);
  const whole = exactMoney(bare.direct).minor;
  return whole === 0n ? '0' : decimalText(proportionOf(exactMoney(bare.net), lines, whole, 'half-away-from-zero'));
}

const stageZeroOf = (bare: CostRollUp, { information }: CostRisk): Totals['stageZero'] => ({
  title: 'Stage 0: open and map, up to the hold', amount: { amount: stageZeroCost(bare), currency: bare.currency },
  labourH: stageZeroLines(bare).reduce((sum, { quantity }) => sum + Number(quantity.charged), 0),
  reserveFreed: information.reserveFreed, lines: stageZeroLines(bare).map(({ code }) => code),
});

export const DEFAULT_SAMPLES = 2000;
export const DEFAULT_SEED = 1;

const contingencyFor = ({ job }: CostContext, risk: CostRisk): { readonly percent: string } | { readonly amount: string } => {
  const stated = job.record.pricing?.contingencyPercent;
  return stated === undefined ? { amount: risk.contingency.amount } : { percent: String(stated) };
};

interface TotalsContext {
  readonly context: CostContext;
  readonly risk: CostRisk;
}

function totalsFor(rollUp: CostRollUp, bare: CostRollUp, { context: { job }, risk }: TotalsContext): Totals {
  const withTax = taxedLike(bare);
  const stated = job.record.pricing?.contingencyPercent;
  return {
    currency: rollUp.currency, net: rollUp.direct, overhead: rollUp.overhead, profit: rollUp.profit, contingency: rollUp.contingency,
    contingencyBasis: stated === undefined ? 'P80 of the cost less the point estimate' : `${stated} % as stated in the record`,
    taxes: rollUp.taxes.filter(({ taxable }) => Number(taxable.amount) !== 0).map(({ code, name, percent, taxable, tax }) => ({ code, name, percent, base: taxable, amount: tax })),
    tax: rollUp.tax, total: rollUp.gross,
    range: { p10: withTax(risk.p10), p50: withTax(risk.p50), p80: withTax(risk.p80), p90: withTax(risk.p90) },
    byCause: rollUp.byCause.map(({ causeClass, gross }) => ({ causeClass, amount: gross })),
    parts: shareOf(rollUp, 'part'), labour: shareOf(rollUp, 'labour'),
    drivers: risk.drivers.map(({ title, varianceShare }) => ({ name: title, shareOfVariance: varianceShare })),
    stageZero: stageZeroOf(bare, risk),
    p90RelativeError: risk.p90RelativeError, samples: risk.samples,
  };
}

const shareOf = (rollUp: CostRollUp, part: 'part' | 'labour'): MoneyJson =>
  rollUp.byPartOrLabour.find(({ partOrLabour }) => partOrLabour === part)?.gross ?? { amount: '0', currency: rollUp.currency };

/** The range is of net cost; the reader pays tax on it in the proportion of the point estimate. */
function taxedLike({ net, gross }: CostRollUp): (amount: MoneyJson) => MoneyJson {
  const [whole, share] = [exactMoney(net).minor, exactMoney(gross).minor];
  return (amount) => whole === 0n ? amount : moneyJson(proportionOf(exactMoney(amount), share, whole, 'half-away-from-zero'));
}
