import type { Catalogue } from '#lib/catalogue';
import { methodLadder, type DefectRecord, type MethodLadder } from '#lib/estimate';
import type { Outcome } from '#lib/kernel';

export const run = (record: DefectRecord, catalogue: Catalogue): Outcome<MethodLadder> =>
  methodLadder(record, catalogue);
