import { saidOr } from '#lib/asking';
import type { Pack } from '#lib/catalogue';
import { moneyFrom, type Currency } from '#lib/money';
import { variantOf, type MaterialVariant } from '#lib/takeoff';
import type { BasketRequest, ResinMatch } from './basket-request.js';
import {
  basketOptionQuestions,
  type BasketNeed,
  type BasketOptions,
  type OnHand,
  type Substitute,
} from './questions.js';
import { contentIn, satisfies, variantKey } from './content.js';
import { boundOffers } from './pack-bounds.js';
import {
  type Demand,
  type Offer,
  type Good,
  type Arc,
  type Excluded,
  type BasketPlan,
  isHardenerOf,
} from './plan-parts.js';
import { packsOfMaterials, tiersOf } from './price-list-index.js';
import { termsOf, type SupplierTerms } from './supplier-terms.js';

/** Sorts needs into demands and packs into goods; the request has been found sound. */
export function planBasket(request: BasketRequest, currency: Currency): BasketPlan {
  const options = {
    ...request.options,
    transport: saidOr(basketOptionQuestions.transport, request.options?.transport),
  };
  const demands = demandsOf(request.needs, request.onHand ?? []);
  const substitutes = request.substitutes ?? [];
  const matches = request.matches ?? [];
  const context = { demands, currency, substitutes, matches, byMaterial: byMaterial(demands, substitutes) };
  const relevant = packsOfMaterials(request.priceList, materialsOf(context)).filter(({ content }) =>
    isOfUse(content, context),
  );
  const judged = relevant.map((pack) => ({ pack, reason: exclusionOf(pack, options) }));
  const excluded = judged.flatMap(({ pack, reason }) => (reason === undefined ? [] : [{ pack, reason }]));
  const kept = judged.flatMap(({ pack, reason }) => (reason === undefined ? [pack] : []));
  const goods = goodsOf(kept, context);
  const suppliers = request.priceList.suppliers.map((one) => termsOf(one, currency, options.transport));
  const offers = boundOffers(offersOf(kept, { goods, suppliers, currency }), {
    ...context,
    goods,
    suppliers,
  });
  return {
    currency,
    demands,
    goods,
    offers,
    ...crossReferences(demands, goods, offers),
    suppliers,
    matches,
    options,
    excluded: excluded.map(({ pack: { sku }, reason }) => ({ sku, reason })),
    excludedVariants: excluded.map(({ pack: { content } }) => variantOf(content)),
  };
}

/** Every material that packs of use can be of. */
const materialsOf = ({ byMaterial: places, matches }: Context): ReadonlySet<string> =>
  new Set([...places.keys(), ...matches.map(({ resin }) => resin)]);

const crossReferences = (
  demands: readonly Demand[],
  goods: readonly Good[],
  offers: readonly Offer[],
): Pick<BasketPlan, 'offersOfGood' | 'goodsForDemand'> => ({
  offersOfGood: placesBy(
    offers.map(({ good }) => [good]),
    goods.length,
  ),
  goodsForDemand: placesBy(
    goods.map(({ arcs }) => arcs.map(({ demand }) => demand)),
    demands.length,
  ),
});

/** The same plan with only some of its offers, or with less of them. */
export const withOffers = (plan: BasketPlan, offers: readonly Offer[]): BasketPlan => ({
  ...plan,
  offers,
  ...crossReferences(plan.demands, plan.goods, offers),
});

/** For each of `count` targets, the places of those that point to it. */
function placesBy(targets: readonly (readonly number[])[], count: number): readonly (readonly number[])[] {
  const places: number[][] = Array.from({ length: count }, () => []);
  targets.forEach((list, place) => list.forEach((target) => places[target].push(place)));
  return places;
}

/** Places of the demands that packs of a material could serve, so that not every pack is held against every demand. */
function byMaterial(
  demands: readonly Demand[],
  substitutes: readonly Substitute[],
): ReadonlyMap<string, readonly number[]> {
  const places = new Map<string, number[]>();
  demands.forEach(({ variant }, place) => {
    const servedBy = [
      variant.material,
      ...substitutes.filter(({ insteadOf }) => satisfies(variant, insteadOf)).map(({ use }) => use.material),
    ];
    for (const material of new Set(servedBy)) places.set(material, [...(places.get(material) ?? []), place]);
  });
  return places;
}

interface Context {
  readonly byMaterial: ReadonlyMap<string, readonly number[]>;
  readonly demands: readonly Demand[];
  readonly currency: Currency;
  readonly substitutes: readonly Substitute[];
  readonly matches: readonly ResinMatch[];
}

function demandsOf(needs: readonly BasketNeed[], onHand: readonly OnHand[]): readonly Demand[] {
  const groups = new Map<string, BasketNeed[]>();
  for (const need of needs) {
    const key = `${variantKey(need)}|${need.unit}`;
    groups.set(key, [...(groups.get(key) ?? []), need]);
  }
  const left = onHand.map((stock) => ({ stock, quantity: stock.quantity }));
  return [...groups.values()].map((group) => {
    const required = group.reduce((sum, need) => sum + need.requiredQuantity, 0);
    const fromOnHand = takenFrom(left, group[0], required);
    return {
      variant: variantOf(group[0]),
      unit: group[0].unit,
      needs: group,
      required,
      fromOnHand,
      toBuy: required - fromOnHand,
    };
  });
}

/** Uses up what is at hand, in the order it was listed. */
function takenFrom(
  left: { readonly stock: OnHand; quantity: number }[],
  need: BasketNeed,
  required: number,
): number {
  let taken = 0;
  for (const entry of left) {
    if (entry.stock.unit !== need.unit || !satisfies(entry.stock, need)) continue;
    const used = Math.min(entry.quantity, required - taken);
    entry.quantity -= used;
    taken += used;
  }
  return taken;
}

function isOfUse(
  content: MaterialVariant,
  { demands, substitutes, matches, byMaterial: places }: Context,
): boolean {
  const served = (places.get(content.material) ?? []).map((place) => demands[place]);
  return (
    served.some(({ variant }) => satisfies(content, variant)) ||
    substitutes.some(
      ({ use, insteadOf }) =>
        satisfies(content, use) && served.some(({ variant }) => satisfies(variant, insteadOf)),
    ) ||
    matches.some((match) => isHardenerOf(content, match))
  );
}

function exclusionOf(pack: Pack, options: BasketOptions): Excluded['reason'] | undefined {
  if (options.suppliers !== undefined && !options.suppliers.includes(pack.supplier))
    return 'supplier-not-chosen';
  if (pack.shelfLifeMonths !== undefined && pack.shelfLifeMonths < (options.monthsUntilUse ?? 0))
    return 'does-not-keep';
  if (options.transport === 'air' && pack.hazardous) return 'hazardous-by-air';
  return pack.stock === 0 ? 'out-of-stock' : undefined;
}

const goodKey = (pack: Pack): string => `${variantKey(pack.content)}|${pack.content.unit}`;

function goodsOf(packs: readonly Pack[], context: Context): readonly Good[] {
  const byKey = new Map(packs.map((pack) => [goodKey(pack), pack.content]));
  return [...byKey.values()].map((content) => ({
    variant: variantOf(content),
    unit: content.unit,
    arcs: (context.byMaterial.get(content.material) ?? []).flatMap((place) =>
      arcsTo(context.demands[place], place, { content, context }),
    ),
  }));
}

interface Offered {
  readonly content: Pack['content'];
  readonly context: Context;
}

function arcsTo(demand: Demand, index: number, { content, context }: Offered): readonly Arc[] {
  const factor = contentIn({ ...content, quantity: 1 }, demand.unit);
  if (factor === undefined) return [];
  if (satisfies(content, demand.variant))
    return [{ demand: index, factor, penaltyMinor: 0, substitute: undefined }];
  const substitute = context.substitutes.find(
    ({ use, insteadOf }) => satisfies(content, use) && satisfies(demand.variant, insteadOf),
  );
  if (substitute === undefined) return [];
  const penalty = moneyFrom(substitute.penaltyPerUnit, context.currency);
  return [
    {
      demand: index,
      factor: factor / substitute.ratio,
      penaltyMinor: Number(penalty?.minor ?? 0n),
      substitute,
    },
  ];
}

interface Sold {
  readonly goods: readonly Good[];
  readonly suppliers: readonly SupplierTerms[];
  readonly currency: Currency;
}

/** Packs as they may be bought, before anything is known of how many. */
function offersOf(packs: readonly Pack[], { goods, suppliers, currency }: Sold): readonly Offer[] {
  const goodPlaces = new Map(
    goods.map(({ variant, unit }, index) => [`${variantKey(variant)}|${unit}`, index]),
  );
  const supplierPlaces = new Map(suppliers.map(({ code }, index) => [code, index]));
  return packs.flatMap((pack) => {
    const good = goodPlaces.get(goodKey(pack));
    const supplier = supplierPlaces.get(pack.supplier);
    if (good === undefined || supplier === undefined) return [];
    const mostPacks = pack.stock ?? Number.POSITIVE_INFINITY;
    return [
      {
        pack,
        good,
        supplier,
        mostOfUse: mostPacks,
        mostPacks,
        tiers: tiersOf(pack, currency),
        cutFee: pack.cutFee === undefined ? undefined : moneyFrom(pack.cutFee, currency),
      },
    ];
  });
}
