import type { BasketPlan, Offer } from './plan-parts.js';
import type { Row, Term } from './linear-model.js';
import {
  allPacks,
  atLeast,
  atMost,
  binary,
  joined,
  names,
  nothingAdded,
  paidFor,
  term,
  whole,
  type Part,
} from './model-parts.js';

interface Placed {
  readonly offer: Offer;
  readonly index: number;
}

/** The order to one supplier: delivery with its free limit, minimum order, surcharges. */
export function supplierPart(
  plan: BasketPlan,
  supplier: number,
  { hasMinimum }: { readonly hasMinimum: boolean },
): Part {
  const offers = plan.offers
    .map((offer, index) => ({ offer, index }))
    .filter(({ offer }) => offer.supplier === supplier);
  if (offers.length === 0) return nothingAdded;
  const order = names.order(supplier);
  const { delivery, minimumOrder } = plan.suppliers[supplier];
  const goods = offers.flatMap(({ offer, index }) => paidFor(offer, index));
  const used = atMost(`used${supplier}`, 0, [
    term(order, 1),
    ...offers.flatMap(({ offer, index }) => allPacks(offer, index, -1)),
  ]);
  const minimum = hasMinimum
    ? reached(`minimum${supplier}`, goods, { by: order, minor: Number(minimumOrder.minor) })
    : [];
  return joined([
    { columns: [binary(order, Number(delivery.minor))], rows: [used, ...minimum] },
    freeDeliveryPart(plan, supplier, goods),
    plan.options.transport === 'collect' ? nothingAdded : surchargesOf(plan, supplier, offers),
  ]);
}

/**
 * The goods reach a sum where the binary column is one. Sums of money are whole: half a unit less keeps the solver's
 * tolerance on the right side, and dividing by the sum makes the tolerance a share of it.
 */
function reached(
  name: string,
  goods: readonly Term[],
  { by, minor }: { readonly by: string; readonly minor: number },
): readonly Row[] {
  if (minor <= 0) return [];
  const terms = [...goods, term(by, 0.5 - minor)];
  return [
    atLeast(
      name,
      0,
      terms.map(({ column, factor }) => term(column, factor / minor)),
    ),
  ];
}

function freeDeliveryPart(plan: BasketPlan, supplier: number, goods: readonly Term[]): Part {
  const { freeDeliveryFrom, delivery } = plan.suppliers[supplier];
  if (freeDeliveryFrom.minor === 0n || delivery.minor === 0n) return nothingAdded;
  const free = names.freeDelivery(supplier);
  return {
    columns: [binary(free, -Number(delivery.minor))],
    rows: [
      ...reached(`free${supplier}`, goods, { by: free, minor: Number(freeDeliveryFrom.minor) }),
      atMost(`freeOrder${supplier}`, 0, [term(free, 1), term(names.order(supplier), -1)]),
    ],
  };
}

function surchargesOf(plan: BasketPlan, supplier: number, offers: readonly Placed[]): Part {
  const { hazardSurcharge, oversizeFreight } = plan.suppliers[supplier];
  const boxKg = plan.options.hazardBoxKg;
  const hazardCost = Number(hazardSurcharge.minor);
  const oversize = binary(names.oversize(supplier), Number(oversizeFreight.minor));
  if (boxKg === undefined)
    return { columns: [oversize, binary(names.hazard(supplier), hazardCost)], rows: [] };
  const hazardous = offers.filter(({ offer }) => offer.pack.hazardous);
  const mass = hazardous.flatMap(({ offer, index }) => allPacks(offer, index, offer.pack.massKg / boxKg));
  const boxes = hazardous.reduce((sum, { offer }) => sum + (offer.mostPacks * offer.pack.massKg) / boxKg, 0);
  return {
    columns: [oversize, whole(names.hazard(supplier), Math.ceil(boxes), hazardCost)],
    rows: [atMost(`boxes${supplier}`, 0, [...mass, term(names.hazard(supplier), -1)])],
  };
}
