import { extentAndOpenings, type ExtentAndOpenings, type ExtentAndOpeningsRequest } from '#lib/extent';
import type { Outcome } from '#lib/kernel';

export const run = (request: ExtentAndOpeningsRequest): Outcome<ExtentAndOpenings> =>
  extentAndOpenings(request);
