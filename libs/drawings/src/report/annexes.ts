import type { AnnexName, Purpose } from './request.js';

/** What each reader needs behind the body; who wants others names them. */
export const annexesFor: Readonly<Record<Purpose, readonly AnnexName[]>> = {
  condition: ['scope', 'assumptions', 'cautions'],
  damage: ['scope', 'prices', 'assumptions'],
  quotation: ['scope', 'process', 'prices', 'assumptions', 'cautions'],
  works: ['scope', 'core', 'process', 'cautions'],
};
