import type { AnyFormula } from '#lib/provenance';
import { arrheniusFormulas } from './arrhenius.js';
import { coatingFormulas } from './spreading-rate.js';
import { moistureFormulas } from './moisture.js';
import { humidAirFormulas } from './weather/humid-air.js';
import { nightSkyFormulas } from './weather/night-sky.js';

/** Every standard equation of the room, with its source and its worked examples. */
export const formulas: readonly AnyFormula[] = [
  ...arrheniusFormulas,
  ...coatingFormulas,
  ...moistureFormulas,
  ...humidAirFormulas,
  ...nightSkyFormulas,
];
