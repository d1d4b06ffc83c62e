import { describe, expect, jest, test } from '@jest/globals';
import { Answer } from './answer.js';
import { Kingplank } from './client.js';
import {
  AbortedError,
  ConnectionFailedError,
  InvalidRequestError,
  KingplankError,
  MisusedClientError,
  RateLimitedError,
  ServiceFailedError,
  TimedOutError,
  UnreadableAnswerError,
} from './errors.js';
import { Pages } from './pages.js';
import { json } from './resource.js';
import { waitMs } from './retry.js';
import { settingsOf, type ClientOptions, type Settings } from './settings.js';
import type { Call, CallOptions } from './transport.js';

type Step = Response | Error;

/** A service that plays back answers in order and remembers what it was asked. */
function playback(...steps: readonly Step[]): {
  client: ClientOptions;
  settings: Settings;
  asked: Request[];
} {
  const asked: Request[] = [];
  const fetch = jest.fn(async (input: string | URL | Request, init?: RequestInit) => {
    asked.push(new Request(input, init));
    const step = steps[Math.min(asked.length - 1, steps.length - 1)];
    if (step instanceof Error) throw step;
    return step.clone();
  });
  const client = { baseUrl: 'http://127.0.0.1:1/', apiKey: 'kp_secret0123456789', fetch };
  return { client, settings: settingsOf(client), asked };
}

const problem = (status: number, kind: string, headers: Record<string, string> = {}): Response =>
  new Response(
    JSON.stringify({
      type: `/problems/${kind}`,
      title: 'T',
      status,
      errors: [
        { pointer: '/core/thicknessMm', code: 'out-of-range', title: 'T', detail: 'too thick', facts: {} },
      ],
    }),
    { status, headers },
  );
const good = new Response('{"ok":true}', { status: 200, headers: { 'x-request-id': 'r-1' } });
const get: Call = { method: 'GET', path: '/v1/x' };
const post: Call = { method: 'POST', path: '/v1/estimates', body: {} };

const failureOf = (settings: Settings, call: Call, options?: CallOptions): Promise<unknown> =>
  json(settings, call, options).catch((caught: unknown) => caught);

/** A body that begins and then breaks off. */
const brokenOff = (): Response => {
  let turn = 0;
  return new Response(
    new ReadableStream({
      pull(controller) {
        turn += 1;
        if (turn === 1) controller.enqueue(new TextEncoder().encode('{"ok":'));
        else controller.error(new TypeError('terminated'));
      },
    }),
  );
};

/** A body that never ends, as long as nobody gives up on it. */
const endless =
  (asked: { count: number }): typeof globalThis.fetch =>
  (_, init) => {
    asked.count += 1;
    const body = new ReadableStream({
      start: (controller) => {
        init?.signal?.addEventListener('abort', () => controller.error(init.signal?.reason));
      },
    });
    return Promise.resolve(new Response(body));
  };

describe('a call', () => {
  test('carries the key, and a write carries an idempotency key that stays the same over retries', async () => {
    const { settings, asked } = playback(problem(503, 'unavailable', { 'retry-after': '0' }), good);
    await json(settings, post);
    expect(asked.map(({ headers }) => headers.get('authorization'))).toEqual([
      'Bearer kp_secret0123456789',
      'Bearer kp_secret0123456789',
    ]);
    const keys = asked.map(({ headers }) => headers.get('idempotency-key'));
    expect(keys[0]).toMatch(/^"[0-9a-f-]{36}"$/);
    expect(keys[1]).toBe(keys[0]);
  });

  test('says who asks, by which version of the contract, and what the caller adds', async () => {
    const { settings, asked } = playback(good);
    await json(settings, get, { headers: { traceparent: '00-1' } });
    const { headers } = asked[0];
    expect(headers.get('user-agent')).toMatch(/^kingplank-sdk\/\d+\.\d+\.\d+ node\/\d+/);
    expect(headers.get('kingplank-version')).toBe('1.0');
    expect(headers.get('traceparent')).toBe('00-1');
  });

  test("asks for the client's units unless it names its own, and for none when nobody said any", async () => {
    const { settings, asked } = playback(good);
    await json(settings, get);
    await json({ ...settings, units: 'us' }, get);
    await json({ ...settings, units: 'us' }, get, { units: 'si' });
    expect(asked.map(({ headers }) => headers.get('accept-units'))).toEqual([null, 'us', 'si']);
  });

  test('that cannot be right is not sent twice, and its faults are listed', async () => {
    const { settings, asked } = playback(problem(422, 'unprocessable'));
    const error = await failureOf(settings, post);
    expect(error).toBeInstanceOf(InvalidRequestError);
    expect(error).toMatchObject({ status: 422, code: 'unprocessable', pointers: ['/core/thicknessMm'] });
    expect(asked).toHaveLength(1);
  });

  test('gives up after its retries with the last problem', async () => {
    const { settings, asked } = playback(problem(503, 'unavailable', { 'retry-after': '0' }));
    expect(await failureOf(settings, get, { maxRetries: 2 })).toBeInstanceOf(ServiceFailedError);
    expect(asked).toHaveLength(3);
  });

  test('that finds nobody is a connection failure with its cause', async () => {
    const { settings } = playback(new TypeError('refused'));
    const error = await failureOf(settings, get, { maxRetries: 0 });
    expect(error).toBeInstanceOf(ConnectionFailedError);
    expect(error).toMatchObject({ cause: { message: 'refused' } });
  });

  test('answered by a proxy page is still a problem with the status', async () => {
    const { settings } = playback(new Response('<html>Bad gateway</html>', { status: 502 }));
    expect(await failureOf(settings, get, { maxRetries: 0 })).toMatchObject({
      status: 502,
      code: 'not-a-problem-document',
    });
  });

  test('answered by a page with 200 is unreadable, and not asked again', async () => {
    const { settings, asked } = playback(new Response('<html>Welcome</html>'));
    expect(await failureOf(settings, get)).toBeInstanceOf(UnreadableAnswerError);
    expect(asked).toHaveLength(1);
  });

  test('whose answer breaks off is asked again', async () => {
    const { settings, asked } = playback(good);
    let isFirst = true;
    const fetch: typeof globalThis.fetch = (input, init) => {
      if (!isFirst) return settings.fetch(input, init);
      isFirst = false;
      asked.push(new Request(input, init));
      return Promise.resolve(brokenOff());
    };
    expect(await json({ ...settings, fetch }, get)).toEqual({ ok: true });
    expect(asked).toHaveLength(2);
  });
});

describe('the wait that a limit asks for', () => {
  test('is told at once when it does not fit into the time of the call', async () => {
    const { settings, asked } = playback(problem(429, 'too-many-requests', { 'retry-after': '60' }));
    const begun = Date.now();
    const error = await failureOf(settings, get, { timeoutMs: 3000 });
    expect(error).toBeInstanceOf(RateLimitedError);
    expect(error).toMatchObject({ retryAfterMs: 60_000 });
    expect(asked).toHaveLength(1);
    expect(Date.now() - begun).toBeLessThan(1000);
  });

  test('is waited for in full when it fits', async () => {
    const { settings, asked } = playback(problem(429, 'too-many-requests', { 'retry-after': '0' }), good);
    expect(await json(settings, get)).toEqual({ ok: true });
    expect(asked).toHaveLength(2);
  });
});

describe('the time of a call', () => {
  test('covers the body', async () => {
    const { settings } = playback(good);
    const asked = { count: 0 };
    const error = await failureOf({ ...settings, fetch: endless(asked) }, get, { timeoutMs: 40 });
    expect(error).toBeInstanceOf(TimedOutError);
    expect(asked.count).toBe(1);
  });

  test("ends by the caller's signal, while waiting to retry and while reading", async () => {
    const { settings } = playback(problem(503, 'unavailable', { 'retry-after': '20' }));
    const soon = (): AbortSignal => {
      const controller = new AbortController();
      setTimeout(() => controller.abort(), 10);
      return controller.signal;
    };
    expect(await failureOf(settings, get, { signal: soon() })).toBeInstanceOf(AbortedError);
    const reading = { ...settings, fetch: endless({ count: 0 }) };
    expect(await failureOf(reading, get, { signal: soon() })).toBeInstanceOf(AbortedError);
  });
});

describe('an answer', () => {
  test('is the value, the value with its response, or the response alone', async () => {
    const { settings } = playback(good);
    expect(await json(settings, get)).toEqual({ ok: true });
    const { data, requestId } = await json<{ ok: boolean }>(settings, get).withResponse();
    expect([data, requestId]).toEqual([{ ok: true }, 'r-1']);
    const response = await json(settings, get).asResponse();
    expect(response.bodyUsed).toBe(false);
    expect(await response.text()).toBe('{"ok":true}');
  });

  test('is sent once, and also when nobody awaits it', async () => {
    const { settings, asked } = playback(good);
    const answer = new Answer(settings, get, {}, (response) => response.text());
    await answer;
    await answer.withResponse();
    expect(asked).toHaveLength(1);
  });
});

describe('a client', () => {
  test.each([
    ['no address', { apiKey: 'k' }],
    ['an address that is none', { baseUrl: 'quay 7', apiKey: 'k' }],
    ['no key', { baseUrl: 'http://127.0.0.1:1' }],
  ])('with %s is refused in words', (_, options) => {
    expect(() => new Kingplank(options)).toThrow(MisusedClientError);
  });

  test('takes address and key from the environment', async () => {
    const { client, asked } = playback(good);
    process.env['KINGPLANK_BASE_URL'] = 'http://127.0.0.1:2';
    process.env['KINGPLANK_API_KEY'] = 'kp_fromenvironment';
    try {
      await new Kingplank({ fetch: client.fetch }).health.live();
    } finally {
      delete process.env['KINGPLANK_BASE_URL'];
      delete process.env['KINGPLANK_API_KEY'];
    }
    expect([asked[0].url, asked[0].headers.get('authorization')]).toEqual([
      'http://127.0.0.1:2/health/live',
      'Bearer kp_fromenvironment',
    ]);
  });

  test('holds no secret key in a browser, but may hold a publishable one', () => {
    const page = globalThis as { document?: unknown; window?: unknown };
    page.document = {};
    page.window = {};
    const address = 'http://127.0.0.1:1';
    try {
      expect(() => new Kingplank({ baseUrl: address, apiKey: 'kp_0123456789' })).toThrow(/publishable/);
      expect(new Kingplank({ baseUrl: address, apiKey: 'kp_pub_0123' })).toBeInstanceOf(Kingplank);
      expect(
        new Kingplank({ baseUrl: address, apiKey: 'kp_0123', allowSecretKeyInBrowser: true }),
      ).toBeInstanceOf(Kingplank);
    } finally {
      delete page.document;
      delete page.window;
    }
  });

  test.each(['', '.', '..', '%2e%2e', '%2E.'])('does not ask for the id %p', (id) => {
    const { client, asked } = playback(good);
    expect(() => new Kingplank(client).estimates.get(id)).toThrow(KingplankError);
    expect(asked).toHaveLength(0);
  });

  test('escapes what an id holds', async () => {
    const { client, asked } = playback(good);
    await new Kingplank(client).estimates.get('a/b?c');
    expect(new URL(asked[0].url).pathname).toBe('/v1/estimates/a%2Fb%3Fc');
  });

  test('derives another one with other options', async () => {
    const { client, asked } = playback(good);
    await new Kingplank(client).withOptions({ apiKey: 'theirs' }).health.live();
    expect(asked[0].headers.get('authorization')).toBe('Bearer theirs');
  });

  test('asks any path of the contract', async () => {
    const { client, asked } = playback(good);
    await new Kingplank(client).request('get', '/v1/estimates/{id}/lines/{code}/why', {
      path: { id: 'e1', code: 'labour-cut-skin' },
    });
    expect(new URL(asked[0].url).pathname).toBe('/v1/estimates/e1/lines/labour-cut-skin/why');
    expect(() => new Kingplank(client).request('get', '/v1/keys/{id}', {})).toThrow('path.id');
  });

  test('tells its logger what it asks, and never a key', async () => {
    const { client } = playback(problem(503, 'unavailable', { 'retry-after': '0' }), good);
    const said: string[] = [];
    const hear = (message: string): void => {
      said.push(message);
    };
    const logger = { debug: hear, info: hear, warn: hear, error: hear };
    const talkative = new Kingplank({ ...client, logger, logLevel: 'debug' });
    await talkative.estimates.get('kp_secret0123456789');
    expect(said.join('\n')).toMatch(/GET \/v1\/estimates/);
    expect(said.join('\n')).not.toContain('secret0123456789');
  });
});

describe('the wait before a retry', () => {
  test('is what Retry-After asks in seconds, in full', () =>
    expect(waitMs(0, '90', 0, () => 1)).toBe(90_000));
  test('is what Retry-After asks as a date', () => {
    expect(waitMs(0, 'Thu, 01 Jan 1970 00:00:05 GMT', 2000, () => 1)).toBe(3000);
  });
  test('grows and is spread by chance otherwise, up to 8 s', () => {
    expect([0, 1, 2, 3, 9].map((tries) => waitMs(tries, null, 0, () => 1))).toEqual([
      250, 500, 1000, 2000, 8000,
    ]);
    expect(waitMs(3, null, 0, () => 0)).toBe(0);
  });
});

describe('a list', () => {
  const pages = [
    { items: [1, 2], nextCursor: 'b' },
    { items: [3], nextCursor: null },
  ];
  const listOf = (cursors: (string | undefined)[]): Pages<number> =>
    new Pages<number>((cursor) => {
      cursors.push(cursor);
      return Promise.resolve(cursor === undefined ? pages[0] : pages[1]);
    });

  test('fetches page after page', async () => {
    const cursors: (string | undefined)[] = [];
    const seen: number[] = [];
    for await (const item of listOf(cursors)) seen.push(item);
    expect(seen).toEqual([1, 2, 3]);
    expect(cursors).toEqual([undefined, 'b']);
  });

  test('gives as many as asked for, and fetches no page too many', async () => {
    const cursors: (string | undefined)[] = [];
    expect(await listOf(cursors).toArray({ limit: 2 })).toEqual([1, 2]);
    expect(cursors).toEqual([undefined]);
    expect(await listOf([]).toArray({ limit: 10 })).toEqual([1, 2, 3]);
  });
});
