export {
  type Default,
  type ProcessAssumption,
  assumedIn,
  assumptionFrom,
  catalogueIn,
  enteredIn,
  enteredOrAssumed,
  inUnit,
  workedOut,
} from './unit-figures.js';
export {
  type Bounds,
  choiceFaults,
  countFaults,
  numberFaults,
  optionalChoiceFaults,
  optionalFaults,
  repeatFaults,
} from './request-faults.js';
