export { productOf, sumOf } from './arithmetic.js';
export type { Cite } from './cite.js';
export {
  assumed,
  assumptionsOf,
  derived,
  entered,
  fromCatalogue,
  type Assumed,
  type Computed,
  type Entered,
  type Figure,
  type FromCatalogue,
  type Origin,
} from './figure.js';
export {
  compute,
  computeChecked,
  defineFormula,
  type AnyFormula,
  type Formula,
  type FormulaInput,
  type FormulaOutput,
  type WorkedExample,
} from './formula.js';
