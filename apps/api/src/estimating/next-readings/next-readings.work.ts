import { nextReadings, type ExtentRequest, type NextReadings } from '#lib/extent';
import type { Outcome } from '#lib/kernel';

export const run = (request: ExtentRequest): Outcome<NextReadings> => nextReadings(request);
