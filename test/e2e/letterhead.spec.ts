import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { InvalidRequestError, Kingplank, StaleVersionError } from '../../libs/sdk/src/index.js';
import { png, sizeOfPng } from '../support/pictures.js';
import { startService, TEST_KEY, type TestService } from './service.js';

const foredeck = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../apps/workshop/samples/foredeck.json'), 'utf8'),
) as Record<string, unknown>;
const HTML = { accept: 'text/html' };

describe('the letterhead', () => {
  let service: TestService;
  let client: Kingplank;
  let at: string;
  beforeAll(async () => {
    service = await startService();
    client = new Kingplank({ baseUrl: service.url, apiKey: TEST_KEY });
    at = `/v1/estimates/${(await service.post('/v1/estimates', foredeck)).body.id}`;
  });
  afterAll(async () => {
    await service.stop();
  });

  test('is the name of the organisation until somebody sets it, and then stands on the documents', async () => {
    const before = await service.get('/v1/letterhead');
    expect([before.headers.get('etag'), before.body]).toEqual([
      '"v0"',
      { name: 'First organisation', lines: [] },
    ]);
    const page = await service.get(at, HTML);
    const set = await service.send(
      'PUT',
      '/v1/letterhead',
      { lines: ['Quay 1', '00000 Invented Port'] },
      { 'if-match': '"v0"' },
    );
    expect([set.status, set.headers.get('etag')]).toEqual([200, '"v1"']);
    const after = await service.get(at, { ...HTML, 'if-none-match': page.headers.get('etag') ?? '' });
    expect(after.status).toBe(200);
    expect(after.text).toContain(
      '<span>First organisation</span><span>Quay 1</span><span>00000 Invented Port</span>',
    );
    expect(after.headers.get('content-security-policy')).not.toContain('img-src');
  });

  test('is changed only by who has seen it as it is', async () => {
    const { etag } = await client.letterhead.get();
    expect((await service.send('PUT', '/v1/letterhead', { lines: [] })).status).toBe(428);
    expect((await service.send('PUT', '/v1/letterhead', { lines: [] }, { 'if-match': '"v0"' })).status).toBe(
      412,
    );
    const raced = await Promise.all(
      [1, 2, 3, 4].map(
        async (turn) =>
          (await service.send('PUT', '/v1/letterhead', { lines: [`Quay ${turn}`] }, { 'if-match': etag }))
            .status,
      ),
    );
    expect([...raced].sort()).toEqual([200, 412, 412, 412]);
    await expect(client.letterhead.setLogo(png(4, 4), { ifMatch: etag })).rejects.toBeInstanceOf(
      StaleVersionError,
    );
  });

  test('says every fault of its lines at once', async () => {
    const { etag } = await client.letterhead.get();
    const { status, body } = await service.send(
      'PUT',
      '/v1/letterhead',
      { lines: ['', 'x'.repeat(81)], colour: 'red' },
      { 'if-match': etag },
    );
    expect(status).toBe(422);
    expect(body.errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
      '/lines/0',
      '/lines/1',
      '/colour',
    ]);
  });

  test('takes a logo by its content, keeps it at the size it is printed, and gives it up again', async () => {
    const { etag } = await client.letterhead.get();
    const { value, etag: withLogo } = await client.letterhead.setLogo(png(2362, 200), { ifMatch: etag });
    expect(value.logo).toEqual({ href: '/v1/letterhead/logo', mediaType: 'image/png' });
    expect(sizeOfPng((await client.letterhead.logo()).bytes)).toEqual([1181, 100]);
    const described = await client.letterhead.set(
      { lines: ['Quay 1'], logoDescription: 'A lighthouse on a rock' },
      { ifMatch: withLogo },
    );
    const page = await service.get(at, HTML);
    expect(page.text).toMatch(/<img alt="A lighthouse on a rock" src="data:image\/png;base64,/);
    expect(page.headers.get('content-security-policy')).toContain('img-src data:');
    expect((await service.get(at, { accept: 'application/pdf' })).text).toMatch(/\/Subtype ?\/Image/);
    expect(
      (await service.get('/v1/letterhead/logo', { 'accept': 'image/png', 'if-none-match': described.etag }))
        .status,
    ).toBe(304);
    await client.letterhead.removeLogo({ ifMatch: described.etag });
    expect((await service.get('/v1/letterhead/logo', { accept: 'image/png' })).status).toBe(404);
    expect((await service.get(at, HTML)).text).not.toContain('<img');
  });

  test('refuses what is no picture, whatever it is called', async () => {
    const { etag } = await client.letterhead.get();
    const script = new TextEncoder().encode(
      '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>',
    );
    const refused = await client.letterhead
      .setLogo(script, { ifMatch: etag })
      .catch((failure: unknown) => failure);
    expect(refused).toBeInstanceOf(InvalidRequestError);
    expect(refused).toMatchObject({
      status: 422,
      errors: [{ code: 'not-one-of', facts: { choices: 'a PNG or JPEG picture' } }],
    });
    expect(
      (
        await service.send('PUT', '/v1/letterhead/logo', 'x', {
          'content-type': 'image/svg+xml',
          'if-match': etag,
        })
      ).status,
    ).toBe(415);
    expect(
      (
        await service.send('PUT', '/v1/letterhead/logo', 'x'.repeat(2_000_000), {
          'content-type': 'image/png',
          'if-match': etag,
        })
      ).status,
    ).toBe(413);
    expect((await client.letterhead.get()).etag).toBe(etag);
  });

  test('belongs to one organisation; its keys read it, its admins set it', async () => {
    const { body: other } = await service.post('/v1/organisations', { name: 'Another office' });
    const { body: key } = await service.post(
      '/v1/keys',
      { name: 'Theirs', roles: ['surveyor'] },
      { authorization: `Bearer ${other.adminKey.key}` },
    );
    const theirs = { authorization: `Bearer ${key.key}` };
    expect((await service.get('/v1/letterhead', theirs)).body).toEqual({ name: 'Another office', lines: [] });
    expect(
      (await service.send('PUT', '/v1/letterhead', { lines: [] }, { ...theirs, 'if-match': '"v0"' })).status,
    ).toBe(403);
  });
});
