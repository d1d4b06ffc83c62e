import type { BasketPlan, Good, Offer, Tier } from './plan-parts.js';
import type { Column, Row, Term } from './linear-model.js';

/** Some columns and rows of the model, as one rule of the order adds them. */
export interface Part {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

export const nothingAdded: Part = { columns: [], rows: [] };

export const joined = (parts: readonly Part[]): Part => ({
  columns: parts.flatMap(({ columns }) => columns),
  rows: parts.flatMap(({ rows }) => rows),
});

export const names = {
  packs: (offer: number, tier: number): string => `n${offer}_${tier}`,
  extra: (offer: number, tier: number): string => `e${offer}_${tier}`,
  inTier: (offer: number, tier: number): string => `t${offer}_${tier}`,
  isBought: (offer: number): string => `b${offer}`,
  cut: (offer: number): string => `c${offer}`,
  flow: (good: number, demand: number): string => `x${good}_${demand}`,
  short: (demand: number): string => `s${demand}`,
  order: (supplier: number): string => `u${supplier}`,
  freeDelivery: (supplier: number): string => `f${supplier}`,
  hazard: (supplier: number): string => `h${supplier}`,
  oversize: (supplier: number): string => `o${supplier}`,
} as const;

export const whole = (name: string, upper: number, cost = 0): Column => ({
  name,
  cost,
  lower: 0,
  upper,
  isWhole: true,
});
export const binary = (name: string, cost = 0): Column => whole(name, 1, cost);
export const atLeast = (name: string, lower: number, terms: readonly Term[]): Row => ({
  name,
  lower,
  upper: Number.POSITIVE_INFINITY,
  terms,
});
export const atMost = (name: string, upper: number, terms: readonly Term[]): Row => ({
  name,
  lower: Number.NEGATIVE_INFINITY,
  upper,
  terms,
});
export const term = (column: string, factor: number): Term => ({ column, factor });

/** Packs of use in a price tier, and those that can only fill up an order; the first are never more than the second need. */
export const usefulIn = ({ mostOfUse }: Offer, { from, upTo }: Tier): number =>
  Math.min(upTo, Math.max(from, mostOfUse));

type TierFactor = (tier: Tier) => number;

const usefulPacks = ({ tiers }: Offer, index: number, factor: TierFactor): readonly Term[] =>
  tiers.map((tier, t) => term(names.packs(index, t), factor(tier)));

const extraPacks = (offer: Offer, index: number, factor: TierFactor): readonly Term[] =>
  offer.tiers.flatMap((tier, t) =>
    tier.upTo > usefulIn(offer, tier) ? [term(names.extra(index, t), factor(tier))] : [],
  );

/** Packs of an offer, times a factor. */
export const allPacks = (offer: Offer, index: number, factor: number): readonly Term[] => [
  ...usefulPacks(offer, index, () => factor),
  ...extraPacks(offer, index, () => factor),
];

/** What is paid for the packs of an offer, in minor units. */
export const paidFor = (offer: Offer, index: number): readonly Term[] => [
  ...usefulPacks(offer, index, paidMinor),
  ...extraPacks(offer, index, paidMinor),
];

/**
 * A binary column must be one when any pack of the offer is bought. Packs of use and packs beyond stand in rows of their
 * own, because a limit that is no larger than it must be keeps the relaxation of the programme close to it.
 */
export function impliedBy(
  offer: Offer,
  index: number,
  { binary: name, row }: { readonly binary: string; readonly row: string },
): readonly Row[] {
  const useful = Math.max(...offer.tiers.map((tier) => usefulIn(offer, tier)));
  const extra = Math.max(...offer.tiers.map((tier) => tier.upTo - usefulIn(offer, tier)));
  return [
    atMost(row, 0, [...usefulPacks(offer, index, () => 1), term(name, -useful)]),
    ...(extra === 0
      ? []
      : [atMost(`${row}Extra`, 0, [...extraPacks(offer, index, () => 1), term(name, -extra)])]),
  ];
}

export const paidMinor = ({ minor }: Tier): number => minor;

/** Quantity bought of a good, in its own unit, times a factor. */
export const boughtOf = (plan: BasketPlan, good: number, factor: number): readonly Term[] =>
  plan.offersOfGood[good].flatMap((index) =>
    allPacks(plan.offers[index], index, factor * plan.offers[index].pack.content.quantity),
  );

/** A good needs flows when what it is used for is a choice, or has a price in trouble. */
export const needsFlow = ({ arcs }: Good): boolean =>
  arcs.length > 1 || arcs.some(({ penaltyMinor }) => penaltyMinor > 0);
