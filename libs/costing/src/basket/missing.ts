import type { BasketOrder, Missing } from './basket.js';
import type { Rule, Shortfalls } from './basket-model.js';
import type { BasketPlan } from './plan-parts.js';
import { satisfies } from './content.js';
import { negligibleShare } from './read-order.js';

/** The least that must stay uncovered of each demand when a rule is left out. */
export type ShortWithout = (rule: Rule) => Promise<Shortfalls>;

/**
 * What an order leaves uncovered, with the reason: that nothing on the list can serve it, or the one rule without which
 * it could be had, or, when none alone decides, that there is not enough of it.
 */
export async function missingOf(
  plan: BasketPlan,
  { coverage }: BasketOrder,
  shortWithout: ShortWithout | undefined,
): Promise<readonly Missing[]> {
  const open = coverage.flatMap(({ short, unit, needs }, demand) =>
    short === 0 ? [] : [{ short, unit, demand, needs: needs.map(({ id }) => id) }],
  );
  const isAsked = shortWithout !== undefined && open.some(({ demand }) => isOffered(plan, demand));
  const decided = isAsked ? await decidingRules(plan, shortWithout) : undefined;
  return open.map(({ short, unit, demand, needs }) => ({
    ...plan.demands[demand].variant,
    quantity: short,
    unit,
    needs,
    reason: isOffered(plan, demand)
      ? decided === undefined
        ? 'not-found-in-time'
        : decided(demand)
      : whyNotOffered(plan, demand),
  }));
}

const isOffered = ({ goodsForDemand, offersOfGood }: BasketPlan, demand: number): boolean =>
  goodsForDemand[demand].some((good) => offersOfGood[good].length > 0);

function whyNotOffered(plan: BasketPlan, demand: number): Missing['reason'] {
  const { variant } = plan.demands[demand];
  if (plan.goods.some((good) => satisfies(good.variant, variant))) return 'other-unit';
  return plan.excludedVariants.some((excluded) => satisfies(excluded, variant)) ? 'all-excluded' : 'no-pack';
}

type ReasonOf = (demand: number) => Missing['reason'];

async function decidingRules({ demands }: BasketPlan, shortWithout: ShortWithout): Promise<ReasonOf> {
  const withoutHardener = await shortWithout('hardener');
  const withoutMinimum = await shortWithout('minimum-orders');
  const isCovered = (shortfalls: Shortfalls, demand: number): boolean =>
    shortfalls[demand] <= demands[demand].toBuy * negligibleShare;
  return (demand) => {
    if (isCovered(withoutHardener, demand)) return 'no-hardener';
    return isCovered(withoutMinimum, demand) ? 'below-minimum-order' : 'not-enough';
  };
}
