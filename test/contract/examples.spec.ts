import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { recordedExamples } from '../../apps/api/src/schemas/generated/examples.js';
import { startService, type TestService } from '../e2e/service.js';
import { recordedJourney, type Recorded } from './examples/journey.js';
import { reduced, shapeOf, Steady, untried } from './examples/reduced.js';

const WRITTEN = path.join(import.meta.dirname, '../../apps/api/src/schemas/generated/examples.ts');

interface Content {
  readonly content?: Readonly<Record<string, { readonly schema: object }>>;
}

interface Operation {
  readonly requestBody?: Content;
  readonly responses: Readonly<Record<string, Content>>;
}

interface Contract {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, unknown>> };
}

const contract = JSON.parse(readFileSync(path.join(import.meta.dirname, 'openapi.json'), 'utf8')) as Contract;

/** A general validator of JSON Schema 2020-12, which knows nothing of how the document was made. */
const validator = new Ajv2020({ strict: false, allErrors: true, validateFormats: false });
validator.addSchema({ $id: 'contract', components: contract.components });

function faultsOf(schema: object, value: unknown): readonly string[] {
  const placed: unknown = JSON.parse(
    JSON.stringify(schema).replaceAll('"#/components/', '"contract#/components/'),
  );
  const check = validator.compile(Object.assign({}, placed));
  return check(value)
    ? []
    : (check.errors ?? []).map((error) => `${error.instancePath} ${error.message ?? ''}`);
}

const recordedFaults = (schema: object, value: unknown): readonly string[] =>
  value === undefined ? [] : faultsOf(schema, value);

/** Of every operation: its JSON bodies and answers, by the names they are recorded under. */
const wanted = Object.entries(contract.paths).flatMap(([at, item]) =>
  Object.entries(item).flatMap(([method, { requestBody, responses }]) => {
    const operation = `${method.toUpperCase()} ${at}`;
    const body = requestBody?.content?.['application/json']?.schema;
    const answers = Object.entries(responses).flatMap(([status, { content }]) => {
      const schema = status.startsWith('2') ? content?.['application/json']?.schema : undefined;
      return schema === undefined ? [] : [{ operation, place: status, schema }];
    });
    return [...(body === undefined ? [] : [{ operation, place: 'body', schema: body }]), ...answers];
  }),
);

const recordedAt = (operation: string, place: string): unknown => {
  const recorded: Partial<Recorded> = recordedExamples[operation] ?? {};
  return place === 'body' ? recorded.body : recorded.answers?.[place];
};

describe('the examples of the contract', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('are of the shape that a real run asks and is answered (UPDATE_GOLDEN=1 records them anew, with its figures)', async () => {
    const steady = new Steady(Date.now());
    const journey = await recordedJourney(service);
    const recording = [...journey.recording].map(([operation, { body, answers }]) => {
      const cut = Object.fromEntries(
        Object.entries(answers).map(([status, answer]) => [status, untried(reduced(answer))]),
      );
      return [operation, steady.value({ ...(body === undefined ? {} : { body }), answers: cut })] as const;
    });
    const examples = Object.fromEntries(recording.sort(([a], [b]) => (a < b ? -1 : 1)));
    if (process.env.UPDATE_GOLDEN === '1') writeFileSync(WRITTEN, textOf(examples));
    else expect(shapeOf(recordedExamples)).toEqual(shapeOf(examples));
    expect(journey.failures).toEqual([]);
  }, 300_000);

  test('stand at every JSON body and every JSON answer of every operation', () => {
    expect(wanted.length).toBeGreaterThan(150);
    expect(
      wanted
        .filter(({ operation, place }) => recordedAt(operation, place) === undefined)
        .map(({ operation, place }) => `${operation} ${place}`),
      // The drawings of so small a deck come at once, whatever was preferred.
    ).toEqual(['GET /v1/estimates/{id}/drawings/{name} 202']);
  });

  test('are of the shape that is documented, by a general validator', () => {
    const found = wanted.flatMap(({ operation, place, schema }) =>
      recordedFaults(schema, recordedAt(operation, place)).map((fault) => `${operation} ${place}: ${fault}`),
    );
    expect(found).toEqual([]);
  });

  test('a shape that is not documented would be seen', () => {
    const [{ schema }] = wanted.filter(
      ({ operation, place }) => operation === 'GET /v1/keys' && place === '200',
    );
    expect(faultsOf(schema, { items: [{ name: 7 }] })).not.toEqual([]);
  });
});

const textOf = (examples: Readonly<Record<string, unknown>>): string =>
  [
    '// Recorded by test/contract/examples.spec.ts from a real run; do not edit.',
    "import type { RecordedExamples } from '../recorded-examples.js';",
    '',
    `export const recordedExamples: RecordedExamples = ${JSON.stringify(examples, undefined, 1)};`,
    '',
  ].join('\n');
