import { withOffers } from './basket-plan.js';
import type { BasketPlan } from './plan-parts.js';
import { leastCostOfDemands } from './cheapest-cover.js';
import { bestOf, ordersBySuppliers } from './cheapest-purchase.js';
import { affordable } from './pack-bounds.js';
import type { Purchase } from './read-order.js';

/**
 * The plan with what the quick search's order teaches: where that is complete but for what nobody sells, no better order
 * holds packs that cost more than it leaves for them. Otherwise the plan as it is.
 */
export function withKnownOrder(plan: BasketPlan, unserved: readonly number[]): BasketPlan {
  const known = bestOf(ordersBySuppliers(plan, () => true));
  const least = leastCostOfDemands(plan);
  const unservedShare = plan.demands.reduce(
    (sum, { required }, demand) => (required === 0 ? sum : sum + unserved[demand] / required),
    0,
  );
  if (known === undefined || known.short > unservedShare + NEGLIGIBLE) return plan;
  return { ...withOffers(plan, affordable(plan, known.total, least)), knownMinor: known.total };
}

const NEGLIGIBLE = 1e-9;

/** A purchase of some of a plan's offers, told by the offers of the whole plan. */
export function widened(purchase: Purchase, from: BasketPlan, plan: BasketPlan): Purchase {
  const places = new Map(from.offers.map(({ pack: { sku } }, place) => [sku, place]));
  const taken = (counts: readonly number[]): readonly number[] =>
    plan.offers.map(({ pack: { sku } }) => {
      const place = places.get(sku);
      return place === undefined ? 0 : counts[place];
    });
  return { packs: taken(purchase.packs), cut: taken(purchase.cut), flows: purchase.flows };
}
