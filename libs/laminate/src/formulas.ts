import type { AnyFormula } from '#lib/provenance';
import { glassMass, resinMass } from './ply-mass.js';
import {
  fibreVolumeFraction,
  lowFibreThicknessFactor,
  plyThickness,
  resinPerArea,
  yardstickThickness,
} from './ply-thickness.js';
import { scarfPeel, scarfRatio, scarfShear, taperWidth } from './scarf.js';
import { yardstickFormulas } from './yardstick-method.js';

/** Every formula of the room, for the tests and the manual. */
export const formulas: readonly AnyFormula[] = [
  plyThickness,
  yardstickThickness,
  resinPerArea,
  fibreVolumeFraction,
  lowFibreThicknessFactor,
  ...yardstickFormulas,
  glassMass,
  resinMass,
  taperWidth,
  scarfShear,
  scarfPeel,
  scarfRatio,
];
