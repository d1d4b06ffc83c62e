import { AsyncLocalStorage } from 'node:async_hooks';
import { randomUUID } from 'node:crypto';
import { Server, type IncomingMessage } from 'node:http';
import pg from 'pg';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { recordedExamples } from '../../apps/api/src/schemas/generated/examples.js';
import { greyJpeg } from '../support/pictures.js';

/**
 * What a stranger may learn from how an id of somebody else is refused: two organisations in one service, and a request for
 * each operation with an id in its address, once with what belongs to the other organisation and once with what belongs to
 * nobody. Beside each answer stand the statements that the database was asked for it: a refusal that asks the same does
 * the same work, which a clock on a busy machine could not tell.
 */
export interface Refused {
  readonly operation: string;
  readonly status: number;
  /** The answer without its request's own names. */
  readonly said: string;
  readonly statements: readonly string[];
}

/** One address as both askers would write it: ids of somebody else, and ids of nobody. */
export interface Pair {
  readonly operation: string;
  readonly foreign: string;
  readonly unknown: string;
}

const statementsOf = new Map<string, string[]>();
const asked = new AsyncLocalStorage<string[]>();

/** Looks over the shoulders of server and driver, which know nothing of each other. */
export function watchStatements(): void {
  const { emit } = Server.prototype;
  Server.prototype.emit = function (this: Server, name: string, ...given: readonly unknown[]): boolean {
    const listen = (): boolean => Reflect.apply(emit, this, [name, ...given]);
    if (name !== 'request') return listen();
    const { headers } = given[0] as IncomingMessage;
    const statements: string[] = [];
    statementsOf.set(String(headers['x-request-id']), statements);
    return asked.run(statements, listen);
  };
  const { query } = pg.Client.prototype;
  Object.assign(pg.Client.prototype, {
    query(this: pg.Client, ...given: readonly unknown[]): unknown {
      const [first] = given as readonly [string | { readonly text?: string }];
      asked.getStore()?.push(typeof first === 'string' ? first : String(first.text));
      return Reflect.apply(query, this, given);
    },
  });
}

/** The service as one key sees it. */
export class Asker {
  constructor(
    readonly url: string,
    private readonly key: string,
  ) {}

  async json(method: string, at: string, body?: unknown): Promise<Readonly<Record<string, unknown>>> {
    const { status, text } = await this.send(method, at, body === undefined ? {} : { body });
    if (status >= 300) throw new Error(`${method} ${at} answered ${status}: ${text}`);
    return text === '' ? {} : JSON.parse(text);
  }

  async send(
    method: string,
    at: string,
    { body, type = 'application/json', prefer = '' }: { body?: unknown; type?: string; prefer?: string } = {},
  ): Promise<{ readonly status: number; readonly text: string; readonly requestId: string }> {
    const requestId = randomUUID();
    const isPlain = body instanceof Uint8Array || typeof body === 'string';
    const response = await fetch(this.url + at, {
      method,
      headers: {
        'authorization': `Bearer ${this.key}`,
        'x-request-id': requestId,
        'if-match': '*',
        ...(prefer === '' ? {} : { prefer }),
        ...(body === undefined ? {} : { 'content-type': type }),
      },
      ...(body === undefined ? {} : { body: isPlain ? Buffer.from(body) : JSON.stringify(body) }),
    });
    return { status: response.status, text: await response.text(), requestId };
  }

  /** As `operation` is asked rightly, and refused for the id alone. */
  async refusal(operation: string, at: string): Promise<Refused> {
    const [method, path] = operation.split(' ');
    const answer = await this.send(method, at, bodyOf(operation));
    return {
      operation,
      status: answer.status,
      said: withoutNames(answer.text),
      statements: lookUpsIn(statementsOf.get(answer.requestId) ?? [`${path} was not watched`]),
    };
  }
}

/**
 * Without what is asked of the database whatever a request is for: the look at the caller's own key, which comes first,
 * and once in 0.9 s, and the sum of requests, which goes to the database now and then in a transaction of its own.
 */
function lookUpsIn(statements: readonly string[]): readonly string[] {
  const own = withoutSums(statements);
  const end = own.indexOf('COMMIT') + 1;
  return own.slice(0, end).some((text) => text.includes('api_key')) ? own.slice(end) : own;
}

function withoutSums(statements: readonly string[]): readonly string[] {
  const sum = statements.findIndex((text) => text.includes('INSERT INTO request_count'));
  if (sum < 0) return [...statements];
  const begun = statements.findLastIndex((text, at) => at < sum && text.includes("kingplank.worker = 'on'"));
  const ended = statements.indexOf('COMMIT', sum);
  return withoutSums(statements.filter((_, at) => ![begun, sum, ended].includes(at)));
}

/** What the contract shows of the operation; photographs and logos are pictures. */
function bodyOf(operation: string): { body?: unknown; type?: string } {
  if (/^PUT .*(?:photographs|logo)/.test(operation)) return { body: greyJpeg, type: 'image/jpeg' };
  const recorded = Object.hasOwn(recordedExamples, operation) ? recordedExamples[operation].body : undefined;
  if (recorded === undefined) return {};
  if (typeof recorded === 'string') return { body: recorded, type: 'text/csv' };
  return {
    body: recorded,
    type: operation.startsWith('PATCH') ? 'application/merge-patch+json' : 'application/json',
  };
}

const withoutNames = (text: string): string =>
  text
    .replace(/[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/g, 'ID')
    .replace(/\b(?:theirs|nobody)-draft\b/g, 'DRAFT');

/** A second organisation with a key that may do all that a key may. */
export async function strangerTo(first: Asker): Promise<Asker> {
  const { adminKey } = await first.json('POST', '/v1/organisations', { name: 'Invented strangers' });
  const admin = new Asker(first.url, (adminKey as { readonly key: string }).key);
  const roles = ['surveyor', 'auditor', 'catalogue-admin', 'organisation-admin'];
  const { key } = await admin.json('POST', '/v1/keys', { name: 'Invented stranger', roles });
  return new Asker(first.url, String(key));
}

/** Things of every kind that has an id, made by the first organisation; returns their ids by the start of their address. */
export async function thingsOf(first: Asker): Promise<Readonly<Record<string, string>>> {
  const idOf = async (at: string, body: unknown): Promise<string> =>
    String((await first.json('POST', at, body)).id);
  const endpoint = { url: 'https://shop.example/events', types: ['estimate.created'] };
  const webhook = await idOf('/v1/webhook-endpoints', endpoint);
  const estimate = await idOf('/v1/estimates', leastRecord);
  const later = await first.send('POST', '/v1/estimates', { body: leastRecord, prefer: 'respond-async' });
  const operation = String(JSON.parse(later.text).id);
  const key = await idOf('/v1/keys', { name: 'Invented chandlery', roles: ['chandler'] });
  const limits = { perMinute: 60, perMinutePerVisitor: 10, perDay: 10 };
  const page = { name: 'Invented shop', origins: ['https://shop.example'], ...limits };
  const publishable = await idOf('/v1/publishable-keys', page);
  await first.json('POST', '/v1/editions', { code: 'theirs-draft' });
  await first.json('PUT', `/v1/estimates/${estimate}/shares/${key}`);
  await first.send('PUT', `/v1/estimates/${estimate}/photographs/1?caption=stain`, {
    body: greyJpeg,
    type: 'image/jpeg',
  });
  const events = await first.json('GET', '/v1/events');
  const organisations = await first.json('GET', '/v1/organisations');
  const firstIn = ({ items }: Readonly<Record<string, unknown>>): string =>
    (items as readonly { readonly id: string }[])[0].id;
  return {
    '/v1/estimates': estimate,
    '/v1/operations': operation,
    '/v1/keys': key,
    '/v1/publishable-keys': publishable,
    '/v1/webhook-endpoints': webhook,
    '/v1/organisations': firstIn(organisations),
    'keyId': key,
    'eventId': firstIn(events),
  };
}

interface Contract {
  readonly paths: Readonly<Record<string, object>>;
}

const NOBODY = '01900000-0000-7000-8000-00000000dead';
const parts: Readonly<Record<string, string>> = { number: '1', name: 'defect-map', kind: 'pdf' };

/** Every operation with an id or the code of an edition in its address, asked rightly but for whose it is. */
export function pairsOf({ paths }: Contract, things: Readonly<Record<string, string>>): readonly Pair[] {
  return Object.entries(paths).flatMap(([path, methods]) =>
    Object.keys(methods)
      .filter((method) => /^(?:get|post|put|patch|delete)$/.test(method))
      .flatMap((method) => pairAt(`${method.toUpperCase()} ${path}`, things)),
  );
}

function pairAt(operation: string, things: Readonly<Record<string, string>>): readonly Pair[] {
  const path = operation.split(' ')[1];
  const query = /^PUT .*photographs/.test(operation) ? '?caption=stain' : '';
  const [start] = /^\/v1\/[a-z-]+/.exec(path) ?? [''];
  if (start === '/v1/editions' && path.includes('{code}'))
    return [
      {
        operation,
        foreign:
          path.replace('{code}', 'theirs-draft') + (path.endsWith('comparison') ? '?with=theirs-draft' : ''),
        unknown:
          path.replace('{code}', 'nobody-draft') + (path.endsWith('comparison') ? '?with=nobody-draft' : ''),
      },
    ];
  if (!/\{(?:id)\}/.test(path)) return shelfPair(operation, path);
  const filled = (id: (name: string) => string): string =>
    path.replace(/\{(\w+)\}/g, (_, name: string) =>
      name === 'code' ? 'labour-cut-skin' : (parts[name] ?? id(name === 'id' ? start : name)),
    ) + query;
  const compared = path.endsWith('comparison');
  const withId = (id: string): string => (compared ? `${query === '' ? '?' : '&'}with=${id}` : '');
  return [
    {
      operation,
      foreign: filled((name) => things[name] ?? NOBODY) + withId(things[start] ?? NOBODY),
      unknown: filled(() => NOBODY) + withId(NOBODY),
    },
  ];
}

/** Shelves of the catalogue stand in an edition, which is named by a query. */
function shelfPair(operation: string, path: string): readonly Pair[] {
  const isShelf = /^\/v1\/(?:imports\/)?(?:materials|price-lists|labour-rates|sources)/.test(path);
  if (!isShelf || /stock/.test(path)) return [];
  const filled = path.replace(/\{\w+\}/g, 'anything');
  const at = (edition: string): string => `${filled}?edition=${edition}`;
  return /history/.test(path)
    ? []
    : [{ operation, foreign: at('theirs-draft'), unknown: at('nobody-draft') }];
}
