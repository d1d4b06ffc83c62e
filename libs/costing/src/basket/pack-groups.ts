import { isHardenerOf, type BasketPlan, type Offer } from './plan-parts.js';
import { isResinOf } from './pack-bounds.js';
import { minorFor } from './read-order.js';

/** An offer in the group of demands that it can matter to. */
export interface Member {
  readonly offer: number;
  readonly supplier: number;
  /** Place of its demand in the group; a hardener that nobody needs by itself has none. */
  readonly demand: number | undefined;
  /** In the unit of the demand. */
  readonly content: number;
  readonly resinKg: number;
  /** Resin that one pack cures. */
  readonly curesKg: number;
  /** Minor units for so many packs, by their number; cut fees and what decides between equal orders counted. */
  readonly costs: readonly number[];
  /** Minor units of the goods alone. */
  readonly goods: readonly number[];
}

/** Demands that cannot be bought for one by one: a resin with its hardeners; every other demand is a group of its own. */
export interface Group {
  readonly required: readonly number[];
  /** Resin before what cures it. */
  readonly members: readonly Member[];
}

/** The groups of a plan; none where a good serves several demands or stands in for another. */
export function groupsOf(plan: BasketPlan, ties: readonly number[]): readonly Group[] | undefined {
  if (
    plan.goods.some(({ arcs }) => arcs.length > 1 || arcs.some(({ substitute }) => substitute !== undefined))
  )
    return undefined;
  const resins = [...new Set(plan.matches.map(({ resin }) => resin))];
  const isOfResins = (material: string): boolean => resins.includes(material);
  const alone = plan.demands.flatMap(({ variant }, demand) =>
    isOfResins(variant.material)
      ? []
      : [groupOf(plan, [demand], { goods: plan.goodsForDemand[demand], ties })],
  );
  const matched = resins.map((resin) =>
    groupOf(
      plan,
      plan.demands.flatMap(({ variant }, demand) => (variant.material === resin ? [demand] : [])),
      { ties, goods: plan.goods.flatMap(({ variant }, good) => (variant.material === resin ? [good] : [])) },
    ),
  );
  return [...alone, ...matched];
}

interface Within {
  readonly goods: readonly number[];
  readonly ties: readonly number[];
}

function groupOf(plan: BasketPlan, demands: readonly number[], { goods, ties }: Within): Group {
  const isServed = (demand: number): boolean =>
    plan.goodsForDemand[demand].some((good) => plan.offersOfGood[good].length > 0);
  const members = goods.flatMap((good) =>
    plan.offersOfGood[good].map((offer) => memberOf(plan, offer, { demands, tie: ties[offer] })),
  );
  return {
    required: demands.map((demand) => (isServed(demand) ? plan.demands[demand].toBuy * (1 - FULL_SHARE) : 0)),
    members: [...members].sort((a, b) => Number(a.curesKg > 0) - Number(b.curesKg > 0)),
  };
}

/** A cover that is full to one part in 10^9 is full. */
const FULL_SHARE = 1e-9;

function memberOf(
  plan: BasketPlan,
  place: number,
  { demands, tie }: { readonly demands: readonly number[]; readonly tie: number },
): Member {
  const offer = plan.offers[place];
  const { content } = offer.pack;
  const arc = plan.goods[offer.good].arcs[0];
  const match = plan.matches.find((one) => isHardenerOf(content, one));
  const isResin = plan.matches.some((one) => isResinOf(content, one));
  const goods = Array.from({ length: offer.mostPacks + 1 }, (_, count) => minorFor(offer, count));
  return {
    offer: place,
    supplier: offer.supplier,
    demand: arc === undefined ? undefined : demands.indexOf(arc.demand),
    content: content.quantity * (arc?.factor ?? 1),
    resinKg: isResin ? content.quantity : 0,
    curesKg: match === undefined ? 0 : content.quantity / match.massRatio,
    costs: goods.map((minor, count) => (count === 0 ? 0 : minor + cutFee(offer) + count * tie)),
    goods,
  };
}

/** Whole sheets are only cut by those who are asked to. */
const cutFee = ({ pack, cutFee: fee }: Offer): number => (pack.oversize ? 0 : Number(fee?.minor ?? 0n));
