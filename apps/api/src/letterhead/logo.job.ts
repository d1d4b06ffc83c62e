import { pressJob } from '../workbench/job.js';

const USUAL_MS = 150;

/** Draws a logo anew; undefined when it cannot be decoded. In a process, so that a broken decoder ends no service. */
export const logoJob = pressJob<Uint8Array, undefined, Uint8Array | undefined>({
  code: 'logo',
  file: new URL('./logo.work.js', import.meta.url),
  expectedMs: () => USUAL_MS,
});
