import type { BasketPlan, Offer } from './plan-parts.js';
import { minorFor } from './read-order.js';

/** A pack that can serve a demand, and how much of it. */
export interface Choice {
  readonly offer: number;
  readonly content: number;
  /** Least minor units for a unit of the demand. */
  readonly perUnit: number;
}

export interface Cover {
  /** Packs by the place of their offer. */
  readonly packs: ReadonlyMap<number, number>;
  /** No packs that cover it cost less. */
  readonly least: number;
}

const MOST_STEPS = 20_000;

/**
 * Cheapest packs that cover a quantity among these, goods alone: depth first, cut off by what the rest must cost at
 * least. Where the steps run out the best found stands, and `least` says only what the cheapest content would cost.
 */
export function cheapestCover(plan: BasketPlan, choices: readonly Choice[], quantity: number): Cover {
  const search: Search = {
    plan,
    choices,
    floor: floorOf(choices),
    counts: choices.map(() => 0),
    best: { cost: Number.POSITIVE_INFINITY, counts: [] },
    steps: 0,
  };
  const required = quantity * (1 - FULL_SHARE);
  descend(search, { place: 0, left: required, cost: 0 });
  const isComplete = search.steps <= MOST_STEPS && Number.isFinite(search.best.cost);
  return {
    packs: new Map(
      search.best.counts.flatMap((count, place): [number, number][] =>
        count === 0 ? [] : [[choices[place].offer, count]],
      ),
    ),
    least: isComplete ? search.best.cost : required * (search.floor[0] ?? 0),
  };
}

/** A cover that is full to one part in 10^9 is full. */
const FULL_SHARE = 1e-9;

/** Packs that serve a demand without being a substitute, the cheapest by content first. */
export const choicesFor = (plan: BasketPlan, demand: number): readonly Choice[] =>
  byCost(
    plan.goodsForDemand[demand].flatMap((good) => {
      const arc = plan.goods[good].arcs.find((one) => one.demand === demand);
      return arc === undefined || arc.substitute !== undefined ? [] : choicesOf(plan, good, arc.factor);
    }),
  );

export const choicesOf = (plan: BasketPlan, good: number, factor: number): readonly Choice[] =>
  plan.offersOfGood[good].map((offer) => {
    const content = plan.offers[offer].pack.content.quantity * factor;
    return { offer, content, perUnit: leastPerUnit(plan.offers[offer], content) };
  });

export const byCost = (choices: readonly Choice[]): readonly Choice[] =>
  [...choices].sort((a, b) => a.perUnit - b.perUnit);

/**
 * What the goods of each demand cost at least in any order that covers everything, in minor units: its cheapest packs
 * from anybody, without delivery, surcharges and minimum orders. Nothing is claimed where one good serves several
 * demands or stands in for another, because then demands may be covered cheaper together.
 */
export function leastCostOfDemands(plan: BasketPlan): readonly number[] | undefined {
  const isShared = plan.goods.some(
    ({ arcs }) => arcs.length > 1 || arcs.some(({ substitute }) => substitute !== undefined),
  );
  if (isShared) return undefined;
  return plan.demands.map(({ toBuy }, demand) => {
    const choices = choicesFor(plan, demand);
    return toBuy <= 0 || choices.length === 0 ? 0 : cheapestCover(plan, choices, toBuy).least;
  });
}

const leastPerUnit = ({ tiers }: Offer, content: number): number =>
  Math.min(...tiers.map(({ minor }) => minor)) / content;

/** Least price per unit among the choices from each place on. */
function floorOf(choices: readonly Choice[]): readonly number[] {
  const floor = choices.map(({ perUnit }) => perUnit);
  for (let place = floor.length - 2; place >= 0; place -= 1)
    floor[place] = Math.min(floor[place], floor[place + 1]);
  return floor;
}

interface Search {
  readonly plan: BasketPlan;
  readonly choices: readonly Choice[];
  readonly floor: readonly number[];
  readonly counts: number[];
  best: { readonly cost: number; readonly counts: readonly number[] };
  steps: number;
}

interface Node {
  readonly place: number;
  readonly left: number;
  readonly cost: number;
}

function descend(search: Search, { place, left, cost }: Node): void {
  search.steps += 1;
  if (left <= 0) {
    if (cost < search.best.cost) search.best = { cost, counts: [...search.counts] };
    return;
  }
  if (place === search.choices.length || search.steps > MOST_STEPS) return;
  const { offer, content } = search.choices[place];
  const floor = place + 1 < search.floor.length ? search.floor[place + 1] : Number.POSITIVE_INFINITY;
  for (const count of countsToTry(search.plan.offers[offer], Math.ceil(left / content))) {
    const rest = left - count * content;
    const paid = cost + lineCost(search.plan.offers[offer], count);
    if (paid + (rest > 0 ? rest * floor : 0) >= search.best.cost) continue;
    search.counts[place] = count;
    descend(search, { place: place + 1, left: rest, cost: paid });
  }
  search.counts[place] = 0;
}

/** The packs that cover what is left and all fewer, and each price break beyond them. */
function countsToTry({ mostPacks, tiers }: Offer, enough: number): readonly number[] {
  const most = Math.min(mostPacks, enough);
  const counts: number[] = [];
  for (const { from } of tiers) if (from > most && from <= mostPacks) counts.push(from);
  for (let count = most; count >= 0; count -= 1) counts.push(count);
  return counts;
}

/** Packs and, for cut goods, the fee for cutting them. */
const lineCost = (offer: Offer, count: number): number =>
  count === 0 ? 0 : minorFor(offer, count) + (offer.pack.oversize ? 0 : Number(offer.cutFee?.minor ?? 0n));
