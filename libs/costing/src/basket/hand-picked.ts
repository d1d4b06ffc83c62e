import { wholePackCount } from '#lib/takeoff';
import { isHardenerOf, type BasketPlan, type Offer } from './basket-plan.js';
import { needsFlow } from './basket-model.js';
import { priceFor, type Purchase } from './read-order.js';

/**
 * An order as somebody in a hurry would put it together: for each need the one pack size that covers it cheapest,
 * hardener after the resin that was picked, and no supplier below his minimum order.
 *
 * It stands in when the time is up before the solver has found any order; nothing is claimed for its price.
 */
export function handPicked(plan: BasketPlan): Purchase {
  const suppliers = new Set(plan.suppliers.map((_, supplier) => supplier));
  for (;;) {
    const purchase = pickedFrom(plan, suppliers);
    const tooSmall = belowMinimum(plan, purchase);
    if (tooSmall === undefined) return purchase;
    suppliers.delete(tooSmall);
  }
}

interface Picking {
  readonly packs: number[];
  readonly flows: Map<string, number>;
}

function pickedFrom(plan: BasketPlan, suppliers: ReadonlySet<number>): Purchase {
  const picking: Picking = { packs: plan.offers.map(() => 0), flows: new Map() };
  plan.demands.forEach(({ variant, toBuy }, demand) => {
    if (toBuy > 0 && variant.part === undefined) pickFor(plan, picking, { demand, quantity: toBuy, suppliers });
  });
  plan.demands.forEach(({ variant, toBuy }, demand) => {
    if (toBuy > 0 && variant.part !== undefined) pickFor(plan, picking, { demand, quantity: toBuy, suppliers });
  });
  for (const match of plan.matches) topUpHardener(plan, picking, { match, suppliers });
  return { packs: picking.packs, cut: plan.offers.map(() => 0), flows: picking.flows };
}

interface Wanted {
  readonly demand: number;
  readonly quantity: number;
  readonly suppliers: ReadonlySet<number>;
}

function pickFor(plan: BasketPlan, { packs, flows }: Picking, { demand, quantity, suppliers }: Wanted): void {
  const choices = plan.goodsForDemand[demand].flatMap((good) => {
    const factor = plan.goods[good].arcs.find((arc) => arc.demand === demand)?.factor ?? 0;
    return plan.offersOfGood[good].filter((offer) => suppliers.has(plan.offers[offer].supplier)).map((offer) => {
      const count = wholePackCount(quantity, plan.offers[offer].pack.content.quantity * factor);
      return { good, offer, count, covers: Math.min(quantity, count * plan.offers[offer].pack.content.quantity * factor) };
    });
  }).filter(({ offer, count }) => packs[offer] + count <= plan.offers[offer].mostPacks);
  const best = leastOf(choices, ({ offer, count }) => costOf(plan.offers[offer], packs[offer] + count));
  if (best === undefined) return;
  packs[best.offer] += best.count;
  if (needsFlow(plan.goods[best.good])) flows.set(`${best.good}/${demand}`, best.covers);
}

const costOf = (offer: Offer, count: number): number => Number(priceFor(offer, count).minor) * count;

function leastOf<T>(items: readonly T[], cost: (item: T) => number): T | undefined {
  return items.reduce<T | undefined>((best, item) => (best === undefined || cost(item) < cost(best) ? item : best), undefined);
}

interface TopUp {
  readonly match: BasketPlan['matches'][number];
  readonly suppliers: ReadonlySet<number>;
}

/** As much hardener as all the resin picked asks for. */
function topUpHardener(plan: BasketPlan, { packs }: Picking, { match, suppliers }: TopUp): void {
  const quantityOf = (test: (offer: Offer) => boolean): number =>
    plan.offers.reduce((sum, offer, index) => (test(offer) ? sum + packs[index] * offer.pack.content.quantity : sum), 0);
  const resinKg = quantityOf(({ pack: { content } }) => content.material === match.resin && content.part === undefined);
  const curedKg = plan.matches.filter(({ resin }) => resin === match.resin).reduce((sum, one) =>
    sum + quantityOf(({ pack: { content } }) => isHardenerOf(content, one)) / one.massRatio, 0);
  const wanted = (resinKg - curedKg) * match.massRatio;
  if (wanted <= 0) return;
  const choices = plan.offers.map((offer, index) => ({ offer, index, count: wholePackCount(wanted, offer.pack.content.quantity) }))
    .filter(({ offer, index, count }) => isHardenerOf(offer.pack.content, match) && suppliers.has(offer.supplier) && packs[index] + count <= offer.mostPacks);
  const best = leastOf(choices, ({ offer, index, count }) => costOf(offer, packs[index] + count));
  if (best !== undefined) packs[best.index] += best.count;
}

/** The supplier with the smallest order among those whose minimum is not reached. */
function belowMinimum(plan: BasketPlan, { packs }: Purchase): number | undefined {
  const goods = plan.suppliers.map(() => 0);
  plan.offers.forEach((offer, index) => { if (packs[index] > 0) goods[offer.supplier] += costOf(offer, packs[index]); });
  const tooSmall = plan.suppliers.flatMap(({ minimumOrder }, supplier) =>
    (goods[supplier] > 0 && goods[supplier] < minorUnits(minimumOrder, plan) ? [supplier] : []));
  return leastOf(tooSmall, (supplier) => goods[supplier]);
}

/** Minor units of an amount that has been read before. */
const minorUnits = (text: string, { currency }: BasketPlan): number => Math.round(Number(text) * 10 ** currency.minorDigits);
