import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { aRecord } from '../samples/a-record.js';
import { startService, type TestService } from './service.js';

describe('POST /v1/estimating/ladder', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('answers every rung with the reason that decides, prices what fits, and keeps nothing', async () => {
    const { status, body } = await service.post('/v1/estimating/ladder', aRecord());
    expect(status).toBe(200);
    expect(body.rungs).toHaveLength(13);
    for (const { verdict, deciding, priceRange } of body.rungs) {
      expect(deciding.text.length).toBeGreaterThan(10);
      expect(priceRange === undefined).toBe(verdict === 'unfit');
    }
    expect(body.recommended.rung).toBe(body.places[0].rung);
    const listed = await service.get('/v1/estimates');
    expect(listed.body.items).toEqual([]);
  });

  test('where no rung fits, recommends none and says why for each', async () => {
    const stiff = aRecord({
      panel: { ...aRecord().panel, accessBelow: 'none', camberRadiusMm: 2500 },
      core: { thicknessMm: 19, coreType: 'marine-plywood' },
    });
    const { status, body } = await service.post('/v1/estimating/ladder', stiff);
    expect(status).toBe(200);
    expect(body.recommended).toBeUndefined();
    const verdicts = body.rungs.map(({ verdict }: { readonly verdict: string }) => verdict);
    expect(new Set(verdicts)).toEqual(new Set(['unfit']));
  });

  test('refuses what an estimate refuses, at the field', async () => {
    const { status, body } = await service.post('/v1/estimating/ladder', aRecord({ zones: [] }));
    expect(status).toBe(422);
    expect(body.errors[0].pointer).toBe('/zones');
  });
});
