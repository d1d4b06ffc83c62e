import type { BasketOrder, SupplierOrder } from './basket.js';
import type { BasketPlan } from './plan-parts.js';
import { needsFlow } from './model-parts.js';
import { boughtOf, judgementOf, orderOf, priceFor, type Purchase } from './read-order.js';

/** `orderOf`, and for each supplier why more was bought than is of use. */
export function explainedOrder(plan: BasketPlan, purchase: Purchase): BasketOrder {
  const order = orderOf(plan, purchase);
  const orders = order.orders.map((one) => {
    const reason = toppedUpFor(
      plan,
      purchase,
      plan.suppliers.findIndex(({ code }) => code === one.supplier),
    );
    return reason === undefined ? one : { ...one, toppedUpFor: reason };
  });
  return { ...order, orders };
}

type Reason = SupplierOrder['toppedUpFor'];

/**
 * Why an order holds more of something than is of use: one pack of it could be left out and everything would still be
 * covered and cured, but the goods would fall below the minimum order, or below what makes delivery free.
 */
function toppedUpFor(plan: BasketPlan, purchase: Purchase, supplier: number): Reason {
  const { minimumOrder, freeDeliveryFrom, delivery } = plan.suppliers[supplier];
  const own = plan.offers.flatMap((offer, place) =>
    offer.supplier === supplier && purchase.packs[place] > 0 ? [place] : [],
  );
  const paid = (place: number, count: number): bigint =>
    count === 0 ? 0n : BigInt(count) * priceFor(plan.offers[place], count).minor;
  const goods = own.reduce((sum, place) => sum + paid(place, purchase.packs[place]), 0n);
  const without = own
    .map((place) => ({
      place,
      left: goods - paid(place, purchase.packs[place]) + paid(place, purchase.packs[place] - 1),
    }))
    .filter(({ left }) => left < goods);
  const fallsBelow = (limit: bigint): boolean =>
    limit > 0n &&
    goods >= limit &&
    without.some(({ place, left }) => left < limit && isSpare(plan, purchase, place));
  if (fallsBelow(minimumOrder.minor)) return 'minimum-order';
  return delivery.minor > 0n && fallsBelow(freeDeliveryFrom.minor) ? 'free-delivery' : undefined;
}

/** Whether one pack of an offer could be left out and nothing more would stay open or uncured. */
function isSpare(plan: BasketPlan, purchase: Purchase, place: number): boolean {
  const less = {
    ...purchase,
    packs: purchase.packs.map((count, one) => (one === place ? count - 1 : count)),
  };
  const { good } = plan.offers[place];
  const used = plan.goods[good].arcs.reduce(
    (sum, { demand, factor }) => sum + (purchase.flows.get(`${good}/${demand}`) ?? 0) / factor,
    0,
  );
  if (needsFlow(plan.goods[good]) && boughtOf(plan, less, good) < used) return false;
  const [now, then] = [judgementOf(plan, purchase), judgementOf(plan, less)];
  return then.short <= now.short && then.isUncured === now.isUncured;
}
