import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const panel = {
  outline: [
    [0, 0],
    [2000, 0],
    [2000, 1000],
    [0, 1000],
  ],
};
const readings = Array.from({ length: 45 }, (_, index) => {
  const at = [200 + 200 * (index % 9), 100 + 200 * Math.floor(index / 9)];
  return { kind: 'sounding', at, sound: Math.hypot(at[0] - 800, at[1] - 500) < 320 ? 'dull' : 'sharp' };
});

describe('POST /v1/estimating/next-readings', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('a survey is answered with the places to read next, in order, with their minutes and their worth', async () => {
    const answer = await service.post('/v1/estimating/next-readings', {
      panel,
      survey: { readings },
      next: { count: 6, kinds: ['sounding', 'plug'], tapMinutes: 1 },
    });
    expect(answer.status).toBe(200);
    const { readings: next, minutes, worthH, areaRangeM2, isWorthIt } = answer.body;
    expect(next.map(({ number }: { number: number }) => number)).toEqual([1, 2, 3, 4, 5, 6]);
    for (const { at } of next) {
      expect(at[0]).toBeGreaterThanOrEqual(30);
      expect(at[0]).toBeLessThanOrEqual(1970);
    }
    expect(isWorthIt).toBe(60 * worthH > minutes);
    expect(areaRangeM2.after).toBeLessThan(areaRangeM2.now);
  });

  test('who has read nothing yet is told where to begin', async () => {
    const answer = await service.post('/v1/estimating/next-readings', { panel, survey: { readings: [] } });
    expect(answer.status).toBe(200);
    expect(answer.body.readings).toHaveLength(10);
    expect(answer.body.readings.every(({ kind }: { kind: string }) => kind === 'sounding')).toBe(true);
  });

  test('everything wrong with the question is named at once', async () => {
    const answer = await service.post('/v1/estimating/next-readings', {
      panel,
      survey: { readings },
      next: { count: 0, kinds: ['x-ray'], minutes: -5 },
    });
    expect(answer.status).toBe(422);
    expect(answer.body.errors.map(({ pointer }: { pointer: string }) => pointer).sort()).toEqual([
      '/next/count',
      '/next/kinds/0',
      '/next/minutes',
    ]);
  });
});
