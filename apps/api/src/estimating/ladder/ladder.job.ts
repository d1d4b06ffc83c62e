import type { Catalogue } from '#lib/catalogue';
import type { DefectRecord, MethodLadder } from '#lib/estimate';
import type { Outcome } from '#lib/kernel';
import { threadJob } from '../../workbench/job.js';

/** Measured on ordinary decks: every rung that fits is worked out in the rough. */
const USUAL_MS = 400;
const EACH_ZONE_MS = 50;

export const ladderJob = threadJob<DefectRecord, Catalogue, Outcome<MethodLadder>>({
  code: 'ladder',
  file: new URL('./ladder.work.js', import.meta.url),
  expectedMs: ({ zones }) => USUAL_MS + EACH_ZONE_MS * (zones?.length ?? 0),
});
