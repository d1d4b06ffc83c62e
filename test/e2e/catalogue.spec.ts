import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const cite = { source: 'COMMON-PRACTICE' };
const datum = (value: number) => ({ value, cite });
const filler = (code: string) => ({
  kind: 'filler',
  code,
  name: 'Invented filler',
  trueDensityGPerCm3: datum(2.5),
  bulkDensityGPerCm3: datum(0.4),
  uses: ['bedding'],
  partsPerHundred: datum(20),
});

describe('the catalogue in the hands of its admin', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('the shipped edition is current, readable and unchangeable', async () => {
    const { body } = await service.get('/v1/editions');
    expect(body.current).toMatch(/^shipped-/);
    expect(body.items[0]).toMatchObject({ state: 'published', isShipped: true });
    const materials = await service.get('/v1/materials?kind=core');
    expect(materials.body.items.length).toBeGreaterThan(5);
    expect(
      (await service.post(`/v1/materials?edition=${body.current as string}`, filler('filler-mine'))).status,
    ).toBe(409);
    expect((await service.post('/v1/materials', filler('filler-mine'))).status).toBe(400);
  });

  test('a draft is made, changed under If-Match, published, and then estimates use it', async () => {
    const draft = await service.post('/v1/editions', { code: 'spring', note: 'New prices' });
    expect([draft.status, draft.body.state]).toEqual([201, 'draft']);
    expect((await service.post('/v1/editions', { code: 'spring' })).status).toBe(409);

    const added = await service.post('/v1/materials?edition=spring', filler('filler-mine'));
    expect(added.status).toBe(201);
    expect((await service.post('/v1/materials?edition=spring', filler('filler-mine'))).status).toBe(409);
    const at = '/v1/materials/filler-mine?edition=spring';
    const tag = added.headers.get('etag') ?? '';
    const patch = { 'content-type': 'application/merge-patch+json' };
    expect((await service.send('PATCH', at, { name: 'Better' }, patch)).status).toBe(428);
    expect(
      (await service.send('PATCH', at, { name: 'Better' }, { ...patch, 'if-match': '"v9"' })).status,
    ).toBe(412);
    const changed = await service.send('PATCH', at, { name: 'Better' }, { ...patch, 'if-match': tag });
    expect([changed.status, changed.body.name]).toEqual([200, 'Better']);
    expect((await service.send('PATCH', at, { name: 'Lost' }, { ...patch, 'if-match': tag })).status).toBe(
      412,
    );
    const nulled = await service.send(
      'PATCH',
      at,
      { name: null },
      { ...patch, 'if-match': changed.headers.get('etag') ?? '' },
    );
    expect([nulled.status, nulled.body.errors[0].pointer, nulled.body.errors[0].code]).toEqual([
      422,
      '/name',
      'missing',
    ]);

    expect((await service.get('/v1/materials/filler-mine')).status).toBe(404);
    const published = await service.send('POST', '/v1/editions/spring/publication', undefined, {
      'if-match': draft.headers.get('etag') ?? '',
    });
    expect([published.status, published.body.state]).toEqual([200, 'published']);
    expect((await service.get('/v1/editions')).body.current).toBe('spring');
    expect((await service.get('/v1/materials/filler-mine')).body.name).toBe('Better');
    expect(
      (await service.send('PATCH', at, { name: 'Too late' }, { ...patch, 'if-match': '*' })).status,
    ).toBe(409);
    const history = await service.get('/v1/materials/filler-mine/history');
    expect(history.body.items.map(({ action }: { action: string }) => action)).toEqual([
      'changed',
      'created',
    ]);
    expect(history.body.items[0]).toMatchObject({
      before: { name: 'Invented filler' },
      after: { name: 'Better' },
    });
    expect(
      (await service.get('/v1/editions/spring/history')).body.items.map(
        ({ action }: { action: string }) => action,
      ),
    ).toEqual(['published', 'created']);
  });

  test('two writers with one version: one wins, the other is told', async () => {
    await service.post('/v1/editions', { code: 'race' });
    const added = await service.post('/v1/materials?edition=race', filler('filler-race'));
    const headers = {
      'content-type': 'application/merge-patch+json',
      'if-match': added.headers.get('etag') ?? '',
    };
    const answers = await Promise.all(
      ['A', 'B', 'C'].map((name) =>
        service.send('PATCH', '/v1/materials/filler-race?edition=race', { name }, headers),
      ),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412, 412]);
  });

  test('a table goes out as CSV and comes back, all of it or nothing', async () => {
    await service.post('/v1/editions', { code: 'table' });
    const csv = (await service.get('/v1/price-lists?edition=table', { accept: 'text/csv' })).text;
    const type = { 'content-type': 'text/csv' };
    const before = (await service.get('/v1/price-lists?edition=table')).body.items;
    expect((await service.send('POST', '/v1/price-lists/import?edition=table', csv, type)).body).toEqual({
      imported: before.length,
    });
    expect((await service.get('/v1/price-lists?edition=table')).body.items).toEqual(before);
    const fillers =
      'kind,code,name,trueDensityGPerCm3.value,trueDensityGPerCm3.cite.source\r\nfiller,filler-a,A,2.5,COMMON-PRACTICE\r\nfiller,filler-b,B,heavy,COMMON-PRACTICE\r\n';
    const refused = await service.send('POST', '/v1/materials/import?edition=table', fillers, type);
    expect(refused.status).toBe(422);
    expect(refused.body.errors.map(({ pointer }: { pointer: string }) => pointer)).toContain(
      '/1/trueDensityGPerCm3/value',
    );
    expect(refused.body.errors).toContainEqual(
      expect.objectContaining({ row: 3, column: 'trueDensityGPerCm3.value' }),
    );
    expect((await service.get('/v1/materials/filler-a?edition=table')).status).toBe(404);
    expect((await service.send('POST', '/v1/materials/import?edition=table', 'a,"b', type)).status).toBe(400);
    expect((await service.send('POST', '/v1/materials/import?edition=table', '{}')).status).toBe(415);
  });

  test("a supplier's sheet goes out with one pack a row, and comes back with a new price", async () => {
    await service.post('/v1/editions', { code: 'sheet' });
    const [{ code }] = (await service.get('/v1/price-lists?edition=sheet')).body.items as readonly {
      code: string;
    }[];
    const at = `/v1/price-lists/${code}/packs?edition=sheet`;
    const before = await service.get(at, { accept: 'text/csv' });
    const [header, first, ...rest] = before.text.trim().split('\r\n');
    const column = header.split(',').indexOf('massKg');
    expect(column).toBeGreaterThan(0);
    const type = { 'content-type': 'text/csv' };
    const sheet = [header, first, ...rest].join('\r\n');
    expect((await service.send('PUT', at, sheet, type)).status).toBe(428);
    const same = await service.send('PUT', at, sheet, {
      ...type,
      'if-match': before.headers.get('etag') ?? '',
    });
    expect([same.status, same.body.packs.length]).toEqual([200, rest.length + 1]);
    const wrong = await service.send('PUT', at, 'sku,name\r\nA,only a name\r\n', {
      ...type,
      'if-match': same.headers.get('etag') ?? '',
    });
    expect([wrong.status, wrong.body.errors[0].pointer]).toEqual([422, '/packs/0/supplier']);
    expect(wrong.body.errors[0]).toMatchObject({ row: 2, column: 'supplier' });
    expect((await service.get(at)).body.packs).toEqual(same.body.packs);
  });

  test('a draft that does not hold together is not published, and can be thrown away', async () => {
    const draft = await service.post('/v1/editions', { code: 'broken' });
    await service.post('/v1/materials?edition=broken', {
      ...filler('filler-uncited'),
      partsPerHundred: { value: 3, cite: { source: 'NOBODY-WROTE-THIS' } },
    });
    const match = { 'if-match': draft.headers.get('etag') ?? '' };
    const refused = await service.send('POST', '/v1/editions/broken/publication', undefined, match);
    expect([refused.status, refused.body.errors[0].pointer, refused.body.errors[0].code]).toEqual([
      422,
      '/materials/filler-uncited/partsPerHundred/cite/source',
      'unknown-code',
    ]);
    expect((await service.send('DELETE', '/v1/editions/broken', undefined, match)).status).toBe(204);
    expect((await service.get('/v1/editions/broken')).status).toBe(404);
  });
});

describe('keys, roles and organisations', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  const keyFor = async (roles: readonly string[], organisationId?: string) => {
    const made = await service.post('/v1/keys', {
      name: roles.join(),
      roles,
      ...(organisationId === undefined ? {} : { organisationId }),
    });
    return {
      ...(made.body as { id: string; key: string }),
      tag: made.headers.get('etag') ?? '',
      header: { authorization: `Bearer ${String(made.body.key)}` },
    };
  };

  test('a key may do what its roles allow, and nothing else', async () => {
    const surveyor = await keyFor(['surveyor']);
    const admin = await keyFor(['catalogue-admin']);
    expect((await service.get('/v1/estimates', surveyor.header)).status).toBe(200);
    expect((await service.post('/v1/editions', { code: 'x' }, surveyor.header)).status).toBe(403);
    expect((await service.get('/v1/keys', surveyor.header)).status).toBe(403);
    expect((await service.get('/v1/estimates', admin.header)).status).toBe(403);
    expect((await service.get('/v1/materials', admin.header)).status).toBe(200);
  });

  test('the last key of an operator stays, so that somebody can make another', async () => {
    const {
      body: {
        items: [first],
      },
    } = await service.get('/v1/keys');
    const revoke = (id: string) => service.send('DELETE', `/v1/keys/${id}`, undefined, { 'if-match': '*' });
    expect((await revoke(first.id)).status).toBe(409);
    const second = await keyFor(['operator']);
    expect((await revoke(second.id)).status).toBe(204);
    expect((await revoke(first.id)).status).toBe(409);
  });

  test('a revoked key opens nothing, and its text is never shown again', async () => {
    const key = await keyFor(['integrator']);
    expect((await service.get('/v1/estimates', key.header)).status).toBe(200);
    expect(
      (await service.send('DELETE', `/v1/keys/${key.id}`, undefined, { 'if-match': key.tag })).status,
    ).toBe(204);
    expect((await service.get('/v1/estimates', key.header)).status).toBe(401);
    const shown = await service.get(`/v1/keys/${key.id}`);
    expect(shown.text).not.toContain(key.key);
    expect(shown.body.revokedAt).toBeDefined();
    expect(service.log.map((line) => JSON.stringify(line)).join('')).not.toContain(key.key);
  });

  test('organisations do not see each other', async () => {
    const other = await service.post('/v1/organisations', { name: 'Another yard' });
    const stranger = await keyFor(['surveyor', 'catalogue-admin'], other.body.id);
    await service.post('/v1/editions', { code: 'ours' });
    expect((await service.get('/v1/editions/ours', stranger.header)).status).toBe(404);
    expect(
      (await service.get('/v1/editions', stranger.header)).body.items.every(
        (edition: { isShipped: boolean }) => edition.isShipped,
      ),
    ).toBe(true);
    expect((await service.post('/v1/editions', { code: 'ours' }, stranger.header)).status).toBe(201);
  });

  test('an organisation is renamed under If-Match and a null name refused', async () => {
    const made = await service.post('/v1/organisations', { name: 'Yard' });
    const headers = {
      'content-type': 'application/merge-patch+json',
      'if-match': made.headers.get('etag') ?? '',
    };
    expect(
      (await service.send('PATCH', `/v1/organisations/${made.body.id as string}`, { name: null }, headers))
        .status,
    ).toBe(422);
    const renamed = await service.send(
      'PATCH',
      `/v1/organisations/${made.body.id as string}`,
      { name: 'Boatyard' },
      headers,
    );
    expect([renamed.status, renamed.body.name]).toEqual([200, 'Boatyard']);
  });

  test('a key for nobody, or without roles, is refused', async () => {
    const answer = await service.post('/v1/keys', {
      name: 'x',
      roles: ['captain'],
      organisationId: '01a21240-7ff6-7f97-95a8-08c8d0b62aa3',
    });
    expect(answer.body.errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual(['/roles/0']);
    expect(
      (
        await service.post('/v1/keys', {
          name: 'x',
          roles: ['surveyor'],
          organisationId: '01a21240-7ff6-7f97-95a8-08c8d0b62aa3',
        })
      ).body.errors[0].pointer,
    ).toBe('/organisationId');
  });
});
