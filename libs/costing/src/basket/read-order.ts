import type { Pack } from '#lib/catalogue';
import { Defect } from '#lib/kernel';
import { addMoney, money, moneyJson, noMoney, sumMoney, type Money } from '#lib/money';
import type {
  MatchedResin,
  BasketLine,
  BasketOrder,
  Coverage,
  Leftover,
  Substitution,
  SupplierOrder,
} from './basket.js';
import { names, needsFlow } from './model-parts.js';
import { isHardenerOf, type BasketPlan, type Offer, type Tier } from './plan-parts.js';
import type { LinearModel } from './linear-model.js';
import type { SupplierTerms } from './supplier-terms.js';

/** Whole packs bought, and what the flows and cuts are; read from a solution and checked against the plan. */
export interface Purchase {
  /** Packs of each offer. */
  readonly packs: readonly number[];
  readonly cut: readonly number[];
  /** Units of each demand covered by each good, `good/demand`. */
  readonly flows: ReadonlyMap<string, number>;
}

const NEAR = 1e-4;

/** A share of a quantity that the solver's tolerance may make or lose. */
export const negligibleShare = 0.000001;

export function purchaseFrom(plan: BasketPlan, model: LinearModel, values: readonly number[]): Purchase {
  const byName = new Map(model.columns.map(({ name }, index) => [name, values[index]]));
  const wholeOf = (name: string): number => {
    const value = byName.get(name) ?? 0;
    if (Math.abs(value - Math.round(value)) > NEAR) throw new Defect(`The solver gave ${value} packs`);
    return Math.round(value);
  };
  return {
    packs: plan.offers.map(({ tiers }, offer) =>
      tiers.reduce(
        (sum, _, tier) => sum + wholeOf(names.packs(offer, tier)) + wholeOf(names.extra(offer, tier)),
        0,
      ),
    ),
    cut: plan.offers.map((_, offer) => wholeOf(names.cut(offer))),
    flows: new Map(
      plan.goods.flatMap((good, g) =>
        needsFlow(good)
          ? good.arcs.map(({ demand }): [string, number] => [
              `${g}/${demand}`,
              byName.get(names.flow(g, demand)) ?? 0,
            ])
          : [],
      ),
    ),
  };
}

/** The order that a purchase amounts to, priced again exactly: nothing of the solver's arithmetic is kept. */
export function orderOf(plan: BasketPlan, purchase: Purchase): BasketOrder {
  const { lines, orders, total } = priced(plan, purchase);
  const coverage = coverageOf(plan, purchase);
  return {
    total: moneyJson(total),
    lines: lines.map(({ shown }) => shown()),
    orders: orders.map(({ shown }) => shown()),
    substitutions: substitutionsOf(plan, purchase),
    leftovers: leftoversOf(plan, purchase),
    coverage,
    matched: matchedOf(plan, purchase),
  };
}

/** The orders alone, for whoever shows no lines and no leftovers. */
export const ordersOf = (plan: BasketPlan, purchase: Purchase): readonly SupplierOrder[] =>
  priced(plan, purchase).orders.map(({ shown }) => shown());

export interface Judgement {
  readonly totalMinor: bigint;
  /** Below some minimum order. */
  readonly isTooSmall: boolean;
  /** With resin that the hardener bought does not cure. */
  readonly isUncured: boolean;
  /** How many demands stay open, in shares of them. */
  readonly short: number;
}

/** What a purchase costs, whether it could be placed and used as it stands, and what it leaves open. */
export function judgementOf(plan: BasketPlan, purchase: Purchase): Judgement {
  const { orders, total } = priced(plan, purchase);
  return {
    totalMinor: total.minor,
    isTooSmall: orders.some(({ isTooSmall }) => isTooSmall),
    isUncured: matchedOf(plan, purchase).some(
      ({ resinKg, hardeners }) =>
        hardeners.reduce((sum, { curesKg }) => sum + curesKg, 0) < resinKg * (1 - negligibleShare),
    ),
    short: plan.demands.reduce(
      (sum, demand, index) =>
        demand.required === 0 ? sum : sum + shortOf(plan, purchase, index) / demand.required,
      0,
    ),
  };
}

function priced(plan: BasketPlan, purchase: Purchase) {
  const lines = plan.offers.flatMap((offer, index) =>
    purchase.packs[index] === 0 ? [] : [lineOf(plan, offer, { purchase, index })],
  );
  const orders = plan.suppliers.flatMap((_, supplier) => ordersFrom(plan, supplier, lines));
  return {
    lines,
    orders,
    total: sumMoney(
      orders.map((order) => order.total),
      plan.currency,
    ),
  };
}

interface PricedPacks {
  readonly supplier: number;
  readonly goods: Money;
  readonly cutFee: Money;
  readonly travelsOversize: boolean;
  readonly massKg: number;
  readonly hazardous: boolean;
  readonly shown: () => BasketLine;
}

function tierFor({ tiers }: Offer, packs: number): Tier | undefined {
  for (const tier of tiers) if (tier.from <= packs && packs <= tier.upTo) return tier;
  return undefined;
}

/** What so many packs cost, in minor units; without end for a number that was ruled out. */
export function minorFor(offer: Offer, packs: number): number {
  if (packs === 0) return 0;
  const tier = tierFor(offer, packs);
  return tier === undefined ? Number.POSITIVE_INFINITY : packs * tier.minor;
}

/** The price of so many packs: the break their number reaches. */
export const priceFor = (offer: Offer, packs: number): Money => {
  const tier = tierFor(offer, packs);
  if (tier === undefined) throw new Defect(`No price for ${packs} packs`);
  return tier.price;
};

function lineOf(
  plan: BasketPlan,
  offer: Offer,
  { purchase, index }: { readonly purchase: Purchase; readonly index: number },
): PricedPacks {
  const { pack, supplier } = offer;
  const packCount = purchase.packs[index];
  const cutCount = purchase.cut[index];
  const price = priceFor(offer, packCount);
  const goods = money(price.minor * BigInt(packCount), plan.currency);
  const cutFee = money(cutFees(offer, cutCount), plan.currency);
  return {
    supplier,
    goods,
    cutFee,
    travelsOversize: pack.oversize && cutCount < packCount,
    massKg: pack.massKg * packCount,
    hazardous: pack.hazardous,
    shown: () => shownLine(pack, { packCount, cutCount }, { price, goods, cutFee }),
  };
}

function shownLine(
  { content: { quantity, unit, ...content }, ...pack }: Pack,
  { packCount, cutCount }: { readonly packCount: number; readonly cutCount: number },
  { price, goods, cutFee }: Readonly<Record<'price' | 'goods' | 'cutFee', Money>>,
): BasketLine {
  return {
    sku: pack.sku,
    name: pack.name,
    supplier: pack.supplier,
    content,
    packCount,
    quantityPerPack: quantity,
    quantity: quantity * packCount,
    unit,
    unitPrice: moneyJson(price),
    amount: moneyJson(goods),
    cutFee: moneyJson(cutFee),
    cutCount,
    massKg: pack.massKg * packCount,
    hazardous: pack.hazardous,
    oversize: pack.oversize,
    ...(pack.shelfLifeMonths === undefined ? {} : { shelfLifeMonths: pack.shelfLifeMonths }),
  };
}

/** What substitutes cost in trouble, in minor units: it steers the choice and is not paid. */
export const troubleMinor = (plan: BasketPlan, { flows }: Purchase): number =>
  plan.goods.reduce(
    (sum, { arcs }, good) =>
      arcs.reduce(
        (all, { demand, penaltyMinor }) => all + penaltyMinor * (flows.get(`${good}/${demand}`) ?? 0),
        sum,
      ),
    0,
  );

/** Once to a line of cut goods; by the sheet where whole sheets are cut to travel. */
const cutFees = ({ pack, cutFee }: Offer, cutCount: number): bigint => {
  if (cutFee === undefined) return 0n;
  return pack.oversize ? cutFee.minor * BigInt(cutCount) : cutFee.minor;
};

interface PricedOrder {
  readonly total: Money;
  readonly isTooSmall: boolean;
  readonly shown: () => SupplierOrder;
}

function ordersFrom(
  plan: BasketPlan,
  supplier: number,
  lines: readonly PricedPacks[],
): readonly PricedOrder[] {
  const own = lines.filter((line) => line.supplier === supplier);
  if (own.length === 0) return [];
  const terms = plan.suppliers[supplier];
  const none = noMoney(plan.currency);
  const sumOf = (part: 'goods' | 'cutFee'): Money =>
    sumMoney(
      own.map((line) => line[part]),
      plan.currency,
    );
  const goods = sumOf('goods');
  const isDeliveryFree = terms.freeDeliveryFrom.minor > 0n && goods.minor >= terms.freeDeliveryFrom.minor;
  const hazardBoxes = plan.options.transport === 'collect' ? 0 : hazardBoxesOf(plan, own);
  const costs = {
    goods,
    cutFees: sumOf('cutFee'),
    delivery: isDeliveryFree ? none : terms.delivery,
    hazardSurcharge: money(terms.hazardSurcharge.minor * BigInt(hazardBoxes), plan.currency),
    oversizeFreight: own.some(({ travelsOversize }) => travelsOversize) ? terms.oversizeFreight : none,
  };
  const total = Object.values(costs).reduce(addMoney);
  return [
    {
      total,
      isTooSmall: goods.minor < terms.minimumOrder.minor,
      shown: () => shownOrder(terms, { ...costs, total }, { lines: own, isDeliveryFree, hazardBoxes }),
    },
  ];
}

type OrderCosts = Readonly<
  Record<'goods' | 'cutFees' | 'delivery' | 'hazardSurcharge' | 'oversizeFreight' | 'total', Money>
>;

interface OrderFacts {
  readonly lines: readonly PricedPacks[];
  readonly isDeliveryFree: boolean;
  readonly hazardBoxes: number;
}

const shownOrder = (
  { code, name }: SupplierTerms,
  costs: OrderCosts,
  { lines, isDeliveryFree, hazardBoxes }: OrderFacts,
): SupplierOrder => ({
  supplier: code,
  name,
  goods: moneyJson(costs.goods),
  cutFees: moneyJson(costs.cutFees),
  delivery: moneyJson(costs.delivery),
  isDeliveryFree,
  hazardSurcharge: moneyJson(costs.hazardSurcharge),
  hazardBoxes,
  oversizeFreight: moneyJson(costs.oversizeFreight),
  total: moneyJson(costs.total),
  massKg: lines.reduce((sum, { massKg }) => sum + massKg, 0),
});

/** A box that is full to one part in 10^6 is one box. */
function hazardBoxesOf({ options: { hazardBoxKg } }: BasketPlan, lines: readonly PricedPacks[]): number {
  const mass = lines.reduce((sum, { hazardous, massKg }) => (hazardous ? sum + massKg : sum), 0);
  if (mass === 0) return 0;
  return hazardBoxKg === undefined ? 1 : Math.ceil(mass / hazardBoxKg - negligibleShare);
}

/** Bought of a good, in its own unit. */
export const boughtOf = (plan: BasketPlan, { packs }: Purchase, good: number): number =>
  plan.offersOfGood[good].reduce(
    (sum, offer) => sum + packs[offer] * plan.offers[offer].pack.content.quantity,
    0,
  );

/** What a good covers of a demand, in the unit of the demand. */
function coveredBy(
  plan: BasketPlan,
  purchase: Purchase,
  { good, demand }: { readonly good: number; readonly demand: number },
): number {
  const arc = plan.goods[good].arcs.find((one) => one.demand === demand);
  if (arc === undefined) return 0;
  return needsFlow(plan.goods[good])
    ? (purchase.flows.get(`${good}/${demand}`) ?? 0)
    : boughtOf(plan, purchase, good) * arc.factor;
}

/** Left uncovered of a demand. */
function shortOf(plan: BasketPlan, purchase: Purchase, demand: number): number {
  const { toBuy } = plan.demands[demand];
  const supplied = plan.goodsForDemand[demand].reduce(
    (sum, good) => sum + coveredBy(plan, purchase, { good, demand }),
    0,
  );
  return supplied >= toBuy * (1 - negligibleShare) ? 0 : toBuy - supplied;
}

function coverageOf(plan: BasketPlan, purchase: Purchase): readonly Coverage[] {
  return plan.demands.map(({ variant, unit, needs, required, fromOnHand }, demand) => {
    const short = shortOf(plan, purchase, demand);
    return {
      ...variant,
      unit,
      required,
      fromOnHand,
      covered: Math.min(required, required - short),
      short,
      needs: needs.map(({ id, estimate, requiredQuantity }) => ({
        id,
        ...(estimate === undefined ? {} : { estimate }),
        requiredQuantity,
      })),
    };
  });
}

function leftoversOf(plan: BasketPlan, purchase: Purchase): readonly Leftover[] {
  return plan.goods.flatMap((good, g) => {
    const bought = boughtOf(plan, purchase, g);
    const used = needsFlow(good)
      ? good.arcs.reduce(
          (sum, { demand, factor }) => sum + (purchase.flows.get(`${g}/${demand}`) ?? 0) / factor,
          0,
        )
      : good.arcs.reduce(
          (sum, { demand, factor }) => sum + shareUsed(plan, purchase, { good: g, demand }) / factor,
          0,
        );
    const quantity = bought - used;
    if (bought === 0 || quantity <= bought * negligibleShare) return [];
    return [
      {
        ...good.variant,
        quantity,
        unit: good.unit,
        worth: moneyJson(worthOf(plan, purchase, { good: g, quantity })),
        ...keepsOf(plan, purchase, g),
      },
    ];
  });
}

/** Where several goods serve one demand directly, what is over is shared in proportion to what was bought. */
function shareUsed(
  plan: BasketPlan,
  purchase: Purchase,
  arc: { readonly good: number; readonly demand: number },
): number {
  const own = coveredBy(plan, purchase, arc);
  const all = plan.goodsForDemand[arc.demand].reduce(
    (sum, good) => sum + coveredBy(plan, purchase, { ...arc, good }),
    0,
  );
  return all === 0 ? 0 : own * Math.min(1, plan.demands[arc.demand].toBuy / all);
}

function worthOf(
  plan: BasketPlan,
  { packs }: Purchase,
  { good, quantity }: { readonly good: number; readonly quantity: number },
): Money {
  const perUnit = plan.offersOfGood[good]
    .filter((offer) => packs[offer] > 0)
    .map(
      (offer) =>
        Number(priceFor(plan.offers[offer], packs[offer]).minor) / plan.offers[offer].pack.content.quantity,
    );
  return money(BigInt(Math.round(Math.min(...perUnit) * quantity)), plan.currency);
}

function keepsOf(plan: BasketPlan, { packs }: Purchase, good: number): Pick<Leftover, 'keepsMonths'> {
  const lives = plan.offersOfGood[good].flatMap((offer) =>
    packs[offer] > 0 ? (plan.offers[offer].pack.shelfLifeMonths ?? []) : [],
  );
  return lives.length === 0 ? {} : { keepsMonths: Math.min(...lives) };
}

function substitutionsOf(plan: BasketPlan, purchase: Purchase): readonly Substitution[] {
  return plan.goods.flatMap((good, g) =>
    good.arcs.flatMap(({ demand, penaltyMinor, substitute }) => {
      const quantity = Math.min(plan.demands[demand].toBuy, coveredBy(plan, purchase, { good: g, demand }));
      if (substitute === undefined || quantity <= plan.demands[demand].toBuy * negligibleShare) return [];
      return [
        {
          insteadOf: plan.demands[demand].variant,
          use: good.variant,
          quantity,
          unit: plan.demands[demand].unit,
          reason: substitute.reason,
          penalty: moneyJson(money(BigInt(Math.round(penaltyMinor * quantity)), plan.currency)),
        },
      ];
    }),
  );
}

function matchedOf(plan: BasketPlan, purchase: Purchase): readonly MatchedResin[] {
  const resins = [...new Set(plan.matches.map(({ resin }) => resin))];
  const bought = (test: (good: BasketPlan['goods'][number]) => boolean): number =>
    plan.goods.reduce((sum, good, index) => (test(good) ? sum + boughtOf(plan, purchase, index) : sum), 0);
  return resins.flatMap((resin) => {
    const resinKg = bought(({ variant }) => variant.material === resin && variant.part === undefined);
    const hardeners = plan.matches
      .filter((match) => match.resin === resin)
      .map((match) => {
        const boughtKg = bought(({ variant }) => isHardenerOf(variant, match));
        return { hardener: match.hardener, boughtKg, curesKg: boughtKg / match.massRatio };
      })
      .filter(({ boughtKg }) => boughtKg > 0);
    return resinKg === 0 && hardeners.length === 0 ? [] : [{ resin, resinKg, hardeners }];
  });
}
