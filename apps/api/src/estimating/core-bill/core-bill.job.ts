import type { Catalogue } from '#lib/catalogue';
import type { CoreBill, CoreBillByCode } from '#lib/coring';
import type { Outcome } from '#lib/kernel';
import { usualWorkUnits } from '#lib/nesting';
import { threadJob } from '../../workbench/job.js';
import { expectedSearchMs } from '../time-limit.js';

/** Measured: pieces and bedding order of one opening. */
const EACH_OPENING_MS = 50;

export const coreBillJob = threadJob<CoreBillByCode, Catalogue, Outcome<CoreBill>>({
  code: 'core-bill',
  file: new URL('./core-bill.work.js', import.meta.url),
  expectedMs: ({ openings, workUnits = usualWorkUnits, timeLimitS }) =>
    EACH_OPENING_MS * openings.length + expectedSearchMs(workUnits, timeLimitS),
});
