import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { aRecord } from '../samples/a-record.js';
import { greyJpeg } from '../support/pictures.js';
import { startService, type TestService } from './service.js';

const SHOP = 'https://shop.example';
const LIMITS = { perMinute: 600, perMinutePerVisitor: 300, perDay: 50 };

describe('a page of a shop', () => {
  let service: TestService;
  let page: Record<string, string>;
  let mine: { id: string; clientSecret: string };

  const bearer = (key: unknown) => ({ authorization: `Bearer ${String(key)}` });
  const publishable = async (more: object = {}) =>
    (await service.post('/v1/publishable-keys', { name: 'Shop form', origins: [SHOP], ...LIMITS, ...more }))
      .body;
  const estimate = (headers: Readonly<Record<string, string>>, key: string = randomUUID()) =>
    service.post('/v1/estimates', aRecord(), { 'idempotency-key': `"${key}"`, ...headers });

  beforeAll(async () => {
    service = await startService();
    page = { ...bearer((await publishable()).key), origin: SHOP };
    mine = (await estimate(page)).body;
  });
  afterAll(async () => {
    await service.stop();
  });

  test('makes an estimate, previews one, and reads and revises what it made with the secret it was given', async () => {
    expect(mine.clientSecret).toMatch(/^kp_es_[\w-]{43}$/);
    const secret = bearer(mine.clientSecret);
    const read = await service.get(`/v1/estimates/${mine.id}`, secret);
    expect([read.status, read.text.includes(mine.clientSecret)]).toEqual([200, false]);
    for (const at of ['drawings', 'basket', 'record', 'revisions'])
      expect([at, (await service.get(`/v1/estimates/${mine.id}/${at}`, secret)).status]).toEqual([at, 200]);
    const revised = await service.post(
      `/v1/estimates/${mine.id}/revisions`,
      { reason: 'Opened', record: aRecord({ title: 'Opened deck' }) },
      secret,
    );
    expect(revised.status).toBe(201);
    expect((await service.get(`/v1/estimates/${revised.body.id as string}`, secret)).status).toBe(200);
    expect((await service.post('/v1/estimating/preview', aRecord(), page)).status).toBe(200);
  });

  test('puts photographs beside what it made, and none in the place of another or away', async () => {
    const { id, clientSecret } = (await estimate(page)).body as typeof mine;
    const put = (number: number, caption: string): Promise<Response> =>
      fetch(`${service.url}/v1/estimates/${id}/photographs/${number}?caption=${caption}`, {
        method: 'PUT',
        headers: { ...bearer(clientSecret), 'origin': SHOP, 'content-type': 'image/jpeg' },
        body: new Uint8Array(greyJpeg),
      });
    expect((await put(1, 'mine')).status).toBe(200);
    expect((await put(1, 'other')).status).toBe(412);
    const at = `/v1/estimates/${id}/photographs`;
    expect((await service.send('DELETE', `${at}/1`, undefined, bearer(clientSecret))).status).toBe(403);
    expect((await service.get(at, bearer(clientSecret))).body.items).toMatchObject([{ caption: 'mine' }]);
    expect((await service.get(at, bearer(mine.clientSecret))).status).toBe(404);
  });

  test('1. from another origin it is refused', async () => {
    expect((await estimate({ ...page, origin: 'https://elsewhere.example' })).status).toBe(403);
    const secret = { ...bearer(mine.clientSecret), origin: 'https://elsewhere.example' };
    expect((await service.get(`/v1/estimates/${mine.id}`, secret)).status).toBe(403);
  });

  test('2. without an origin a publishable key is refused', async () => {
    expect((await estimate({ authorization: page.authorization })).status).toBe(403);
  });

  test('3. nothing is listed', async () => {
    for (const header of [page, bearer(mine.clientSecret)])
      expect((await service.get('/v1/estimates', header)).status).toBe(403);
  });

  test('4. any other estimate is as unknown as one that never was', async () => {
    const other = (await estimate(page)).body;
    const secret = bearer(mine.clientSecret);
    const foreign = await service.get(`/v1/estimates/${other.id as string}`, secret);
    const unknown = await service.get('/v1/estimates/00000000-0000-7000-8000-000000000000', secret);
    expect([foreign.status, unknown.status]).toEqual([404, 404]);
    const said = ({ body }: { body: { title: string; type: string; detail: string } }) =>
      [body.title, body.type, body.detail.replace(/[0-9a-f-]{36}/, 'ID')].join();
    expect(said(foreign)).toBe(said(unknown));
    expect(
      (await service.get(`/v1/estimates/${mine.id}/comparison?with=${other.id as string}`, secret)).status,
    ).toBe(404);
    const pooled = await service.post(`/v1/estimates/${mine.id}/basket`, { together: [other.id] }, secret);
    expect(pooled.status).toBeGreaterThanOrEqual(400);
    expect((await service.get(`/v1/estimates/${other.id as string}`, page)).status).toBe(403);
  });

  test('5. an expired key and an expired session open nothing', async () => {
    const soon = new Date(Date.now() + 1500).toISOString();
    const { key } = await publishable({ expiresAt: soon });
    const expiring = { ...bearer(key), origin: SHOP };
    const made = (await estimate(expiring)).body;
    await new Promise((resolve) => setTimeout(resolve, 2600));
    expect((await estimate(expiring)).status).toBe(401);
    expect((await service.get(`/v1/estimates/${made.id as string}`, bearer(made.clientSecret))).status).toBe(
      401,
    );
  });

  test('6. a revoked key opens nothing, nor do the secrets given out for it', async () => {
    const key = await publishable();
    const made = (await estimate({ ...bearer(key.key), origin: SHOP })).body;
    await service.send('DELETE', `/v1/publishable-keys/${key.id as string}`, undefined, { 'if-match': '*' });
    expect((await estimate({ ...bearer(key.key), origin: SHOP })).status).toBe(401);
    expect((await service.get(`/v1/estimates/${made.id as string}`, bearer(made.clientSecret))).status).toBe(
      401,
    );
  });

  test('7. a secret in the address is none', async () => {
    const { clientSecret, id } = mine;
    const answer = await service.get(`/v1/estimates/${id}?clientSecret=${clientSecret}`, {
      authorization: '',
    });
    expect(answer.status).toBe(401);
    expect(service.log.map((line) => JSON.stringify(line)).join('')).not.toContain(clientSecret);
  });

  test('8. what belongs to programs and admins is closed', async () => {
    for (const [method, at] of [
      ['GET', '/v1/keys'],
      ['GET', '/v1/materials'],
      ['GET', '/v1/editions'],
      ['GET', '/v1/letterhead'],
      ['GET', '/v1/audit'],
      ['POST', '/v1/publishable-keys'],
      ['POST', '/v1/client-sessions'],
      ['POST', '/v1/estimating/cutting-plan'],
    ])
      for (const header of [page, bearer(mine.clientSecret)])
        expect([
          at,
          (await service.send(method, at, method === 'POST' ? {} : undefined, header)).status,
        ]).toEqual([at, 403]);
  });

  test('9. a replay makes no second estimate, and a key that can be guessed is refused', async () => {
    const key = randomUUID();
    const [first, again] = [await estimate(page, key), await estimate(page, key)];
    expect([again.body.id, again.headers.get('idempotency-replayed')]).toEqual([first.body.id, 'true']);
    expect(
      (await service.get(`/v1/estimates/${again.body.id as string}`, bearer(again.body.clientSecret))).status,
    ).toBe(200);
    expect((await estimate(page, '1')).status).toBe(400);
    expect((await service.post('/v1/estimates', aRecord(), page)).status).toBe(400);
  });

  test('10. limits hold: of a minute for one visitor, and of a day', async () => {
    const few = { ...bearer((await publishable({ perMinutePerVisitor: 1 })).key), origin: SHOP };
    const statuses = [await estimate(few), await estimate(few), await estimate(few)].map(
      ({ status }) => status,
    );
    expect(statuses).toContain(429);
    const daily = { ...bearer((await publishable({ perDay: 1 })).key), origin: SHOP };
    expect((await estimate(daily)).status).toBe(201);
    const over = await estimate(daily);
    expect([over.status, Number(over.headers.get('retry-after')) > 0]).toEqual([429, true]);
  });

  test('11. an edition that is not published is refused when the key is made', async () => {
    const refused = await publishable({ edition: 'never-published' });
    expect(refused.errors[0].pointer).toBe('/edition');
    const wild = await publishable({
      origins: ['https://*.example', 'http://shop.example', 'https://shop.example/x'],
    });
    expect(wild.errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
      '/origins/0',
      '/origins/1',
      '/origins/2',
    ]);
  });

  test('12. a preflight is answered where pages ask, and nowhere else', async () => {
    const preflight = async (at: string) =>
      (
        await fetch(service.url + at, {
          method: 'OPTIONS',
          headers: { 'origin': SHOP, 'access-control-request-method': 'POST' },
        })
      ).headers.get('access-control-allow-origin');
    expect(await preflight('/v1/estimates')).toBe(SHOP);
    expect(await preflight(`/v1/estimates/${mine.id}/basket`)).toBe(SHOP);
    for (const at of ['/v1/keys', '/v1/materials', '/v1/estimating/openings'])
      expect(await preflight(at)).toBeNull();
    expect((await estimate(page)).headers.get('access-control-allow-origin')).toBe(SHOP);
    expect((await estimate({ origin: SHOP })).headers.get('access-control-allow-origin')).toBeNull();
  });

  test('a session makes one estimate, under the reference that the shop fixed', async () => {
    const opened = await service.post('/v1/client-sessions', { reference: 'order-7', minutes: 5 });
    const session = bearer(opened.body.clientSecret);
    expect(opened.status).toBe(201);
    expect((await service.post('/v1/estimates', aRecord({ reference: 'order-8' }), session)).status).toBe(
      422,
    );
    const made = await service.post('/v1/estimates', aRecord(), session);
    expect([made.status, made.body.clientSecret]).toEqual([201, undefined]);
    const read = await service.get(`/v1/estimates/${made.body.id as string}`, session);
    expect([read.status, read.body.estimate.reference]).toEqual([200, 'order-7']);
    expect((await service.post('/v1/estimates', aRecord(), session)).status).toBe(409);
  });
});

describe('a chandler', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('sees the estimates that were shared with its key, and no other', async () => {
    const { body: key } = await service.post('/v1/keys', { name: 'Store', roles: ['chandler'] });
    const chandler = { authorization: `Bearer ${key.key as string}` };
    const { body: shared } = await service.post('/v1/estimates', aRecord({ title: 'Shared' }));
    const { body: kept } = await service.post('/v1/estimates', aRecord({ title: 'Kept' }));
    expect((await service.get('/v1/estimates', chandler)).body.items).toEqual([]);
    const at = `/v1/estimates/${shared.id as string}`;
    expect((await service.send('PUT', `${at}/shares/${key.id as string}`)).status).toBe(204);
    expect((await service.get(`${at}/shares`)).body.items).toMatchObject([
      { keyId: key.id, keyName: 'Store' },
    ]);
    expect((await service.get('/v1/estimates', chandler)).body.items).toMatchObject([{ title: 'Shared' }]);
    expect((await service.get(`${at}/basket`, chandler)).status).toBe(200);
    expect((await service.get(`/v1/estimates/${kept.id as string}`, chandler)).status).toBe(404);
    expect((await service.post('/v1/estimates', aRecord(), chandler)).status).toBe(403);
    const later = async (id: unknown): Promise<string> => {
      const form = { accept: 'application/pdf', prefer: 'respond-async' };
      return `/v1/operations/${String((await service.get(`/v1/estimates/${String(id)}`, form)).body.id)}`;
    };
    // An operation is for those who may see the estimate that it is about, whoever asked for it and whoever learns its id.
    expect((await service.get(await later(shared.id), chandler)).status).toBe(200);
    const hidden = await later(kept.id);
    expect((await service.get(hidden)).status).toBe(200);
    expect((await service.get(hidden, chandler)).status).toBe(404);
    expect((await service.get(`${hidden}/result`, { ...chandler, accept: 'application/pdf' })).status).toBe(
      404,
    );
    expect((await service.send('DELETE', `${at}/shares/${key.id as string}`)).status).toBe(204);
    expect((await service.get(at, chandler)).status).toBe(404);
  });
});
