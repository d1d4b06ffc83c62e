import { wholePackCount, type MaterialVariant } from '#lib/takeoff';
import {
  isHardenerOf,
  type BasketPlan,
  type Demand,
  type Good,
  type Offer,
  type Tier,
} from './plan-parts.js';
import type { ResinMatch } from './basket-request.js';
import type { SupplierTerms } from './supplier-terms.js';

interface Bounding {
  readonly demands: readonly Demand[];
  readonly goods: readonly Good[];
  readonly suppliers: readonly SupplierTerms[];
  readonly matches: readonly ResinMatch[];
}

/** Numbers of packs: what covers everything alone, and what no order that costs least passes. */
interface Counts {
  readonly ofUse: number;
  readonly most: number;
}

/**
 * How many packs of each offer an order that costs least can hold; nothing else but stock limits it.
 *
 * Beyond that number one pack less would still cover everything its good serves, alone, keep the last price break, reach
 * the minimum order and the free delivery of its supplier, and cure all the resin that can be bought; and it would cost
 * no more. So some cheapest order keeps to it.
 */
export function boundOffers(offers: readonly Offer[], bounding: Bounding): readonly Offer[] {
  const counts = offers.map((offer) => inStock(offer, countsFor(offer, coverOf(offer, bounding), bounding)));
  const resinKg = (match: ResinMatch, count: keyof Counts): number =>
    offers.reduce(
      (sum, { pack: { content } }, index) =>
        isResinOf(content, match) ? sum + counts[index][count] * content.quantity : sum,
      0,
    );
  return offers.flatMap((offer, index) => {
    const match = bounding.matches.find((one) => isHardenerOf(offer.pack.content, one));
    if (match === undefined) return limitedTo(offer, counts[index]);
    const packsFor = (kg: number): number =>
      wholePackCount(kg * match.massRatio, offer.pack.content.quantity);
    const cover = Math.max(coverOf(offer, bounding), packsFor(resinKg(match, 'ofUse')));
    const { ofUse, most } = countsFor(offer, cover, bounding);
    return limitedTo(offer, { ofUse, most: Math.max(most, packsFor(resinKg(match, 'most'))) });
  });
}

function countsFor(offer: Offer, cover: number, bounding: Bounding): Counts {
  const last = offer.tiers[offer.tiers.length - 1];
  return { ofUse: cover, most: Math.max(cover, last.from, packsToReach(offer, bounding)) };
}

/** Packs that alone cover everything the good of an offer can be used for. */
const coverOf = ({ pack, good }: Offer, { goods, demands }: Bounding): number =>
  goods[good].arcs.reduce(
    (sum, { demand, factor }) => sum + wholePackCount(demands[demand].toBuy, pack.content.quantity * factor),
    0,
  );

/** Packs that alone reach the minimum order and the free delivery of their supplier. */
function packsToReach({ supplier, tiers }: Offer, { suppliers }: Bounding): number {
  const { minimumOrder, freeDeliveryFrom } = suppliers[supplier];
  const price = tiers[tiers.length - 1].minor;
  const most = Math.max(Number(minimumOrder.minor), Number(freeDeliveryFrom.minor));
  return price === 0 ? 0 : Math.ceil(most / price);
}

export const isResinOf = (
  { material, part }: MaterialVariant,
  { resin }: Pick<ResinMatch, 'resin'>,
): boolean => material === resin && part === undefined;

const inStock = ({ pack: { stock = Number.POSITIVE_INFINITY } }: Offer, { ofUse, most }: Counts): Counts => ({
  ofUse: Math.min(ofUse, stock),
  most: Math.min(most, stock),
});

/** The offer with no more packs than this and the prices that so many reach; none when that is nothing. */
function limitedTo(offer: Offer, counts: Counts): readonly Offer[] {
  const { ofUse, most } = inStock(offer, counts);
  return withTiers(
    offer,
    ofUse,
    offer.tiers.map((tier) => upTo(tier, most)),
  );
}

const upTo = ({ from, upTo: before, price, minor }: Tier, most: number): Tier => ({
  from,
  upTo: Math.min(before, most),
  price,
  minor,
});

/** An offer by the prices that can be reached; the most packs follow from them. */
function withTiers(
  { pack, supplier, good, cutFee }: Offer,
  mostOfUse: number,
  tiers: Offer['tiers'],
): readonly Offer[] {
  const reached = tiers.filter(({ from, upTo }) => from <= upTo);
  const mostPacks = Math.max(0, ...reached.map(({ upTo }) => upTo));
  return mostPacks === 0
    ? []
    : [
        {
          pack,
          supplier,
          good,
          mostOfUse: Math.min(mostOfUse, mostPacks),
          mostPacks,
          tiers: reached,
          cutFee,
        },
      ];
}

/**
 * The offers when an order is known that costs this much: packs whose price passes what it leaves for them belong to no
 * better order. Of each offer so much is left as the goods of all other demands cannot cost less than.
 */
export function affordable(
  { offers, goods }: BasketPlan,
  minor: number,
  least: readonly number[] | undefined,
): readonly Offer[] {
  const all = (least ?? []).reduce((sum, one) => sum + one, 0);
  return offers.flatMap((offer) => {
    const own = goods[offer.good].arcs.reduce((sum, { demand }) => sum + (least?.[demand] ?? 0), 0);
    return withTiers(
      offer,
      offer.mostOfUse,
      offer.tiers.map((tier) => upTo(tier, packsFor(minor - all + own, tier.minor))),
    );
  });
}

/** A thousandth of a minor unit is left to sums that are not whole. */
const packsFor = (minor: number, price: number): number =>
  price === 0 ? Number.POSITIVE_INFINITY : Math.floor((minor + 0.001) / price);
