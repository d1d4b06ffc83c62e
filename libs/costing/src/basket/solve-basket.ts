import { saidOr } from '#lib/asking';
import { basketOptionQuestions } from './questions.js';
import { Defect, refusal, success, type Outcome } from '#lib/kernel';
import {
  exactMoney,
  findCurrency,
  money,
  moneyJson,
  noMoney,
  spread,
  subtractMoney,
  type Currency,
  type MoneyJson,
} from '#lib/money';
import type { Basket, BasketOrder, Proof, SecondBest } from './basket.js';
import { faultsOfBasket } from './basket-faults.js';
import { basketModel, type ModelChoice, type Other, type Rule, type Shortfalls } from './basket-model.js';
import { planBasket, withOffers } from './basket-plan.js';
import type { BasketPlan } from './plan-parts.js';
import type { BasketRequest } from './basket-request.js';
import { leastCostOfDemands } from './cheapest-cover.js';
import type { LinearModel, Solve, SolverAnswer } from './linear-model.js';
import { bestOf as cheapestOf, cheapestPurchase, ordersBySuppliers } from './cheapest-purchase.js';
import { explainedOrder } from './topped-up.js';
import { exactSearch } from './exact-search.js';
import { withKnownOrder, widened } from './known-order.js';
import { missingOf } from './missing.js';
import { names } from './model-parts.js';
import {
  judgementOf,
  negligibleShare,
  orderOf,
  priceFor,
  purchaseFrom,
  troubleMinor,
  type Purchase,
} from './read-order.js';

/** The second best is there to be compared, so it may be this share above the best of its kind. */
const SECOND_BEST_GAP = 0.005;

/**
 * The cheapest set of whole packs that covers every need, or the best that can be had with what is missing named.
 *
 * The solver is given by the caller; whatever it answers is read, checked against every need and priced again exactly.
 */
export async function solveBasket(request: BasketRequest, solve: Solve): Promise<Outcome<Basket>> {
  const problems = faultsOfBasket(request);
  const currency = findCurrency(request.currency);
  if (problems.length > 0 || currency === undefined) return refusal(...problems);
  const plan = planBasket(request, currency);
  const solver = {
    solve,
    timeLimitS: saidOr(basketOptionQuestions.timeLimitS, request.options?.timeLimitS),
    relativeGap: 0,
  };
  const found = await bestOf(plan, solver);
  const order = explainedOrder(plan, found.purchase);
  checkCovered(order, found.shortfalls);
  const second =
    saidOr(basketOptionQuestions.secondBest, request.options?.secondBest) === false
      ? undefined
      : await secondBest(plan, found, { order, solver: { ...solver, relativeGap: SECOND_BEST_GAP } });
  return success({
    ...order,
    currency: request.currency,
    priceList: request.priceList.code,
    isInvented: request.priceList.invented,
    pricesIncludeTax: request.priceList.pricesIncludeTax,
    proof: found.proof,
    isComplete: order.coverage.every(({ short }) => short === 0),
    missing: await missingOf(plan, order, found.isPicked ? undefined : shortWithout(plan, solver)),
    excluded: plan.excluded,
    byEstimate: byEstimate(plan, found.purchase, order),
    ...(second === undefined ? {} : { secondBest: second }),
    warnings: warningsOf(request),
  });
}

interface Solver {
  readonly solve: Solve;
  readonly timeLimitS: number;
  readonly relativeGap: number;
}

interface Found {
  readonly purchase: Purchase;
  readonly proof: Proof;
  readonly shortfalls: Shortfalls;
  /** By the quick search, which does not know whether anything missing could have been had. */
  readonly isPicked: boolean;
}

interface Solved {
  readonly model: LinearModel;
  readonly answer: SolverAnswer;
}

async function solved(plan: BasketPlan, choice: ModelChoice, { solve, ...limits }: Solver): Promise<Solved> {
  const model = basketModel(plan, choice);
  if (model.columns.length === 0) return { model, answer: { status: 'optimal', values: [], bound: 0 } };
  const answer = await solve(model, limits);
  if (answer.status === 'failed')
    throw new Defect(`The solver failed: ${answer.said ?? 'it did not say why'}`);
  return { model, answer };
}

/** First as if everything could be had; where it cannot, as complete as possible first and as cheap as possible then. */
async function bestOf(plan: BasketPlan, solver: Solver): Promise<Found> {
  const unserved = plan.demands.map(({ toBuy }, demand) =>
    plan.goodsForDemand[demand].some((good) => plan.offersOfGood[good].length > 0) ? 0 : toBuy,
  );
  const known = withKnownOrder(plan, unserved);
  const exact = exactSearch(known);
  if (exact !== undefined)
    return {
      purchase: widened(exact, known, plan),
      proof: { kind: 'proven' },
      shortfalls: unserved,
      isPicked: false,
    };
  const first = await solved(known, { aim: 'least-cost', shortfalls: unserved }, solver);
  if (first.answer.status === 'infeasible') return mostComplete(plan, solver);
  const found = foundIn(known, first, unserved);
  return { ...found, purchase: widened(found.purchase, known, plan) };
}

async function mostComplete(plan: BasketPlan, solver: Solver): Promise<Found> {
  const shortest = await solved(plan, { aim: 'least-shortfall' }, solver);
  if (shortest.answer.values.length === 0) return picked(plan, shortest.answer);
  const shortfalls = shortfallsIn(plan, shortest);
  const second = await solved(plan, { aim: 'least-cost', shortfalls }, solver);
  const found = foundIn(plan, second.answer.values.length > 0 ? second : shortest, shortfalls);
  return shortest.answer.status === 'optimal' ? found : { ...found, proof: { kind: 'gap' } };
}

const shortWithout =
  (plan: BasketPlan, solver: Solver) =>
  async (without: Rule): Promise<Shortfalls> => {
    const found = await solved(plan, { aim: 'least-shortfall', without }, solver);
    return found.answer.values.length === 0
      ? plan.demands.map(({ toBuy }) => toBuy)
      : shortfallsIn(plan, found);
  };

/** What stayed uncovered, with room for the solver's tolerance. */
function shortfallsIn(plan: BasketPlan, { model, answer }: Solved): Shortfalls {
  const places = new Map(model.columns.map(({ name }, index) => [name, index]));
  return plan.demands.map(({ toBuy }, demand) => {
    const place = places.get(names.short(demand));
    const short = place === undefined ? 0 : answer.values[place];
    return short <= toBuy * negligibleShare ? 0 : Math.min(toBuy, short * (1 + negligibleShare));
  });
}

/** The solver's order, unless it could not be placed or the quick search found a cheaper one while time ran out. */
function foundIn(plan: BasketPlan, { model, answer }: Solved, shortfalls: Shortfalls): Found {
  if (answer.values.length === 0 && model.columns.length > 0) return picked(plan, answer);
  const purchase = purchaseFrom(plan, model, answer.values);
  const judgement = judgementOf(plan, purchase);
  if (judgement.isTooSmall || judgement.isUncured) return picked(plan, answer);
  if (isProven(plan, purchase, answer))
    return { purchase, proof: { kind: 'proven' }, shortfalls, isPicked: false };
  const found = { purchase, shortfalls, proof: gapOf(plan, purchase, answer), isPicked: false };
  const quick = picked(plan, answer);
  const isBetter =
    costOf(plan, quick.purchase) < costOf(plan, purchase) &&
    quick.shortfalls.every((short, demand) => short <= shortfalls[demand]);
  return isBetter ? quick : found;
}

/** The order as it is paid, and its trouble, cost no more than the solver says every order must. */
function isProven(plan: BasketPlan, purchase: Purchase, { status, bound }: SolverAnswer): boolean {
  if (status !== 'optimal' || bound === undefined) return false;
  return costOf(plan, purchase) + troubleMinor(plan, purchase) <= bound + SOLVER_DUST;
}

/** Far below a minor unit. */
const SOLVER_DUST = 0.01;

const costOf = (plan: BasketPlan, purchase: Purchase): number =>
  Number(judgementOf(plan, purchase).totalMinor);

/** How far the cost is from the best lower bound there is: the solver's, or that of the goods alone. */
function gapOf(plan: BasketPlan, purchase: Purchase, { bound }: SolverAnswer): Proof {
  const cost = costOf(plan, purchase) + troubleMinor(plan, purchase);
  const goods = judgementOf(plan, purchase).short === 0 ? leastCostOfGoods(plan) : undefined;
  if (goods !== undefined && cost <= goods) return { kind: 'proven' };
  const best = Math.max(
    ...[bound, goods].filter((one) => one !== undefined && Number.isFinite(one) && one > 0).map(Number),
  );
  if (!Number.isFinite(best)) return { kind: 'gap' };
  return {
    kind: 'gap',
    bound: minorJson(Math.ceil(best - 1), plan.currency),
    gapFraction: cost <= 0 ? 0 : Math.max(0, (cost - best) / cost),
  };
}

const leastCostOfGoods = (plan: BasketPlan): number | undefined =>
  leastCostOfDemands(plan)?.reduce((sum, least) => sum + least, 0);

const minorJson = (minor: number, currency: Currency): MoneyJson =>
  moneyJson(money(BigInt(Math.max(0, minor)), currency));

/** Out of time: an order found need by need, with what it leaves uncovered. */
function picked(plan: BasketPlan, answer: SolverAnswer): Found {
  const purchase = cheapestPurchase(plan);
  return {
    purchase,
    shortfalls: orderOf(plan, purchase).coverage.map(({ short }) => short),
    proof: gapOf(plan, purchase, answer),
    isPicked: true,
  };
}

function checkCovered({ coverage }: BasketOrder, shortfalls: Shortfalls): void {
  coverage.forEach(({ short, required, material }, demand) => {
    if (short > shortfalls[demand] + required * 1e-5)
      throw new Defect(`The order leaves ${short} of ${material} uncovered without saying so`);
  });
}

interface Beside {
  readonly order: BasketOrder;
  readonly solver: Solver;
}

/**
 * Without one of the suppliers of the best order where that can be done, else other packs of the dearest material.
 *
 * Which suppliers to go without is decided by the quick search; with those left the solver then does its best.
 */
async function secondBest(plan: BasketPlan, found: Found, beside: Beside): Promise<SecondBest | undefined> {
  const used = [
    ...new Set(
      plan.offers.flatMap(({ supplier }, index) => (found.purchase.packs[index] > 0 ? [supplier] : [])),
    ),
  ];
  if (used.length === 0) return undefined;
  const short = beside.order.coverage.reduce(
    (sum, demand) => sum + (demand.required === 0 ? 0 : demand.short / demand.required),
    0,
  );
  const elsewhere = cheapestOf(
    ordersBySuppliers(plan, (suppliers) => used.some((supplier) => !suppliers.has(supplier))),
  );
  if (elsewhere !== undefined && elsewhere.short <= short + negligibleShare) {
    return { ...(await orderElsewhere(plan, elsewhere.suppliers, beside)), kind: 'other-suppliers' };
  }
  const otherwise = await otherOrder(plan, found, dearestGood(plan, found.purchase), beside);
  return otherwise === undefined ? undefined : { ...otherwise, kind: 'other-packs' };
}

async function orderElsewhere(
  plan: BasketPlan,
  suppliers: ReadonlySet<number>,
  { order, solver }: Beside,
): Promise<Omit<SecondBest, 'kind'>> {
  const restricted = withOffers(
    plan,
    plan.offers.filter(({ supplier }) => suppliers.has(supplier)),
  );
  const { purchase } = await bestOf(restricted, solver);
  return compared(plan, widened(purchase, restricted, plan), order);
}

async function otherOrder(
  plan: BasketPlan,
  { shortfalls }: Found,
  other: Other,
  { order, solver }: Beside,
): Promise<Omit<SecondBest, 'kind'> | undefined> {
  const attempt = await solved(plan, { aim: 'least-cost', shortfalls, other }, solver);
  if (attempt.answer.values.length === 0) return undefined;
  const second = compared(plan, purchaseFrom(plan, attempt.model, attempt.answer.values), order);
  checkCovered(second, shortfalls);
  return second;
}

function compared(plan: BasketPlan, purchase: Purchase, order: BasketOrder): Omit<SecondBest, 'kind'> {
  const second = explainedOrder(plan, purchase);
  return {
    ...second,
    difference: moneyJson(subtractMoney(exactMoney(second.total), exactMoney(order.total))),
  };
}

function dearestGood(plan: BasketPlan, { packs }: Purchase): Other {
  const spent = (good: number): number =>
    plan.offersOfGood[good].reduce(
      (sum, offer) =>
        packs[offer] === 0
          ? sum
          : sum + packs[offer] * Number(priceFor(plan.offers[offer], packs[offer]).minor),
      0,
    );
  const dearest = plan.goods.reduce((best, _, good) => (spent(good) > spent(best) ? good : best), 0);
  const among = plan.offersOfGood[dearest];
  return { among, used: new Set(among.filter((offer) => packs[offer] > 0)) };
}

/** What each estimate of a shared order pays: goods by what it needs of them, freight and fees by goods. */
function byEstimate(plan: BasketPlan, { packs }: Purchase, order: BasketOrder): Basket['byEstimate'] {
  const weights = new Map<string, number>();
  plan.goods.forEach((good, g) => {
    const spent = plan.offersOfGood[g].reduce(
      (sum, offer) =>
        packs[offer] === 0
          ? sum
          : sum + packs[offer] * Number(priceFor(plan.offers[offer], packs[offer]).minor),
      0,
    );
    const needs = good.arcs.flatMap(({ demand }) => plan.demands[demand].needs);
    const all = needs.reduce((sum, { requiredQuantity }) => sum + requiredQuantity, 0);
    for (const { estimate, requiredQuantity } of needs) {
      weights.set(
        estimate ?? '',
        (weights.get(estimate ?? '') ?? 0) + (all === 0 ? 0 : (spent * requiredQuantity) / all),
      );
    }
  });
  const estimates = [...weights.keys()].sort();
  const shares = estimates.map((estimate) => BigInt(Math.round(weights.get(estimate) ?? 0)));
  if (shares.every((share) => share === 0n))
    return estimates.map((estimate) => ({ estimate, amount: moneyJson(noMoney(plan.currency)) }));
  const amounts = spread(exactMoney(order.total), shares);
  return estimates.map((estimate, index) => ({ estimate, amount: moneyJson(amounts[index]) }));
}

function warningsOf({
  options,
  priceList: { validFrom, validTo, invented },
}: BasketRequest): readonly string[] {
  const date = options?.orderDate;
  const isOutside = date !== undefined && (date < validFrom || date > validTo);
  return [
    ...(isOutside ? [`prices are valid from ${validFrom} to ${validTo}, the order is of ${date}`] : []),
    ...(invented ? ['the prices are invented: use them to try the calculation, not to buy'] : []),
  ];
}
