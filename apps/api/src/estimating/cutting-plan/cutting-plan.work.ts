import type { Outcome } from '#lib/kernel';
import { cuttingPlan, type CuttingPlan, type CuttingPlanRequest } from '#lib/nesting';
import { untilTimeIsUp } from '../time-limit.js';

export const run = (request: CuttingPlanRequest): Outcome<CuttingPlan> =>
  cuttingPlan(request, untilTimeIsUp(request.timeLimitS));
