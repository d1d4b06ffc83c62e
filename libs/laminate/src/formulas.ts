import type { AnyFormula } from '#lib/provenance';
import { glassMass, resinMass } from './ply/ply-mass.js';
import {
  fibreVolumeFraction,
  lowFibreThicknessFactor,
  plyThickness,
  resinPerArea,
  yardstickThickness,
} from './ply/ply-thickness.js';
import { scarfPeel, scarfRatio, scarfShear, taperWidth } from './taper/scarf.js';
import { yardstickFormulas } from './ply/yardstick-method.js';

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
