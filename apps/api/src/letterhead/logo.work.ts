import { redrawn } from './logo-picture.js';
import { MOST_LOGO_PIXELS } from './logo-upload.js';

export const run = (uploaded: Uint8Array): Promise<Uint8Array | undefined> =>
  redrawn(uploaded, MOST_LOGO_PIXELS);
