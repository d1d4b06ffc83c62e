import { priceAt, type SmallOrder, type SmallPack } from './small-orders.js';

/**
 * The cheapest order by trying every number of every pack, in whole cents and with no code of the room. Numbers end at
 * the stock, where the goods alone cost what a complete order is known to cost, and at twice what any rule of the order
 * could ask for, which only matters while no complete order is known.
 *
 * @returns undefined when there is no complete order
 */
export function cheapestByCounting(order: SmallOrder): number | undefined {
  if (isShort(order)) return undefined;
  const counts = order.packs.map(() => 0);
  const most = order.packs.map((pack) => Math.min(pack.stock, plenty(order, pack)));
  let best = Number.POSITIVE_INFINITY;
  const tryFrom = (place: number, goods: number): void => {
    if (place === order.packs.length) {
      best = Math.min(best, costOf(order, counts) ?? best);
      return;
    }
    const pack = order.packs[place];
    if (isOpen(order, counts, pack.material - 1)) return;
    for (let count = 0; count <= most[place]; count += 1) {
      const paid = goods + count * priceAt(pack, count);
      counts[place] = count;
      if (paid < best) tryFrom(place + 1, paid);
    }
    counts[place] = 0;
  };
  tryFrom(0, 0);
  return Number.isFinite(best) ? best : undefined;
}

/** Whether a material whose packs have all been tried is not covered, or leaves resin uncured. */
function isOpen(
  { requiredQuarters, packs, ratio }: SmallOrder,
  counts: readonly number[],
  last: number,
): boolean {
  const bought = (material: number): number =>
    packs.reduce((sum, pack, i) => (pack.material === material ? sum + counts[i] * pack.quarters : sum), 0);
  if (last < 0) return false;
  return bought(last) < requiredQuarters[last] || (ratio > 0 && last === 1 && bought(1) < ratio * bought(0));
}

/** Twice as many packs as any one rule could ask for. */
function plenty(order: SmallOrder, pack: SmallPack): number {
  const { requiredQuarters, packs, suppliers, ratio } = order;
  const { minimum, freeFrom } = suppliers[pack.supplier];
  const cheapest = Math.min(pack.cents, pack.breakAt > 0 ? pack.breakCents : pack.cents);
  const resin = packs.filter(({ material }) => material === 0);
  const toCure =
    ratio > 0 && pack.material === 1
      ? ratio * resin.reduce((sum, one) => sum + Math.min(one.stock, plenty(order, one)) * one.quarters, 0)
      : 0;
  const quarters = Math.max(requiredQuarters[pack.material], toCure);
  return (
    2 * Math.ceil(Math.max(quarters / pack.quarters, pack.breakAt, minimum / cheapest, freeFrom / cheapest))
  );
}

/** Whether all the stock of some material is less than what is needed. */
const isShort = ({ requiredQuarters, packs }: SmallOrder): boolean =>
  requiredQuarters.some(
    (required, material) =>
      packs.reduce((sum, pack) => (pack.material === material ? sum + pack.stock * pack.quarters : sum), 0) <
      required,
  );

/** What an order costs; undefined when it leaves something open, uncured or below a minimum. */
function costOf(order: SmallOrder, counts: readonly number[]): number | undefined {
  const { requiredQuarters, packs, suppliers, ratio } = order;
  const bought = requiredQuarters.map((_, material) =>
    packs.reduce((sum, pack, i) => (pack.material === material ? sum + counts[i] * pack.quarters : sum), 0),
  );
  if (bought.some((quarters, material) => quarters < requiredQuarters[material])) return undefined;
  if (ratio > 0 && bought[1] < ratio * bought[0]) return undefined;
  let total = 0;
  for (const supplier of suppliers.keys()) {
    const cost = costFrom(order, supplier, counts);
    if (cost === undefined) return undefined;
    total += cost;
  }
  return total;
}

function costFrom(
  { packs, suppliers, hazardBoxKg }: SmallOrder,
  supplier: number,
  counts: readonly number[],
): number | undefined {
  const own = packs
    .map((pack, i) => ({ pack, count: counts[i] }))
    .filter(({ pack, count }) => pack.supplier === supplier && count > 0);
  if (own.length === 0) return 0;
  const terms = suppliers[supplier];
  const goods = own.reduce((sum, { pack, count }) => sum + count * priceAt(pack, count), 0);
  if (goods < terms.minimum) return undefined;
  const hazardousKg = own.reduce((sum, { pack, count }) => (pack.hazardous ? sum + count : sum), 0);
  const boxes = hazardBoxKg === 0 ? Math.min(1, hazardousKg) : Math.ceil(hazardousKg / hazardBoxKg);
  return (
    goods +
    (terms.freeFrom > 0 && goods >= terms.freeFrom ? 0 : terms.delivery) +
    boxes * terms.hazard +
    (own.some(({ pack }) => pack.oversize) ? terms.oversize : 0) +
    own.reduce((sum, { pack }) => sum + (pack.oversize ? 0 : pack.cutFee), 0)
  );
}
