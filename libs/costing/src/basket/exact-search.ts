import { tieBreakers } from './basket-model.js';
import type { BasketPlan } from './plan-parts.js';
import { leastOption, optionsOf, type Option, type Work } from './group-options.js';
import { groupsOf, type Group, type Member } from './pack-groups.js';
import type { Purchase } from './read-order.js';
import { regimesOf, type Regime, type SupplierRegime } from './regimes.js';
import { unbeaten, type Priced } from './unbeaten.js';

/**
 * The cheapest complete order, by looking at every way of ordering from the suppliers: who is ordered from, with which
 * surcharges, with delivery paid or free. Within one way demands can be bought for one by one, but for the sums that
 * the goods of a supplier have to reach; those are met by joining the ways to cover each demand, of which only such are
 * kept that no other beats.
 *
 * Exact, and in work that is counted: nothing when demands share goods, mass decides about surcharges, sheets may be cut
 * to travel, or the work runs out. A plan without a known order has no limit to search within.
 */
export function exactSearch(plan: BasketPlan): Purchase | undefined {
  if (plan.knownMinor === undefined || !isByOrder(plan)) return undefined;
  const groups = groupsOf(plan, tieBreakers(plan));
  const regimes = regimesOf(plan);
  if (groups === undefined || regimes === undefined) return undefined;
  const work = { left: MOST_STEPS };
  const costs = costsByRegime(plan, groups, { regimes, work });
  let best: Label = { cost: plan.knownMinor + LESS_THAN_A_UNIT, goods: [], taken: undefined };
  for (const judged of costs) {
    if (judged.least >= best.cost) break;
    best = bestWithin(groups, judged, { best, work });
    if (work.left < 0) return undefined;
  }
  return best.taken === undefined ? undefined : purchaseOf(plan, best);
}

const MOST_STEPS = 3_000_000;

/** What tells orders of one cost apart adds up to half a unit at most. */
const LESS_THAN_A_UNIT = 0.75;

const isByOrder = ({ options, offers }: BasketPlan): boolean =>
  options.hazardBoxKg === undefined &&
  !(options.mayCutSheets === true && offers.some(({ pack }) => pack.oversize && pack.cutFee !== undefined));

/** Ways to cover the groups so far, each knowing the one it was made from. */
interface Label extends Priced {
  readonly taken: { readonly option: Option; readonly before: Label } | undefined;
}

/** A way of ordering with the cheapest cover of each group under it. */
interface Judged {
  readonly regime: Regime;
  readonly open: readonly (readonly Member[])[];
  readonly leasts: readonly Option[];
  readonly least: number;
}

/** Ways of ordering under which everything can be covered, the cheapest first. */
function costsByRegime(
  plan: BasketPlan,
  groups: readonly Group[],
  { regimes, work }: { readonly regimes: readonly Regime[]; readonly work: Work },
): readonly Judged[] {
  const known = groups.map(() => new Map<string, Option | undefined>());
  const leastOf = (place: number, open: readonly Member[]): Option | undefined => {
    const key = open.map(({ offer }) => offer).join();
    if (!known[place].has(key)) known[place].set(key, leastOption(groups[place], { open, work }));
    return known[place].get(key);
  };
  return regimes
    .flatMap((regime): readonly Judged[] => {
      const open = groups.map(({ members }) => members.filter((member) => isOpen(plan, regime, member)));
      const leasts: Option[] = [];
      for (const [place, members] of open.entries()) {
        const least = leastOf(place, members);
        if (least === undefined) return [];
        leasts.push(least);
      }
      return [{ regime, open, leasts, least: leasts.reduce((sum, { cost }) => sum + cost, regime.charges) }];
    })
    .sort((a, b) => a.least - b.least);
}

function isOpen({ offers }: BasketPlan, { suppliers }: Regime, { offer, supplier }: Member): boolean {
  const way = suppliers.find((one) => one.supplier === supplier);
  const { pack } = offers[offer];
  return (
    way !== undefined && (way.mayBeHazardous || !pack.hazardous) && (way.mayBeOversize || !pack.oversize)
  );
}

/** The better of the best so far and the best of this way of ordering. */
function bestWithin(
  groups: readonly Group[],
  judged: Judged,
  { best, work }: { readonly best: Label; readonly work: Work },
): Label {
  const watched = judged.regime.suppliers.filter(({ goodsFrom }) => goodsFrom > 0);
  const natural = joinedLeasts(judged, watched);
  if (reaches(natural, watched)) return natural.cost < best.cost ? natural : best;
  if (leastByReaching(judged, watched) >= best.cost) return best;
  const slack = best.cost - judged.least;
  let labels: readonly Label[] = [startOf(judged, watched)];
  let rest = judged.least - judged.regime.charges;
  for (const [place, group] of groups.entries()) {
    const { cost } = judged.leasts[place];
    const options = optionsOf(group, {
      work,
      open: judged.open[place],
      watched: watched.map(({ supplier }) => supplier),
      limit: cost + slack,
    });
    rest -= cost;
    labels = joinedTo(labels, options, { watched, limit: best.cost - rest, work });
    if (work.left < 0) return best;
  }
  const found = labels.find((label) => reaches(label, watched));
  return found !== undefined && found.cost < best.cost ? found : best;
}

const startOf = ({ regime }: Judged, watched: readonly SupplierRegime[]): Label => ({
  cost: regime.charges,
  goods: watched.map(() => 0),
  taken: undefined,
});

const reaches = ({ goods }: Label, watched: readonly SupplierRegime[]): boolean =>
  watched.every(({ goodsFrom }, place) => goods[place] >= goodsFrom);

/** The cheapest cover of every group, whatever sums that reaches. */
const joinedLeasts = (judged: Judged, watched: readonly SupplierRegime[]): Label =>
  judged.leasts.reduce<Label>(
    (label, { cost, packs }, group) => {
      const goods = watched.map(({ supplier }) =>
        judged.open[group].reduce((sum, member) => {
          const count = packs.find(([offer]) => offer === member.offer)?.[1] ?? 0;
          return member.supplier === supplier ? sum + member.goods[count] : sum;
        }, 0),
      );
      return joined(label, { cost, packs, goods }, watched);
    },
    startOf(judged, watched),
  );

/** The goods of one supplier reach their sum, and groups that he has nothing for cost what they cost. */
const leastByReaching = ({ regime, open, leasts }: Judged, watched: readonly SupplierRegime[]): number =>
  Math.max(
    0,
    ...watched.map(({ supplier, goodsFrom }) =>
      leasts.reduce(
        (sum, { cost }, group) =>
          open[group].some((member) => member.supplier === supplier) ? sum : sum + cost,
        regime.charges + goodsFrom,
      ),
    ),
  );

interface Joining {
  readonly watched: readonly SupplierRegime[];
  readonly limit: number;
  readonly work: Work;
}

function joinedTo(
  labels: readonly Label[],
  options: readonly Option[],
  { watched, limit, work }: Joining,
): readonly Label[] {
  const made: Label[] = [];
  for (const label of labels) {
    for (const option of options) {
      work.left -= 1;
      if (label.cost + option.cost >= limit) break;
      made.push(joined(label, option, watched));
    }
    if (work.left < 0) return [];
  }
  return unbeaten(made);
}

const joined = (label: Label, option: Option, watched: readonly SupplierRegime[]): Label => ({
  cost: label.cost + option.cost,
  goods: watched.map(({ goodsFrom }, place) => Math.min(goodsFrom, label.goods[place] + option.goods[place])),
  taken: { option, before: label },
});

function purchaseOf(plan: BasketPlan, best: Label): Purchase {
  const packs = plan.offers.map(() => 0);
  for (let label = best; label.taken !== undefined; label = label.taken.before) {
    for (const [offer, count] of label.taken.option.packs) packs[offer] += count;
  }
  return { packs, cut: plan.offers.map(() => 0), flows: new Map() };
}
