import type { DefectRecord, Kingplank } from 'kingplank-sdk';
import { freshKey } from '../model/outbox.js';
import { placeOf, readingsOf, zonesOf } from '../model/record.js';
import type { NextAsked } from '../view/sheet.js';

/** The readings that would tell most, as the service sees it; the first is taken first. */
export async function whereNext(client: Kingplank, record: DefectRecord): Promise<NextAsked> {
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
  const { readings: asked, advice, minutes, areaRangeM2 } = answer;
  return {
    readings: asked.map(({ at, number, kind, chance }) => ({ at: placeOf(at), number, kind, chance })),
    advice: advice.text,
    minutes,
    areaRangeM2,
  };
}
