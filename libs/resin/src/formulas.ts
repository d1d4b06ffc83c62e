import type { AnyFormula } from '#lib/provenance';
import { mixingFormulas } from './mixing.js';
import { stepVolumeFormulas } from './step-volumes.js';

/** Every standard equation of the room, with its source and its worked examples. */
export const formulas: readonly AnyFormula[] = [...mixingFormulas, ...stepVolumeFormulas];
