import type { BasketPlan } from './plan-parts.js';

/** What is bought from one supplier, as far as charges depend on it. */
export interface SupplierRegime {
  readonly supplier: number;
  readonly mayBeHazardous: boolean;
  readonly mayBeOversize: boolean;
  /** Minor units that its goods have to reach: the minimum order, or what makes delivery free. */
  readonly goodsFrom: number;
  /** Delivery and surcharges, in minor units. */
  readonly charges: number;
}

/** Suppliers that are ordered from, each in one way; nothing comes from anybody else. */
export interface Regime {
  readonly suppliers: readonly SupplierRegime[];
  readonly charges: number;
}

/** Every combination of ways to order; the best order keeps to one of them. None where there are too many to try. */
export function regimesOf(plan: BasketPlan): readonly Regime[] | undefined {
  const used = [...new Set(plan.offers.map(({ supplier }) => supplier))];
  const ways = used.map((supplier) => [undefined, ...waysOf(plan, supplier)]);
  if (ways.reduce((count, one) => count * one.length, 1) > MOST_REGIMES) return undefined;
  const chosen = ways.reduce<readonly (readonly SupplierRegime[])[]>(
    (sets, own) => sets.flatMap((set) => own.map((way) => (way === undefined ? set : [...set, way]))),
    [[]],
  );
  return chosen.map((suppliers) => ({
    suppliers,
    charges: suppliers.reduce((sum, { charges }) => sum + charges, 0),
  }));
}

const MOST_REGIMES = 2000;

function waysOf(plan: BasketPlan, supplier: number): readonly SupplierRegime[] {
  const terms = plan.suppliers[supplier];
  const own = plan.offers.filter((offer) => offer.supplier === supplier);
  const minorOf = (
    key: 'minimumOrder' | 'freeDeliveryFrom' | 'delivery' | 'hazardSurcharge' | 'oversizeFreight',
  ) => Number(terms[key].minor);
  const hazard = surchargeWays(
    minorOf('hazardSurcharge'),
    own.some(({ pack }) => pack.hazardous),
  );
  const oversize = surchargeWays(
    minorOf('oversizeFreight'),
    own.some(({ pack }) => pack.oversize),
  );
  const [minimum, free, delivery] = [
    minorOf('minimumOrder'),
    minorOf('freeDeliveryFrom'),
    minorOf('delivery'),
  ];
  const deliveries = [
    { goodsFrom: minimum, charges: delivery },
    ...(free > 0 && delivery > 0 ? [{ goodsFrom: Math.max(minimum, free), charges: 0 }] : []),
  ];
  return deliveries.flatMap(({ goodsFrom, charges }) =>
    hazard.flatMap((hazardous) =>
      oversize.map((large) => ({
        supplier,
        goodsFrom,
        mayBeHazardous: hazardous.isAllowed,
        mayBeOversize: large.isAllowed,
        charges: charges + hazardous.minor + large.minor,
      })),
    ),
  );
}

/** With the goods and their surcharge, or without both; one way where that makes no difference. */
const surchargeWays = (
  minor: number,
  isOffered: boolean,
): readonly { readonly isAllowed: boolean; readonly minor: number }[] =>
  isOffered && minor > 0
    ? [
        { isAllowed: false, minor: 0 },
        { isAllowed: true, minor },
      ]
    : [{ isAllowed: true, minor: 0 }];
