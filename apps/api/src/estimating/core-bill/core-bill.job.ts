import type { Catalogue } from '#lib/catalogue';
import type { CoreBill, CoreBillByCode } from '#lib/coring';
import type { Outcome } from '#lib/kernel';
import { threadJob } from '../../workbench/job.js';
import { expectedSearchMs } from '../time-limit.js';

/** Measured: pieces and bedding order of one opening. */
const EACH_OPENING_MS = 50;

export const coreBillJob = threadJob<CoreBillByCode, Catalogue, Outcome<CoreBill>>({
  code: 'core-bill',
  file: new URL('./core-bill.work.js', import.meta.url),
  expectedMs: (request) => EACH_OPENING_MS * request.openings.length + expectedSearchMs(request),
});
