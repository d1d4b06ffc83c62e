import { mapValue, type Outcome } from '#lib/kernel';
import {
  costWithRisk,
  withShareOfLoadings,
  type CostRisk,
  type CostRollUp,
  type LineRequest,
} from '#lib/costing';
import { exactMoney, moneyJson, proportionOf, type MoneyJson } from '#lib/money';
import type { Totals } from '../document/estimate-document.js';
import { pricingTerms } from './pricing-stage.js';
import type { ExtentWork } from './extent-stage.js';
import type { Job } from '../job/job.js';
import { isStageZero } from './stage-zero.js';

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
  const {
    job: {
      record: { pricing },
    },
    extent: { growth },
  } = context;
  return mapValue(
    costWithRisk({
      ...pricingTerms(context.job, lines),
      stageZeroLines: lines.filter(isStageZero).map(({ code }) => code),
      ...(pricing?.contingencyPercent === undefined
        ? {}
        : { contingency: { percent: String(pricing.contingencyPercent) } }),
      risk: {
        extent: { low: growth.low, likely: growth.likely, high: growth.high },
        samples: pricing?.samples ?? DEFAULT_SAMPLES,
        seed: pricing?.seed ?? DEFAULT_SEED,
      },
    }),
    ({ bare, rollUp, risk }) => ({ rollUp, risk, totals: totalsFor(rollUp, bare, { context, risk }) }),
  );
}

function stageZeroOf(bare: CostRollUp, { information }: CostRisk): Totals['stageZero'] {
  const lines = bare.lines.filter(isStageZero);
  const codes = lines.map(({ code }) => code);
  return {
    title: 'Stage 0: open and map, up to the hold',
    amount: withShareOfLoadings(bare, new Set(codes)),
    labourH: lines.reduce((sum, { quantity }) => sum + Number(quantity.charged), 0),
    reserveFreed: information.reserveFreed,
    lines: codes,
  };
}

export const DEFAULT_SAMPLES = 2000;
export const DEFAULT_SEED = 1;

interface TotalsContext {
  readonly context: CostContext;
  readonly risk: CostRisk;
}

function totalsFor(rollUp: CostRollUp, bare: CostRollUp, { context: { job }, risk }: TotalsContext): Totals {
  const withTax = taxedLike(bare);
  const stated = job.record.pricing?.contingencyPercent;
  return {
    currency: rollUp.currency,
    net: rollUp.direct,
    overhead: rollUp.overhead,
    profit: rollUp.profit,
    contingency: rollUp.contingency,
    withoutContingency: { amount: bare.gross, shareWithin: risk.shareAtPoint },
    contingencyBasis:
      stated === undefined
        ? 'P80 of the cost less the price of the recorded extent at likely hours'
        : `${stated} % as stated in the record`,
    taxes: rollUp.taxes
      .filter(({ taxable }) => Number(taxable.amount) !== 0)
      .map(({ code, name, percent, taxable, tax }) => ({ code, name, percent, base: taxable, amount: tax })),
    tax: rollUp.tax,
    total: rollUp.gross,
    range: { p10: withTax(risk.p10), p50: withTax(risk.p50), p80: withTax(risk.p80), p90: withTax(risk.p90) },
    byCause: rollUp.byCause.map(({ causeClass, gross }) => ({ causeClass, amount: gross })),
    parts: shareOf(rollUp, 'part'),
    labour: shareOf(rollUp, 'labour'),
    ...(job.record.pricing?.depreciation === undefined ? {} : { depreciation: rollUp.depreciation }),
    drivers: risk.drivers.map(({ title, varianceShare }) => ({
      name: title,
      shareOfVariance: varianceShare,
    })),
    stageZero: stageZeroOf(bare, risk),
    p90RelativeError: risk.p90RelativeError,
    samples: risk.samples,
  };
}

const shareOf = (rollUp: CostRollUp, part: 'part' | 'labour'): MoneyJson =>
  rollUp.byPartOrLabour.find(({ partOrLabour }) => partOrLabour === part)?.gross ?? {
    amount: '0',
    currency: rollUp.currency,
  };

/** The range is of net cost; the reader pays tax on it in the proportion of the point estimate. */
function taxedLike({ net, gross }: CostRollUp): (amount: MoneyJson) => MoneyJson {
  const [whole, share] = [exactMoney(net).minor, exactMoney(gross).minor];
  return (amount) =>
    whole === 0n ? amount : moneyJson(proportionOf(exactMoney(amount), share, whole, 'half-away-from-zero'));
}
