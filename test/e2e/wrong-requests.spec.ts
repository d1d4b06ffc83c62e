import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { startService, TEST_KEY, type TestService } from './service.js';

/** What somebody does wrong, and what is said of it: kept as text that a person has read. */
const TEXTS = join(process.cwd(), 'test/contract/wrong-requests.md');
const UNKNOWN = '00000000-0000-7000-8000-000000000000';
const { panel, outerSkin, zones } = leastRecord;
const withoutCoreAndSkin = { panel, outerSkin, zones };

interface Wrong {
  readonly title: string;
  readonly send: readonly [
    method: string,
    path: string,
    body?: unknown,
    headers?: Readonly<Record<string, string>>,
  ];
}

const wrong = (title: string, ...send: Wrong['send']): Wrong => ({ title, send });
const record = (title: string, changes: object): Wrong =>
  wrong(title, 'POST', '/v1/estimates', { ...leastRecord, ...changes });
const zone = (outline: unknown): object => ({ zones: [{ id: 'Z1', outline }] });
const CSV = { 'content-type': 'text/csv' };
const PATCH = { 'content-type': 'application/merge-patch+json' };

const access: readonly Wrong[] = [
  wrong('no key', 'GET', '/v1/estimates', undefined, { authorization: '' }),
  wrong('a key without the word Bearer', 'GET', '/v1/estimates', undefined, { authorization: TEST_KEY }),
  wrong('a user name and a password', 'GET', '/v1/estimates', undefined, { authorization: 'Basic YTpi' }),
  wrong('a key that opens nothing', 'GET', '/v1/estimates', undefined, {
    authorization: `Bearer kp_${'x'.repeat(43)}`,
  }),
  wrong('a key for a role that is none', 'POST', '/v1/keys', { name: 'Office', roles: ['surveyer'] }),
  wrong('an integrator without scopes', 'POST', '/v1/keys', { name: 'Shop', roles: ['integrator'] }),
  wrong('a key that has ended before it begins', 'POST', '/v1/keys', {
    name: 'Office',
    roles: ['surveyor'],
    expiresAt: '2001-01-01T00:00:00Z',
  }),
  wrong('a page of any origin', 'POST', '/v1/publishable-keys', {
    name: 'Form',
    origins: ['*'],
    perMinute: 10,
    perMinutePerVisitor: 5,
    perDay: 50,
  }),
];

const http: readonly Wrong[] = [
  wrong('an address that is none', 'GET', '/v1/estimate'),
  wrong('a method that does not fit', 'DELETE', `/v1/estimates/${UNKNOWN}`),
  wrong('an estimate that is not there', 'GET', `/v1/estimates/${UNKNOWN}`),
  wrong('an id that is no id', 'GET', '/v1/estimates/latest'),
  wrong('a query parameter that is misspelt', 'GET', '/v1/estimates?limt=5'),
  wrong('a page of no size', 'GET', '/v1/estimates?limit=0'),
  wrong('a cursor of one’s own making', 'GET', '/v1/estimates?cursor=page-2'),
  wrong('a form of the answer that is not made', 'GET', '/v1/materials', undefined, {
    accept: 'application/yaml',
  }),
  wrong('units that are neither', 'POST', '/v1/estimates', leastRecord, { 'accept-units': 'imperial' }),
  wrong('XML in place of JSON', 'POST', '/v1/estimates', '<record/>', { 'content-type': 'application/xml' }),
  wrong('JSON with a comma too many', 'POST', '/v1/estimates', '{"panel": {},}'),
  wrong('one name twice in an object', 'POST', '/v1/estimates', '{"reference": "A", "reference": "B"}'),
  wrong('nothing at all', 'POST', '/v1/estimates'),
  wrong('a list in place of a record', 'POST', '/v1/estimates', [leastRecord]),
];

const records: readonly Wrong[] = [
  wrong('an empty record', 'POST', '/v1/estimates', {}),
  wrong('neither core nor inner skin', 'POST', '/v1/estimates', withoutCoreAndSkin),
  record('a field misspelt', { outerSkin: { ticknessMm: 3 } }),
  record('a field nobody knows', { colour: 'white' }),
  record('a thickness below nothing', { outerSkin: { thicknessMm: -3 } }),
  record('a thickness in pounds', { core: { thicknessMm: '12 lb' } }),
  record('a thickness in words', { core: { thicknessMm: 'half an inch' } }),
  record('a thickness as an empty text', { core: { thicknessMm: '' } }),
  record('a fraction over nothing', { core: { thicknessMm: '1/0 in' } }),
  record('null in place of a number', { core: { thicknessMm: null } }),
  record('a core that the catalogue does not hold', { method: { core: 'core-balza-150' } }),
  record(
    'a zone outside the panel',
    zone([
      [5000, 0],
      [5400, 0],
      [5400, 300],
      [5000, 300],
    ]),
  ),
  record(
    'a zone that crosses itself',
    zone([
      [700, 300],
      [1250, 620],
      [1250, 300],
      [700, 620],
    ]),
  ),
  record(
    'a zone in metres',
    zone([
      [0.7, 0.3],
      [1.25, 0.3],
      [1.25, 0.62],
      [0.7, 0.62],
    ]),
  ),
  record(
    'a zone of two points',
    zone([
      [700, 300],
      [1250, 300],
    ]),
  ),
  record(
    'a point with a height',
    zone([
      [700, 300, 0],
      [1250, 300, 0],
      [1250, 620, 0],
    ]),
  ),
  record('two zones of one name', { zones: [leastRecord.zones[0], leastRecord.zones[0]] }),
  record('a zone in place of a list', { zones: leastRecord.zones[0] }),
  record('no zone, no reading, no leak', { zones: [] }),
  record('a currency where none is asked for', { pricing: { currency: 'EURO' } }),
  record('a price list that is not there', { pricing: { priceList: 'eur-spring' } }),
  record('a method that is none', { method: { skin: 'replace' } }),
  record('a part of the record that there is not', { calendar: { start: '12 April' } }),
  record('a weather that nobody works in', { conditions: { temperatureC: '200 degF' } }),
  record('a title with a control character', { title: 'Deck\u0007' }),
  record('a title as long as a page', { title: 'x'.repeat(5000) }),
];

const others: readonly Wrong[] = [
  wrong('a revision without a reason', 'POST', `/v1/estimates/${UNKNOWN}/revisions`, { record: leastRecord }),
  wrong('a drawing that is none', 'GET', '/v1/estimates/{id}/drawings/cut-plans'),
  wrong('a line that is none', 'GET', '/v1/estimates/{id}/lines/nothing/why'),
  wrong('a paper that is none', 'GET', '/v1/estimates/{id}?paper=a3', undefined, {
    accept: 'application/pdf',
  }),
  wrong('an order pooled with a stranger', 'POST', '/v1/estimates/{id}/basket', { together: [UNKNOWN] }),
  wrong('an order pooled with itself', 'POST', '/v1/estimates/{id}/basket', { together: ['{id}'] }),
  wrong('prices of an edition that is not there', 'GET', '/v1/estimates/{id}/basket?pricedAt=spring'),
  wrong('a room that is none', 'POST', '/v1/estimating/paint', {}),
  wrong('a panel check of nothing', 'POST', '/v1/estimating/panel-check', {}),
  wrong('a basket of nothing', 'POST', '/v1/estimating/basket', { priceList: 'nothing', needs: [] }),
];

const catalogue: readonly Wrong[] = [
  wrong('a change without a draft', 'POST', '/v1/sources', {}),
  wrong('a change to what is published', 'POST', '/v1/sources?edition={current}', {
    key: 'INVENTED-2027',
    title: 'Invented tables',
    body: 'Nobody',
    year: '2027',
    readAs: 'memory',
  }),
  wrong('a draft of a code that is none', 'POST', '/v1/editions', { code: 'Spring 2027' }),
  wrong('a draft of nothing known', 'POST', '/v1/editions', { code: 'later', basedOn: 'never' }),
  wrong('a publication without saying of what version', 'POST', '/v1/editions/draft/publication'),
  wrong(
    'a publication of a version without its quotation marks',
    'POST',
    '/v1/editions/draft/publication',
    undefined,
    { 'if-match': 'v1' },
  ),
  wrong('a publication of a version that is no more', 'POST', '/v1/editions/draft/publication', undefined, {
    'if-match': '"v99"',
  }),
  wrong(
    'a price that is a number',
    'PATCH',
    '/v1/price-lists/{list}/packs/{sku}?edition=draft',
    { prices: [{ fromPacks: 1, price: 12.5 }] },
    { ...PATCH, 'if-match': '*' },
  ),
  wrong(
    'a price rise in words',
    'POST',
    '/v1/price-lists/{list}/price-changes?edition=draft',
    { percent: 'five' },
    { 'if-match': '*' },
  ),
  wrong(
    'a price rise for a supplier misspelt',
    'POST',
    '/v1/price-lists/{list}/price-changes?edition=draft',
    { percent: '5', suppliers: ['{supplier}x'] },
    { 'if-match': '*' },
  ),
  wrong(
    'a sheet parted by semicolons',
    'PUT',
    '/v1/price-lists/{list}/packs?edition=draft',
    'sku;name\r\nA;B\r\n',
    { ...CSV, 'if-match': '*' },
  ),
  wrong(
    'a sheet with a price missing',
    'PUT',
    '/v1/price-lists/{list}/packs?edition=draft',
    'sku,name,supplier\r\nA,Pack A,{supplier}\r\n',
    { ...CSV, 'if-match': '*' },
  ),
  wrong('a trial of an edition that is not there', 'POST', '/v1/editions/never/trial', {}),
  wrong('events to this very machine', 'POST', '/v1/webhook-endpoints', {
    url: 'https://127.0.0.1/events',
    types: ['estimate.created'],
  }),
  wrong('events of a type that is none', 'POST', '/v1/webhook-endpoints', {
    url: 'https://shop.example/',
    types: ['estimate.made'],
  }),
  wrong(
    'one Idempotency-Key for two things',
    'POST',
    '/v1/estimates',
    { ...leastRecord, title: 'Another' },
    { 'idempotency-key': '"used-already-for-another-deck"' },
  ),
];

describe('sixty wrong requests and more', () => {
  let service: TestService;
  const names: Record<string, string> = {};
  beforeAll(async () => {
    service = await startService();
    const key = { 'idempotency-key': '"used-already-for-another-deck"' };
    names.id = String((await service.post('/v1/estimates', leastRecord, key)).body.id);
    names.current = String((await service.get('/v1/editions')).body.current);
    await service.post('/v1/editions', { code: 'draft' });
    const [list] = (await service.get('/v1/price-lists')).body.items;
    names.list = list.code as string;
    names.sku = list.packs[0].sku as string;
    names.supplier = list.packs[0].supplier as string;
  }, 240_000);
  afterAll(async () => {
    await service.stop();
  });

  const filled = (text: string, inPath = false): string =>
    text.replace(/\{(id|current|list|sku|supplier)\}/g, (_, name: string) =>
      inPath ? encodeURIComponent(names[name]) : names[name],
    );
  /** What differs from run to run is not part of the text. */
  const steady = (text: string): string =>
    text.replaceAll(names.id, '{id}').replace(/\d{4}-\d\d-\d\dT[\d:.]+Z/g, '{instant}');

  const told = async ({ title, send: [method, path, body, headers] }: Wrong): Promise<string> => {
    const payload =
      typeof body === 'string' ? filled(body) : JSON.parse(filled(JSON.stringify(body ?? null)));
    const answer = await service.send(
      method,
      filled(path, true),
      body === undefined ? undefined : payload,
      headers,
    );
    expect([title, answer.status >= 400 && answer.status < 500]).toEqual([title, true]);
    const { detail, errors = [] } = answer.body as {
      readonly detail: string;
      readonly errors?: readonly {
        readonly detail: string;
        readonly pointer?: string;
        readonly row?: number;
        readonly column?: string;
      }[];
    };
    const shown = errors
      .slice(0, 6)
      .map(
        (error) =>
          `- ${steady(error.detail)}${error.row === undefined ? '' : ` (row ${error.row}, column ${error.column ?? '-'})`}`,
      );
    const more = errors.length > 6 ? [`- and ${errors.length - 6} more`] : [];
    return [
      `### ${title}`,
      '',
      `\`${method} ${path}\` → ${answer.status}`,
      '',
      steady(detail),
      '',
      ...shown,
      ...more,
      '',
    ].join('\n');
  };

  test('each says what is wrong and what would be right, in the words that somebody read', async () => {
    const sections = {
      'Keys and roles': access,
      'HTTP': http,
      'Records': records,
      'Estimates and rooms': others,
      'Catalogue and events': catalogue,
    };
    const all = Object.values(sections).flat();
    expect(all.length).toBeGreaterThanOrEqual(60);
    expect(new Set(all.map(({ title }) => title)).size).toBe(all.length);
    const parts: string[] = [];
    for (const [title, group] of Object.entries(sections)) {
      parts.push(`## ${title}`, '');
      for (const one of group) parts.push(await told(one));
    }
    const text = [
      '# Wrong requests',
      '',
      'What is said of requests that somebody got wrong, as asked of the running service. Generated by `UPDATE_GOLDEN=1` from `test/e2e/wrong-requests.spec.ts`; read it as the person would who sent them.',
      '',
      ...parts,
    ]
      .join('\n')
      .replace(/\n{3,}/g, '\n\n')
      // The code of the shipped edition is another one with each change of the catalogue.
      .replaceAll(names.current, '{current}');
    if (process.env.UPDATE_GOLDEN === '1') writeFileSync(TEXTS, text);
    expect(text).toBe(readFileSync(TEXTS, 'utf8'));
  }, 240_000);
});
