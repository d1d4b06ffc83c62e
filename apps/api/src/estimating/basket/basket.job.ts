import type { Basket, BasketRequest } from '#lib/costing';
import type { Outcome } from '#lib/kernel';
import { threadJob } from '../../workbench/job.js';

/** Measured: an order is solved in a moment; one of very many needs may take its whole time limit. */
const USUAL_MS = 50;
const EACH_NEED_MS = 20;

export const basketJob = threadJob<BasketRequest, undefined, Outcome<Basket>>({
  code: 'basket',
  file: new URL('./basket.work.js', import.meta.url),
  expectedMs: ({ needs }) => USUAL_MS + EACH_NEED_MS * needs.length,
});
