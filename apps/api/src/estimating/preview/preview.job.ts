import type { Catalogue } from '#lib/catalogue';
import type { DefectRecord, EstimatePreview } from '#lib/estimate';
import type { Outcome } from '#lib/kernel';
import { threadJob } from '../../workbench/job.js';

/** Measured on ordinary decks; a map of readings and many zones take longer. */
const USUAL_MS = 30;
const EACH_ZONE_MS = 15;
const EACH_READING_MS = 0.3;

export const previewJob = threadJob<DefectRecord, Catalogue, Outcome<EstimatePreview>>({
  code: 'preview',
  file: new URL('./preview.work.js', import.meta.url),
  expectedMs: ({ zones, survey }) =>
    USUAL_MS + EACH_ZONE_MS * (zones?.length ?? 0) + EACH_READING_MS * (survey?.readings.length ?? 0),
});
