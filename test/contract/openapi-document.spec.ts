import 'reflect-metadata';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from '@jest/globals';
import type { OpenAPIObject } from '@nestjs/swagger';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { Log } from '../../apps/api/src/edge/log.js';
import { openApiDocument } from '../../apps/api/src/openapi-document.js';
import { assemble } from '../../apps/api/src/service.js';
import { contradictions, resolved } from './conformance.js';

const written = readFileSync(path.join(import.meta.dirname, 'openapi.json'), 'utf8');

type Operation = {
  operationId?: string;
  summary?: string;
  tags?: string[];
  security?: unknown;
  responses: Record<string, { description?: string; content?: Record<string, unknown> }>;
  parameters?: { name: string; in: string; required?: boolean }[];
  requestBody?: unknown;
};

/** Asked of nobody. */
const isOpen = (security: unknown): boolean => Array.isArray(security) && security.length === 0;

describe('the OpenAPI document', () => {
  let document: OpenAPIObject;
  let operations: readonly (readonly [string, Operation])[];
  beforeAll(async () => {
    // Neither a database nor a port is touched.
    const app = await assemble(
      readConfiguration({ DATABASE_URL: 'postgresql://nobody@127.0.0.1:1/nothing' }),
      new Log('silent'),
    );
    document = openApiDocument(app);
    operations = Object.entries(document.paths).flatMap(([at, item]) =>
      Object.entries(item).map(([method, operation]) => [`${method} ${at}`, operation as Operation] as const),
    );
  });

  test('what is committed is what the code says (npm run contract writes it anew)', () => {
    expect(`${JSON.stringify(document, undefined, 2)}\n`).toBe(written);
  });

  test('every operation has a name of its own, a summary, a tag and a documented success', () => {
    const names = operations.map(([, { operationId }]) => operationId);
    expect(new Set(names).size).toBe(names.length);
    for (const [name, operation] of operations) {
      expect([
        name,
        operation.operationId === undefined ||
          operation.summary === undefined ||
          operation.tags?.length !== 1,
      ]).toEqual([name, false]);
      expect([name, Object.keys(operation.responses).some((status) => status.startsWith('2'))]).toEqual([
        name,
        true,
      ]);
    }
  });

  test('every operation states its refusals as problem documents, and guarded ones 401 and 403', () => {
    for (const [name, { responses, security, requestBody }] of operations) {
      const refusals = Object.entries(responses).filter(([status]) => status >= '400');
      for (const [status, refusal] of refusals)
        expect([name, status, Object.keys(resolved(document, refusal)?.content ?? {})]).toEqual([
          name,
          status,
          ['application/problem+json'],
        ]);
      const expected = [
        ...(isOpen(security) ? [] : ['401', '403']),
        ...(requestBody === undefined ? [] : ['400', '422']),
        '429',
        '500',
        'default',
      ];
      expect([name, expected.filter((status) => !(status in responses))]).toEqual([name, []]);
    }
  });

  test('everything but health needs a key', () => {
    expect(operations.filter(([, { security }]) => isOpen(security)).map(([name]) => name)).toEqual([
      'get /health/live',
      'get /health/ready',
    ]);
  });

  test('every reference leads somewhere, and nothing is described that nobody uses', () => {
    const used = new Set([...written.matchAll(/"#\/components\/([^"]+)"/g)].map(([, name]) => name));
    const sections = Object.entries(document.components ?? {}).filter(([name]) => name !== 'securitySchemes');
    const known = sections.flatMap(([section, parts]) =>
      Object.keys(parts).map((name) => `${section}/${name}`),
    );
    expect([...used].filter((name) => !known.includes(name))).toEqual([]);
    expect(known.filter((name) => !used.has(name))).toEqual([]);
  });

  test('a refusal is said once, and so is what several operations ask alike', () => {
    const refusals = operations.flatMap(([, { responses }]) =>
      Object.entries(responses).flatMap(([status, refusal]) => (status >= '400' ? [refusal] : [])),
    );
    expect(refusals.length).toBeGreaterThan(600);
    expect(refusals.filter((refusal) => !('$ref' in refusal))).toEqual([]);
    const said = operations
      .flatMap(([, { parameters }]) => parameters ?? [])
      .filter((one) => !('$ref' in one));
    const times = said.map(
      (one) => said.filter((other) => JSON.stringify(other) === JSON.stringify(one)).length,
    );
    expect(Math.max(...times)).toBeLessThan(10);
  });

  test('a request with a field of its own invention contradicts its schema', () => {
    const schemas = document.components?.schemas ?? {};
    for (const name of ['DefectRecordInput', 'ZoneInput', 'QuantitiesRequest'])
      expect(schemas[name]).toMatchObject({ additionalProperties: false });
  });

  test('limits are numbers, as JSON Schema 2020-12 has them', () => {
    expect(written).not.toMatch(/"exclusiveM(in|ax)imum": (true|false)/);
    expect(written).not.toContain('"nullable"');
    expect(document.openapi).toBe('3.1.0');
  });

  test('an answer that the document does not promise is found out', () => {
    const right = {
      method: 'GET',
      path: '/health/live',
      status: 200,
      contentType: 'application/json; charset=utf-8',
      body: { status: 'alive' },
    };
    expect(contradictions(document, right)).toEqual([]);
    expect(contradictions(document, { ...right, status: 418 })[0]).toContain('418');
    expect(contradictions(document, { ...right, body: { status: 'asleep' } })[0]).toContain(
      'not one of alive',
    );
    expect(contradictions(document, { ...right, body: {} })[0]).toContain('/status is missing');
    expect(contradictions(document, { ...right, body: { status: 'alive', mood: 'good' } })[0]).toContain(
      '/mood is not documented',
    );
    expect(contradictions(document, { ...right, contentType: 'text/plain' })[0]).toContain('text/plain');
  });
});
