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
    const publish = (tag: string | null) =>
      service.send('POST', '/v1/editions/spring/publication', undefined, { 'if-match': tag ?? '' });
    const stale = await publish(draft.headers.get('etag'));
    expect([stale.status, stale.body.detail]).toEqual([
      412,
      expect.stringMatching(
        /^The resource was changed since that version \(First key changed material filler-mine at \S+; First key created material filler-mine at \S+\); read it again/,
      ),
    ]);
    expect((await publish('v1')).body.errors[0].header).toBe('If-Match');
    const published = await publish((await service.get('/v1/editions/spring')).headers.get('etag'));
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

  test('an edition is published ahead, is told as scheduled, and is taken back', async () => {
    const { current } = (await service.get('/v1/editions')).body;
    const at = '/v1/editions/ahead';
    const made = await service.post('/v1/editions', { code: 'ahead' });
    const publish = (effectiveAt: string, tag: string | null) =>
      service.send('POST', `${at}/publication`, { effectiveAt }, { 'if-match': tag ?? '' });
    const past = await publish('2020-01-01T00:00:00Z', made.headers.get('etag'));
    expect([past.status, past.body.errors[0].pointer]).toEqual([422, '/effectiveAt']);
    const vague = await publish('2090-01-01', made.headers.get('etag'));
    expect([vague.status, vague.body.errors[0].code]).toEqual([422, 'not-in-form']);

    const effectiveAt = new Date(Date.now() + 86_400_000).toISOString();
    const scheduled = await publish(effectiveAt, made.headers.get('etag'));
    expect(scheduled.body).toMatchObject({ state: 'scheduled', effectiveAt });
    expect((await service.get('/v1/editions')).body.current).toBe(current);
    expect((await service.get('/v1/events?limit=200')).body.items.at(-1)).toMatchObject({
      type: 'edition.published',
      data: { code: 'ahead', effectiveAt },
    });
    const limits = { perMinute: 10, perMinutePerVisitor: 5, perDay: 100 };
    const page = { name: 'Shop', origins: ['https://shop.example'], ...limits, edition: 'ahead' };
    expect((await service.post('/v1/publishable-keys', page)).body.errors[0].pointer).toBe('/edition');

    const take = (tag: string | null) =>
      service.send('DELETE', `${at}/publication`, undefined, { 'if-match': tag ?? '' });
    expect((await take(made.headers.get('etag'))).status).toBe(412);
    const back = await take(scheduled.headers.get('etag'));
    expect([back.status, back.body.state, back.body.publishedAt]).toEqual([200, 'draft', undefined]);
    expect((await service.get('/v1/events?limit=200')).body.items.at(-1).type).toBe('edition.withdrawn');
    expect((await take(back.headers.get('etag'))).status).toBe(409);
    const counting = await service.send('DELETE', `/v1/editions/${current}/publication`, undefined, {
      'if-match': '*',
    });
    expect([counting.status, counting.body.detail]).toEqual([409, expect.stringContaining('restoration')]);
    expect((await service.send('DELETE', at, undefined, { 'if-match': '*' })).status).toBe(204);
  });

  test('stock is counted beside the editions, and orders keep to it at once', async () => {
    const at = '/v1/price-lists/invented-euro';
    const need = { id: 'peel', material: 'consumable-peel-ply', unit: 'm2', requiredQuantity: 3 };
    const order = async () =>
      (await service.post('/v1/estimating/basket', { priceList: 'invented-euro', needs: [need] })).body;
    const before = await order();
    const { sku } = before.lines[0];
    expect((await service.get(`${at}/packs/${sku as string}/stock`)).status).toBe(404);

    const counted = await service.send('PUT', `${at}/packs/${sku as string}/stock`, { packs: 0 });
    expect(counted.body).toMatchObject({ sku, packs: 0 });
    const after = await order();
    expect((after.lines as readonly { sku: string }[]).map((line) => line.sku)).not.toContain(sku);

    const refused = await service.send('PATCH', `${at}/stock`, {
      items: [
        { sku, packs: 3 },
        { sku: `${sku as string}x`, packs: 1 },
        { sku, packs: 2 },
      ],
    });
    expect(refused.body.errors).toMatchObject([
      { pointer: '/items/1/sku', code: 'unknown-code', detail: expect.stringContaining(sku) },
      { pointer: '/items/2/sku', code: 'duplicate' },
    ]);
    expect((await service.get(`${at}/stock`)).body.items).toEqual([counted.body]);
    await service.send('PATCH', `${at}/stock`, { items: [{ sku, packs: 500 }] });
    expect((await order()).lines).toEqual(before.lines);
    expect((await service.send('DELETE', `${at}/packs/${sku as string}/stock`)).status).toBe(204);
    expect((await service.get(`${at}/stock`)).body.items).toEqual([]);
    const told = (await service.get('/v1/audit?subject=stock')).body.items;
    expect(told.map(({ action }: { action: string }) => action)).toEqual(['removed', 'changed', 'changed']);
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
    expect((await service.send('POST', '/v1/imports/price-lists?edition=table', csv, type)).body).toEqual({
      imported: before.length,
    });
    expect((await service.get('/v1/price-lists?edition=table')).body.items).toEqual(before);
    const fillers =
      'kind,code,name,trueDensityGPerCm3.value,trueDensityGPerCm3.cite.source\r\nfiller,filler-a,A,2.5,COMMON-PRACTICE\r\nfiller,filler-b,B,heavy,COMMON-PRACTICE\r\n';
    const refused = await service.send('POST', '/v1/imports/materials?edition=table', fillers, type);
    expect(refused.status).toBe(422);
    expect(refused.body.errors.map(({ pointer }: { pointer: string }) => pointer)).toContain(
      '/1/trueDensityGPerCm3/value',
    );
    expect(refused.body.errors).toContainEqual(
      expect.objectContaining({ row: 3, column: 'trueDensityGPerCm3.value' }),
    );
    expect((await service.get('/v1/materials/filler-a?edition=table')).status).toBe(404);
    expect((await service.send('POST', '/v1/imports/materials?edition=table', 'a,"b', type)).status).toBe(
      400,
    );
    expect((await service.send('POST', '/v1/imports/materials?edition=table', '{}')).status).toBe(415);
  });

  test('the former address of an import still takes a sheet, and says which one has its place and until when', async () => {
    await service.post('/v1/editions', { code: 'former' });
    const csv = (await service.get('/v1/sources?edition=former', { accept: 'text/csv' })).text;
    const type = { 'content-type': 'text/csv' };
    const { status, headers } = await service.send('POST', '/v1/sources/import?edition=former', csv, type);
    expect(status).toBe(200);
    expect(headers.get('link')).toBe('</v1/imports/sources>; rel="successor-version"');
    const announced = 1000 * Number(headers.get('deprecation')?.slice(1));
    const gone = Date.parse(headers.get('sunset') ?? '');
    expect((gone - announced) / 86_400_000).toBeGreaterThan(182);
    const present = await service.send('POST', '/v1/imports/sources?edition=former', csv, type);
    expect([present.status, present.headers.get('deprecation')]).toEqual([200, null]);
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

  test('two editions are compared, and an earlier one is made current again in one call', async () => {
    await service.post('/v1/editions', { code: 'before' });
    const tagOf = async (code: string) => ({
      'if-match': (await service.get(`/v1/editions/${code}`)).headers.get('etag') ?? '',
    });
    const publish = async (code: string) =>
      service.send('POST', `/v1/editions/${code}/publication`, undefined, await tagOf(code));
    expect((await publish('before')).status).toBe(200);
    await service.post('/v1/editions', { code: 'after' });
    const [{ code, packs }] = (await service.get('/v1/price-lists?edition=after')).body.items;
    const [first] = packs as readonly { sku: string; prices: readonly { price: string }[] }[];
    const dearer = first.prices.map((price) => ({ ...price, price: '999.00' }));
    const list = await service.get(`/v1/price-lists/${code as string}?edition=after`);
    const changed = await service.send(
      'PATCH',
      `/v1/price-lists/${code as string}?edition=after`,
      { packs: [{ ...first, prices: dearer }, ...(packs as readonly unknown[]).slice(1)] },
      { 'content-type': 'application/merge-patch+json', 'if-match': list.headers.get('etag') ?? '' },
    );
    expect(changed.status).toBe(200);
    const { body } = await service.get('/v1/editions/after/comparison?with=before');
    expect(body).toMatchObject({ before: 'before', after: 'after', isSame: false });
    expect(body.changes).toEqual([
      {
        subject: 'price_list',
        code,
        change: 'changed',
        fields: [{ at: `/packs/${first.sku}/prices`, before: first.prices, after: dearer }],
        fieldCount: 1,
      },
    ]);
    expect((await service.post('/v1/editions/after/restoration', { code: 'too-early' })).status).toBe(409);
    expect((await publish('after')).status).toBe(200);
    const restored = await service.post('/v1/editions/before/restoration', {
      code: 'before-again',
      note: 'Wrong',
    });
    expect([restored.status, restored.body.state]).toEqual([201, 'published']);
    expect((await service.get('/v1/editions')).body.current).toBe('before-again');
    expect((await service.get('/v1/editions/before-again/comparison?with=before')).body.isSame).toBe(true);
  });

  test('a draft that does not hold together is not published, and can be thrown away', async () => {
    const draft = await service.post('/v1/editions', { code: 'broken' });
    await service.post('/v1/materials?edition=broken', {
      ...filler('filler-uncited'),
      partsPerHundred: { value: 3, cite: { source: 'NOBODY-WROTE-THIS' } },
    });
    expect(draft.status).toBe(201);
    const match = { 'if-match': (await service.get('/v1/editions/broken')).headers.get('etag') ?? '' };
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

  const keyFor = async (roles: readonly string[], admin: Readonly<Record<string, string>> = {}) => {
    const scopes = roles.includes('integrator') ? { scopes: ['estimates:read'] } : {};
    const made = await service.post('/v1/keys', { name: roles.join(), roles, ...scopes }, admin);
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

  test('the last key of an admin stays, so that somebody can make another', async () => {
    const {
      body: {
        items: [first],
      },
    } = await service.get('/v1/keys');
    const revoke = (id: string) => service.send('DELETE', `/v1/keys/${id}`, undefined, { 'if-match': '*' });
    expect((await revoke(first.id)).status).toBe(409);
    const second = await keyFor(['organisation-admin']);
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
    const theirAdmin = { authorization: `Bearer ${other.body.adminKey.key as string}` };
    const stranger = await keyFor(['surveyor', 'catalogue-admin'], theirAdmin);
    await service.post('/v1/editions', { code: 'ours' });
    expect((await service.get('/v1/editions/ours', stranger.header)).status).toBe(404);
    expect(
      (await service.get('/v1/editions', stranger.header)).body.items.every(
        (edition: { isShipped: boolean }) => edition.isShipped,
      ),
    ).toBe(true);
    expect((await service.post('/v1/editions', { code: 'ours' }, stranger.header)).status).toBe(201);
  });

  test('whoever makes organisations also renames the own one', async () => {
    const [{ id }] = (await service.get('/v1/organisations')).body.items;
    const at = `/v1/organisations/${id as string}`;
    const headers = {
      'content-type': 'application/merge-patch+json',
      'if-match': (await service.get(at)).headers.get('etag') ?? '',
    };
    const renamed = await service.send('PATCH', at, { name: 'Our yard' }, headers);
    expect([renamed.status, renamed.body.name]).toEqual([200, 'Our yard']);
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

  test('a key of no known role, of a role one has not to give, or of the past, is refused', async () => {
    const refusal = async (wanted: object, header = {}) =>
      (await service.post('/v1/keys', { name: 'x', ...wanted }, header)).body.errors.map(
        ({ pointer }: { pointer: string }) => pointer,
      );
    expect(await refusal({ roles: ['captain'] })).toEqual(['/roles/0']);
    expect(await refusal({ roles: ['integrator'] })).toEqual(['/scopes']);
    expect(await refusal({ roles: ['surveyor'], scopes: ['calculate'] })).toEqual(['/scopes']);
    expect(await refusal({ roles: ['surveyor'], expiresAt: '2001-01-01T00:00:00Z' })).toEqual(['/expiresAt']);
    const admin = await keyFor(['organisation-admin']);
    expect(await refusal({ roles: ['platform-operator'] }, admin.header)).toEqual(['/roles']);
  });

  test('a renewed key opens what the old one opened, and both do while they overlap', async () => {
    const old = await keyFor(['auditor']);
    const made = await service.post(`/v1/keys/${old.id}/renewal`, { overlapHours: 2 });
    const renewed = { authorization: `Bearer ${made.body.key as string}` };
    expect([made.status, made.body.renewsId, made.body.roles]).toEqual([201, old.id, ['auditor']]);
    for (const header of [old.header, renewed])
      expect((await service.get('/v1/estimates', header)).status).toBe(200);
    const { body: shown } = await service.get(`/v1/keys/${old.id}`);
    expect(Date.parse(shown.expiresAt as string)).toBeGreaterThan(Date.now() + 7_000_000);
    expect(shown.lastUsedAt).toBeDefined();
    const { body: history } = await service.get(`/v1/keys/${old.id}/history`);
    expect(history.items[0]).toMatchObject({ keyName: 'First key', after: { renewedBy: made.body.id } });
    const at = await service.post(`/v1/keys/${made.body.id as string}/renewal`, { overlapHours: 0 });
    expect((await service.get('/v1/estimates', renewed)).status).toBe(401);
    expect(
      (await service.get('/v1/estimates', { authorization: `Bearer ${at.body.key as string}` })).status,
    ).toBe(200);
  });

  test('what was done in an organisation is told to its auditor, with names, and to nobody else', async () => {
    const auditor = await keyFor(['auditor']);
    const { body } = await service.get('/v1/audit?subject=key&limit=1', auditor.header);
    expect(body.items).toHaveLength(1);
    expect(body.items[0]).toMatchObject({ action: 'created', subject: 'key', keyName: 'First key' });
    const next = await service.get(`/v1/audit?subject=key&limit=1&cursor=${body.nextCursor as string}`);
    expect(next.body.items[0].code).not.toBe(body.items[0].code);
    const other = await service.post('/v1/organisations', { name: 'Third yard' });
    const theirs = await service.get('/v1/audit', {
      authorization: `Bearer ${other.body.adminKey.key as string}`,
    });
    expect(theirs.body.items).toEqual([]);
  });
});
