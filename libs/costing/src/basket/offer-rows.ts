import type { BasketPlan, Offer, Tier } from './plan-parts.js';
import type { Column, Row } from './linear-model.js';
import {
  allPacks,
  atLeast,
  atMost,
  binary,
  impliedBy,
  joined,
  names,
  nothingAdded,
  paidMinor,
  term,
  usefulIn,
  whole,
  type Part,
} from './model-parts.js';

/** The packs of one offer: their price tiers, the order they make necessary, cut fees and surcharges. */
export function offerPart(
  plan: BasketPlan,
  offer: Offer,
  { index, tie }: { readonly index: number; readonly tie: number },
): Part {
  return joined([
    { columns: packColumns(offer, index, tie), rows: orderRows(offer, index) },
    tierPart(offer, index),
    cutPart(plan, offer, index),
    surchargePart(plan, offer, index),
  ]);
}

const packColumns = (offer: Offer, index: number, tie: number): readonly Column[] =>
  offer.tiers.flatMap((tier, t) => {
    const useful = usefulIn(offer, tier);
    const cost = paidMinor(tier) + tie;
    return [
      whole(names.packs(index, t), useful, cost),
      ...(tier.upTo > useful ? [whole(names.extra(index, t), tier.upTo - useful, cost)] : []),
    ];
  });

const orderRows = (offer: Offer, index: number): readonly Row[] =>
  impliedBy(offer, index, { binary: names.order(offer.supplier), row: `order${index}` });

/** Only one tier of an offer holds, and its count decides which. */
function tierPart(offer: Offer, index: number): Part {
  if (offer.tiers.length < 2) return nothingAdded;
  return {
    columns: offer.tiers.map((_, t) => binary(names.inTier(index, t))),
    rows: [
      ...offer.tiers.flatMap((tier, t) => tierRows(offer, tier, { index, t })),
      atMost(
        `one${index}`,
        1,
        offer.tiers.map((_, t) => term(names.inTier(index, t), 1)),
      ),
    ],
  };
}

function tierRows(
  offer: Offer,
  tier: Tier,
  { index, t }: { readonly index: number; readonly t: number },
): readonly Row[] {
  const useful = usefulIn(offer, tier);
  const inTier = names.inTier(index, t);
  const packs = term(names.packs(index, t), 1);
  const extra = tier.upTo > useful ? [term(names.extra(index, t), 1)] : [];
  return [
    atMost(`most${index}_${t}`, 0, [packs, term(inTier, -useful)]),
    atLeast(`least${index}_${t}`, 0, [packs, ...extra, term(inTier, -tier.from)]),
    ...(extra.length === 0
      ? []
      : [atMost(`mostExtra${index}_${t}`, 0, [...extra, term(inTier, useful - tier.upTo)])]),
  ];
}

const isCutToTravel = ({ options }: BasketPlan, { pack }: Offer): boolean =>
  pack.oversize && options.mayCutSheets === true && pack.cutFee !== undefined;

/** Cut goods pay the fee once to a line; whole sheets pay it by the sheet, where they are cut to travel. */
function cutPart(plan: BasketPlan, offer: Offer, index: number): Part {
  if (offer.cutFee === undefined) return nothingAdded;
  const fee = Number(offer.cutFee.minor);
  if (!offer.pack.oversize) {
    const isBought = names.isBought(index);
    return {
      columns: [binary(isBought, fee)],
      rows: impliedBy(offer, index, { binary: isBought, row: `cut${index}` }),
    };
  }
  if (!isCutToTravel(plan, offer)) return nothingAdded;
  const cut = atMost(`cut${index}`, 0, [term(names.cut(index), 1), ...allPacks(offer, index, -1)]);
  return { columns: [whole(names.cut(index), offer.mostPacks, fee)], rows: [cut] };
}

function surchargePart(plan: BasketPlan, offer: Offer, index: number): Part {
  if (plan.options.transport === 'collect') return nothingAdded;
  const isByBox = plan.options.hazardBoxKg !== undefined;
  const hazard = { binary: names.hazard(offer.supplier), row: `hazard${index}` };
  return {
    columns: [],
    rows: [
      ...(offer.pack.oversize ? oversizeRows(plan, offer, index) : []),
      ...(offer.pack.hazardous && !isByBox ? impliedBy(offer, index, hazard) : []),
    ],
  };
}

function oversizeRows(plan: BasketPlan, offer: Offer, index: number): readonly Row[] {
  const oversize = names.oversize(offer.supplier);
  if (!isCutToTravel(plan, offer))
    return impliedBy(offer, index, { binary: oversize, row: `oversize${index}` });
  return [
    atMost(`oversize${index}`, 0, [
      ...allPacks(offer, index, 1),
      term(names.cut(index), -1),
      term(oversize, -offer.mostPacks),
    ]),
  ];
}
