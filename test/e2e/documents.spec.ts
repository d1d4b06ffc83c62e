import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { Kingplank, NotFoundError, TimedOutError } from '../../libs/sdk/src/index.js';
import { isLong, PROMPT_UP_TO } from '../../apps/api/src/estimates/estimate-documents.js';
import { startService, TEST_KEY, type TestAnswer, type TestService } from './service.js';

const foredeck = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../apps/workshop/samples/foredeck.json'), 'utf8'),
) as Record<string, unknown>;
const PDF = { accept: 'application/pdf' };
const LATER = { ...PDF, prefer: 'respond-async' };

describe('the documents of an estimate', () => {
  let service: TestService;
  let at: string;
  beforeAll(async () => {
    service = await startService();
    at = `/v1/estimates/${(await service.post('/v1/estimates', foredeck)).body.id}`;
  });
  afterAll(async () => {
    await service.stop();
  });

  const typeOf = ({ headers }: TestAnswer): string => headers.get('content-type')?.split(';')[0] ?? '';

  const forms: readonly (readonly [string, string])[] = [
    ['*/*', 'application/json'],
    ['text/*', 'text/html'],
    ['text/html, */*;q=0.1', 'text/html'],
    ['text/csv', 'text/csv'],
    ['application/*', 'application/json'],
    ['application/pdf, text/html', 'application/pdf'],
    ['application/json;q=0.1, text/csv;q=0.5', 'text/csv'],
  ];

  test.each(forms)('asked for %s, the estimate comes as %s', async (accept, type) => {
    const answer = await service.get(at, { accept });
    expect([answer.status, typeOf(answer)]).toEqual([200, type]);
    expect(answer.headers.get('vary')).toContain('Accept');
  });

  test('a form that does not exist is refused with those that do', async () => {
    const answer = await service.get(at, { accept: 'image/gif' });
    expect(answer.status).toBe(406);
    for (const form of ['application/json', 'text/html', 'application/pdf', 'text/csv'])
      expect(answer.body.detail).toContain(form);
    expect((await service.get(`${at}/drawings/section`, { accept: 'image/png' })).body.detail).toContain(
      'image/svg+xml, application/pdf, image/vnd.dxf',
    );
  });

  test.each([
    ['report as PDF', '', PDF],
    ['page', '', { accept: 'text/html' }],
    ['list of lines', '', { accept: 'text/csv' }],
    ['drawing', '/drawings/section', {}],
    ['drawing as PDF', '/drawings/section', PDF],
  ] as const)('whoever has the %s is told that nothing changed', async (_, below, headers) => {
    const first = await service.get(at + below, headers);
    expect(first.headers.get('etag')).toMatch(/^"[\w-]{32}"$/);
    const again = await service.get(at + below, {
      ...headers,
      'if-none-match': first.headers.get('etag') ?? '',
    });
    expect([again.status, again.text, again.headers.get('etag')]).toEqual([
      304,
      '',
      first.headers.get('etag'),
    ]);
  });

  test('another language, other units or another paper make another document under another tag', async () => {
    const tags = await Promise.all<string | null>(
      [
        ['accept-language', 'en-GB'],
        ['accept-language', 'de-DE'],
        ['accept-units', 'us'],
      ].map(async ([name, value]) => {
        const { headers } = await service.get(at, { accept: 'text/html', [name]: value });
        for (const field of ['Accept', 'Accept-Language', 'Accept-Units', 'Prefer'])
          expect(headers.get('vary')?.split(', ')).toContain(field);
        return headers.get('etag');
      }),
    );
    expect(new Set(tags).size).toBe(3);
  });

  const finished = async (operation: string): Promise<TestAnswer> => {
    for (;;) {
      const answer = await service.get(operation);
      if (answer.body.status !== 'waiting' && answer.body.status !== 'running') return answer;
      expect(answer.headers.get('retry-after')).toBe('1');
      await new Promise((resolve) => {
        setTimeout(resolve, 50);
      });
    }
  };

  test('preferred later, the report is an operation, and its result is the same file to the byte', async () => {
    const accepted = await service.get(at, LATER);
    expect(accepted.status).toBe(202);
    expect(accepted.headers.get('preference-applied')).toBe('respond-async');
    expect(accepted.headers.get('vary')).toContain('Prefer');
    const operation = accepted.headers.get('location') ?? '';
    expect(operation).toBe(`/v1/operations/${accepted.body.id}`);
    const { body } = await finished(operation);
    expect(body).toMatchObject({
      id: accepted.body.id,
      status: 'done',
      result: { href: `${operation}/result`, mediaType: 'application/pdf' },
    });
    expect(Date.parse(body.expiresAt) - Date.parse(body.finishedAt)).toBe(24 * 3600 * 1000);
    const now = await service.get(at, PDF);
    const later = await service.get(body.result.href, PDF);
    for (const name of ['etag', 'content-type', 'content-disposition'])
      expect(later.headers.get(name)).toBe(now.headers.get(name));
    expect(later.text).toBe(now.text);
    expect(
      (await service.get(body.result.href, { ...PDF, 'if-none-match': now.headers.get('etag') ?? '' }))
        .status,
    ).toBe(304);
    expect((await service.get(body.result.href, { accept: 'text/html' })).status).toBe(406);
  });

  test('the same wish is the same operation, another wish another', async () => {
    const locations = await Promise.all(
      [LATER, LATER, { ...LATER, accept: 'text/html' }, { ...LATER, 'accept-units': 'us' }].map(
        async (headers) => (await service.get(at, headers)).headers.get('location') ?? '',
      ),
    );
    expect(locations[1]).toBe(locations[0]);
    expect(new Set(locations).size).toBe(3);
    for (const location of locations) expect((await finished(location)).body.status).toBe('done');
  });

  test('a page made later brings its own policy, and templates can be made later too', async () => {
    const page = await finished(
      (await service.get(at, { accept: 'text/html', prefer: 'wait=10, Respond-Async' })).headers.get(
        'location',
      ) ?? '',
    );
    const result = await service.get(page.body.result.href, { accept: 'text/html' });
    expect(result.headers.get('content-security-policy')).toContain("style-src 'sha256-");
    const templates = await finished(
      (await service.get(`${at}/drawings/templates`, LATER)).headers.get('location') ?? '',
    );
    expect((await service.get(templates.body.result.href)).text).toMatch(/^%PDF-/);
  });

  test('an operation is nobody else’s: another organisation finds nothing', async () => {
    const { body: other } = await service.post('/v1/organisations', { name: 'Another office' });
    const { body: key } = await service.post(
      '/v1/keys',
      { name: 'Theirs', roles: ['surveyor'] },
      { authorization: `Bearer ${other.adminKey.key}` },
    );
    const location = (await service.get(at, LATER)).headers.get('location') ?? '';
    for (const place of [location, `${location}/result`, at])
      expect((await service.get(place, { authorization: `Bearer ${key.key}` })).status).toBe(404);
    expect((await service.get('/v1/operations/nonsense')).status).toBe(404);
  });

  test('the document of an estimate that does not exist is refused at once', async () => {
    expect((await service.get('/v1/estimates/00000000-0000-7000-8000-000000000000', LATER)).status).toBe(404);
  });

  test('the client waits by itself, within its time', async () => {
    const client = new Kingplank({ baseUrl: service.url, apiKey: TEST_KEY });
    const id = at.slice('/v1/estimates/'.length);
    const [now, later] = [
      await client.estimates.pdf(id, { document: 'job-pack' }),
      await client.estimates.pdf(id, { document: 'job-pack' }, { inBackground: true }),
    ];
    expect(Buffer.compare(now.bytes, later.bytes)).toBe(0);
    expect(await client.estimates.html(id, {}, { inBackground: true })).toBe(await client.estimates.html(id));
    const templates = await client.estimates.templates(id, { paper: 'letter' }, { inBackground: true });
    expect(Buffer.from(templates.bytes).toString('latin1', 0, 5)).toBe('%PDF-');
    await expect(
      client.estimates.pdf(id, { paper: 'letter' }, { inBackground: true, timeoutMs: 1 }),
    ).rejects.toBeInstanceOf(TimedOutError);
    await expect(client.operations.get('00000000-0000-7000-8000-000000000000')).rejects.toBeInstanceOf(
      NotFoundError,
    );
  });
});

test('what is long is told by lines and zones alone', () => {
  const estimate = (lines: number, zones: number) => ({
    lines: Array.from<never>({ length: lines }),
    scope: { zones: Array.from({ length: zones }) },
  });
  expect(
    [
      estimate(PROMPT_UP_TO.lines, PROMPT_UP_TO.zones),
      estimate(PROMPT_UP_TO.lines + 1, 1),
      estimate(1, PROMPT_UP_TO.zones + 1),
    ].map(isLong),
  ).toEqual([false, true, true]);
});
