import { estimated, type EstimatingAnswer, type EstimatingOrder } from './estimating.js';

/** The entry of a worker thread: the pool calls what its file names `run`. */
export const run = (order: EstimatingOrder): EstimatingAnswer => estimated(order);
