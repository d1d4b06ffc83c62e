import type { AnyFormula } from '#lib/provenance';
import { exposureFormulas } from './exposure.js';

/** Every standard equation of the room, with its source and its worked examples. */
export const formulas: readonly AnyFormula[] = [...exposureFormulas];
