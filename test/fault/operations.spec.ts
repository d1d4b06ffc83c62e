import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, jest, test } from '@jest/globals';
import { TEST_KEY } from '../e2e/database-of-test.js';
import type { RunningService } from './running-service.js';
import { servicesOfTest } from './services-of-test.js';

jest.setTimeout(180_000);

const headers = { 'authorization': `Bearer ${TEST_KEY}`, 'content-type': 'application/json' };
const later = (locale: string) => ({
  ...headers,
  'accept': 'application/pdf',
  'prefer': 'respond-async',
  'accept-language': locale,
});
const foredeck = readFileSync(
  path.join(import.meta.dirname, '../../apps/workshop/samples/foredeck.json'),
  'utf8',
);
const locales = ['en-GB', 'en-US', 'de-DE', 'fr-FR', 'nl-NL', 'sv-SE', 'it-IT', 'pl-PL'];

interface Shown {
  readonly id: string;
  readonly status: string;
}

describe('operations outlast the process that accepted them', () => {
  const { environment, started } = servicesOfTest();

  const madeBy = async ({ url }: RunningService): Promise<string> => {
    const answer = await fetch(`${url}/v1/estimates`, { method: 'POST', headers, body: foredeck });
    return answer.headers.get('location') ?? '';
  };

  const accepted = (services: readonly RunningService[], estimate: string): Promise<readonly string[]> =>
    Promise.all(
      locales.map(async (locale, index) => {
        const answer = await fetch(services[index % services.length].url + estimate, {
          headers: later(locale),
        });
        expect(answer.status).toBe(202);
        return answer.headers.get('location') ?? '';
      }),
    );

  const shown = async (url: string): Promise<Shown> =>
    (await (await fetch(url, { headers })).json()) as Shown;

  async function ends({ url }: RunningService, operations: readonly string[]): Promise<readonly string[]> {
    for (;;) {
      const states = await Promise.all(
        operations.map(async (operation) => (await shown(url + operation)).status),
      );
      if (states.every((status) => status === 'done' || status === 'failed')) return states;
      await new Promise((resolve) => {
        setTimeout(resolve, 200);
      });
    }
  }

  test('killed with work in hand, the next process finishes all of it, and the results are sound', async () => {
    const first = await started();
    const operations = await accepted([first], await madeBy(first));
    first.child.kill('SIGKILL');
    await first.ended;
    const second = await started();
    expect(await ends(second, operations)).toEqual(operations.map(() => 'done'));
    for (const operation of operations) {
      const result = await fetch(`${second.url}${operation}/result`, { headers });
      expect((await result.text()).slice(0, 5)).toBe('%PDF-');
    }
    second.child.kill('SIGTERM');
    expect(await second.ended).toBe(0);
  });

  test('asked to stop with work in hand, a process gives it back and ends well', async () => {
    const first = await started();
    const operations = await accepted([first], await madeBy(first));
    first.child.kill('SIGTERM');
    expect(await first.ended).toBe(0);
    const second = await started();
    expect(await ends(second, operations)).toEqual(operations.map(() => 'done'));
    second.child.kill('SIGTERM');
    await second.ended;
  });

  test('copies of the service on one server share the work', async () => {
    if (environment().DATABASE_URL === undefined) return;
    const copies = [await started(), await started()];
    const operations = await accepted(copies, await madeBy(copies[0]));
    expect(await ends(copies[1], operations)).toEqual(operations.map(() => 'done'));
    const again = await accepted([copies[1]], await madeBy(copies[1]));
    copies[1].child.kill('SIGKILL');
    await copies[1].ended;
    expect(await ends(copies[0], again)).toEqual(again.map(() => 'done'));
  });
});
