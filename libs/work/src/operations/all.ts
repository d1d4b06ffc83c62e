import { bondOperations } from './bond.js';
import { finishOperations } from './finish.js';
import { openOperations } from './open.js';
import { cleanUpSpot, injectOperations } from './inject.js';
import type { Operation, Phase } from '../operation.js';
import { backOperations, offOperations } from './besides.js';
import { leakOperations } from './leak.js';
import { prepareOperations } from './prepare.js';
import { spotOperations } from './spot.js';

/** Every operation of the trade for this job, in the order the trade does them. */
export const operations: readonly Operation[] = [
  ...inPhases(spotOperations, ['survey', 'prepare']),
  ...prepareOperations,
  ...inPhases(injectOperations, ['prepare']),
  ...offOperations,
  ...inPhases(leakOperations, ['open', 'close']),
  ...openOperations,
  ...inPhases(injectOperations, ['open', 'bond', 'close']),
  ...inPhases(spotOperations, ['open', 'bond', 'close']),
  ...bondOperations,
  ...finishOperations,
  ...inPhases(spotOperations, ['refit', 'hand-over']),
  ...backOperations,
  cleanUpSpot,
];

/** Work on a closed deck runs beside that on an opened one: each of its phases stands where the trade does it. */
function inPhases(all: readonly Operation[], phases: readonly Phase[]): readonly Operation[] {
  return all.filter(({ phase }) => phases.includes(phase));
}
