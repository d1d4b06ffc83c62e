import type { Catalogue } from '#lib/catalogue';
import type { DefectRecord } from '#lib/estimate';
import { threadJob } from '../workbench/job.js';
import type { EstimatingAnswer, EstimatingOrder } from './estimating.js';

/** Measured on ordinary decks; many zones and readings take longer. */
const USUAL_MS = 100;
const EACH_ZONE_MS = 25;
const EACH_READING_MS = 0.3;

/** Computes and writes one estimate. */
export const estimateJob = threadJob<EstimatingOrder, Catalogue, EstimatingAnswer>({
  code: 'estimate',
  file: new URL('./estimating.js', import.meta.url),
  expectedMs: ({ record }) => expectedEstimateMs(record),
});

export const expectedEstimateMs = ({ zones, survey }: DefectRecord): number =>
  USUAL_MS + EACH_ZONE_MS * (zones?.length ?? 0) + EACH_READING_MS * (survey?.readings.length ?? 0);
