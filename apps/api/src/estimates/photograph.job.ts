import type { Redrawn } from '../pictures/redrawn.js';
import { pressJob } from '../workbench/job.js';

const USUAL_MS = 400;

/** Draws a photograph anew; undefined when it cannot be decoded. In a process, so that a broken decoder ends no service. */
export const photographJob = pressJob<Uint8Array, undefined, Redrawn | undefined>({
  code: 'photograph',
  file: new URL('./photograph.work.js', import.meta.url),
  expectedMs: () => USUAL_MS,
});
