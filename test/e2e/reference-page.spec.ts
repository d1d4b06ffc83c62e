import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import http from 'node:http';
import { gunzipSync } from 'node:zlib';
import { chromium, type Browser, type Page } from 'playwright-core';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { inBrowser } from './desk-in-browser.js';
import { startService, TEST_KEY, type TestService } from './service.js';

interface Contract {
  readonly paths: Readonly<Record<string, Readonly<Record<string, { readonly operationId: string }>>>>;
}

let service: TestService;
beforeAll(async () => {
  service = await startService();
});
afterAll(async () => {
  await service.stop();
});

/** As it came over the wire, which `fetch` would have unpacked. */
const raw = (
  at: string,
  headers: http.OutgoingHttpHeaders,
): Promise<{ head: http.IncomingMessage; bytes: Buffer }> =>
  new Promise((resolve, reject) => {
    http
      .get(service.url + at, { headers: { authorization: `Bearer ${TEST_KEY}`, ...headers } }, (head) => {
        const chunks: Buffer[] = [];
        head.on('data', (chunk: Buffer) => chunks.push(chunk));
        head.on('end', () => {
          resolve({ head, bytes: Buffer.concat(chunks) });
        });
      })
      .on('error', reject);
  });

describe('answers on their way', () => {
  test.each(['/v1/materials', '/openapi.json', '/docs/recipes', '/docs/api/swagger-ui-bundle.js'])(
    '%s comes packed to whoever can unpack it, and says the same to whoever cannot',
    async (at) => {
      const plain = await raw(at, {});
      const packed = await raw(at, { 'accept-encoding': 'gzip' });
      expect(plain.head.headers['content-encoding']).toBeUndefined();
      expect(packed.head.headers).toMatchObject({
        'content-encoding': 'gzip',
        'vary': expect.stringContaining('Accept-Encoding'),
      });
      expect(packed.head.headers.etag).toBe(plain.head.headers.etag);
      expect(packed.bytes.length).toBeLessThan(plain.bytes.length / 2);
      expect(gunzipSync(packed.bytes).equals(plain.bytes)).toBe(true);
    },
  );

  test('an estimate that was just made comes packed as well', async () => {
    const { headers, body } = await service.post('/v1/estimates', leastRecord);
    expect(['br', 'gzip']).toContain(headers.get('content-encoding'));
    expect(body.estimate.lines.length).toBeGreaterThan(0);
    const read = await raw(`/v1/estimates/${String(body.id)}`, { 'accept-encoding': 'gzip' });
    expect(read.head.headers).toMatchObject({ 'content-encoding': 'gzip', 'etag': headers.get('etag') });
  });

  test('short answers, pictures, and refusals of packing come as they are', async () => {
    const asItIs = async (at: string, encoding: string): Promise<unknown> =>
      (await raw(at, { 'accept-encoding': encoding })).head.headers['content-encoding'];
    expect(await asItIs('/v1/editions?limit=1', 'gzip')).toBeUndefined();
    expect(await asItIs('/v1/materials', 'identity, gzip;q=0')).toBeUndefined();
    expect(await asItIs('/v1/materials', 'gzip')).toBe('gzip');
  });

  test('the document is sent once to whoever keeps it', async () => {
    const { head } = await raw('/openapi.json', {});
    const again = await raw('/openapi.json', { 'if-none-match': String(head.headers.etag) });
    expect([again.head.statusCode, again.bytes.length]).toEqual([304, 0]);
  });
});

describe('the document of one operation', () => {
  test('is there for each, and refers to nothing that it does not hold', async () => {
    const { paths } = (await (await fetch(`${service.url}/openapi.json`)).json()) as Contract;
    const ids = Object.values(paths).flatMap((item) =>
      Object.values(item).map(({ operationId }) => operationId),
    );
    expect(ids.length).toBeGreaterThan(100);
    for (const id of ids) {
      const text = await (await fetch(`${service.url}/docs/api/operations/${id}.json`)).text();
      const { paths: own, components } = JSON.parse(text) as Contract & { readonly components: object };
      expect(Object.values(own).flatMap((item) => Object.values(item))).toMatchObject([{ operationId: id }]);
      expect([id, danglingIn(text, components)]).toEqual([id, []]);
    }
    expect((await fetch(`${service.url}/docs/api/operations/nobodys.json`)).status).toBe(404);
  });
});

const danglingIn = (text: string, components: object): readonly string[] =>
  [...text.matchAll(/"\$ref":"#\/components\/(\w+)\/([^"]+)"/g)]
    .filter(([, section, name]) => {
      const all: unknown = Reflect.get(components, section);
      return typeof all !== 'object' || all === null || !(name in all);
    })
    .map(([reference]) => reference);

inBrowser('the page of the interface', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
  });
  afterAll(async () => {
    await browser.close();
  });

  const opened = async (width: number, faults: string[]): Promise<Page> => {
    const page = await (await browser.newContext({ viewport: { width, height: 844 } })).newPage();
    page.setDefaultTimeout(90_000);
    page.on('pageerror', ({ message }) => faults.push(message));
    page.on('console', (said) => {
      if (said.type() === 'error') faults.push(said.text());
    });
    await page.goto(`${service.url}/docs/api`);
    return page;
  };

  test.each([1280, 390])(
    'finds an operation by a word and shows all of it when opened, %i px wide',
    async (width) => {
      const faults: string[] = [];
      const page = await opened(width, faults);
      await page.getByPlaceholder('Filter by tag').fill('photograph under a number');
      await page.locator('.opblock-tag').first().click();
      expect(await page.locator('.opblock').count()).toBe(1);
      await page.getByPlaceholder('Filter by tag').fill('createEstimate');
      await page.locator('.opblock-summary-control').first().click();
      const body = page.locator('.opblock-body').first();
      await body.getByText('which can be had as surveyor, integrator').waitFor();
      await body.getByText('Idempotency-Key', { exact: true }).first().waitFor();
      await body.locator('textarea', { hasText: '"outline"' }).waitFor();
      await body.locator('.responses-table').getByText('"rootId"').first().waitFor();
      expect(await body.locator('.parameters', { hasText: 'Accept-Units' }).count()).toBeGreaterThan(0);
      expect(faults).toEqual([]);
      await page.context().close();
    },
  );

  test('keeps the key over a reload, and asks with it', async () => {
    const page = await opened(1280, []);
    await page.locator('.btn.authorize').first().click();
    await page.locator('.modal-ux input').fill(TEST_KEY);
    await page.locator('.modal-ux .authorize').click();
    await page.reload();
    await page.locator('.opblock-tag', { hasText: 'Access' }).click();
    await page.locator('.opblock-summary-control', { hasText: '/v1/organisations' }).first().click();
    await page.getByRole('button', { name: 'Execute' }).click();
    await page.locator('.live-responses-table').getByText('200', { exact: true }).first().waitFor();
    await page.context().close();
  });
});
