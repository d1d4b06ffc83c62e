import { nextReadingsFor, type NextReadingsAsked } from '#lib/estimate';
import type { NextReadings } from '#lib/extent';
import type { Outcome } from '#lib/kernel';

export const run = (request: NextReadingsAsked): Outcome<NextReadings> => nextReadingsFor(request);
