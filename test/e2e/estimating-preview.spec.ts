import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { aRecord } from '../samples/a-record.js';
import { startService, type TestService } from './service.js';

describe('POST /v1/estimating/preview', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('shows the openings, the hours and the price of a record, says what it leaves out, and keeps nothing', async () => {
    const answer = await service.post('/v1/estimating/preview', aRecord());
    expect(answer.status).toBe(200);
    expect(answer.body.openings).toHaveLength(1);
    expect(answer.body.summary.labourLikelyH).toBeGreaterThan(10);
    expect(Number(answer.body.price.range.p10.amount)).toBeLessThan(
      Number(answer.body.price.range.p90.amount),
    );
    expect(answer.body.leftOut.length).toBeGreaterThan(3);
    const listed = await service.get('/v1/estimates');
    expect(listed.body.items).toEqual([]);
  });

  test('refuses what an estimate refuses, at the field', async () => {
    const answer = await service.post('/v1/estimating/preview', aRecord({ zones: [] }));
    expect(answer.status).toBe(422);
    expect(answer.body.errors[0].pointer).toBe('/zones');
  });
});
