import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, SwaggerModule, type OpenAPIObject } from '@nestjs/swagger';
import { Defect } from '#lib/kernel';
import { permissionNames, rolesThatMay } from './access/roles.js';
import { headersOf, headerText, LONGEST_FIELD } from './edge/endpoint.js';
import { eventTypes, type EventType } from './events/service-event.js';
import { idempotencyHeader } from './idempotency/idempotency-header.js';
import { problemKinds, type ProblemKind } from './edge/problems.js';
import { decimalsByUnit, LEAST_DIGITS, OTHER_DIGITS } from './edge/precision.js';
import { UNITS_HEADER } from './edge/units.js';
import { schemasWithUsDisplay } from './edge/us-display.js';
import { isRecord } from './edge/dto/field.js';
import { problemSchemas } from './schemas/problem-schemas.js';
import { generatedSchemas } from './schemas/generated/schemas.js';
import { requestWords } from './schemas/request-words.js';
import { addExamples } from './openapi-examples.js';
import { describeLike } from './openapi-likeness.js';
import { nameParts } from './openapi-naming.js';
import { addPathParts } from './openapi-paths.js';
import { shareEqualParts } from './openapi-sharing.js';

type Node = Record<string, unknown>;

/** The OpenAPI 3.1 document of the service, the same bytes each time for the same code. */
export function openApiDocument(app: INestApplication): OpenAPIObject {
  const document = SwaggerModule.createDocument(app, builder().build());
  addSchemas(document);
  forEachOperation(document, addIdempotencyKey);
  forEachOperation(document, addCommonAnswers);
  forEachOperation(document, addPathParts);
  addWebhooks(document);
  addExamples(document);
  inModernForm(document);
  nameParts(document);
  Object.assign(document.info, { license });
  Object.assign(document, { 'x-permissions': rolesByPermission() });
  shareEqualParts(document, operationsOf(document));
  return document;
}

/** Which roles can have the permission that an operation names under `x-permission`. */
const rolesByPermission = (): Node =>
  Object.fromEntries(permissionNames.map((permission) => [permission, [...rolesThatMay(permission)]]));

/** The question of a licence is the owner's; until it is answered the document says so. */
const license = { name: 'No licence is granted yet', identifier: 'LicenseRef-none-granted' };

const builder = (): DocumentBuilder =>
  new DocumentBuilder()
    .setOpenAPIVersion('3.1.0')
    .setTitle('Kingplank')
    .setDescription(
      [
        'Plans, prices and defends the repair of soft cored fibreglass decks.',
        'Every number with a dimension carries its unit in its name; where a person types a length, area, mass, temperature or',
        'areal mass, text with a unit is read exactly. Points are [xMm, yMm], x forward, y to starboard, in the deck plane.',
        '`Accept-Units: us` adds a member `us` to objects with dimensions: texts in US customary units under the names of the fields, for display.',
        `A number that was worked out has the precision of its unit: ${decimalsInWords()}; any other has ${OTHER_DIGITS} significant digits, and none has fewer than ${LEAST_DIGITS}.`,
        'Amounts of money are exact decimal text; numbers that were entered come back as they were given.',
        'Refusals are RFC 9457 problem documents that name all faults at once.',
        'The figures help to plan and price; local rules and licensed or qualified people decide.',
      ].join('\n'),
    )
    .setVersion('1.0.0')
    .addServer(
      '/',
      'The service that this document was fetched from, be it in production, for tests or local.',
      undefined,
      {
        'x-internal': false,
      },
    )
    .addSecurity('key', {
      type: 'http',
      scheme: 'bearer',
      description:
        'A key of an organisation, or one made for a page. It is opaque: nothing can be read from it.',
    })
    .addTag('Estimates', 'The main job: a defect record in, a stored, explainable estimate out.')
    .addTag('Operations', 'Work that is answered later.')
    .addTag('Estimating', 'The rooms one by one; nothing is stored.')
    .addTag('Catalogue', 'Materials, prices, labour rates and sources in editions.')
    .addTag('Events', 'What happened: a feed to read, and endpoints that are told.')
    .addTag('Access', 'Organisations, keys, and who did what.')
    .addTag('Pages', 'Keys and secrets that may stand in a page of a shop.')
    .addTag('Service', 'Health of the service.');

/** "2 decimals in mm, g, ...; 4 decimals in m, ...". */
function decimalsInWords(): string {
  const units = Object.entries(decimalsByUnit);
  return [...new Set(units.map(([, decimals]) => decimals))]
    .map((decimals) => {
      const named = units.filter(([, own]) => own === decimals).map(([unit]) => unit);
      return `${decimals} decimals in ${named.join(', ')}`;
    })
    .join(', ');
}

function addSchemas(document: OpenAPIObject): void {
  const requests = requestSchemas(document.components?.schemas ?? {});
  const schemas = {
    ...requests,
    ...problemSchemas,
    ...schemasWithUsDisplay(generatedSchemas, answersInUnits(document)),
  };
  const names = [requests, problemSchemas, generatedSchemas].flatMap((part) => Object.keys(part));
  const taken = names.filter((name, index) => names.indexOf(name) !== index);
  if (taken.length > 0) throw new Defect(`Two meanings share a schema name: ${taken.join(', ')}`);
  describeLike(schemas, 'DefectRecord', 'DefectRecordInput');
  const sorted = Object.fromEntries(Object.entries(schemas).sort(([a], [b]) => (a < b ? -1 : 1)));
  document.components = Object.assign({}, document.components, { schemas: sorted });
}

/** What the operations answer whose callers may ask for other units. */
function answersInUnits(document: OpenAPIObject): readonly unknown[] {
  const answers: unknown[] = [];
  forEachOperation(document, (operation) => {
    const parameters = Array.isArray(operation.parameters) ? operation.parameters.filter(isRecord) : [];
    if (parameters.some(({ name }) => name === UNITS_HEADER)) answers.push(operation.responses);
  });
  return answers;
}

/**
 * DTO classes describe requests, where text with a unit may stand for a number; answers of the same name hold numbers only.
 * So a request's shapes end in `Input` (or `Request`). Fields beyond theirs are refused, which is said here.
 */
const requestSchemas = (schemas: object): Readonly<Record<string, object>> =>
  Object.fromEntries(
    Object.entries(schemas).map(([name, schema]) => [
      plainName(name),
      { ...schema, ...wordsOf(plainName(name)), additionalProperties: false },
    ]),
  );

const wordsOf = (name: string): { readonly description?: string } =>
  Object.hasOwn(requestWords, name) ? { description: requestWords[name] } : {};

const plainName = (name: string): string => name.replace(/RequestDto$/, 'Request').replace(/Dto$/, 'Input');

/** What is posted to endpoints, by its type: the same shapes as in the feed. */
function addWebhooks(document: OpenAPIObject): void {
  const webhooks = eventTypes.map((type) => [type, { post: webhookOf(type) }] as const);
  Object.assign(document, { webhooks: Object.fromEntries(webhooks) });
}

const webhookOf = (type: EventType): Node => {
  const name = type.replace(/(?:^|\.)(.)/g, (_, first: string) => first.toUpperCase());
  return {
    operationId: `on${name}`,
    tags: ['Events'],
    summary: `Posted to endpoints that asked for ${type}`,
    description:
      'Signed as Standard Webhooks says: verify before you believe it, and answer 2xx within 15 s. The same `webhook-id` may come more than once.',
    security: [],
    parameters: Object.entries(webhookHeaders).map(([header, description]) => ({
      in: 'header',
      name: header,
      required: true,
      description,
      schema: headerText(LONGEST_FIELD),
    })),
    requestBody: {
      required: true,
      content: { 'application/json': { schema: { $ref: `#/components/schemas/${name}` } } },
    },
    responses: {
      '2XX': {
        description: 'Received. Anything else is tried again, ten times within three days; 410 ends it.',
      },
    },
  };
};

const webhookHeaders = {
  'webhook-id': 'Id of the event, the same at each attempt.',
  'webhook-timestamp': 'When this attempt was signed, in Unix seconds.',
  'webhook-signature':
    '`v1,` and base64 of HMAC-SHA256 over `id.timestamp.body`; several with spaces between while a secret is replaced.',
} as const;

const methods = new Set(['get', 'post', 'put', 'patch', 'delete']);

type Change = (operation: Node, path: string, method: string) => void;

function forEachOperation(document: OpenAPIObject, change: Change): void {
  for (const [path, item] of Object.entries(document.paths)) {
    for (const [method, operation] of Object.entries(item)) {
      if (methods.has(method)) change(operation, path, method);
    }
  }
}

function operationsOf(document: OpenAPIObject): readonly Node[] {
  const operations: Node[] = [];
  forEachOperation(document, (operation) => operations.push(operation));
  return operations;
}

/** Every change takes an Idempotency-Key; calculations store nothing, so that asking twice is harmless without one. */
function addIdempotencyKey(operation: Node, _: string, method: string): void {
  const parameters = Array.isArray(operation.parameters) ? operation.parameters.filter(isRecord) : [];
  const isChange = method !== 'get' && operation['x-stores-nothing'] !== true;
  if (!isChange || parameters.some(({ name }) => name === idempotencyHeader.name)) return;
  operation.parameters = [...parameters, { in: 'header', ...idempotencyHeader }];
  const responses = recordAt(operation, 'responses');
  for (const status of ['409', '422'])
    responses[status] ??= problemAnswer(status === '409' ? 'conflict' : 'unprocessable');
  for (const [status, response] of Object.entries(responses))
    if (/^2/.test(status) && isRecord(response))
      Object.assign(response, {
        headers: { ...recordAt(response, 'headers'), ...headersOf(['Idempotency-Replayed']) },
      });
  operation.responses = responses;
}

/** What has nothing to do with the operation is said once for all of them. */
const atTheEdge = [
  'not-acceptable',
  'request-timeout',
  'content-too-large',
  'unsupported-media-type',
  'headers-too-large',
  'unavailable',
] as const satisfies readonly ProblemKind[];

export const OTHERWISE = `Refused before the operation was looked at: ${atTheEdge
  .map((kind) => `${problemKinds[kind].status} (${problemKinds[kind].title.toLowerCase()})`)
  .join(', ')}.`;

/** Answers that the edge of the service can give to any request of a kind; routes only state their own. */
function addCommonAnswers(operation: Node, path: string): void {
  const responses = recordAt(operation, 'responses');
  const isGuarded = operation.security !== undefined;
  // Said in so many words, so that nobody takes it for forgotten.
  if (!isGuarded) operation.security = [];
  const kinds: ProblemKind[] = ['too-many-requests', 'internal', 'bad-request'];
  if (isGuarded) kinds.push('unauthenticated', 'forbidden');
  if (path.includes('{')) kinds.push('not-found');
  if (operation.requestBody !== undefined) kinds.push('unprocessable');
  responses.default = { description: OTHERWISE };
  for (const kind of kinds) responses[String(problemKinds[kind].status)] ??= problemAnswer(kind);
  for (const [status, response] of Object.entries(responses)) completeAnswer(status, response);
  operation.responses = Object.fromEntries(Object.entries(responses).sort(([a], [b]) => (a < b ? -1 : 1)));
}

export const problemAnswer = (kind: ProblemKind): Node => ({ description: `${problemKinds[kind].title}.` });

/** Refusals carry a problem document and every answer its request id, whatever the route said about itself. */
function completeAnswer(status: string, response: unknown): void {
  if (!isRecord(response)) return;
  const isRefusal = status >= '400';
  const retryAfter =
    status === '429' || status === '503' || status === 'default'
      ? { 'Retry-After': header('Seconds to wait before trying again.', 'integer') }
      : {};
  const allow = status === '405' ? { Allow: header('Methods that fit.', 'string') } : {};
  Object.assign(response, {
    headers: {
      ...everyAnswer,
      ...retryAfter,
      ...allow,
      ...(isRecord(response.headers) ? response.headers : {}),
    },
    ...(isRefusal
      ? {
          content: {
            'application/problem+json': { schema: { $ref: '#/components/schemas/ProblemDocument' } },
          },
        }
      : {}),
  });
}

const header = (description: string, type: string): Node => ({
  description,
  schema:
    type === 'integer' ? { type, format: 'int32', minimum: 0, maximum: 86_400 } : headerText(LONGEST_FIELD),
});

const sharedHeaders = {
  'X-Request-Id': 'Identifies the request in logs; sent back as given when the caller sets it.',
  'Traceparent': 'W3C Trace Context: the span in which the request was answered.',
  'RateLimit':
    'What is left of the limits of key and organisation, and in how many seconds they are whole again (IETF draft).',
  'RateLimit-Policy': 'The limits themselves (IETF draft).',
  'Access-Control-Allow-Origin': 'The origin of the page that asked, where it is allowed to.',
} as const;

/** Fields that any answer may carry. */
const everyAnswer: Node = Object.fromEntries(
  Object.keys(sharedHeaders).map((name) => [name, { $ref: `#/components/headers/${name}` }]),
);

function recordAt(parent: Node, key: string): Node {
  const found = parent[key];
  if (isRecord(found)) return { ...found };
  return {};
}

/** Rewrites what the builder writes in the 3.0 dialect: exclusive limits are numbers in 3.1, nullable is a type. */
function inModernForm(document: OpenAPIObject): void {
  document.components = {
    ...document.components,
    headers: Object.fromEntries(
      Object.entries(sharedHeaders).map(([name, words]) => [name, header(words, 'string')]),
    ),
  };
  modernise(document);
}

function modernise(node: unknown): void {
  if (Array.isArray(node)) node.forEach(modernise);
  if (!isRecord(node)) return;
  const change: Node = Object.assign(node);
  if (typeof change.$ref === 'string') change.$ref = plainName(change.$ref);
  if (isRecord(change.discriminator)) change.discriminator = withPlainNames(change.discriminator);
  moveLimit(change, 'exclusiveMinimum', 'minimum');
  moveLimit(change, 'exclusiveMaximum', 'maximum');
  Object.values(change).forEach(modernise);
}

/** The words of a discriminator lead to schemas by the same names as references do. */
const withPlainNames = ({ mapping, ...rest }: Node): Node => ({
  ...rest,
  ...(isRecord(mapping)
    ? {
        mapping: Object.fromEntries(
          Object.entries(mapping).map(([word, name]) => [word, plainName(String(name))]),
        ),
      }
    : {}),
});

function moveLimit(schema: Node, flag: string, limit: string): void {
  if (schema[flag] !== true || typeof schema[limit] !== 'number') return;
  schema[flag] = schema[limit];
  Reflect.deleteProperty(schema, limit);
}
