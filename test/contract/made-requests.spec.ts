import 'reflect-metadata';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { OpenAPIObject } from '@nestjs/swagger';
import { describe, expect, jest, test } from '@jest/globals';
import { TEST_KEY } from '../e2e/database-of-test.js';
import { servicesOfTest } from '../fault/services-of-test.js';
import { contradictions } from './conformance.js';
import { madeRequests } from './made-requests.js';
import { seedsFrom } from './seeds.js';

jest.setTimeout(300_000);

const document = JSON.parse(
  readFileSync(path.join(import.meta.dirname, 'openapi.json'), 'utf8'),
) as OpenAPIObject;

describe('requests made from the contract', () => {
  const { started } = servicesOfTest();

  /** Every operation once and some again; the bench makes as many as there is time for. */
  test('none is answered with a 5xx, an undeclared status or another shape', async () => {
    const { url } = await started();
    const made = await madeRequests({
      url,
      key: TEST_KEY,
      document,
      ...(await seedsFrom(url, TEST_KEY)),
      count: 260,
      seed: 7,
      untilMs: Date.now() + 200_000,
    });
    expect(made.faults).toEqual([]);
    expect(made.operations).toBeGreaterThan(80);
    // Requests that nothing accepts would prove little.
    expect(made.successful).toBeGreaterThan(25);
  });

  test('an answer that breaks the contract would be seen', () => {
    const exchange = { method: 'GET', path: '/v1/editions', contentType: 'application/json', body: {} };
    expect(contradictions(document, { ...exchange, status: 200 })).not.toEqual([]);
    expect(contradictions(document, { ...exchange, status: 418 })).not.toEqual([]);
  });
});
