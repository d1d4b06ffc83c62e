export * from './brands.js';
export * from './convert.js';
export {
  exampleOf,
  readQuantity,
  siUnitOf,
  unitsOf,
  type Dimension,
  type QuantityFault,
} from './quantity.js';
export { unitOfField } from './field-unit.js';
export { usArea, usLength, usMass, usMeasure, usTemperature, usText, usVolume } from './us-display.js';
