import type { Catalogue } from '#lib/catalogue';
import { previewOf, type DefectRecord, type EstimatePreview } from '#lib/estimate';
import type { Outcome } from '#lib/kernel';

export const run = (record: DefectRecord, catalogue: Catalogue): Outcome<EstimatePreview> =>
  previewOf(record, catalogue);
