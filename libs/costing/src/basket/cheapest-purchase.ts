import { isHardenerOf, type BasketPlan } from './plan-parts.js';
import type { ResinMatch } from './basket-request.js';
import { byCost, cheapestCover, choicesFor, choicesOf, type Choice } from './cheapest-cover.js';
import { needsFlow } from './model-parts.js';
import { isResinOf } from './pack-bounds.js';
import { judgementOf, type Purchase } from './read-order.js';
import { toppedUp } from './top-up.js';

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
 * The cheapest order that can be found by taking suppliers as sets and needs one by one, filled up to minimum orders and
 * to free delivery, without any claim that nothing is cheaper.
 */
export function cheapestPurchase(plan: BasketPlan): Purchase {
  const orderFrom = orderFromSets(plan);
  const fromAll = orderFrom(new Set(plan.offers.map(({ supplier }) => supplier)));
  const sets = supplierSets(plan);
  const leftOpen = leftOpenBy(plan);
  const complete = sets.filter((suppliers) => leftOpen(suppliers) <= fromAll.short + NEGLIGIBLE);
  const found = complete.map((suppliers) =>
    suppliers.size === fromAll.suppliers.size ? fromAll : orderFrom(suppliers),
  );
  return bestOf(found)?.purchase ?? nothing(plan);
}

/** The best order from each set of suppliers that passes. */
export const ordersBySuppliers = (
  plan: BasketPlan,
  passes: (suppliers: ReadonlySet<number>) => boolean,
): readonly Found[] => supplierSets(plan).filter(passes).map(orderFromSets(plan));

function orderFromSets(plan: BasketPlan): (suppliers: ReadonlySet<number>) => Found {
  const cover = rememberedCover(plan);
  return (suppliers) => {
    const purchase = toppedUp(plan, coveredBy(plan, suppliers, cover));
    return { purchase, suppliers, ...judged(plan, purchase) };
  };
}

/** Of demands for which none of the suppliers sells anything that could serve, not even as a substitute: so much stays open at least. */
function leftOpenBy(plan: BasketPlan): (suppliers: ReadonlySet<number>) => number {
  const asked = plan.demands.flatMap(({ required, toBuy }, demand) =>
    toBuy <= 0 || required === 0 ? [] : [{ share: toBuy / required, sellers: sellersFor(plan, demand) }],
  );
  return (suppliers) =>
    asked.reduce(
      (sum, { share, sellers }) => (sellers.some((one) => suppliers.has(one)) ? sum : sum + share),
      0,
    );
}

const sellersFor = (plan: BasketPlan, demand: number): readonly number[] => [
  ...new Set(
    plan.goodsForDemand[demand].flatMap((good) =>
      plan.offersOfGood[good].map((offer) => plan.offers[offer].supplier),
    ),
  ),
];

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

const NEGLIGIBLE = 1e-9;

const isBetter = (a: Judged, b: Judged): boolean =>
  a.short < b.short - NEGLIGIBLE || (a.short <= b.short + NEGLIGIBLE && a.total < b.total);

/** An order below a minimum, or with resin that nothing cures, counts as not had. */
function judged(plan: BasketPlan, purchase: Purchase): Judged {
  const { totalMinor, isTooSmall, isUncured, short } = judgementOf(plan, purchase);
  return {
    short: isTooSmall || isUncured ? short + plan.demands.length + 1 : short,
    total: Number(totalMinor),
  };
}

function supplierSets({ offers }: BasketPlan): readonly ReadonlySet<number>[] {
  const all = [...new Set(offers.map(({ supplier }) => supplier))].sort((a, b) => a - b);
  if (all.length > MOST_SUPPLIERS_TRIED) return [new Set(all), ...all.map((supplier) => new Set([supplier]))];
  return Array.from(
    { length: 2 ** all.length },
    (_, mask) => new Set(all.filter((__, place) => Math.floor(mask / 2 ** place) % 2 === 1)),
  );
}

/** Everything but hardener first, then hardener for what is needed and for all the resin that was bought. */
function coveredBy(plan: BasketPlan, suppliers: ReadonlySet<number>, cover: FindCover): Purchase {
  const packs = plan.offers.map(() => 0);
  const flows = new Map<string, number>();
  plan.demands.forEach(({ variant, toBuy }, demand) => {
    if (variant.part !== undefined) return;
    addPacks(packs, cover(suppliers, { target: demand, quantity: toBuy }));
    noteFlows(plan, flows, { packs, demand });
  });
  for (const { target, quantity } of hardenersFor(plan, packs)) {
    addPacks(packs, cover(suppliers, { target, quantity }));
  }
  return { packs, cut: plan.offers.map(() => 0), flows };
}

/** A demand by its place, or a hardener that nobody needs by itself. */
type Target = number | ResinMatch;

interface Wanted {
  readonly target: Target;
  readonly quantity: number;
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

/**
 * Hardeners to buy: each that is needed, the first of a resin for what the others leave uncured of the resin bought. A
 * resin that nobody needs a hardener for takes the one that cures it for least.
 */
function hardenersFor(plan: BasketPlan, packs: readonly number[]): readonly Wanted[] {
  const needed = plan.demands.flatMap(({ variant, toBuy }, target) =>
    variant.part === undefined ? [] : [{ target, quantity: toBuy, variant }],
  );
  const resins = [...new Set(plan.matches.map(({ resin }) => resin))];
  const unmatched = needed.filter(
    ({ variant }) => !plan.matches.some((match) => isHardenerOf(variant, match)),
  );
  return [...unmatched, ...resins.flatMap((resin) => hardenersOfResin(plan, { resin, packs, needed }))];
}

interface OfResin {
  readonly resin: string;
  readonly packs: readonly number[];
  readonly needed: readonly (Wanted & { readonly variant: BasketPlan['demands'][number]['variant'] })[];
}

function hardenersOfResin(plan: BasketPlan, { resin, packs, needed }: OfResin): readonly Wanted[] {
  const matches = plan.matches.filter((match) => match.resin === resin);
  const resinKg = plan.offers.reduce(
    (sum, { pack: { content } }, offer) =>
      isResinOf(content, matches[0]) ? sum + packs[offer] * content.quantity : sum,
    0,
  );
  const wanted = matches.flatMap((match) =>
    needed.filter(({ variant }) => isHardenerOf(variant, match)).map((one) => ({ ...one, match })),
  );
  if (wanted.length === 0) return forResinAlone(plan, matches, resinKg);
  const [first, ...others] = wanted;
  const uncuredKg = others.reduce((rest, { quantity, match }) => rest - quantity / match.massRatio, resinKg);
  return [{ ...first, quantity: Math.max(first.quantity, uncuredKg * first.match.massRatio) }, ...others];
}

/** The hardener whose cheapest packs cure it for least. */
function forResinAlone(plan: BasketPlan, matches: readonly ResinMatch[], resinKg: number): readonly Wanted[] {
  if (resinKg === 0) return [];
  const costs = matches.map((target) => {
    const quantity = resinKg * target.massRatio;
    const choices = choicesOfHardener(plan, target);
    return {
      target,
      quantity,
      cost: choices.length === 0 ? Infinity : cheapestCover(plan, choices, quantity).least,
    };
  });
  return costs.sort((a, b) => a.cost - b.cost).slice(0, 1);
}

const choicesOfHardener = (plan: BasketPlan, match: ResinMatch): readonly Choice[] =>
  byCost(
    plan.goods.flatMap(({ variant }, good) => (isHardenerOf(variant, match) ? choicesOf(plan, good, 1) : [])),
  );

type FindCover = (suppliers: ReadonlySet<number>, wanted: Wanted) => ReadonlyMap<number, number>;

interface Remembered {
  readonly choices: readonly Choice[];
  /** Whoever sells for the demand. */
  readonly sellers: readonly number[];
  readonly found: Map<string, ReadonlyMap<number, number>>;
}

/** Sets of suppliers that differ in none who sells for a demand have one answer for it. */
function rememberedCover(plan: BasketPlan): FindCover {
  const known = new Map<Target, Remembered>();
  return (suppliers, { target, quantity }) => {
    if (quantity <= 0) return nothingBought;
    const { choices, sellers, found } = known.get(target) ?? remember(plan, target, known);
    let key = `${quantity}`;
    for (const seller of sellers) if (suppliers.has(seller)) key += `/${seller}`;
    const packs = found.get(key) ?? cheapestCover(plan, soldBy(plan, choices, suppliers), quantity).packs;
    found.set(key, packs);
    return packs;
  };
}

const soldBy = (
  { offers }: BasketPlan,
  choices: readonly Choice[],
  suppliers: ReadonlySet<number>,
): readonly Choice[] => choices.filter(({ offer }) => suppliers.has(offers[offer].supplier));

function remember(plan: BasketPlan, target: Target, known: Map<Target, Remembered>): Remembered {
  const choices = typeof target === 'number' ? choicesFor(plan, target) : choicesOfHardener(plan, target);
  const sellers = [...new Set(choices.map(({ offer }) => plan.offers[offer].supplier))];
  const made = { choices, sellers, found: new Map<string, ReadonlyMap<number, number>>() };
  known.set(target, made);
  return made;
}

const nothingBought: ReadonlyMap<number, number> = new Map();
