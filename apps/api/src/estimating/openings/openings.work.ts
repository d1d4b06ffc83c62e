import { openingsFor, type OpeningsAsked } from '#lib/estimate';
import type { ExtentAndOpenings } from '#lib/extent';
import type { Outcome } from '#lib/kernel';

export const run = (request: OpeningsAsked): Outcome<ExtentAndOpenings> => openingsFor(request);
