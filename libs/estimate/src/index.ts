export type * from './defect-record.js';
export type * from './estimate.js';
export { estimate } from './run.js';
