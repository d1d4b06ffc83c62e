import { describe, expect, jest, test } from '@jest/globals';
import { TEST_KEY } from '../e2e/database-of-test.js';
import { servicesOfTest } from './services-of-test.js';

jest.setTimeout(240_000);

const server = process.env.TEST_DATABASE_URL;
const onServer = server === undefined || server === '' ? describe.skip : describe;
const headers = { 'authorization': `Bearer ${TEST_KEY}`, 'content-type': 'application/json' };
const after = (ms: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, ms);
  });

onServer('copies on one server are one service', () => {
  const { started } = servicesOfTest();

  test('a revoked key is refused by every copy within a second', async () => {
    const [one, other] = await Promise.all([started(), started()]);
    const made = await fetch(`${one.url}/v1/keys`, {
      method: 'POST',
      headers,
      body: JSON.stringify({ name: 'To be revoked', roles: ['surveyor'] }),
    });
    const key = (await made.json()) as { readonly id: string; readonly key: string };
    const asked = async (): Promise<number> =>
      (await fetch(`${other.url}/v1/estimates`, { headers: { authorization: `Bearer ${key.key}` } })).status;
    expect(await asked()).toBe(200);
    const tag = made.headers.get('etag') ?? '';
    const revoked = await fetch(`${one.url}/v1/keys/${key.id}`, {
      method: 'DELETE',
      headers: { ...headers, 'if-match': tag },
    });
    expect(revoked.status).toBe(204);
    await after(1000);
    expect(await asked()).toBe(401);
  });
});

onServer('copies that count together', () => {
  const { started } = servicesOfTest();

  test('answer together little more than one may be asked in a minute', async () => {
    const limited = { REQUESTS_PER_MINUTE: '60' };
    const copies = await Promise.all([started(limited), started(limited)]);
    // At the turn of a minute everything would begin again.
    const leftMs = 60_000 - (Date.now() % 60_000);
    if (leftMs < 15_000) await after(leftMs + 100);
    let answered = 0;
    for (let turn = 0; turn < 100; turn += 1) {
      const statuses = await Promise.all(
        copies.map(async ({ url }) => (await fetch(`${url}/v1/editions`, { headers })).status),
      );
      answered += statuses.filter((status) => status === 200).length;
      await after(40);
    }
    expect(answered).toBeGreaterThanOrEqual(60);
    // Either copy alone would have answered 60.
    expect(answered).toBeLessThanOrEqual(60 + 2 * 20);
  });
});
