import net from 'node:net';
import { afterAll, afterEach, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const QUANTITIES = '/v1/estimating/quantities';
const right = { quantities: [{ dimension: 'length', text: '1 in' }] };

describe('a service that strangers talk to', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });
  afterEach(async () => {
    expect((await service.get('/health/live')).status).toBe(200);
  });

  const bodies: readonly (readonly [string, string, number, string])[] = [
    ['an empty body', ' ', 400, 'malformed-json '],
    ['half a document', '{"quantities": [', 400, 'malformed-json /quantities/0'],
    ['NaN', '{"quantities": [{"dimension": NaN}]}', 400, 'malformed-json /quantities/0/dimension'],
    ['a comment', '{"quantities": [] /* none */}', 400, 'malformed-json /quantities'],
    ['a decimal comma', '{"quantities": 1,5}', 400, 'malformed-json '],
    ['a number beyond a double', '{"quantities": [1e999]}', 400, 'not-a-number /quantities/0'],
    [
      'a name given twice',
      '{"quantities": [{"text": "a", "text": "b"}]}',
      400,
      'duplicate-name /quantities/0/text',
    ],
    [
      'the same name twice by an escape',
      '{"quantities": [{"text": "a", "te\\u0078t": "b"}]}',
      400,
      'duplicate-name /quantities/0/text',
    ],
    ['__proto__', '{"__proto__": {"isAdmin": true}}', 400, 'reserved-name /__proto__'],
    [
      'constructor.prototype',
      '{"constructor": {"prototype": {"isAdmin": true}}}',
      400,
      'reserved-name /constructor',
    ],
    [
      'NUL in a text',
      '{"quantities": [{"dimension": "length", "text": "a\\u0000b"}]}',
      400,
      'unusable-text /quantities/0/text',
    ],
    [
      'half a surrogate pair',
      '{"quantities": [{"dimension": "length", "text": "\\ud800"}]}',
      400,
      'unusable-text /quantities/0/text',
    ],
    [
      'a bell in a text',
      '{"quantities": [{"dimension": "length", "text": "1\\u0007 in"}]}',
      422,
      'unusable-text /quantities/0/text',
    ],
    [
      'an escape sequence in a text',
      '{"quantities": [{"dimension": "length", "text": "\\u001b[31m1 in"}]}',
      422,
      'unusable-text /quantities/0/text',
    ],
    [
      'a text that turns what follows it round',
      '{"quantities": [{"dimension": "length", "text": "\u202e1 in"}]}',
      422,
      'unusable-text /quantities/0/text',
    ],
    ['nesting 100,000 deep', '['.repeat(100_000) + ']'.repeat(100_000), 400, 'too-deep ' + '/0'.repeat(32)],
    ['a list instead of an object', '[]', 422, 'not-an-object '],
    ['null', 'null', 422, 'not-an-object '],
    ['a text instead of an object', '"quantities"', 422, 'not-an-object '],
  ];

  test.each([
    ['/v1/materials?kind=nope', 'kind not-one-of'],
    ['/v1/sources?readAs=nope', 'readAs not-one-of'],
    ['/v1/price-lists?currency=eur', 'currency not-one-of'],
    ['/v1/price-lists?kind=eur', 'kind not-one-of'],
    ['/v1/labour-rates?currency=', 'currency not-one-of'],
    ['/v1/materials?currency=EUR', 'currency unknown-field'],
    ['/v1/materials?kind=core&kind=resin', 'kind not-one-of'],
    ['/v1/materials?sort=name', 'sort unknown-field'],
    ['/v1/editions?limit=3', 'limit unknown-field'],
    ['/v1/organisations?name=x', 'name unknown-field'],
    ['/health/live?x=1', 'x unknown-field'],
    ['/v1/estimates?limit=0', 'limit out-of-range'],
    ['/v1/estimates?limit=-1', 'limit out-of-range'],
    ['/v1/estimates?limit=10000', 'limit out-of-range'],
    ['/v1/estimates?cursor=zzz', 'cursor not-in-form'],
    ['/v1/estimates?order=up', 'order unknown-field'],
  ])('%s is refused: a filter that cannot be meant is never answered by an empty list', async (at, fault) => {
    const { status, body } = await service.get(at);
    expect([
      status,
      body.errors.map((error: { code: string; parameter: string }) => `${error.parameter} ${error.code}`),
    ]).toEqual([400, [fault]]);
  });

  test('a list is narrowed by what its entries say, and the earlier name of that means the same', async () => {
    const codesAt = async (at: string): Promise<readonly string[]> =>
      (await service.get(at)).body.items.map(({ code }: { code: string }) => code);
    const [all, dollars] = [await codesAt('/v1/price-lists'), await codesAt('/v1/price-lists?currency=USD')];
    expect([dollars.length > 0, dollars.length < all.length]).toEqual([true, true]);
    expect(await codesAt('/v1/price-lists?kind=USD')).toEqual(dollars);
  });

  test('a room takes no query, and says so before it computes', async () => {
    const answer = await service.post(`${QUANTITIES}?units=us`, right);
    expect([answer.status, answer.body.errors[0].detail]).toEqual([
      400,
      'units is not a field of this request; remove it or correct its name.',
    ]);
  });

  test.each([
    '/v1/keys/01900000-0000-7000-8000-000000000000/history',
    '/v1/materials/nope/history',
    '/v1/editions/nope/history',
  ])('%s is not found', async (at) => {
    expect((await service.get(at)).status).toBe(404);
  });

  test.each(bodies)('%s is refused with the place of the fault', async (_, body, status, fault) => {
    const answer = await service.post(QUANTITIES, body);
    expect(answer.status).toBe(status);
    expect(answer.headers.get('content-type')).toMatch(/^application\/problem\+json/);
    expect(
      answer.body.errors.map((error: { code: string; pointer: string }) => `${error.code} ${error.pointer}`),
    ).toContain(fault);
    expect(answer.body.status).toBe(status);
    expect(answer.body.requestId).toBe(answer.headers.get('x-request-id'));
  });

  test('bytes that are not UTF-8 are refused', async () => {
    const response = await fetch(service.url + QUANTITIES, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: new Uint8Array([0x7b, 0x22, 0xff, 0x22, 0x7d]),
    });
    expect(response.status).toBe(400);
  });

  test('a body of 10 MB is refused at once, announced or not', async () => {
    const announced = await service.post(QUANTITIES, JSON.stringify({ filler: 'x'.repeat(10_000_000) }));
    expect(announced.status).toBe(413);
    expect(announced.body.detail).toContain('1048576');
    const chunks = new ReadableStream({
      start(controller) {
        for (let sent = 0; sent < 40; sent += 1) controller.enqueue(new Uint8Array(262_144).fill(32));
        controller.close();
      },
    });
    const streaming: RequestInit & { duplex: 'half' } = {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: chunks,
      duplex: 'half',
    };
    expect((await fetch(service.url + QUANTITIES, streaming)).status).toBe(413);
  });

  test('5,000 wrong entries make an answer of 100 errors and the true count', async () => {
    const answer = await service.post('/v1/estimating/quantities', {
      quantities: Array.from({ length: 499 }, () => ({ dimension: 'colour', text: 7 })),
    });
    expect(answer.body.errors).toHaveLength(100);
    expect(answer.body.errorCount).toBe(998);
    expect(answer.text.length).toBeLessThan(60_000);
  });

  test('a known path with the wrong method is 405 with Allow; an unknown path is 404', async () => {
    const wrong = await service.send('DELETE', QUANTITIES);
    expect(wrong.status).toBe(405);
    expect(wrong.headers.get('allow')).toBe('OPTIONS, POST');
    const asked = await service.send('OPTIONS', QUANTITIES);
    expect([asked.status, asked.headers.get('allow'), asked.text]).toEqual([204, 'OPTIONS, POST', '']);
    expect((await service.send('OPTIONS', '/v1/nothing')).status).toBe(404);
    expect((await service.get(QUANTITIES)).status).toBe(405);
    expect((await service.send('POST', '/health/live', {})).headers.get('allow')).toBe('GET, HEAD, OPTIONS');
    expect((await service.get('/v1/nowhere')).status).toBe(404);
    expect((await service.get('/v1/%ff')).status).toBeLessThan(500);
  });

  test('an answer that nobody can read is 406, a body that we cannot read 415', async () => {
    expect((await service.post(QUANTITIES, right, { accept: 'image/png' })).status).toBe(406);
    expect((await service.post(QUANTITIES, right, { accept: 'text/html, */*;q=0.1' })).status).toBe(200);
    const asText = await service.post(QUANTITIES, right, { 'content-type': 'text/plain' });
    expect(asText.status).toBe(415);
    expect(asText.headers.get('accept-post')).toBe('application/json');
    expect(
      (await service.post(QUANTITIES, right, { 'content-type': 'application/json; charset=utf-16' })).status,
    ).toBe(415);
    expect((await service.post(QUANTITIES, right, { 'content-encoding': 'br' })).status).toBe(415);
  });

  test('every answer carries a request id, a trace and headers that keep browsers from guessing', async () => {
    const answer = await service.post(QUANTITIES, right, {
      'x-request-id': 'caller-0001',
      'traceparent': '00-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-01',
    });
    expect(answer.headers.get('x-request-id')).toBe('caller-0001');
    expect(answer.headers.get('traceparent')).toMatch(
      /^00-0af7651916cd43dd8448eb211c80319c-(?!b7ad6b7169203331)[0-9a-f]{16}-01$/,
    );
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    expect(answer.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(answer.headers.get('x-powered-by')).toBeNull();
    await new Promise((resolve) => {
      setTimeout(resolve, 20);
    });
    const line = service.log.find((entry) => entry.requestId === 'caller-0001');
    expect(line).toMatchObject({
      traceId: '0af7651916cd43dd8448eb211c80319c',
      method: 'POST',
      route: QUANTITIES,
      status: 200,
    });
  });

  test('a request id or trace that could break a log line is replaced', async () => {
    const answer = await service.post(QUANTITIES, right, {
      'x-request-id': 'a"b c',
      'traceparent': '00-00000000000000000000000000000000-b7ad6b7169203331-01',
    });
    expect(answer.headers.get('x-request-id')).toMatch(/^[0-9a-f-]{36}$/);
    expect(answer.headers.get('traceparent')).not.toContain('00000000000000000000000000000000');
  });

  test('bytes that are not HTTP are answered with 400 and a problem', async () => {
    const { hostname, port } = new URL(service.url);
    const answer = await new Promise<string>((resolve) => {
      const socket = net.connect(Number(port), hostname, () => {
        socket.write('HELLO\r\n\r\n');
      });
      let received = '';
      socket.on('data', (chunk) => {
        received += String(chunk);
      });
      socket.on('close', () => {
        resolve(received);
      });
    });
    expect(answer).toMatch(/^HTTP\/1\.1 400 /);
    expect(answer).toContain('"type":"/problems/bad-request"');
  });

  test('the type of a problem leads to its description', async () => {
    const answer = await service.get('/v1/nowhere');
    expect((await service.get(answer.body.type)).body).toEqual({
      kind: 'not-found',
      status: 404,
      title: 'There is no such thing here',
    });
  });
});

describe('a service with a small allowance and short patience', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService({ REQUESTS_PER_MINUTE: '3', REQUEST_TIMEOUT_MS: '1000' });
  });
  afterAll(async () => {
    await service.stop();
  });

  test('a caller that asks too often is told when to come back', async () => {
    const answers = [];
    for (let sent = 0; sent < 4; sent += 1) answers.push(await service.post(QUANTITIES, right));
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 429]);
    expect(answers[0].headers.get('ratelimit-policy')).toBe('"per-minute";q=3;w=60');
    expect(answers[0].headers.get('ratelimit')).toMatch(/^"per-minute";r=2;t=\d+$/);
    expect(Number(answers[3].headers.get('retry-after'))).toBeGreaterThan(0);
  });

  test('a connection that sends its headers slowly is closed', async () => {
    const { hostname, port } = new URL(service.url);
    const startedAt = Date.now();
    const answer = await new Promise<string>((resolve) => {
      const socket = net.connect(Number(port), hostname, () => {
        socket.write('POST / HTTP/1.1\r\nHost: a\r\n');
      });
      let received = '';
      socket.on('data', (chunk) => {
        received += String(chunk);
      });
      socket.on('close', () => {
        resolve(received);
      });
    });
    expect(answer).toMatch(/^HTTP\/1\.1 408 /);
    expect(Date.now() - startedAt).toBeLessThan(5000);
  });
});

test('a stopping service closes idle connections at once and finishes quickly', async () => {
  const service = await startService();
  await service.get('/health/live');
  expect((await service.get('/health/ready')).status).toBe(200);
  const startedAt = Date.now();
  await service.stop();
  expect(Date.now() - startedAt).toBeLessThan(2000);
});

describe('parts of a path', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });
  const nowhere = ['%00', 'a%00b', '%1F', 'x'.repeat(200)];
  const places = [
    '/v1/materials/*',
    '/v1/materials/*/history',
    '/v1/price-lists/*',
    '/v1/price-lists/*/history',
    '/v1/price-lists/*/packs',
    '/v1/labour-rates/*',
    '/v1/labour-rates/*/history',
    '/v1/sources/*',
    '/v1/sources/*/history',
    '/v1/editions/*',
    '/v1/editions/*/history',
    '/v1/estimates/*',
    '/v1/estimates/*/drawings/*',
    '/v1/operations/*',
    '/v1/keys/*',
    '/v1/organisations/*',
  ];
  test.each(places)('%s holds nothing whose name cannot be written', async (place) => {
    for (const name of nowhere) {
      const answer = await service.get(place.replaceAll('*', name));
      expect({ name, status: answer.status }).toEqual({ name, status: 404 });
    }
  });
});
