export * from './brands.js';
export * from './convert.js';
export { exampleOf, readQuantity, siUnitOf, unitsOf, type Dimension, type QuantityFault } from './quantity.js';
export { usArealMass, usArea, usLength, usMass, usTemperature, usVolume } from './us-display.js';
