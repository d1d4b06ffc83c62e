import { isHardenerOf, type BasketPlan, type Good, type Offer } from './plan-parts.js';
import type { Column, LinearModel, Term } from './linear-model.js';
import {
  allPacks,
  atLeast,
  atMost,
  binary,
  boughtOf,
  impliedBy,
  joined,
  names,
  needsFlow,
  nothingAdded,
  paidMinor,
  term,
  type Part,
} from './model-parts.js';
import { offerPart } from './offer-rows.js';
import { isResinOf } from './pack-bounds.js';
import { supplierPart } from './supplier-rows.js';

/** How much of a demand may stay uncovered, in its unit; for orders that cannot be complete. */
export type Shortfalls = readonly number[];

/** What must differ from an order already found: the offers used, among some. */
export interface Other {
  readonly among: readonly number[];
  readonly used: ReadonlySet<number>;
}

export interface ModelChoice {
  readonly aim: 'least-cost' | 'least-shortfall';
  readonly shortfalls?: Shortfalls;
  readonly other?: Other;
  /** A rule left out, to learn whether it is what an order fails by. */
  readonly without?: Rule;
}

export type Rule = 'minimum-orders' | 'hardener';

/**
 * The order as an integer programme.
 *
 * Whole packs n per offer and price tier; coverage of every demand, by flows where a good serves more than one demand
 * or stands in for another; hardener for all the resin bought; per supplier its minimum order, delivery with its free
 * limit, hazard surcharge (to the order or to the box) and oversize freight; cut fees once to a line of cut goods and
 * by the sheet where whole sheets are cut to travel. Costs are whole minor units; leftovers add less than half a minor
 * unit in all, so that they decide between orders that cost the same and nothing else.
 */
export function basketModel(plan: BasketPlan, choice: ModelChoice): LinearModel {
  const ties = tieBreakers(plan);
  const { columns, rows } = joined([
    ...plan.offers.map((offer, index) => offerPart(plan, offer, { index, tie: ties[index] })),
    ...plan.suppliers.map((_, supplier) =>
      supplierPart(plan, supplier, { hasMinimum: choice.without !== 'minimum-orders' }),
    ),
    ...plan.goods.map((good, index) => flowPart(plan, good, index)),
    demandPart(plan, choice),
    choice.without === 'hardener' ? nothingAdded : matchPart(plan),
    otherPart(plan, choice.other),
  ]);
  if (choice.aim === 'least-cost') return { columns, rows };
  return { columns: columns.map((column) => ({ ...column, cost: shortCost(column) })), rows };
}

/** When the aim is to be as complete as possible, being without half of something counts the same whatever it is. */
const shortCost = ({ name, upper }: Column): number => (name.startsWith('s') ? 1000 / upper : 0);

function flowPart(plan: BasketPlan, good: Good, index: number): Part {
  if (!needsFlow(good)) return { columns: [], rows: [] };
  const columns = good.arcs.map(({ demand, penaltyMinor }) => ({
    name: names.flow(index, demand),
    cost: penaltyMinor,
    lower: 0,
    upper: plan.demands[demand].toBuy,
    isWhole: false,
  }));
  const used = good.arcs.map(({ demand, factor }) => term(names.flow(index, demand), 1 / factor));
  return { columns, rows: [atMost(`flow${index}`, 0, [...used, ...boughtOf(plan, index, -1)])] };
}

function demandPart(plan: BasketPlan, { shortfalls, aim }: ModelChoice): Part {
  const open = plan.demands.flatMap((demand, index) => (demand.toBuy > 0 ? [{ demand, index }] : []));
  const mayBeShort = (index: number): number =>
    aim === 'least-shortfall' ? plan.demands[index].toBuy : (shortfalls?.[index] ?? 0);
  return {
    columns: open.flatMap(({ index }) =>
      mayBeShort(index) > 0
        ? [{ name: names.short(index), cost: 0, lower: 0, upper: mayBeShort(index), isWhole: false }]
        : [],
    ),
    rows: open.map(({ demand, index }) =>
      atLeast(
        `demand${index}`,
        1,
        [
          ...plan.goodsForDemand[index].flatMap((good) => supplyTerms(plan, good, index)),
          ...(mayBeShort(index) > 0 ? [term(names.short(index), 1)] : []),
        ].map(({ column, factor }) => term(column, factor / demand.toBuy)),
      ),
    ),
  };
}

function supplyTerms(plan: BasketPlan, good: number, demand: number): readonly Term[] {
  if (needsFlow(plan.goods[good])) return [term(names.flow(good, demand), 1)];
  return plan.goods[good].arcs.flatMap(({ factor }) => boughtOf(plan, good, factor));
}

/** For each resin: what is bought of it, no more than its hardeners bought can cure. */
function matchPart(plan: BasketPlan): Part {
  const resins = [...new Set(plan.matches.map(({ resin }) => resin))];
  const goodsWhere = (test: (good: Good) => boolean): readonly number[] =>
    plan.goods.flatMap((good, index) => (test(good) ? [index] : []));
  const rows = resins.flatMap((resin, index) => {
    const bought = goodsWhere(({ variant }) => isResinOf(variant, { resin })).flatMap((good) =>
      boughtOf(plan, good, -1),
    );
    if (bought.length === 0) return [];
    const cured = plan.matches
      .filter((match) => match.resin === resin)
      .flatMap((match) =>
        goodsWhere(({ variant }) => isHardenerOf(variant, match)).flatMap((good) =>
          boughtOf(plan, good, 1 / match.massRatio),
        ),
      );
    return [atLeast(`match${index}`, 0, [...cured, ...bought])];
  });
  return { columns: [], rows };
}

/** Some offer is used that was not, or one that was is not. */
function otherPart(plan: BasketPlan, other: Other | undefined): Part {
  if (other === undefined) return nothingAdded;
  const flag = (index: number): string => `d${index}`;
  const differs = atLeast(
    'differs',
    1 - other.used.size,
    other.among.map((index) => term(flag(index), other.used.has(index) ? -1 : 1)),
  );
  const flagged = other.among.flatMap((index) => [
    ...impliedBy(plan.offers[index], index, { binary: flag(index), row: `differsMost${index}` }),
    atLeast(`differsLeast${index}`, 0, [...allPacks(plan.offers[index], index, 1), term(flag(index), -1)]),
  ]);
  return { columns: other.among.map((index) => binary(flag(index))), rows: [...flagged, differs] };
}

/**
 * Worth of what each pack holds at the least price of its good, as a share of what an order may cost: under half a minor
 * unit in all, because nobody pays less for the goods than they are worth at their least price.
 */
export function tieBreakers(plan: BasketPlan): readonly number[] {
  const perUnit = ({ tiers, pack }: Offer): number =>
    Math.min(...tiers.map(paidMinor)) / pack.content.quantity;
  const least = plan.offersOfGood.map((places) =>
    Math.min(...places.map((place) => perUnit(plan.offers[place]))),
  );
  const worths = plan.offers.map(({ good, pack }) => least[good] * pack.content.quantity);
  const all =
    plan.knownMinor ?? plan.offers.reduce((sum, { mostPacks }, index) => sum + mostPacks * worths[index], 0);
  return worths.map((worth) => (all === 0 ? 0 : (0.5 * worth) / all));
}
