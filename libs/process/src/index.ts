export { operations } from './operations/all.js';
export { labourFor, operationsFor, type OperationHours } from './operations/labour.js';
export { modifiers, modifiersFor, type Modifier } from './operations/modifiers.js';
export {
  appliesTo, defineOperation, drivers, phases,
  type AppliesWhen, type Consumes, type Driver, type DriverAmounts, type GateKind, type Operation, type OperationFlags, type Phase, type Strain, type ThreePoint, type Wait,
} from './operations/operation.js';
