import type { PictureLimits } from '../pictures/upload.js';

/** A photograph as a telephone takes it. */
export const photographLimits: PictureLimits = {
  mostBytes: 8_000_000,
  mostPixelsASide: 12_000,
  mostPixels: 60_000_000,
};

/** A report shows few, chosen photographs. */
export const MOST_PHOTOGRAPHS = 24;
