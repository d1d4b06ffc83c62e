export { geopotentialM, pumpDownTime, standardPressurePa, vacuumPressure } from './atmosphere.js';
export {
  ALLOWABLE_LAG,
  battenSag,
  battenScrewLoad,
  laminateThreadShear,
  lagAllowable,
  lagConstantSi,
  screwAllowable,
  screwConstantSi,
  screwUltimate,
} from './battens.js';
export { camberPressure, weightNeeded, weightPressure } from './dead-weight.js';
export type { BondPressurePlan } from './bond-request.js';
export type { BondPressureRequest } from './bond-request.js';
export { planBondPressure } from './bond-pressure.js';
export {
  battensQuestions,
  bondPressureQuestions,
  pressedCamberQuestions,
  pressedSkinQuestions,
  vacuumQuestions,
  weightsQuestions,
  type InnerSkinCheck,
  type PressMethod,
  type PressOption,
  type PressQuantity,
  pressMethods,
} from './bond-request.js';
export { formulas } from './formulas.js';
export { planUpwardPress, skinLift, upwardForce, type UpwardRequest } from './upward.js';
export { boardLines, type PressLine } from './press-lines.js';
