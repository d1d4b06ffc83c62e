import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const where = '/v1/estimating/laminate-schedule';
const opening = [
  [0, 0],
  [600, 0],
  [600, 400],
  [0, 400],
];
const panel = {
  core: { thicknessMm: '1/2 in', youngMPa: 98 },
  otherSkin: { thicknessMm: 2, alongNPerMm: 18_000, acrossNPerMm: 18_000 },
};

describe('POST /v1/estimating/laminate-schedule', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('an eighth of an inch of old deck is given back by three skins, and the first is laid out', async () => {
    const answer = await service.post(where, {
      resin: 'resin-epoxy-2to1',
      relaid: { oldSkin: { thicknessMm: '1/8 in' }, panel, layOut: { opening } },
    });
    expect(answer.status).toBe(200);
    const { search, relaid } = answer.body;
    expect([search.outcome, search.best.length, search.effort.isProvenBest]).toEqual(['found', 3, true]);
    expect(search.best[1].lost.by).toBe('mass');
    expect(search.best[0].checks.every(({ verdict }: { verdict: string }) => verdict === 'passes')).toBe(
      true,
    );
    expect(relaid.plies).toHaveLength(search.best[0].plies.length);
    expect(relaid.taperWidthMm.value).toBeCloseTo(3.175 * 12, 9);
    expect(answer.text).not.toMatch(/NaN|Infinity/);
  });

  test('a skin bonded back is closed by as many plies as fill the groove', async () => {
    const answer = await service.post(where, {
      resin: 'resin-epoxy-2to1',
      rebedded: {
        skinThicknessMm: 2,
        opening,
        fillWith: 'reinforcement-tape-plain-300',
        roomMm: 60,
        joint: { stressMPa: 60, allowableShearMPa: 8 },
      },
    });
    expect(answer.status).toBe(200);
    expect(answer.body.rebedded.plies.length).toBeGreaterThan(3);
    expect(
      answer.body.rebedded.checks.map(({ check, verdict }: { check: string; verdict: string }) => [
        check,
        verdict,
      ]),
    ).toEqual([
      ['taper-room', 'passes'],
      ['flush', 'passes'],
      ['bond-shear', 'passes'],
    ]);
  });

  test('what cannot be done is an answer that says what stands in the way', async () => {
    const answer = await service.post(where, {
      resin: 'resin-epoxy-2to1',
      relaid: { oldSkin: { thicknessMm: 6 }, fabrics: [{ material: 'reinforcement-unidirectional-300' }] },
    });
    expect(answer.status).toBe(200);
    expect(answer.body.search.outcome).toBe('cannot-be-done');
    expect(answer.body.search.missing.words.length).toBeGreaterThan(0);
  });

  test('unknown codes are named with their places', async () => {
    const answer = await service.post(where, {
      resin: 'resin-epoxy-2to1',
      relaid: {
        oldSkin: { thicknessMm: 3, resin: 'resin-none' },
        fabrics: [{ material: 'reinforcement-none' }],
      },
    });
    expect(answer.status).toBe(422);
    expect(
      answer.body.errors.map((error: { pointer: string; code: string }) => [error.pointer, error.code]),
    ).toEqual([
      ['/relaid/oldSkin/resin', 'unknown-code'],
      ['/relaid/fabrics/0/material', 'unknown-code'],
    ]);
    const neither = await service.post(where, { resin: 'resin-epoxy-2to1' });
    expect(neither.body.errors.map((error: { pointer: string }) => error.pointer)).toEqual(['/relaid']);
  });
});
