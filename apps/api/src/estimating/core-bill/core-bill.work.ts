import type { Catalogue } from '#lib/catalogue';
import { coreBillFrom, type CoreBill, type CoreBillByCode } from '#lib/coring';
import type { Outcome } from '#lib/kernel';
import { untilTimeIsUp } from '../time-limit.js';

export const run = (request: CoreBillByCode, catalogue: Catalogue): Outcome<CoreBill> =>
  coreBillFrom(request, catalogue, untilTimeIsUp(request.timeLimitS));
