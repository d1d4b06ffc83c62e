import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestAnswer, type TestService } from './service.js';

/** RFC draft-ietf-httpapi-idempotency-key-header: the same key and request, the same answer; another request, 422. */
describe('a change under an Idempotency-Key', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  const under = (key: string, more: Readonly<Record<string, string>> = {}) => ({
    'idempotency-key': `"${key}"`,
    ...more,
  });
  const isReplay = ({ headers }: TestAnswer): boolean => headers.get('idempotency-replayed') === 'true';

  test('a key made twice is one key, and its text is shown again', async () => {
    const wanted = { name: 'Twice', roles: ['surveyor'] };
    const first = await service.post('/v1/keys', wanted, under('key-1'));
    const again = await service.post('/v1/keys', wanted, under('key-1'));
    expect([first.status, isReplay(first), again.status, isReplay(again)]).toEqual([201, false, 201, true]);
    expect(again.body).toEqual(first.body);
    expect(again.headers.get('location')).toBe(first.headers.get('location'));
    expect(again.headers.get('etag')).toBe(first.headers.get('etag'));
    const named = (await service.get('/v1/keys')).body.items.filter(
      ({ name }: { name: string }) => name === 'Twice',
    );
    expect(named).toHaveLength(1);
  });

  test('many at once make one thing', async () => {
    const answers = await Promise.all(
      Array.from({ length: 12 }, () =>
        service.post('/v1/organisations', { name: 'Once only' }, under('org-1')),
      ),
    );
    const made = answers.filter(({ status }) => status === 201);
    expect(made.length).toBeGreaterThan(0);
    expect(new Set(made.map(({ body }) => body.id)).size).toBe(1);
    for (const { status, headers } of answers.filter(({ status: one }) => one !== 201))
      expect([status, headers.get('retry-after')]).toEqual([409, '1']);
    const { items } = (await service.get('/v1/organisations')).body;
    expect(items.filter(({ name }: { name: string }) => name === 'Once only')).toHaveLength(1);
  });

  test('the same key with another body, or another If-Match, is refused', async () => {
    expect((await service.post('/v1/editions', { code: 'a' }, under('ed-1'))).status).toBe(201);
    const other = await service.post('/v1/editions', { code: 'b' }, under('ed-1'));
    expect([other.status, other.body.errors[0].header]).toEqual([422, 'Idempotency-Key']);
    expect((await service.get('/v1/editions/b')).status).toBe(404);
  });

  test('a change whose answer was lost is recognised as done, not as stale', async () => {
    const before = await service.get('/v1/letterhead');
    const headers = under('letter-1', { 'if-match': before.headers.get('etag') ?? '' });
    const change = () => service.send('PUT', '/v1/letterhead', { lines: ['1 Invented Quay'] }, headers);
    const first = await change();
    const again = await change();
    expect([first.status, again.status, isReplay(again)]).toEqual([200, 200, true]);
    expect(again.body).toEqual(first.body);
    const stale = await service.send(
      'PUT',
      '/v1/letterhead',
      { lines: ['1 Invented Quay'] },
      under('letter-2', { 'if-match': before.headers.get('etag') ?? '' }),
    );
    expect(stale.status).toBe(412);
  });

  test('removing twice under one key is done once and answered twice; a refusal is not kept', async () => {
    const draft = await service.post('/v1/editions', { code: 'gone' });
    const headers = under('del-1', { 'if-match': draft.headers.get('etag') ?? '' });
    const stale = await service.send('DELETE', '/v1/editions/gone', undefined, {
      ...headers,
      'if-match': '"v9"',
    });
    expect(stale.status).toBe(412);
    const remove = () => service.send('DELETE', '/v1/editions/gone', undefined, headers);
    expect((await remove()).status).toBe(204);
    const again = await remove();
    expect([again.status, isReplay(again)]).toEqual([204, true]);
  });

  test('a key of another caller opens nothing that was kept', async () => {
    const made = await service.post('/v1/keys', { name: 'Second', roles: ['organisation-admin'] });
    const second = { authorization: `Bearer ${String(made.body.key)}` };
    const wanted = { name: 'Secret', roles: ['surveyor'] };
    const first = await service.post('/v1/keys', wanted, under('shared'));
    const theirs = await service.post('/v1/keys', wanted, { ...under('shared'), ...second });
    expect([theirs.status, isReplay(theirs)]).toEqual([201, false]);
    expect(theirs.body.key).not.toBe(first.body.key);
  });

  test('a key that cannot be read is said to be one', async () => {
    const refused = await service.post('/v1/editions', { code: 'c' }, { 'idempotency-key': 'two words' });
    expect([refused.status, refused.body.errors[0].header]).toEqual([400, 'Idempotency-Key']);
    expect(refused.body.errors[0].detail).toMatch(/^Idempotency-Key is /);
  });
});
