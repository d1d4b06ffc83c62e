import type { NextReadingsAsked } from '#lib/estimate';
import type { NextReadings } from '#lib/extent';
import type { Outcome } from '#lib/kernel';
import { threadJob } from '../../workbench/job.js';

/** Measured: the map of chances, and what some forty places would tell. */
const USUAL_MS = 300;

export const nextReadingsJob = threadJob<NextReadingsAsked, undefined, Outcome<NextReadings>>({
  code: 'next-readings',
  file: new URL('./next-readings.work.js', import.meta.url),
  expectedMs: () => USUAL_MS,
});
