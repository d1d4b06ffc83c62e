import { saidOr } from '#lib/asking';
import {
  basketOptionQuestions,
  solveBasket,
  solveByHighs,
  type Basket,
  type BasketRequest,
  type SolverAnswer,
} from '#lib/costing';
import type { Outcome } from '#lib/kernel';
import { loadHighs } from './load-highs.js';

/**
 * Solves one basket. Runs in a worker: the solver holds its thread until it is done. One order may take several searches
 * (complete, as complete as can be, second best); they share the time that the order is given.
 */
export async function run(request: BasketRequest): Promise<Outcome<Basket>> {
  const highs = await loadHighs();
  const until =
    performance.now() + 1000 * saidOr(basketOptionQuestions.timeLimitS, request.options?.timeLimitS);
  return solveBasket(request, async (model, limits) => {
    const leftS = Math.min(limits.timeLimitS, (until - performance.now()) / 1000);
    return leftS <= 0 ? outOfTime : solveByHighs(highs, model, { ...limits, timeLimitS: leftS });
  });
}

const outOfTime: SolverAnswer = { status: 'time-limit', values: [] };
