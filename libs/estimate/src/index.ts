export type * from './defect-record.js';
export type * from './estimate.js';
export { pricedDocumentOf } from './priced-document.js';
export { estimate } from './run.js';
export { estimateVariants, type VariantAsked, type VariantsRequest } from './variants.js';
