import type { AnyFormula } from '#lib/provenance';
import { classFormulas } from './class-rules.js';
import { coreFormulas } from './core-properties.js';
import { fasteningFormulas } from './fastening.js';
import { plywoodFormulas } from './plywood.js';
import { sandwichFormulas } from './sandwich-formulas.js';
import { stateFormulas } from './state-analysis.js';
import { yardstickFormulas } from './yardstick.js';

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
