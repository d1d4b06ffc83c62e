import type { Catalogue } from '#lib/catalogue';
import type { VariantComparison } from '#lib/costing';
import { estimateVariants, type VariantsRequest } from '#lib/estimate';
import type { Outcome } from '#lib/kernel';

export const run = (request: VariantsRequest, catalogue: Catalogue): Outcome<VariantComparison> =>
  estimateVariants(request, catalogue);
