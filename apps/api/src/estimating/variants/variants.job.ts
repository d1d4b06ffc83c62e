import type { Catalogue } from '#lib/catalogue';
import type { VariantComparison } from '#lib/costing';
import type { VariantsRequest } from '#lib/estimate';
import type { Outcome } from '#lib/kernel';
import { threadJob } from '../../workbench/job.js';

/** Measured on ordinary decks; many zones take longer. */
const EACH_VARIANT_MS = 100;
const EACH_ZONE_MS = 25;

export const variantsJob = threadJob<VariantsRequest, Catalogue, Outcome<VariantComparison>>({
  code: 'variants',
  file: new URL('./variants.work.js', import.meta.url),
  expectedMs: ({ record: { zones }, variants }) =>
    variants.length * (EACH_VARIANT_MS + EACH_ZONE_MS * (zones?.length ?? 0)),
});
