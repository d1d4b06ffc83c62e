import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import request from 'supertest';
import { startService, TEST_KEY, type TestService } from './service.js';

describe('what a newcomer sees first', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
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

  test('a guarded path without a key says how to give one', async () => {
    await request(service.url)
      .get('/v1/estimates')
      .expect(401)
      .expect('www-authenticate', /Bearer/)
      .expect('content-type', /application\/problem\+json/);
  });

  test('the first example of the documentation makes an estimate as it stands', async () => {
    const { body: document } = await request(service.url).get('/openapi.json').expect(200);
    const { example } = document.paths['/v1/estimates'].post.requestBody.content['application/json'];
    const { body } = await request(service.url)
      .post('/v1/estimates')
      .set('authorization', `Bearer ${TEST_KEY}`)
      .send(example)
      .expect(201);
    expect(Number(body.estimate.totals.total.amount)).toBeGreaterThan(0);
    expect(body.estimate.scope.openings.length).toBe(1);
  });
});
