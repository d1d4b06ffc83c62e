import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import request from 'supertest';
import { pageNamed, writtenPages } from '../../apps/api/src/guide/guide.js';
import { requestsIn, type ShownRequest } from '../../apps/api/src/guide/requests.js';
import { startService, TEST_KEY, type TestAnswer, type TestService } from './service.js';

describe('what a newcomer sees first', () => {
  let service: TestService;
  beforeAll(async () => {
    // Whole papers and trials take longer than a request may, when the machine has other work.
    service = await startService({ REQUEST_TIMEOUT_MS: '120000' });
  });
  afterAll(async () => {
    await service.stop();
  });

  test('the documentation page is served without a key', async () => {
    await request(service.url)
      .get('/docs')
      .redirects(1)
      .expect(200)
      .expect('content-type', /text\/html/);
  });

  test('the guide, the reference, the files of requests and one estimate are served to everybody', async () => {
    const get = (path: string) => request(service.url).get(path).redirects(1).expect(200);
    expect((await get('/docs')).text).toContain('<h1 id="kingplank-for-the-people-who-use-it">');
    expect((await get('/docs/settings')).text).toContain('<code>REQUESTS_PER_MINUTE</code>');
    expect((await get('/docs/api')).text).toContain('swagger-ui');
    expect((await get('/docs/requests/recipes.http')).text).toMatch(/^@url = /);
    expect(Number((await get('/docs/estimate.json')).body.totals.total.amount)).toBeGreaterThan(0);
    await request(service.url).get('/docs/nobodys').expect(404);
    await request(service.url).get('/docs/../package.json').expect(404);
  });

  test.each(writtenPages.map((name) => [name, requestsIn(pageNamed(name) ?? '')] as const))(
    'every request of the page %s is answered as the page says',
    async (name, requests) => {
      const known = new Map([
        ['url', ''],
        ['key', TEST_KEY],
        ['tomorrow', new Date(Date.now() + 86_400_000).toISOString()],
      ]);
      const filled = (text: string): string =>
        text.replace(/\{\{(\w+)\}\}/g, (_, used: string) => known.get(used) ?? `no ${used}`);
      for (const shown of requests) {
        const { method, address, headers, body, expected } = shown;
        const sent = Object.fromEntries(Object.entries(headers).map(([key, value]) => [key, filled(value)]));
        const answer = await service.send(
          method,
          filled(address),
          body === '' ? undefined : filled(body),
          sent,
        );
        const isRight = expected === undefined ? answer.status < 300 : answer.status === expected;
        expect([
          name,
          method,
          address,
          isRight ? '' : `${answer.status} ${answer.text.slice(0, 500)}`,
        ]).toEqual([name, method, address, '']);
        for (const [own, place] of Object.entries(shown.kept)) known.set(own, keptFrom(answer, place));
      }
    },
    240_000,
  );

  test('a guarded path without a key says how to give one', async () => {
    await request(service.url)
      .get('/v1/estimates')
      .expect(401)
      .expect('www-authenticate', /Bearer/)
      .expect('content-type', /application\/problem\+json/);
  });

  test('the first example of the documentation makes an estimate as it stands', async () => {
    const { body: document } = await request(service.url).get('/openapi.json').expect(200);
    const { examples } = document.paths['/v1/estimates'].post.requestBody.content['application/json'];
    const example = document.components.examples[examples.recorded.$ref.split('/').at(-1)].value;
    const { body } = await request(service.url)
      .post('/v1/estimates')
      .set('authorization', `Bearer ${TEST_KEY}`)
      .send(example)
      .expect(201);
    expect(Number(body.estimate.totals.total.amount)).toBeGreaterThan(0);
    expect(body.estimate.scope.openings.length).toBe(1);
  });
});

function keptFrom(answer: TestAnswer, place: ShownRequest['kept'][string]): string {
  if (place === 'body') return answer.text;
  if (place.startsWith('header ')) return answer.headers.get(place.slice('header '.length)) ?? '';
  const found = place
    .slice(1)
    .split('/')
    .reduce<unknown>((value, part) => (value as Readonly<Record<string, unknown>>)[part], answer.body);
  return String(found);
}
