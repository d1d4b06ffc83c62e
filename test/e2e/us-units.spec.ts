import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestAnswer, type TestService } from './service.js';

const foredeck: unknown = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../apps/workshop/samples/foredeck.json'), 'utf8'),
);
const us = { 'accept-units': 'us' };

/** The document without its display members, at any depth. */
const plain = (text: string): unknown =>
  JSON.parse(text, (key, value: unknown) => (key === 'us' ? undefined : value));

describe('US customary units beside SI', () => {
  let service: TestService;
  let si: TestAnswer;
  let at: string;
  beforeAll(async () => {
    service = await startService();
    const made = await service.post('/v1/estimates', foredeck);
    at = `/v1/estimates/${made.body.id}`;
    si = await service.get(at);
  });
  afterAll(async () => {
    await service.stop();
  });

  test('an estimate gets texts under the names of its fields, and not one number changes', async () => {
    const { body, text } = await service.get(at, us);
    const { core, scope, panel, lines } = body.estimate;
    expect(plain(text)).toEqual(si.body);
    expect(si.text).not.toContain('"us":');
    expect(core.stack.map((layer: { us: { thicknessMm: string } }) => layer.us.thicknessMm)).toEqual(
      expect.arrayContaining(['1/2 in', '≈ 0.004 in']),
    );
    expect(scope.us.openedAreaM2).toMatch(/^≈ \d+\.\d+ ft2$/);
    expect(Object.keys(scope.us.damagedAreaM2)).toEqual(['p10', 'p50', 'p90']);
    expect(panel.us.sizeMm).toHaveLength(2);
    expect(lines.find(({ unit }: { unit: string }) => unit === 'kg').us.netQuantity).toMatch(/(lb|oz)$/);
    expect(lines.find(({ unit }: { unit: string }) => unit === 'h').us).toBeUndefined();
  });

  test('each representation has a tag of its own, and caches are told what it depends on', async () => {
    const answer = await service.get(at, us);
    const tag = answer.headers.get('etag') ?? '';
    expect(tag).not.toBe(si.headers.get('etag'));
    expect(answer.headers.get('vary')).toMatch(/Accept-Units/);
    expect((await service.get(at, { ...us, 'if-none-match': tag })).status).toBe(304);
    expect((await service.get(at, { ...us, 'if-none-match': si.headers.get('etag') ?? '' })).status).toBe(
      200,
    );
    expect((await service.get(at, { 'if-none-match': tag })).status).toBe(200);
  });

  test('the same when it is made, revised, compared and explained', async () => {
    const made = await service.post('/v1/estimates', foredeck, us);
    const revised = await service.post(`${at}/revisions`, { reason: 'Opened', record: foredeck }, us);
    const why = await service.get(`${at}/lines/labour-cut-skin/why`, us);
    expect(made.headers.get('etag')).toBe(`"${made.body.id}.us.json"`);
    expect(
      [made.body.estimate.core.us.cavityMm, revised.body.estimate.core.us.cavityMm].every((text: string) =>
        text.endsWith(' in'),
      ),
    ).toBe(true);
    expect(why.text).toContain('"us":{"value":"');
    expect((await service.get(`/v1/estimates/${revised.body.id}/comparison`, us)).status).toBe(200);
    const [calendar, basket] = await Promise.all(
      ['calendar', 'basket'].map((part) => service.get(`${at}/${part}`, us)),
    );
    expect([calendar.status, calendar.headers.get('etag')?.endsWith('.calendar.us"')]).toEqual([200, true]);
    expect(basket.text).toMatch(/"us":\{"quantity":"/);
    expect(plain((await service.get(at)).text)).toEqual(si.body);
  });

  test('a room answers in them too', async () => {
    const read = await service.post(
      '/v1/estimating/quantities',
      { quantities: [{ text: '12.7 mm', dimension: 'length' }] },
      us,
    );
    expect([read.status, read.body.quantities[0].us]).toEqual([200, { value: '1/2 in' }]);
    const relaid = {
      oldSkin: { thicknessMm: '1/8 in' },
      layOut: {
        opening: [
          [0, 0],
          [600, 0],
          [600, 400],
          [0, 400],
        ],
      },
    };
    const schedule = await service.post(
      '/v1/estimating/laminate-schedule',
      { resin: 'resin-epoxy-2to1', relaid },
      us,
    );
    expect([schedule.status, schedule.body.relaid.taperWidthMm.us]).toEqual([200, { value: '1 1/2 in' }]);
  });

  test('other units are refused before anything is made, and the header is named', async () => {
    const answer = await service.post('/v1/estimates', foredeck, { 'accept-units': 'imperial' });
    expect(answer.status).toBe(400);
    expect(answer.body.errors).toEqual([
      expect.objectContaining({
        header: 'Accept-Units',
        code: 'not-one-of',
        detail: 'Accept-Units is "imperial"; it must be one of si, us.',
      }),
    ]);
  });
});
