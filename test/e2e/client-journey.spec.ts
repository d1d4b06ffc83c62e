import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { Kingplank } from '../../libs/sdk/src/index.js';
import { clientJourney } from './client-journey.js';
import { startService, TEST_KEY, type TestService } from './service.js';

interface Contract {
  readonly paths: Readonly<Record<string, Readonly<Record<string, object>>>>;
}

const contract: Contract = JSON.parse(
  readFileSync(join(process.cwd(), 'test/contract/openapi.json'), 'utf8'),
);
const operations = Object.entries(contract.paths).flatMap(([path, methods]) =>
  Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
);

/** A path written out comes before one with a part to fill in. */
const templates = Object.keys(contract.paths)
  .sort((a, b) => a.split('{').length - b.split('{').length)
  .map((path) => ({ path, form: new RegExp(`^${path.replace(/\{\w+\}/g, '[^/]+')}$`) }));

const operationOf = (method: string, address: string): string => {
  const { pathname } = new URL(address);
  return `${method} ${templates.find(({ form }) => form.test(pathname))?.path ?? pathname}`;
};

describe('the client against a running service', () => {
  let service: TestService;
  const answered = new Map<string, Set<number>>();
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  /** Notes what each operation was answered. */
  const noting: typeof fetch = async (input, init) => {
    const response = await fetch(input, init);
    const address = input instanceof Request ? input.url : String(input);
    const operation = operationOf(init?.method ?? 'GET', address);
    answered.set(operation, (answered.get(operation) ?? new Set()).add(response.status));
    return response;
  };

  test('succeeds at every operation of the contract at least once, and at nothing else', async () => {
    const client = new Kingplank({
      baseUrl: service.url,
      apiKey: TEST_KEY,
      fetch: noting,
      timeoutMs: 120_000,
    });
    await clientJourney(client);
    const succeeded = [...answered]
      .filter(([, statuses]) => [...statuses].some((status) => status < 300))
      .map(([operation]) => operation);
    expect(operations.length).toBeGreaterThan(120);
    expect([...succeeded].sort()).toEqual([...operations].sort());
  }, 300_000);
});
