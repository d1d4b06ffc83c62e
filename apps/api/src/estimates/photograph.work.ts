import { redrawn, type Redrawn } from '../pictures/redrawn.js';
import { photographLimits } from './photograph-limits.js';

/** Two thirds of a page at 300 dots an inch. */
const KEPT = { width: 1400, height: 1400, type: 'image/jpeg' } as const;

export const run = (uploaded: Uint8Array): Promise<Redrawn | undefined> =>
  redrawn(uploaded, photographLimits.mostPixels, KEPT);
