import type { Catalogue } from '#lib/catalogue';
import type { Stocked } from '../workbench/job.js';

/** A thread keeps an edition under the hash of its content. */
export const stocked = (catalogue: Catalogue): Stocked<Catalogue> => ({
  key: catalogue.hash,
  value: catalogue,
});
