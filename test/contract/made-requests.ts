import type { OpenAPIObject } from '@nestjs/swagger';
import { randomStream, type RandomStream } from '#lib/kernel';
import { contradictions, resolved } from './conformance.js';
import { isObject, mutated, oneOf, valueFrom, type Json } from './from-schema.js';

/**
 * Requests made from the contract: every operation of the document, with bodies that are valid or nearly so. Bodies with a
 * seed (a valid request of that address) are the seed with up to three changes; others are made from their schema.
 */
export interface Making {
  readonly url: string;
  readonly key: string;
  readonly document: OpenAPIObject;
  /** Valid bodies by address. */
  readonly seeds: Readonly<Record<string, readonly unknown[]>>;
  /** Code of an edition that may be written to. */
  readonly draft: string;
  readonly count: number;
  readonly seed: number;
  /** It ends by then, however many were made. */
  readonly untilMs: number;
}

export interface Made {
  readonly requests: number;
  readonly byStatus: Readonly<Record<string, number>>;
  /** Operations that were asked, and of these the ones that were once answered with success. */
  readonly operations: number;
  readonly successful: number;
  /** Statuses from 500 on but 503, undeclared statuses and answers of another shape, each with its request. */
  readonly faults: readonly string[];
}

interface Operation {
  readonly name: string;
  readonly method: string;
  readonly template: string;
  readonly parameters: readonly Json[];
  readonly bodies: readonly (readonly [mediaType: string, schema: unknown])[];
}

interface Maker extends Making {
  readonly random: RandomStream;
  /** Ids and codes that answers have named, by the address they belong to. */
  readonly known: Map<string, string[]>;
}

/** What would shut the bench out, or make the service send something to somebody. */
const LEFT_OUT = [/^(DELETE|POST) \/v1\/keys\/\{id\}/, /^POST \/v1\/webhook-endpoints/];

export async function madeRequests(making: Making): Promise<Made> {
  const maker = { ...making, random: randomStream(making.seed), known: new Map<string, string[]>() };
  const operations = operationsOf(making.document).filter(
    ({ name }) => !LEFT_OUT.some((one) => one.test(name)),
  );
  const byStatus: Record<string, number> = {};
  const [asked, successful] = [new Set<string>(), new Set<string>()];
  const faults: string[] = [];
  let requests = 0;
  for (; requests < making.count && Date.now() < making.untilMs; requests += 1) {
    // Each operation once in turn, then as they come.
    const operation = operations[requests] ?? oneOf(operations, maker.random);
    const found = await tried(operation, maker).catch((failure: unknown) => unanswered(operation, failure));
    asked.add(operation.name);
    byStatus[found.status] = (byStatus[found.status] ?? 0) + 1;
    if (found.status >= 200 && found.status < 400) successful.add(operation.name);
    faults.push(...found.faults);
  }
  return { requests, byStatus, operations: asked.size, successful: successful.size, faults };
}

const methods = ['get', 'post', 'put', 'patch', 'delete'] as const;

const operationsOf = (document: OpenAPIObject): readonly Operation[] =>
  Object.entries(document.paths).flatMap(([template, item]) =>
    methods.flatMap((method) => {
      const operation: unknown = item[method];
      if (!isObject(operation)) return [];
      const all = Array.isArray(operation.parameters) ? (operation.parameters as readonly Json[]) : [];
      const body = isObject(operation.requestBody) ? resolved(document, operation.requestBody) : undefined;
      const content = isObject(body?.content) ? body.content : {};
      return [
        {
          name: `${method.toUpperCase()} ${template}`,
          method: method.toUpperCase(),
          template,
          parameters: all.map((one): Json => resolved(document, one) ?? {}),
          bodies: Object.entries(content).map(
            ([type, media]) => [type, isObject(media) ? media.schema : undefined] as const,
          ),
        },
      ];
    }),
  );

interface Tried {
  readonly status: number;
  readonly faults: readonly string[];
}

/** Nobody waits longer for an answer, and a connection that breaks is none. */
const LONGEST_MS = 60_000;

const unanswered = ({ name }: Operation, failure: unknown): Tried => ({
  status: 0,
  faults: [`${name} was not answered: ${String(failure)}`],
});

async function tried(operation: Operation, maker: Maker): Promise<Tried> {
  const path = pathOf(operation, maker);
  const { mediaType, body } = bodyOf(operation, maker);
  const response = await fetch(maker.url + path + queryOf(operation, maker), {
    method: operation.method,
    redirect: 'manual',
    signal: AbortSignal.timeout(LONGEST_MS),
    headers: {
      authorization: `Bearer ${maker.key}`,
      ...(mediaType === undefined ? {} : { 'content-type': mediaType }),
      ...(await headersOf(operation, maker, path)),
    },
    ...(body === undefined ? {} : { body }),
  });
  const text = await response.text();
  const contentType = response.headers.get('content-type') ?? '';
  const answer: unknown = /json/.test(contentType) ? JSON.parse(text) : text;
  learn(operation, maker, answer);
  const { status } = response;
  const exchange = { method: operation.method, path, status, contentType, body: answer };
  const isBroken = status >= 500 && status !== 503;
  const told = `${operation.name} as ${path} with ${(body ?? '').slice(0, 300)}`;
  return {
    status,
    faults: [
      ...(isBroken ? [`${told}: ${status}`] : []),
      ...contradictions(maker.document, exchange).map((one) => `${told}: ${one}`),
    ],
  };
}

const oddNames = ['nope', '%00', '..%2f..', '0', 'x'.repeat(300), '%F0%9F%9A%A4', "'--"];

const pathOf = ({ template }: Operation, { random, known }: Maker): string =>
  template.replace(/\{(\w+)\}/g, (_, name: string, at: number) => {
    const names = known.get(template.slice(0, at - 1)) ?? known.get(name) ?? [];
    return names.length > 0 && random() < 0.9
      ? encodeURIComponent(oneOf(names, random))
      : oneOf(oddNames, random);
  });

function queryOf({ parameters }: Operation, { document, random, draft }: Maker): string {
  const query = new URLSearchParams();
  for (const parameter of parameters) {
    if (parameter.in !== 'query' || random() > (parameter.required === true ? 0.97 : 0.25)) continue;
    const name = String(parameter.name);
    const value =
      name === 'edition' && random() < 0.9 ? draft : valueFrom(document, parameter.schema, random);
    query.set(name, String(random() < 0.1 ? mutated(value, random) : value));
  }
  return query.size === 0 ? '' : `?${query.toString()}`;
}

/** The tag is that of the present state, but for one in ten. */
async function headersOf(
  { parameters }: Operation,
  { url, key, random, document }: Maker,
  path: string,
): Promise<Readonly<Record<string, string>>> {
  const headers: Record<string, string> = {};
  for (const parameter of parameters) {
    const name = String(parameter.name);
    if (parameter.in !== 'header' || (parameter.required !== true && random() > 0.15)) continue;
    if (name !== 'If-Match') headers[name] = printable(String(valueFrom(document, parameter.schema, random)));
    else if (random() < 0.1) headers[name] = '"0"';
    else {
      const now = await fetch(url + path, { headers: { authorization: `Bearer ${key}` } });
      await now.arrayBuffer();
      headers[name] = now.headers.get('etag') ?? '"0"';
    }
  }
  return headers;
}

const printable = (text: string): string => text.replace(/[^\x20-\x7e]/g, '?');

function bodyOf(
  { template, bodies }: Operation,
  { document, random, seeds }: Maker,
): { readonly mediaType?: string; readonly body?: string } {
  if (bodies.length === 0) return {};
  const [mediaType, schema] = oneOf(bodies, random);
  const own = seeds[template] ?? [];
  const start = own.length > 0 && random() < 0.9 ? oneOf(own, random) : valueFrom(document, schema, random);
  if (!/json/.test(mediaType))
    return { mediaType, body: String(typeof start === 'string' ? start : 'a,b\n1,2\n') };
  let value = start;
  for (let changes = Math.floor(4 * random()); changes > 0; changes -= 1) value = mutated(value, random);
  return { mediaType, body: JSON.stringify(value) };
}

/** Ids and codes in an answer are names that later requests can use. */
function learn({ template }: Operation, { known }: Maker, answer: unknown): void {
  if (!isObject(answer)) return;
  const items: readonly unknown[] = Array.isArray(answer.items) ? answer.items : [answer];
  for (const item of items) {
    if (!isObject(item)) continue;
    const name = item.id ?? item.code ?? item.sku ?? item.number;
    if (typeof name !== 'string' && typeof name !== 'number') continue;
    const names = known.get(template) ?? [];
    if (!names.includes(String(name))) known.set(template, [...names.slice(-40), String(name)]);
  }
}
