import { pressJob } from '../workbench/job.js';
import type { Rendered, RenderOrder } from './render.js';

/** Measured on usual reports; the lines of the estimate decide how many pages there are. */
const USUAL_MS = 150;
const EACH_LINE_MS = 3;

/** Lays out and writes one document or drawing. */
export const documentJob = pressJob<RenderOrder, undefined, Rendered>({
  code: 'document',
  file: new URL('./render.js', import.meta.url),
  expectedMs: ({ subject: { estimate } }) => USUAL_MS + EACH_LINE_MS * estimate.lines.length,
});
