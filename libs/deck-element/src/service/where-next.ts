import type { DefectRecord, Kingplank } from 'kingplank-sdk';
import { freshKey } from '../model/outbox.js';
import { placeOf, readingsOf, zonesOf } from '../model/record.js';
import type { NextReading } from '../view/sheet.js';

/** The readings that would tell most, as the service sees it; the first is taken first. */
export async function whereNext(client: Kingplank, record: DefectRecord): Promise<readonly NextReading[]> {
  const { panel, survey } = record;
  const zones = zonesOf(record);
  const answer = await client.estimating.ask(
    'next-readings',
    {
      panel,
      survey: { ...survey, readings: readingsOf(record) },
      ...(zones.length === 0 ? {} : { zones }),
    },
    { idempotencyKey: freshKey(), maxRetries: 0 },
  );
  return answer.readings.map(({ kind, at }) => ({ at: placeOf(at), note: kind }));
}
