import type { PictureLimits } from '../pictures/upload.js';

export const logoLimits: PictureLimits = {
  mostBytes: 1_000_000,
  mostPixelsASide: 5000,
  mostPixels: 16_000_000,
};
