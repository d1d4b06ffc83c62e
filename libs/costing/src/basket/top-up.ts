import type { BasketPlan, Offer } from './plan-parts.js';
import { judgementOf, minorFor, type Purchase } from './read-order.js';

/**
 * The same purchase with more packs where an order is below its supplier's minimum, and where that makes the whole cost
 * less because delivery is free from some sum on. The packs are those of one offer that reach the sum for least; the
 * search for the best order may mix them.
 */
export function toppedUp(plan: BasketPlan, purchase: Purchase): Purchase {
  const placed = plan.suppliers.reduce(
    (now, { minimumOrder }, supplier) =>
      filledTo(plan, now, { supplier, limit: Number(minimumOrder.minor), most: Infinity }) ?? now,
    purchase,
  );
  return plan.suppliers.reduce((now, { freeDeliveryFrom, delivery }, supplier) => {
    const [limit, most] = [Number(freeDeliveryFrom.minor), Number(delivery.minor)];
    const filled = filledTo(plan, now, { supplier, limit, most });
    return filled !== undefined && costOf(plan, filled) < costOf(plan, now) ? filled : now;
  }, placed);
}

const costOf = (plan: BasketPlan, purchase: Purchase): bigint => judgementOf(plan, purchase).totalMinor;

interface Filling {
  readonly supplier: number;
  /** Minor units that the goods of the supplier have to reach. */
  readonly limit: number;
  /** It is not worth more than this. */
  readonly most: number;
}

/** The cheapest of the purchases in which one offer has been filled up to the limit; none when nothing has to be, or can. */
function filledTo(
  plan: BasketPlan,
  purchase: Purchase,
  { supplier, limit, most }: Filling,
): Purchase | undefined {
  const { offers } = plan;
  const now = offers.reduce(
    (sum, offer, place) => (offer.supplier === supplier ? sum + minorFor(offer, purchase.packs[place]) : sum),
    0,
  );
  if (now === 0 || now >= limit) return undefined;
  let least = { place: -1, count: 0, goods: now + most };
  offers.forEach((offer, place) => {
    if (offer.supplier !== supplier) return;
    const others = now - minorFor(offer, purchase.packs[place]);
    const count = countReaching(limit - others, offer, Math.max(1, purchase.packs[place]));
    const goods = count === undefined ? Number.POSITIVE_INFINITY : others + minorFor(offer, count);
    if (count !== undefined && goods < least.goods) least = { place, count, goods };
  });
  if (least.place < 0) return undefined;
  const packs = purchase.packs.map((count, place) => (place === least.place ? least.count : count));
  return { ...purchase, packs };
}

/** The fewest packs, from a number on, whose price is so much; each price tier has a number of its own. */
function countReaching(minor: number, { tiers }: Offer, least: number): number | undefined {
  for (const tier of tiers) {
    const enough = tier.minor === 0 ? Number.POSITIVE_INFINITY : Math.ceil(minor / tier.minor);
    const count = Math.max(least, tier.from, enough);
    if (count <= tier.upTo) return count;
  }
  return undefined;
}
