import type { AnyFormula } from '#lib/provenance';
import { requiredQuantity, wholePacks } from './quantities.js';
import { threePointDeviation, threePointMean } from './three-point.js';

export {
  consumableNeeds,
  driverUnits,
  jobFlags,
  usedAt,
  type DriverQuantities,
  type JobFlag,
} from './consumables.js';
export {
  boughtAs,
  figureOf,
  isCountable,
  needOf,
  variantOf,
  type MaterialVariant,
  type Need,
  type NeedRequest,
} from './need.js';
export {
  purchaseFigure,
  requiredFigure,
  requiredQuantity,
  wholePackCount,
  wholePacks,
} from './quantities.js';
export { takeOff, type TakeOff, type TakeOffRequest } from './take-off.js';
export { isOrdered, threePointDeviation, threePointMean } from './three-point.js';

export const formulas: readonly AnyFormula[] = [
  requiredQuantity,
  wholePacks,
  threePointMean,
  threePointDeviation,
];
