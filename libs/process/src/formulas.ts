import type { AnyFormula } from '#lib/provenance';
import { exposureFormulas } from './cautions/exposure.js';
import { coatingFormulas } from './coatings/spreading-rate.js';
import { moistureFormulas } from './core/moisture.js';
import { arrheniusFormulas } from './cure/arrhenius.js';
import { atmosphereFormulas } from './press/atmosphere.js';
import { battenFormulas } from './press/battens.js';
import { weightFormulas } from './press/dead-weight.js';
import { innerSkinFormulas } from './press/inner-skin.js';
import { mixingFormulas } from './resin/mixing.js';
import { stepVolumeFormulas } from './resin/step-volumes.js';
import { humidAirFormulas } from './weather/humid-air.js';

/** Every standard equation of the room, with its source and its worked examples. */
export const formulas: readonly AnyFormula[] = [
  ...mixingFormulas,
  ...stepVolumeFormulas,
  ...arrheniusFormulas,
  ...humidAirFormulas,
  ...atmosphereFormulas,
  ...weightFormulas,
  ...battenFormulas,
  ...innerSkinFormulas,
  ...moistureFormulas,
  ...coatingFormulas,
  ...exposureFormulas,
];
