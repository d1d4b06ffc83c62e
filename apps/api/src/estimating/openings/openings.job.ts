import type { OpeningsAsked } from '#lib/estimate';
import type { ExtentAndOpenings } from '#lib/extent';
import type { Outcome } from '#lib/kernel';
import { threadJob } from '../../workbench/job.js';

/** Measured: the map of chances, and the joining of openings. */
const USUAL_MS = 100;
const EACH_ZONE_MS = 15;

export const openingsJob = threadJob<OpeningsAsked, undefined, Outcome<ExtentAndOpenings>>({
  code: 'openings',
  file: new URL('./openings.work.js', import.meta.url),
  expectedMs: ({ zones }) => USUAL_MS + EACH_ZONE_MS * (zones?.length ?? 0),
});
