import type { BasketPlan, Offer } from './basket-plan.js';
import { isHardenerOf } from './basket-plan.js';
import { needsFlow } from './basket-model.js';
import { judgementOf, priceFor, type Purchase } from './read-order.js';

/** Up to here every set of suppliers is tried. */
const MOST_SUPPLIERS_TRIED = 6;

export interface Found {
  readonly purchase: Purchase;
  readonly suppliers: ReadonlySet<number>;
  /** How many demands stay open, in shares of them. */
  readonly short: number;
  readonly total: number;
}

/**
 * The cheapest order that can be found by taking suppliers as sets and needs one by one, without any claim that nothing
 * is cheaper: minimum orders and free delivery can make it worth buying one need's packs dearer.
 */
export const cheapestPurchase = (plan: BasketPlan): Purchase =>
  bestOf(ordersBySuppliers(plan, () => true))?.purchase ?? nothing(plan);

/** The best order from each set of suppliers that passes. */
export function ordersBySuppliers(
  plan: BasketPlan,
  passes: (suppliers: ReadonlySet<number>) => boolean,
): readonly Found[] {
  const cover = rememberedCover(plan);
  return supplierSets(plan)
    .filter(passes)
    .map((suppliers) => {
      const purchase = purchaseFrom(plan, suppliers, cover);
      return { purchase, suppliers, ...judged(plan, purchase) };
    });
}

export const bestOf = (found: readonly Found[]): Found | undefined =>
  found.reduce<Found | undefined>(
    (best, one) => (best === undefined || isBetter(one, best) ? one : best),
    undefined,
  );

const nothing = (plan: BasketPlan): Purchase => ({
  packs: plan.offers.map(() => 0),
  cut: plan.offers.map(() => 0),
  flows: new Map(),
});

type Judged = Pick<Found, 'short' | 'total'>;

const isBetter = (a: Judged, b: Judged): boolean =>
  a.short < b.short - 1e-9 || (a.short <= b.short + 1e-9 && a.total < b.total);

/** An order below a minimum counts as not had. */
function judged(plan: BasketPlan, purchase: Purchase): Judged {
  const { totalMinor, isTooSmall, short } = judgementOf(plan, purchase);
  return { short: isTooSmall ? short + plan.demands.length + 1 : short, total: Number(totalMinor) };
}

function supplierSets(plan: BasketPlan): readonly ReadonlySet<number>[] {
  const all = plan.suppliers
    .map((_, supplier) => supplier)
    .filter((supplier) => plan.offers.some((offer) => offer.supplier === supplier));
  if (all.length > MOST_SUPPLIERS_TRIED) return [new Set(all), ...all.map((supplier) => new Set([supplier]))];
  return Array.from(
    { length: 2 ** all.length },
    (_, mask) => new Set(all.filter((__, place) => Math.floor(mask / 2 ** place) % 2 === 1)),
  );
}

function purchaseFrom(plan: BasketPlan, suppliers: ReadonlySet<number>, cover: FindCover): Purchase {
  const packs = plan.offers.map(() => 0);
  const flows = new Map<string, number>();
  const open = plan.demands.map(({ variant, toBuy }, demand) => ({
    demand,
    toBuy,
    isHardener: variant.part !== undefined,
  }));
  for (const { demand, toBuy } of open.filter(({ isHardener }) => !isHardener)) {
    addPacks(packs, cover(suppliers, { demand, quantity: toBuy }));
    noteFlows(plan, flows, { packs, demand });
  }
  for (const { demand, toBuy } of open.filter(({ isHardener }) => isHardener)) {
    addPacks(
      packs,
      cover(suppliers, { demand, quantity: Math.max(toBuy, hardenerFor(plan, packs, demand)) }),
    );
  }
  return { packs, cut: plan.offers.map(() => 0), flows };
}

interface Cover {
  readonly demand: number;
  readonly quantity: number;
}

interface Choice {
  readonly offer: number;
  readonly content: number;
}

const addPacks = (packs: number[], added: ReadonlyMap<number, number>): void => {
  for (const [offer, count] of added) packs[offer] += count;
};

/** A good that could serve several demands serves them as they come. */
function noteFlows(
  plan: BasketPlan,
  flows: Map<string, number>,
  { packs, demand }: { readonly packs: readonly number[]; readonly demand: number },
): void {
  for (const good of plan.goodsForDemand[demand].filter((one) => needsFlow(plan.goods[one]))) {
    const bought = plan.offersOfGood[good].reduce(
      (sum, offer) => sum + packs[offer] * plan.offers[offer].pack.content.quantity,
      0,
    );
    const used = plan.goods[good].arcs.reduce(
      (sum, arc) => sum + (flows.get(`${good}/${arc.demand}`) ?? 0) / arc.factor,
      0,
    );
    const factor = plan.goods[good].arcs.find((arc) => arc.demand === demand)?.factor ?? 0;
    flows.set(`${good}/${demand}`, Math.min(plan.demands[demand].toBuy, Math.max(0, bought - used) * factor));
  }
}

/** Hardener that the resin bought so far asks for. */
function hardenerFor(plan: BasketPlan, packs: readonly number[], demand: number): number {
  const match = plan.matches.find((one) => isHardenerOf(plan.demands[demand].variant, one));
  if (match === undefined) return 0;
  const resinKg = plan.offers.reduce(
    (sum, { pack: { content } }, offer) =>
      content.material === match.resin && content.part === undefined
        ? sum + packs[offer] * content.quantity
        : sum,
    0,
  );
  return resinKg * match.massRatio;
}

const MOST_STEPS = 20_000;

type FindCover = (suppliers: ReadonlySet<number>, cover: Cover) => ReadonlyMap<number, number>;

/** Sets of suppliers that differ in none who sells for a demand have one answer for it. */
function rememberedCover(plan: BasketPlan): FindCover {
  const allChoices = plan.demands.map((_, demand) => choicesFor(plan, demand));
  const known = new Map<string, ReadonlyMap<number, number>>();
  return (suppliers, { demand, quantity }) => {
    if (quantity <= 0) return nothingBought;
    const choices = allChoices[demand].filter(({ offer }) => suppliers.has(plan.offers[offer].supplier));
    const key = `${demand}/${quantity}/${choices.map(({ offer }) => offer).join()}`;
    const found = known.get(key) ?? searched(plan, choices, quantity).packs;
    known.set(key, found);
    return found;
  };
}

const nothingBought: ReadonlyMap<number, number> = new Map();

/** Packs that serve a demand without being a substitute, the cheapest by content first. */
const choicesFor = (plan: BasketPlan, demand: number): readonly Choice[] =>
  plan.goodsForDemand[demand]
    .flatMap((good) => {
      const arc = plan.goods[good].arcs.find((one) => one.demand === demand);
      if (arc === undefined || arc.substitute !== undefined) return [];
      return plan.offersOfGood[good].map((offer): Choice => ({
        offer,
        content: plan.offers[offer].pack.content.quantity * arc.factor,
      }));
    })
    .sort(
      (a, b) => leastPerUnit(plan.offers[a.offer], a.content) - leastPerUnit(plan.offers[b.offer], b.content),
    );

const leastPerUnit = ({ tiers }: Offer, content: number): number =>
  Math.min(...tiers.map(({ price }) => Number(price.minor))) / content;

interface Search {
  readonly plan: BasketPlan;
  readonly choices: readonly Choice[];
  /** Least price per unit among the choices from each place on. */
  readonly floor: readonly number[];
  readonly counts: number[];
  best: { readonly cost: number; readonly counts: readonly number[] };
  steps: number;
}

/**
 * What the goods of any order that covers everything cost at least, in minor units: every demand's cheapest packs from
 * anybody, without delivery, surcharges and minimum orders. Nothing is claimed where one good serves several demands or
 * stands in for another, because then demands may be covered cheaper together.
 */
export function leastCostOfGoods(plan: BasketPlan): number | undefined {
  if (
    plan.goods.some(({ arcs }) => arcs.length > 1 || arcs.some(({ substitute }) => substitute !== undefined))
  )
    return undefined;
  return plan.demands.reduce((sum, { toBuy }, demand) => {
    const choices = choicesFor(plan, demand);
    return toBuy <= 0 || choices.length === 0 ? sum : sum + searched(plan, choices, toBuy).least;
  }, 0);
}

interface CoverFound {
  readonly packs: ReadonlyMap<number, number>;
  /** No packs that cover it cost less. */
  readonly least: number;
}

/** Cheapest packs of one demand among these: depth first, cut off by what the rest must cost at least. */
function searched(plan: BasketPlan, choices: readonly Choice[], quantity: number): CoverFound {
  const floor = choices.map((_, place) =>
    Math.min(...choices.slice(place).map(({ offer, content }) => leastPerUnit(plan.offers[offer], content))),
  );
  const search: Search = {
    plan,
    choices,
    floor,
    counts: choices.map(() => 0),
    best: { cost: Number.POSITIVE_INFINITY, counts: [] },
    steps: 0,
  };
  descend(search, { place: 0, left: quantity * (1 - 1e-9), cost: 0 });
  const isComplete = search.steps <= MOST_STEPS && Number.isFinite(search.best.cost);
  return {
    packs: new Map(
      search.best.counts.flatMap((count, place): [number, number][] =>
        count === 0 ? [] : [[choices[place].offer, count]],
      ),
    ),
    least: isComplete ? search.best.cost : quantity * (1 - 1e-9) * (floor[0] ?? 0),
  };
}

interface Node {
  readonly place: number;
  readonly left: number;
  readonly cost: number;
}

function descend(search: Search, { place, left, cost }: Node): void {
  search.steps += 1;
  if (left <= 0) {
    if (cost < search.best.cost) search.best = { cost, counts: [...search.counts] };
    return;
  }
  if (place === search.choices.length || search.steps > MOST_STEPS) return;
  if (cost + left * search.floor[place] >= search.best.cost) return;
  const { offer, content } = search.choices[place];
  const { mostPacks, tiers } = search.plan.offers[offer];
  const most = Math.min(mostPacks, Math.max(Math.ceil(left / content), ...tiers.map(({ from }) => from)));
  for (let count = most; count >= 0; count -= 1) {
    search.counts[place] = count;
    descend(search, {
      place: place + 1,
      left: left - count * content,
      cost: cost + lineCost(search.plan.offers[offer], count),
    });
  }
  search.counts[place] = 0;
}

/** Packs and, for cut goods, the fee for cutting them. */
const lineCost = (offer: Offer, count: number): number =>
  count === 0
    ? 0
    : count * Number(priceFor(offer, count).minor) +
      (offer.pack.oversize ? 0 : Number(offer.cutFee?.minor ?? 0n));
