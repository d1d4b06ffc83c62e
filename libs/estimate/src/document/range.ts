import type { Range } from './estimate-document.js';

/** The three quantiles that are printed, without what else a simulation knows. */
export const rangeOf = ({ p10, p50, p90 }: Range): Range => ({ p10, p50, p90 });
