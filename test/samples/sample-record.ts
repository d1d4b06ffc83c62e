import 'reflect-metadata';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate, type DefectRecord, type Estimate } from '#lib/estimate';
import { checkedAs } from '../../apps/api/src/edge/dto.pipe.js';
import { DefectRecordDto } from '../../apps/api/src/inputs/defect-record.dto.js';

/** A shipped sample as the service reads it: texts with units become numbers. */
export const sampleRecordOf = (name: string): DefectRecord =>
  structuredClone(
    checkedAs(
      DefectRecordDto,
      JSON.parse(
        readFileSync(path.join(import.meta.dirname, '../../apps/workshop/samples', `${name}.json`), 'utf8'),
      ),
    ),
  );

export function estimateOf(record: DefectRecord): Estimate {
  const outcome = estimate(record, shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value.estimate;
}
