import { riskKindTitles, type CostRollUp, type GoodsBilling, type JobRisk } from '#lib/costing';
import { newAreas as newAreasOf } from '#lib/extent';
import { triangularMean } from '#lib/kernel';
import { addMoney, exactMoney, moneyJson, spread, sumMoney, type MoneyJson } from '#lib/money';
import type { Totals } from '../document/estimate-document.js';
import {
  contingencyOf,
  nearMoney,
  PARTS,
  taxedLike,
  taxedRange,
  type CostContext,
} from '../stages/cost-context.js';
import { offerOf } from './offer-section.js';
import { insurerOf } from './insurer-section.js';
import type { TotalsContext } from './totals-context.js';

/** What is to be paid, what may come besides, and how sure that is. */
export function totalsFor(totals: TotalsContext): Totals {
  const { context, bare, rollUp, risk } = totals;
  const withTax = taxedLike(rollUp);
  const contingency = contingencyOf(context, rollUp, risk);
  const growth = growthOf(bare, risk);
  const stated = context.job.record.pricing?.contingencyPercent;
  return {
    currency: rollUp.currency,
    net: rollUp.direct,
    overhead: rollUp.overhead,
    profit: rollUp.profit,
    base: bare.net,
    growth,
    newAreas: newAreasSum(context, rollUp, {
      risk,
      ofBoth: rollUp.provisional,
      growth: growth.amount,
    }),
    taxes: rollUp.taxes
      .filter(({ taxable }) => Number(taxable.amount) !== 0)
      .map(({ code, name, percent, taxable, tax }) => ({ code, name, percent, base: taxable, amount: tax })),
    tax: rollUp.tax,
    total: rollUp.gross,
    shareWithin: risk.shareWithin,
    contingency,
    contingencyBasis:
      stated === undefined
        ? 'P80 of the cost less the price: four in five such jobs stay within both'
        : `${stated} % as stated in the record`,
    contingencyByKind: contingencyByKind(contingency, risk),
    totalWithContingency: withTax(sumOf(rollUp.net, contingency)),
    betterEvidence: betterOf(totals, contingency),
    range: taxedRange(rollUp, risk),
    byCause: rollUp.byCause.map(({ causeClass, gross }) => ({ causeClass, amount: gross })),
    parts: shareOf(rollUp, 'part'),
    labour: shareOf(rollUp, 'labour'),
    goods: goodsOf(context.job.answers.pricing.goods.value, rollUp),
    ...(context.job.record.pricing?.depreciation === undefined ? {} : { depreciation: rollUp.depreciation }),
    insurer: insurerOf(context, rollUp),
    ...ownWorkOf(totals),
    drivers: risk.kinds.map(({ kind, share }) => ({ name: riskKindTitles[kind], shareOfVariance: share })),
    offer: offerOf(totals),
    p90RelativeError: risk.p90RelativeError,
    samples: risk.points,
  };
}

const sumOf = (one: MoneyJson, other: MoneyJson): MoneyJson =>
  moneyJson(addMoney(exactMoney(one), exactMoney(other)));

function growthOf(bare: CostRollUp, { growth, growthM2 }: JobRisk): Totals['growth'] {
  const amount = nearMoney(bare, growth);
  return {
    amount,
    quantity: growthM2,
    unit: 'm2',
    unitPrice: nearMoney(bare, growthM2 < LEAST_M2 ? 0 : growth / growthM2),
    basis:
      growth === 0
        ? 'Nothing: on average no more is found than was recorded, because the panel ends there.'
        : 'Opening that will probably be found besides; measured again at the hold and paid by what is found.',
  };
}

/** A square centimetre or two has no price by the square metre. */
const LEAST_M2 = 5e-4;

interface Both {
  readonly risk: JobRisk;
  readonly ofBoth: MoneyJson;
  readonly growth: MoneyJson;
}

/** The rest of both provisional sums, so that they add up to the cent. */
function newAreasSum(
  { job, extent }: CostContext,
  rollUp: CostRollUp,
  { risk, ofBoth, growth }: Both,
): Totals['newAreas'] {
  const { expected, eachM2 } = newAreasOf(extent.grade, job.answers.soundedDeck.value);
  const minor = exactMoney(ofBoth).minor - exactMoney(growth).minor;
  return {
    amount: moneyJson({ minor, currency: exactMoney(ofBoth).currency }),
    quantity: expected,
    unit: 'each',
    unitPrice: nearMoney(rollUp, expected === 0 ? 0 : risk.newAreas / expected),
    basis: `Separate areas of about ${eachM2} m2 that nobody recorded, ${job.answers.soundedDeck.value === 'whole' ? 'the whole deck sounded' : 'only this part of the deck sounded'}; paid by the number found.`,
  };
}

/** Shares in whole per mille that make up the contingency to the cent. */
function contingencyByKind(contingency: MoneyJson, { kinds }: JobRisk): Totals['contingencyByKind'] {
  const whole = exactMoney(contingency);
  if (kinds.length === 0) return [];
  const amounts = spread(
    whole,
    kinds.map(({ share }) => BigInt(Math.round(share * PARTS))),
  );
  return kinds.map(({ kind, share }, index) => ({
    kind,
    name: riskKindTitles[kind],
    share,
    amount: moneyJson(amounts[index]),
  }));
}

function betterOf({ better, rollUp }: TotalsContext, contingency: MoneyJson): Totals['betterEvidence'] {
  return better.map(({ grade, contingency: left }) => {
    const then = nearMoney(rollUp, left);
    return {
      evidence: grade,
      contingency: then,
      saves: moneyJson({
        minor: exactMoney(contingency).minor - exactMoney(then).minor,
        currency: exactMoney(contingency).currency,
      }),
    };
  });
}

const shareOf = (rollUp: CostRollUp, part: 'part' | 'labour'): MoneyJson =>
  rollUp.byPartOrLabour.find(({ partOrLabour }) => partOrLabour === part)?.gross ?? {
    amount: '0',
    currency: rollUp.currency,
  };

const goodsBasis = {
  'as-used':
    'Charged as used: what the job takes of each pack, of an opened one the part that will be past its date, all of the paint in the colour of this boat, and one job of the wear of gear. Whoever buys for this job alone pays for whole packs.',
  'as-bought': 'Charged as bought: whole packs and all gear, whatever is left of them.',
} as const satisfies Record<GoodsBilling, string>;

function goodsOf(billing: GoodsBilling, { lines, currency }: CostRollUp): Totals['goods'] {
  const goods = lines.flatMap(({ goods: packs, amount }) =>
    packs === undefined ? [] : [{ billed: exactMoney(amount), bought: exactMoney(packs.bought) }],
  );
  const whole = exactMoney({ amount: '0', currency }).currency;
  const sum = (of: 'billed' | 'bought'): MoneyJson =>
    moneyJson(
      sumMoney(
        goods.map((one) => one[of]),
        whole,
      ),
    );
  return { billing, billed: sum('billed'), bought: sum('bought'), basis: goodsBasis[billing] };
}

/** An owner's hours are no money; what a yard would ask for them stands apart. */
function ownWorkOf({ context: { job, labour }, bare }: TotalsContext): Pick<Totals, 'ownWork'> {
  const own = labour.operations.filter(({ isOwn }) => isOwn);
  if (own.length === 0) return {};
  const paceOf = ({ modifiers }: (typeof own)[number]): number => {
    const owner = modifiers.find(({ code }) => code === 'owner-first-time');
    return owner === undefined ? 1 : triangularMean(owner.factor);
  };
  const money = own.reduce(
    (sum, operation) =>
      sum + (operation.meanH / paceOf(operation)) * Number(job.labourRates.perHour[operation.skill]),
    0,
  );
  return {
    ownWork: {
      labourH: own.reduce((sum, { meanH }) => sum + meanH, 0),
      aYardWouldAsk: nearMoney(bare, Number(bare.net.amount) + money),
      basis:
        'Goods, hire and a practised hand at the posted rates of the list, without tax; only the goods and the hire are in the price.',
    },
  };
}
