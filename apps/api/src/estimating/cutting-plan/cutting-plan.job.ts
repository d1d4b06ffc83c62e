import type { Outcome } from '#lib/kernel';
import type { CuttingPlan, CuttingPlanRequest } from '#lib/nesting';
import { threadJob } from '../../workbench/job.js';
import { expectedSearchMs } from '../time-limit.js';

export const cuttingPlanJob = threadJob<CuttingPlanRequest, undefined, Outcome<CuttingPlan>>({
  code: 'cutting-plan',
  file: new URL('./cutting-plan.work.js', import.meta.url),
  expectedMs: expectedSearchMs,
});
