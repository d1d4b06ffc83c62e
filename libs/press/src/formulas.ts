import type { AnyFormula } from '#lib/provenance';
import { atmosphereFormulas } from './atmosphere.js';
import { battenFormulas } from './battens.js';
import { weightFormulas } from './dead-weight.js';
import { innerSkinFormulas } from './inner-skin.js';
import { upwardFormulas } from './upward.js';

/** Every standard equation of the room, with its source and its worked examples. */
export const formulas: readonly AnyFormula[] = [
  ...atmosphereFormulas,
  ...battenFormulas,
  ...weightFormulas,
  ...innerSkinFormulas,
  ...upwardFormulas,
];
