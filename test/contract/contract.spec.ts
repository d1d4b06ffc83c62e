import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { startService, type TestService } from '../e2e/service.js';

type Json = Record<string, unknown>;

const readJson = (...at: readonly string[]): Json =>
  JSON.parse(readFileSync(path.join(import.meta.dirname, ...at), 'utf8')) as Json;
const written = readJson('openapi.json') as {
  paths: Record<string, Record<string, { security?: unknown; requestBody?: unknown }>>;
  components: { schemas: Json };
};
const sample = (name: string): Json => readJson('../../apps/workshop/samples', `${name}.json`);

/** An independent reading of the document's schemas, by a general validator of JSON Schema 2020-12. */
const validator = new Ajv2020({ strict: false, allErrors: true, validateFormats: false });
validator.addSchema({ $id: 'contract', components: { schemas: written.components.schemas } });
const checks = new Map<string, ValidateFunction>();

function faults(schema: string, value: unknown): readonly string[] {
  const check = checks.get(schema) ?? validator.compile({ $ref: `contract#/components/schemas/${schema}` });
  checks.set(schema, check);
  return check(value)
    ? []
    : (check.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`);
}

const operations = Object.entries(written.paths).flatMap(([at, item]) =>
  Object.entries(item).map(([method, operation]) => ({ at, method, operation })),
);

const isGuarded = ({ security }: { readonly security?: unknown }): boolean =>
  Array.isArray(security) && security.length > 0;

/** Values that fit a place in a path, though nothing may be found there. */
const filledIn = (at: string): string =>
  at.replaceAll('{id}', '01900000-0000-7000-8000-000000000000').replace(/\{\w+\}/g, 'nothing-here');

describe('the contract', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  const bare = (
    method: string,
    at: string,
    headers: Readonly<Record<string, string>> = {},
  ): Promise<Response> => fetch(service.url + filledIn(at), { method: method.toUpperCase(), headers });

  test('the document that the service serves is the one that is committed', async () => {
    expect(await (await fetch(`${service.url}/openapi.json`)).json()).toEqual(written);
  });

  test('every guarded operation answers a stranger with 401 and how to identify himself, the others with 200', async () => {
    const answers = await Promise.all(
      operations.map(async ({ at, method, operation }) => {
        const answer = await bare(method, at);
        return {
          name: `${method} ${at}`,
          status: answer.status,
          scheme: answer.headers.get('www-authenticate')?.split(' ')[0],
          body: (await answer.json()) as unknown,
          isGuarded: isGuarded(operation),
        };
      }),
    );
    for (const { name, status, scheme, body, isGuarded } of answers) {
      expect([name, status, scheme]).toEqual(isGuarded ? [name, 401, 'Bearer'] : [name, 200, undefined]);
      if (isGuarded) expect([name, faults('ProblemDocument', body)]).toEqual([name, []]);
    }
    expect(answers.filter(({ isGuarded }) => isGuarded).length).toBeGreaterThan(50);
  });

  test('every documented operation exists: a key holder is never told that the path or the method is unknown', async () => {
    for (const { at, method, operation } of operations.filter((one) => isGuarded(one.operation))) {
      const type: Record<string, string> =
        operation.requestBody === undefined
          ? {}
          : { 'content-type': method === 'patch' ? 'application/merge-patch+json' : 'application/json' };
      const answer = await service.send(
        method.toUpperCase(),
        filledIn(at),
        operation.requestBody === undefined ? undefined : [],
        type,
      );
      const name = `${method} ${at}`;
      expect([name, [405, 500].includes(answer.status)]).toEqual([name, false]);
      expect([name, answer.status >= 400 ? faults('ProblemDocument', answer.body) : []]).toEqual([name, []]);
    }
  });

  test.each(['foredeck', 'side-deck'])(
    'the %s sample is a request, and its estimate an answer, of the documented shapes',
    async (name) => {
      expect(faults('DefectRecordInput', sample(name))).toEqual([]);
      const { status, body } = await service.post('/v1/estimates', sample(name));
      expect(status).toBe(201);
      expect(faults('StoredEstimate', body)).toEqual([]);
      const { estimate } = body as { estimate: { lines: { code: string }[] } };
      const why = await service.get(
        `/v1/estimates/${(body as { id: string }).id}/lines/${estimate.lines[0].code}/why`,
      );
      expect(faults('WhyAnswer', why.body)).toEqual([]);
    },
  );

  test('what the service refuses, its schema refuses too, and the refusal has the documented shape', async () => {
    const wrong = { ...sample('foredeck'), outerSkin: { thicknessMm: -3 }, colour: 'red' };
    expect(faults('DefectRecordInput', wrong).length).toBeGreaterThanOrEqual(2);
    const { status, body } = await service.post('/v1/estimates', wrong);
    expect(status).toBe(422);
    expect(faults('ProblemDocument', body)).toEqual([]);
    expect((body as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer).sort()).toEqual([
      '/colour',
      '/outerSkin/thicknessMm',
    ]);
  });

  test('a missing, a misnamed and a mistyped member of an estimate would be seen', async () => {
    const { body } = await service.post('/v1/estimates', sample('foredeck'));
    const estimate = (body as { estimate: Json }).estimate;
    expect(faults('Estimate', { ...estimate, totals: undefined })).not.toEqual([]);
    expect(
      faults('Estimate', {
        ...estimate,
        checks: [{ ...(estimate.checks as Json[])[0], verdict: 'perhaps' }],
      }),
    ).not.toEqual([]);
    expect(faults('Estimate', { ...estimate, limits: [1] })).not.toEqual([]);
  });
});
