export type * from './reading.js';
