import { parse as parseSheet } from 'csv-parse/sync';
import { stringify as stringifySheet } from 'csv-stringify/sync';
import { isRecord } from '../../../apps/api/src/edge/record.js';
import { leastRecord } from '../../../apps/api/src/inputs/least-record.js';
import { endedOperation, TEST_KEY, type TestAnswer, type TestService } from '../../e2e/service.js';
import { png } from '../../support/pictures.js';
import { doors } from '../bounds/doors.js';

/** What was asked and answered at one operation, under `METHOD /path/{part}`. */
export interface Recorded {
  body?: unknown;
  readonly answers: Record<string, unknown>;
}

export type Recording = Map<string, Recorded>;

export interface Journey {
  readonly recording: Recording;
  /** What was asked and refused. */
  readonly failures: readonly string[];
}

interface Asked {
  readonly path?: Readonly<Record<string, string>>;
  readonly query?: string;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

type Ask = (operation: string, asked?: Asked) => Promise<TestAnswer>;

/** Calls every operation that takes or answers JSON once, in an order in which each can be answered. Invented throughout. */
export async function recordedJourney(service: TestService): Promise<Journey> {
  const recording: Recording = new Map();
  const failures: string[] = [];
  const ask: Ask = async (operation, { path = {}, query = '', body, headers = {} } = {}) => {
    const [method, template] = operation.split(' ');
    const at = template.replace(/\{(\w+)\}/g, (_, name: string) => encodeURIComponent(path[name]));
    const answer = await service.send(method, at + (query === '' ? '' : `?${query}`), body, headers);
    if (answer.status >= 300) failures.push(`${operation} answered ${answer.status}: ${answer.text}`);
    else keep(recording, operation, { body, answer });
    return answer;
  };
  const pictures = pictureSender(service, recording);
  const part = async (work: () => Promise<void>): Promise<void> => {
    try {
      await work();
    } catch (error) {
      failures.push(String(error));
    }
  };
  await part(() => health(ask));
  await part(() => access(ask));
  await part(() => webhooks(ask));
  await part(() => letterhead(ask, pictures));
  await part(() => rooms(ask));
  await part(async () => {
    const { id } = await estimates(ask, pictures, service);
    await part(() => catalogue(ask, id));
  });
  return { recording, failures };
}

/** What is sent as a sheet; of one, the headings and the first row stand for the rest. */
const CSV = /import|\/packs$|\/sheets$/;

function keep(
  recording: Recording,
  operation: string,
  { body, answer }: { body: unknown; answer: TestAnswer },
): void {
  const known = recording.get(operation) ?? { answers: {} };
  if (typeof body === 'object') known.body ??= body;
  if (typeof body === 'string' && CSV.test(operation))
    known.body ??= body
      .split(/(?<=\n)/)
      .slice(0, 2)
      .join('');
  if (answer.body !== undefined) known.answers[String(answer.status)] ??= answer.body;
  recording.set(operation, known);
}

type SendPicture = (
  operation: string,
  at: string,
  headers?: Readonly<Record<string, string>>,
) => Promise<void>;

const pictureSender =
  (service: TestService, recording: Recording): SendPicture =>
  async (operation, at, headers = {}) => {
    const response = await fetch(service.url + at, {
      method: 'PUT',
      headers: { 'authorization': `Bearer ${TEST_KEY}`, 'content-type': 'image/png', ...headers },
      body: new Uint8Array(png(300, 200)),
    });
    const text = await response.text();
    if (!response.ok) throw new Error(`${operation} answered ${response.status}: ${text}`);
    const answer = { status: response.status, headers: response.headers, text, body: JSON.parse(text) };
    keep(recording, operation, { body: undefined, answer });
  };

const ANY = { 'if-match': '*' };
const PATCH = { 'content-type': 'application/merge-patch+json' };
const LATER = { prefer: 'respond-async' };

async function health(ask: Ask): Promise<void> {
  await ask('GET /health/live');
  await ask('GET /health/ready');
}

async function access(ask: Ask): Promise<void> {
  const made = await ask('POST /v1/organisations', { body: { name: 'Invented Boatyard' } });
  const path = { id: String(made.body.id) };
  await ask('GET /v1/organisations');
  await ask('GET /v1/organisations/{id}', { path });
  await ask('PATCH /v1/organisations/{id}', {
    path,
    body: { name: 'Invented Boatyard East' },
    headers: { ...PATCH, ...ANY },
  });
  const key = await ask('POST /v1/keys', { body: { name: 'Invented survey office', roles: ['surveyor'] } });
  const ofKey = { path: { id: String(key.body.id) } };
  await ask('GET /v1/keys');
  await ask('GET /v1/keys/{id}', ofKey);
  await ask('POST /v1/keys/{id}/renewal', { ...ofKey, body: { overlapHours: 24 } });
  await ask('GET /v1/keys/{id}/history', ofKey);
  const page = await ask('POST /v1/publishable-keys', {
    body: {
      name: 'Invented shop form',
      origins: ['https://shop.example'],
      perMinute: 60,
      perMinutePerVisitor: 10,
      perDay: 200,
    },
  });
  await ask('GET /v1/publishable-keys');
  await ask('GET /v1/publishable-keys/{id}', { path: { id: String(page.body.id) } });
  await ask('POST /v1/client-sessions', { body: { reference: 'order-7', minutes: 15 } });
  await ask('GET /v1/audit', { query: 'subject=key' });
}

async function webhooks(ask: Ask): Promise<void> {
  const made = await ask('POST /v1/webhook-endpoints', {
    body: { url: 'https://shop.example/kingplank-events', types: ['estimate.created'] },
  });
  const path = { id: String(made.body.id) };
  await ask('GET /v1/webhook-endpoints');
  await ask('GET /v1/webhook-endpoints/{id}', { path });
  await ask('POST /v1/webhook-endpoints/{id}/secret-renewal', { path, body: { overlapHours: 24 } });
  await ask('POST /v1/estimates', { body: leastRecord });
  const events = await ask('GET /v1/events');
  await ask('GET /v1/webhook-endpoints/{id}/deliveries', { path });
  await ask('POST /v1/webhook-endpoints/{id}/deliveries/{eventId}/repetition', {
    path: { ...path, eventId: String(events.body.items[0].id) },
  });
}

async function letterhead(ask: Ask, sendPicture: SendPicture): Promise<void> {
  await ask('PUT /v1/letterhead', {
    body: { lines: ['Quay 1, Invented Harbour'], logoDescription: 'A lighthouse on a rock' },
    headers: ANY,
  });
  await sendPicture('PUT /v1/letterhead/logo', '/v1/letterhead/logo', ANY);
  await ask('GET /v1/letterhead');
}

async function estimates(
  ask: Ask,
  sendPicture: SendPicture,
  service: TestService,
): Promise<{ readonly id: string }> {
  const made = await ask('POST /v1/estimates', { body: leastRecord });
  const id = String(made.body.id);
  const later = await ask('POST /v1/estimates', { body: leastRecord, headers: LATER });
  // How far work is at a moment is chance.
  await endedOperation(service, later);
  await ask('GET /v1/operations/{id}', { path: { id: String(later.body.id) } });
  const path = { id };
  await ask('GET /v1/estimates');
  await ask('GET /v1/estimates/{id}', { path });
  await ask('GET /v1/estimates/{id}', { path, headers: { ...LATER, accept: 'application/pdf' } });
  await ask('GET /v1/estimates/{id}/record', { path });
  await ask('GET /v1/estimates/{id}/replay', { path });
  await ask('GET /v1/estimates/{id}/lines/{code}/why', { path: { ...path, code: 'labour-cut-skin' } });
  const body = {
    reason: 'Wet core reached farther than the readings said',
    record: { ...leastRecord, core: { thicknessMm: 16 } },
  };
  const revised = await ask('POST /v1/estimates/{id}/revisions', { path, body });
  await ask('POST /v1/estimates/{id}/revisions', {
    path,
    body: { ...body, reason: 'Opened' },
    headers: LATER,
  });
  const revision = { path: { id: String(revised.body.id) } };
  await ask('GET /v1/estimates/{id}/revisions', { path });
  await ask('GET /v1/estimates/{id}/comparison', revision);
  await ask('GET /v1/estimates/{id}/change-order', revision);
  const drawings = await ask('GET /v1/estimates/{id}/drawings', { path });
  const name = String(drawings.body.items[0].name);
  await ask('GET /v1/estimates/{id}/drawings/{name}', {
    path: { ...path, name },
    headers: { ...LATER, accept: 'application/pdf' },
  });
  await ask('GET /v1/estimates/{id}/calendar', { path });
  await ask('GET /v1/estimates/{id}/basket', { path });
  await ask('POST /v1/estimates/{id}/basket', { path, body: { pricedAt: 'current' } });
  const chandler = await ask('POST /v1/keys', { body: { name: 'Invented chandlery', roles: ['chandler'] } });
  await ask('PUT /v1/estimates/{id}/shares/{keyId}', { path: { ...path, keyId: String(chandler.body.id) } });
  await ask('GET /v1/estimates/{id}/shares', { path });
  await sendPicture(
    'PUT /v1/estimates/{id}/photographs/{number}',
    `/v1/estimates/${id}/photographs/1?caption=${encodeURIComponent('Plug beside the stanchion')}`,
  );
  await ask('GET /v1/estimates/{id}/photographs', { path });
  return { id };
}

async function rooms(ask: Ask): Promise<void> {
  for (const { path, request } of doors.filter((door) => door.path.startsWith('/v1/estimating/')))
    await ask(`POST ${path}`, { body: request });
  await ask('POST /v1/estimating/ladder', { body: leastRecord });
  await ask('POST /v1/estimating/preview', { body: leastRecord });
  await ask('POST /v1/estimating/quantities', {
    body: { quantities: [{ dimension: 'length', text: '5/8 in' }] },
  });
  await ask('POST /v1/estimating/variants', {
    body: {
      record: leastRecord,
      variants: [
        { code: 'relay', method: { skin: 'relay' } },
        { code: 're-bed', method: { skin: 're-bed' } },
      ],
    },
  });
}

const SHELVES = ['materials', 'price-lists', 'labour-rates', 'sources'] as const;
const DRAFT = 'spring-2027';

async function catalogue(ask: Ask, estimate: string): Promise<void> {
  const editions = await ask('GET /v1/editions');
  const shipped = String(editions.body.current);
  await ask('POST /v1/editions', {
    body: { code: DRAFT, basedOn: shipped, note: 'Invented prices of a new season' },
  });
  const query = `edition=${DRAFT}`;
  for (const shelf of SHELVES) await onShelf(ask, shelf, query);
  await packs(ask, query);
  await ask('POST /v1/editions/{code}/trial', { path: { code: DRAFT }, body: { estimates: [estimate] } });
  await ask('GET /v1/editions/{code}', { path: { code: DRAFT } });
  await ask('GET /v1/editions/{code}/comparison', { path: { code: DRAFT }, query: `with=${shipped}` });
  await ask('POST /v1/editions/{code}/publication', {
    path: { code: DRAFT },
    body: { effectiveAt: new Date(Date.now() + 86_400_000).toISOString() },
    headers: ANY,
  });
  await ask('DELETE /v1/editions/{code}/publication', { path: { code: DRAFT }, headers: ANY });
  await ask('GET /v1/editions/{code}/history', { path: { code: DRAFT } });
  await ask('POST /v1/editions/{code}/restoration', {
    path: { code: shipped },
    body: { code: 'winter-2026-again', note: 'As before' },
  });
}

/** Keys of sources are written in capitals. */
const copyOf = (shelf: string): string => (shelf === 'sources' ? 'INVENTED-COPY' : 'invented-copy');

async function onShelf(ask: Ask, shelf: (typeof SHELVES)[number], query: string): Promise<void> {
  const at = `/v1/${shelf}`;
  const listed = await ask(`GET ${at}`, { query });
  const like = small(listed.body.items[0]);
  const named = shelf === 'sources' ? 'key' : 'code';
  const path = { code: String(listed.body.items[0][named]) };
  await ask(`POST ${at}`, { query, body: { ...like, [named]: copyOf(shelf) } });
  await ask(`GET ${at}/{code}`, { path, query });
  const change = shelf === 'sources' ? { note: 'Read once more' } : { name: `${String(like.name)}, renamed` };
  await ask(`PATCH ${at}/{code}`, {
    path: { code: copyOf(shelf) },
    query,
    body: change,
    headers: { ...PATCH, ...ANY },
  });
  await ask(`GET ${at}/{code}/history`, { path: { code: copyOf(shelf) } });
  const csv = await ask(`GET ${at}`, { query, headers: { accept: 'text/csv' } });
  await ask(`POST ${at.replace('/v1/', '/v1/imports/')}`, {
    query,
    body: rowOf(csv.text, copyOf(shelf)),
    headers: { 'content-type': 'text/csv' },
  });
}

/** One row of a sheet under those headings that it fills: of materials, every kind has columns of its own. */
function rowOf(sheet: string, named: string): string {
  const [headings, ...rows] = parseSheet(sheet);
  const row = rows.filter((cells) => cells.includes(named))[0];
  const filled = headings.map((_, at) => at).filter((at) => row[at] !== '');
  return stringifySheet([headings, row].map((line) => filled.map((at) => line[at])));
}

/** A price list is shown with one of its packs. */
const small = (item: unknown): Readonly<Record<string, unknown>> =>
  isRecord(item) && Array.isArray(item.packs)
    ? { ...item, packs: item.packs.slice(0, 1) }
    : Object.assign({}, item);

async function packs(ask: Ask, query: string): Promise<void> {
  const lists = await ask('GET /v1/price-lists');
  const code = String(lists.body.items[0].code);
  const listed = await ask('GET /v1/price-lists/{code}/packs', { path: { code }, query });
  const [pack] = listed.body.packs as readonly { readonly sku: string; readonly prices: unknown }[];
  const { sku } = pack;
  const one = { path: { code, sku } };
  await ask('GET /v1/price-lists/{code}/packs/{sku}', { ...one, query });
  await ask('PUT /v1/price-lists/{code}/packs/{sku}', { ...one, query, body: pack, headers: ANY });
  await ask('PATCH /v1/price-lists/{code}/packs/{sku}', {
    ...one,
    query,
    body: { prices: [{ fromPacks: 1, price: '99.90' }] },
    headers: { ...PATCH, ...ANY },
  });
  await ask('POST /v1/price-lists/{code}/price-changes', {
    path: { code },
    query,
    body: { percent: '4.5', skus: [sku] },
    headers: ANY,
  });
  await ask('POST /v1/price-lists/{code}/sheets', {
    path: { code },
    query,
    body: {
      cells: `Article\tNet price\n${sku}\t101.50`,
      columns: [
        { heading: 'Article', means: 'sku' },
        { heading: 'Net price', means: 'price' },
      ],
      decimalMark: '.',
      breaks: 'keep',
      unknownSkus: 'refuse',
    },
    headers: ANY,
  });
  const csv = await ask('GET /v1/price-lists/{code}/packs', {
    path: { code },
    query,
    headers: { accept: 'text/csv' },
  });
  await ask('PUT /v1/price-lists/{code}/packs', {
    path: { code },
    query,
    body: csv.text,
    headers: { 'content-type': 'text/csv', ...ANY },
  });
  await ask('PATCH /v1/price-lists/{code}/stock', { path: { code }, body: { items: [{ sku, packs: 12 }] } });
  await ask('GET /v1/price-lists/{code}/stock', { path: { code } });
  await ask('PUT /v1/price-lists/{code}/packs/{sku}/stock', { ...one, body: { packs: 11 } });
  await ask('GET /v1/price-lists/{code}/packs/{sku}/stock', one);
}
