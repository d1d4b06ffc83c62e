export type * from './job/defect-record.js';
export type * from './document/estimate-document.js';
export { pricedDocumentOf } from './document/priced-document.js';
export { estimate } from './estimate.js';
export { estimateVariants, type VariantAsked, type VariantsRequest } from './variants.js';
