export { findMaterial, materialAt, materialsOf, type Catalogue } from './catalogue.js';
export type * from './materials.js';
export type * from './prices.js';
export type { ReadAs, Source } from './sources.js';
export { shippedCatalogue } from './generated/shipped.js';
