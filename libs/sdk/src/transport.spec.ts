import { describe, expect, jest, test } from '@jest/globals';
import {
  AbortedError,
  ConnectionFailedError,
  InvalidRequestError,
  RateLimitedError,
  ServiceFailedError,
  TimedOutError,
} from './errors.js';
import { Pages } from './pages.js';
import { waitMs } from './retry.js';
import { send, type ClientOptions } from './transport.js';

type Step = Response | Error;

/** A service that plays back answers in order and remembers what it was asked. */
function playback(...steps: readonly Step[]): { client: ClientOptions; asked: Request[] } {
  const asked: Request[] = [];
  const fetch = jest.fn(async (input: string | URL | Request, init?: RequestInit) => {
    asked.push(new Request(input, init));
    const step = steps[Math.min(asked.length - 1, steps.length - 1)];
    if (step instanceof Error) throw step;
    return step.clone();
  });
  return { client: { baseUrl: 'http://127.0.0.1:1/', apiKey: 'k', fetch }, asked };
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
const good = new Response('{"ok":true}', { status: 200 });

describe('a call', () => {
  test('carries the key, and a write carries an idempotency key that stays the same over retries', async () => {
    const { client, asked } = playback(problem(503, 'unavailable', { 'retry-after': '0' }), good);
    await send(client, { method: 'POST', path: '/v1/estimates', body: {} });
    expect(asked.map(({ headers }) => headers.get('authorization'))).toEqual(['Bearer k', 'Bearer k']);
    const keys = asked.map(({ headers }) => headers.get('idempotency-key'));
    expect(keys[0]).toMatch(/^"[0-9a-f-]{36}"$/);
    expect(keys[1]).toBe(keys[0]);
  });

  test("asks for the client's units unless it names its own, and for none when nobody said any", async () => {
    const { client, asked } = playback(good);
    const get = { method: 'GET', path: '/v1/estimates/1' } as const;
    await send(client, get);
    await send({ ...client, units: 'us' }, get);
    await send({ ...client, units: 'us' }, get, { units: 'si' });
    expect(asked.map(({ headers }) => headers.get('accept-units'))).toEqual([null, 'us', 'si']);
  });

  test('that cannot be right is not sent twice, and its faults are listed', async () => {
    const { client, asked } = playback(problem(422, 'unprocessable'));
    const error = await send(client, { method: 'POST', path: '/v1/estimates', body: {} }).catch(
      (caught: unknown) => caught,
    );
    expect(error).toBeInstanceOf(InvalidRequestError);
    expect(error).toMatchObject({
      status: 422,
      code: 'unprocessable',
      errors: [{ pointer: '/core/thicknessMm' }],
    });
    expect(asked).toHaveLength(1);
  });

  test('gives up after its retries with the last problem', async () => {
    const { client, asked } = playback(problem(503, 'unavailable', { 'retry-after': '0' }));
    await expect(send(client, { method: 'GET', path: '/x' }, { maxRetries: 2 })).rejects.toBeInstanceOf(
      ServiceFailedError,
    );
    expect(asked).toHaveLength(3);
  });

  test('that is limited says so', async () => {
    const { client } = playback(problem(429, 'too-many-requests', { 'retry-after': '0' }));
    await expect(send(client, { method: 'GET', path: '/x' }, { maxRetries: 0 })).rejects.toBeInstanceOf(
      RateLimitedError,
    );
  });

  test('that finds nobody is a connection failure with its cause', async () => {
    const { client } = playback(new TypeError('refused'));
    const error = await send(client, { method: 'GET', path: '/x' }, { maxRetries: 0 }).catch(
      (caught: unknown) => caught,
    );
    expect(error).toBeInstanceOf(ConnectionFailedError);
    expect(error).toMatchObject({ cause: { message: 'refused' } });
  });

  test('ends at its time limit even while waiting to retry', async () => {
    const { client } = playback(problem(503, 'unavailable', { 'retry-after': '20' }));
    await expect(send(client, { method: 'GET', path: '/x' }, { timeoutMs: 30 })).rejects.toBeInstanceOf(
      TimedOutError,
    );
  });

  test('ends when the caller says so', async () => {
    const { client } = playback(problem(503, 'unavailable', { 'retry-after': '20' }));
    const controller = new AbortController();
    setTimeout(() => controller.abort(), 10);
    await expect(
      send(client, { method: 'GET', path: '/x' }, { signal: controller.signal }),
    ).rejects.toBeInstanceOf(AbortedError);
  });

  test('answered by a proxy page is still a problem with the status', async () => {
    const { client } = playback(new Response('<html>Bad gateway</html>', { status: 502 }));
    await expect(send(client, { method: 'GET', path: '/x' }, { maxRetries: 0 })).rejects.toMatchObject({
      status: 502,
      code: 'not-a-problem-document',
    });
  });
});

describe('the wait before a retry', () => {
  test('is what Retry-After asks in seconds', () => expect(waitMs(0, '3', 0, () => 1)).toBe(3000));
  test('is what Retry-After asks as a date', () => {
    expect(waitMs(0, 'Thu, 01 Jan 1970 00:00:05 GMT', 2000, () => 1)).toBe(3000);
  });
  test('grows and is spread by chance otherwise', () => {
    expect([0, 1, 2, 3].map((tries) => waitMs(tries, null, 0, () => 1))).toEqual([250, 500, 1000, 2000]);
    expect(waitMs(3, null, 0, () => 0)).toBe(0);
  });
  test('never exceeds half a minute', () => expect(waitMs(30, '9999', 0, () => 1)).toBe(30_000));
});

test('a list fetches page after page', async () => {
  const pages = [
    { items: [1, 2], nextCursor: 'b' },
    { items: [3], nextCursor: null },
  ];
  const cursors: (string | undefined)[] = [];
  const list = new Pages<number>((cursor) => {
    cursors.push(cursor);
    return Promise.resolve(cursor === undefined ? pages[0] : pages[1]);
  });
  const seen: number[] = [];
  for await (const item of list) seen.push(item);
  expect(seen).toEqual([1, 2, 3]);
  expect(cursors).toEqual([undefined, 'b']);
});
