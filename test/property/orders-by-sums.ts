import { priceAt, type SmallOrder, type SmallPack } from './small-orders.js';

/**
 * The cheapest order by a dynamic programme over sums, with no code of the room: packs are taken one offer after the
 * other, and of all orders with the same sums only the cheapest is kept. Sums are counted up to what is needed (of
 * goods: the minimum order and free delivery); what resin is still to be cured is counted in full.
 *
 * For orders without limited stock and with one surcharge to an order.
 */
export function cheapestBySums(order: SmallOrder): number | undefined {
  let states = new Map<string, State>();
  keep(states, {
    left: order.requiredQuarters[0],
    uncured: 0,
    goods: order.suppliers.map(() => 0),
    marks: 0,
    cost: 0,
  });
  order.requiredQuarters.forEach((required, material) => {
    const own = order.packs.filter((pack) => pack.material === material);
    states = restated(states, (state) => ({ ...state, left: required }));
    for (const pack of own) states = withPack(order, states, pack);
    states = new Map([...states].filter(([, { left }]) => left === 0));
  });
  const costs = [...states.values()].flatMap((state) => totalOf(order, state) ?? []);
  return costs.length === 0 ? undefined : Math.min(...costs);
}

interface State {
  /** Quarters of the material in hand that are still needed. */
  readonly left: number;
  /** Quarters of hardener that the resin bought still asks for. */
  readonly uncured: number;
  readonly goods: readonly number[];
  /** Three bits to a supplier: ordered from, something hazardous, something oversize. */
  readonly marks: number;
  readonly cost: number;
}

function keep(states: Map<string, State>, state: State): void {
  const key = `${state.left}|${state.uncured}|${state.goods.join()}|${state.marks}`;
  const known = states.get(key);
  if (known === undefined || state.cost < known.cost) states.set(key, state);
}

function restated(states: ReadonlyMap<string, State>, change: (state: State) => State): Map<string, State> {
  const changed = new Map<string, State>();
  for (const state of states.values()) keep(changed, change(state));
  return changed;
}

function withPack(
  order: SmallOrder,
  states: ReadonlyMap<string, State>,
  pack: SmallPack,
): Map<string, State> {
  const made = new Map<string, State>();
  for (const state of states.values()) {
    keep(made, state);
    for (let count = 1; ; count += 1) {
      const next = taken(order, state, { pack, count });
      keep(made, next);
      if (isFull(order, next, { pack, count })) break;
    }
  }
  return made;
}

interface Taken {
  readonly pack: SmallPack;
  readonly count: number;
}

function taken({ suppliers, ratio }: SmallOrder, state: State, { pack, count }: Taken): State {
  const { minimum, freeFrom } = suppliers[pack.supplier];
  const goods = count * priceAt(pack, count);
  const quarters = count * pack.quarters;
  const isResin = ratio > 0 && pack.material === 0;
  const isHardener = ratio > 0 && pack.material === 1;
  const marks = (1 + (pack.hazardous ? 2 : 0) + (pack.oversize ? 4 : 0)) << (3 * pack.supplier);
  return {
    left: Math.max(0, state.left - quarters),
    uncured: isResin
      ? state.uncured + ratio * quarters
      : isHardener
        ? Math.max(0, state.uncured - quarters)
        : state.uncured,
    goods: state.goods.map((sum, supplier) =>
      supplier === pack.supplier ? Math.min(Math.max(minimum, freeFrom), sum + goods) : sum,
    ),
    marks: state.marks | marks,
    cost: state.cost + goods + (pack.oversize ? 0 : pack.cutFee),
  };
}

/** One pack more would change no sum for the better. */
const isFull = ({ suppliers, ratio }: SmallOrder, state: State, { pack, count }: Taken): boolean =>
  state.left === 0 &&
  (ratio === 0 || pack.material !== 1 || state.uncured === 0) &&
  state.goods[pack.supplier] >=
    Math.max(suppliers[pack.supplier].minimum, suppliers[pack.supplier].freeFrom) &&
  count >= pack.breakAt;

function totalOf({ suppliers }: SmallOrder, { uncured, goods, marks, cost }: State): number | undefined {
  if (uncured > 0) return undefined;
  let total = cost;
  for (const [index, terms] of suppliers.entries()) {
    const mark = (marks >> (3 * index)) & 7;
    if (mark === 0) continue;
    if (goods[index] < terms.minimum) return undefined;
    total += terms.freeFrom > 0 && goods[index] >= terms.freeFrom ? 0 : terms.delivery;
    total += (mark & 2 ? terms.hazard : 0) + (mark & 4 ? terms.oversize : 0);
  }
  return total;
}
