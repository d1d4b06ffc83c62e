export type { OperationFlags } from './operation.js';
export { labourFor } from './labour.js';
export { hoursAtSize, sizeAnchorsM2, type HoursBySize } from './job-size.js';
export { isByVisit } from './operation.js';
export { modifiers } from './modifiers.js';
export { operations } from './operations/all.js';
export { type OperationHours, operationsFor } from './labour.js';
export { type Modifier, modifiersFor } from './modifiers.js';
export {
  type AppliesWhen,
  type Consumes,
  type Driver,
  type DriverAmounts,
  type GateKind,
  type Operation,
  type Phase,
  type Strain,
  type Wait,
  appliesTo,
  defineOperation,
  driverAmountsQuestions,
  drivers,
  gateKinds,
  operationFlagsQuestions,
  phases,
} from './operation.js';
