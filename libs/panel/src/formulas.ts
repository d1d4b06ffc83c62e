import type { AnyFormula } from '#lib/provenance';
import { classFormulas } from './yardstick/class-rules.js';
import { coreFormulas } from './yardstick/core-properties.js';
import { fasteningFormulas } from './yardstick/fastening.js';
import { plywoodFormulas } from './yardstick/plywood.js';
import { sandwichFormulas } from './plate/sandwich-formulas.js';
import { stateFormulas } from './comparison/state-analysis.js';
import { yardstickFormulas } from './yardstick/yardstick.js';

/** Every equation of this room, for the tests and the manual. */
export const formulas: readonly AnyFormula[] = [
  ...coreFormulas.flatMap(({ shearStrength, shearModulus, compressiveStrength, compressiveModulus }) => [
    shearStrength,
    shearModulus,
    compressiveStrength,
    compressiveModulus,
  ]),
  ...plywoodFormulas,
  ...sandwichFormulas,
  ...stateFormulas,
  ...yardstickFormulas,
  ...classFormulas,
  ...fasteningFormulas,
];
