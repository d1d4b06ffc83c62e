import { bondOperations } from './bond.js';
import { finishOperations } from './finish.js';
import { openOperations } from './open.js';
import { cleanUpSpot, injectOperations } from './inject.js';
import type { Operation } from '../operation.js';
import { backOperations, offOperations } from './besides.js';
import { leakOperations } from './leak.js';
import { prepareOperations } from './prepare.js';
import { spotOperations } from './spot.js';

/** Every operation of the trade for this job, in the order the trade does them. */
export const operations: readonly Operation[] = [
  ...spotOperations,
  ...prepareOperations,
  ...offOperations,
  ...leakOperations,
  ...openOperations,
  ...injectOperations,
  ...bondOperations,
  ...finishOperations,
  ...backOperations,
  cleanUpSpot,
];
