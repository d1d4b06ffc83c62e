import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { Kingplank } from '../../libs/sdk/src/index.js';
import { chunk, greyJpeg, png } from '../support/pictures.js';
import { startService, TEST_KEY, type TestService } from './service.js';

const foredeck = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../apps/workshop/samples/foredeck.json'), 'utf8'),
) as Record<string, unknown>;
const HTML = { accept: 'text/html' };

/** A JPEG segment with what a camera writes: who and where. */
const APP1 = 0xe1;
const withCameraData = (jpeg: Buffer): Buffer => {
  const said = Buffer.from('Exif\0\0GPS 54 13 N 7 53 E, serial 4711', 'latin1');
  const head = Buffer.from([0xff, APP1, 0, said.length + 2]);
  return Buffer.concat([jpeg.subarray(0, 2), head, said, jpeg.subarray(2)]);
};

describe('photographs of an estimate', () => {
  let service: TestService;
  let client: Kingplank;
  let id: string;
  beforeAll(async () => {
    service = await startService();
    client = new Kingplank({ baseUrl: service.url, apiKey: TEST_KEY });
    id = String((await service.post('/v1/estimates', foredeck)).body.id);
  });
  afterAll(async () => {
    await service.stop();
  });
  const put = async (at: string, query: string, body: Uint8Array = greyJpeg, type = 'image/jpeg') => {
    const answer = await fetch(`${service.url}/v1/estimates/${at}?${query}`, {
      method: 'PUT',
      headers: { 'authorization': `Bearer ${TEST_KEY}`, 'content-type': type },
      body: new Uint8Array(body),
    });
    return { status: answer.status, body: JSON.parse(await answer.text()) };
  };

  test('are drawn anew, listed by number, shown in report and page, and taken away for good', async () => {
    expect((await client.estimates.photographs(id)).items).toEqual([]);
    const second = await client.estimates.setPhotograph(id, 2, png(2800, 700), {
      caption: 'Lining below',
      type: 'image/png',
    });
    expect(second).toMatchObject({ number: 2, widthPx: 1400, heightPx: 350, mediaType: 'image/jpeg' });
    await client.estimates.setPhotograph(id, 1, withCameraData(greyJpeg), {
      caption: 'Stain at the windlass',
      at: '1130,-40.5',
      directionDeg: '90',
    });
    const { items } = await client.estimates.photographs(id);
    expect(items.map(({ number, caption }) => [number, caption])).toEqual([
      [1, 'Stain at the windlass'],
      [2, 'Lining below'],
    ]);
    expect(items[0]).toMatchObject({ at: [1130, -40.5], directionDeg: 90 });
    const kept = Buffer.from((await client.estimates.photograph(id, 1)).bytes);
    expect(kept.subarray(0, 3)).toEqual(Buffer.from([0xff, 0xd8, 0xff]));
    expect(kept.toString('latin1')).not.toMatch(/GPS|Exif|4711/);

    const page = await service.get(`/v1/estimates/${id}`, HTML);
    expect(page.text.match(/src="data:image\/jpeg;base64,/g)).toHaveLength(2);
    expect(page.text).toContain('<figcaption>1. Stain at the windlass</figcaption>');
    expect(page.headers.get('content-security-policy')).toContain('img-src data:');
    expect((await service.get(`/v1/estimates/${id}`, { accept: 'application/pdf' })).text).toMatch(
      /\/Filter ?\/DCTDecode/,
    );
    expect(await client.estimates.drawing(id, 'defect-map')).toContain('>ph. 1</text>');

    const revised = await client.estimates.revise(id, {
      reason: 'Looked at again',
      record: foredeck as never,
    });
    expect((await client.estimates.photographs(revised.id)).items).toHaveLength(2);

    await client.estimates.removePhotograph(id, 2);
    await expect(client.estimates.photograph(id, 2)).rejects.toMatchObject({ status: 404 });
    expect((await client.estimates.photographs(revised.id)).items).toHaveLength(1);
  });

  test('put under a number that is taken stand in its place', async () => {
    await put(`${id}/photographs/5`, 'caption=first');
    await put(`${id}/photographs/5`, 'caption=second');
    const { items } = await client.estimates.photographs(id);
    expect(items.filter(({ number }) => number === 5).map(({ caption }) => caption)).toEqual(['second']);
  });

  test('put as new leave alone what stands under the number, and an answer that was lost is given again', async () => {
    const said = { caption: 'kept', isNewOnly: true, idempotencyKey: 'invented-photograph-7' };
    const first = await client.estimates.setPhotograph(id, 7, greyJpeg, said);
    expect(await client.estimates.setPhotograph(id, 7, greyJpeg, said)).toEqual(first);
    await expect(
      client.estimates.setPhotograph(id, 7, greyJpeg, { caption: 'other', isNewOnly: true }),
    ).rejects.toMatchObject({ status: 412, message: expect.stringContaining('take a number that is free') });
    const { items } = await client.estimates.photographs(id);
    expect(items.filter(({ number }) => number === 7).map(({ caption }) => caption)).toEqual(['kept']);
  });

  test('of a telephone in HEIC are refused with the formats that are taken, whatever type they say', async () => {
    const box = Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1');
    const heic = Buffer.concat([box, Buffer.alloc(4000, 0x5a)]);
    const named = await put(`${id}/photographs/3`, 'caption=x', heic, 'image/heic');
    expect(named).toMatchObject({
      status: 415,
      body: { detail: expect.stringMatching(/image\/(png|jpeg).*image\/(png|jpeg)/) },
    });
    const hidden = await put(`${id}/photographs/3`, 'caption=x', heic, 'image/jpeg');
    expect(hidden.status).toBe(422);
    expect(hidden.body.errors).toEqual([expect.objectContaining({ code: 'not-supported' })]);
    expect(JSON.stringify(hidden.body.errors)).toMatch(/HEIC.*PNG and JPEG are taken: export it as JPEG/);
  });

  test('are refused with every fault named: what is no picture, and where it lies off the deck', async () => {
    const refused = await put(`${id}/photographs/3`, 'caption=x&at=9000,0', Buffer.from('<svg/>'));
    expect(refused.status).toBe(422);
    expect(refused.body.errors).toEqual([
      expect.objectContaining({ pointer: '/at', code: 'out-of-range' }),
      expect.objectContaining({
        code: 'not-one-of',
        facts: expect.objectContaining({ choices: 'a PNG or JPEG picture' }),
      }),
    ]);
    expect((await put(`${id}/photographs/3`, 'caption=x&directionDeg=90')).body.errors[0]).toMatchObject({
      code: 'missing',
      pointer: '/at',
    });
    expect(
      (await put(`${id}/photographs/3`, 'at=here')).body.errors.map(({ code }: { code: string }) => code),
    ).toEqual(['missing', 'not-in-form']);
    const bomb = png(12_001, 10, { rows: 1 });
    expect((await put(`${id}/photographs/3`, 'caption=x', bomb, 'image/png')).status).toBe(422);
    const cut = png(40, 40, { rows: 10, between: [chunk('tEXt', Buffer.from('a\0b'))] });
    expect((await put(`${id}/photographs/3`, 'caption=x', cut, 'image/png')).body.errors[0].code).toBe(
      'not-supported',
    );
    expect((await put(`${id}/photographs/25`, 'caption=x')).status).toBe(404);
    expect((await put(`${id}/photographs/3`, 'caption=x', Buffer.alloc(8_000_001))).status).toBe(413);
    expect((await client.estimates.photographs(id)).items.map(({ number }) => number)).not.toContain(3);
  });

  test('belong to one organisation', async () => {
    const { body: other } = await service.post('/v1/organisations', { name: 'Another office' });
    const { body: key } = await service.post(
      '/v1/keys',
      { name: 'Theirs', roles: ['surveyor'] },
      { authorization: `Bearer ${other.adminKey.key}` },
    );
    const theirs = { authorization: `Bearer ${key.key}` };
    expect((await service.get(`/v1/estimates/${id}/photographs`, theirs)).status).toBe(404);
    expect(
      (await service.get(`/v1/estimates/${id}/photographs/1`, { ...theirs, accept: 'image/jpeg' })).status,
    ).toBe(404);
    expect(
      (await service.send('DELETE', `/v1/estimates/${id}/photographs/1`, undefined, theirs)).status,
    ).toBe(404);
  });
});
