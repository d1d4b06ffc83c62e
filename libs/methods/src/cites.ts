import type { Cite } from '#lib/provenance';

export const fromMemory: Cite = { source: 'FROM-MEMORY' };
export const commonPractice: Cite = { source: 'COMMON-PRACTICE' };
export const injectionLimit: Cite = { source: 'TRADE-INJECTION' };
