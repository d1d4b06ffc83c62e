import { solveBasket, solveByHighs, type Basket, type BasketRequest } from '#lib/costing';
import type { Outcome } from '#lib/kernel';
import { loadHighs } from './load-highs.js';

/** Solves one basket. Runs in a worker: the solver holds its thread until it is done. */
export async function run(request: BasketRequest): Promise<Outcome<Basket>> {
  const highs = await loadHighs();
  return solveBasket(request, async (model, limits) => solveByHighs(highs, model, limits));
}
