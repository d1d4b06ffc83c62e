import { redrawn } from '../pictures/redrawn.js';
import { logoLimits } from './logo-limits.js';

/** The letterhead leaves 50 by 14 mm; at 600 dots an inch nobody sees a dot. */
const PRINTED = { width: 1181, height: 331, type: 'image/png' } as const;

export const run = async (uploaded: Uint8Array): Promise<Uint8Array | undefined> =>
  (await redrawn(uploaded, logoLimits.mostPixels, PRINTED))?.bytes;
