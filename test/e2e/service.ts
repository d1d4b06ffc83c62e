import { setTimeout as delay } from 'node:timers/promises';
import { expect, jest } from '@jest/globals';
import type { OpenAPIObject } from '@nestjs/swagger';
import { runService } from '../fault/running-service.js';
import { contradictions } from '../contract/conformance.js';
import { databaseOfTest, TEST_KEY } from './database-of-test.js';

// A service opens a database first, which on a busy machine takes longer than a test usually may.
jest.setTimeout(240_000);

export { TEST_KEY };

/** A service of its own for one test file: the compiled program in a process, a temporary folder, its log kept for inspection. */
export interface TestService {
  readonly url: string;
  readonly log: readonly Readonly<Record<string, unknown>>[];
  /** Sends JSON (or, when `body` is text, that very text) with a key that may do everything. */
  readonly send: (
    method: string,
    path: string,
    body?: unknown,
    headers?: Readonly<Record<string, string>>,
  ) => Promise<TestAnswer>;
  readonly post: (
    path: string,
    body: unknown,
    headers?: Readonly<Record<string, string>>,
  ) => Promise<TestAnswer>;
  readonly get: (path: string, headers?: Readonly<Record<string, string>>) => Promise<TestAnswer>;
  readonly stop: () => Promise<void>;
}

export interface TestAnswer {
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
  readonly body: ReturnType<typeof JSON.parse>;
}

export async function startService(environment: Readonly<Record<string, string>> = {}): Promise<TestService> {
  const database = await databaseOfTest();
  const service = await runService({
    ...database.environment,
    REQUESTS_PER_MINUTE: '100000',
    ...environment,
  });
  const { log } = service;
  const document = (await (await fetch(`${service.url}/openapi.json`)).json()) as OpenAPIObject;
  const send: TestService['send'] = async (method, at, body, headers = {}) => {
    const answer = await sendTo(service.url + at, method, body, headers);
    const contentType = answer.headers.get('content-type') ?? '';
    // Every answer of every journey must be one that the OpenAPI document promises.
    expect(
      contradictions(document, {
        method,
        path: at.split('?')[0],
        status: answer.status,
        contentType,
        body: answer.body,
      }),
    ).toEqual([]);
    if (answer.status === 500)
      throw new Error(
        `The service failed: ${JSON.stringify(log.findLast((line) => line.failure !== undefined))}`,
      );
    return answer;
  };
  return {
    url: service.url,
    log,
    send,
    post: (at, body, headers) => send('POST', at, body, headers),
    get: (at, headers) => send('GET', at, undefined, headers),
    stop: async () => {
      service.child.kill('SIGTERM');
      expect(await service.ended).toBe(0);
      await database.remove();
    },
  };
}

async function sendTo(
  url: string,
  method: string,
  body: unknown,
  headers: Readonly<Record<string, string>>,
): Promise<TestAnswer> {
  const payload = body === undefined ? undefined : typeof body === 'string' ? body : JSON.stringify(body);
  const type: Record<string, string> = body === undefined ? {} : { 'content-type': 'application/json' };
  const response = await fetch(url, {
    method,
    headers: { ...type, authorization: `Bearer ${TEST_KEY}`, ...lowerCased(headers) },
    body: payload,
  });
  const text = await response.text();
  const isJson = /json/.test(response.headers.get('content-type') ?? '');
  return {
    status: response.status,
    headers: response.headers,
    text,
    body: isJson && text !== '' ? JSON.parse(text) : undefined,
  };
}

const lowerCased = (headers: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(headers).map(([name, value]) => [name.toLowerCase(), value]));

const ASK_AGAIN_MS = 100;

/** The operation that an answer leads to, once it has ended. */
export async function endedOperation(
  service: TestService,
  { headers }: TestAnswer,
): Promise<TestAnswer['body']> {
  for (;;) {
    const { body } = await service.get(headers.get('location') ?? '');
    if (body.status === 'done' || body.status === 'failed') return body;
    await delay(ASK_AGAIN_MS);
  }
}
