import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { startService, TEST_KEY, type TestService } from '../e2e/service.js';

const hasLibrary = spawnSync('perl', ['-MOpenAPI::Client', '-e', '1']).status === 0;
const described = hasLibrary ? describe : describe.skip;

const scratch = mkdtempSync(path.join(tmpdir(), 'other-language-'));

/**
 * The library wants to look the document over by the schema of OpenAPI 3.1 itself, which it would fetch; CI's linters do
 * that. It gets a schema that only asks for an object.
 */
const META = 'https://spec.openapis.org/oas/3.1/schema/2021-05-20';
writeFileSync(
  path.join(scratch, createHash('md5').update(META).digest('hex')),
  JSON.stringify({ $id: META, type: 'object' }),
);

interface Told {
  readonly operation: string;
  readonly status: number;
  readonly type: string;
  readonly begins: string;
  readonly bytes: number;
  readonly fault: string | null;
}

function perl(...args: readonly string[]): Promise<readonly Told[]> {
  const child = spawn('perl', args, { env: { ...process.env, JSON_VALIDATOR_CACHE_PATH: scratch } });
  const parts: { out: string; err: string } = { out: '', err: '' };
  child.stdout.on('data', (chunk) => (parts.out += String(chunk)));
  child.stderr.on('data', (chunk) => (parts.err += String(chunk)));
  return new Promise((resolve, reject) => {
    child.on('close', (code) => {
      if (code === 0) resolve(JSON.parse(parts.out));
      else reject(new Error(parts.err));
    });
  });
}

described('a client that a general library of another language makes from the contract (Perl)', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('has an estimate made, and fetches it, a drawing and the report', async () => {
    const record = path.join(scratch, 'record.json');
    writeFileSync(record, JSON.stringify(leastRecord));
    const told = await perl(
      path.join(import.meta.dirname, 'other-language.pl'),
      path.join(import.meta.dirname, 'openapi.json'),
      service.url,
      TEST_KEY,
      record,
    );
    const shown = told.map(({ operation, status, type, begins }) => [
      operation,
      status,
      type.split(';')[0],
      begins,
    ]);
    expect(shown).toEqual([
      ['createEstimate', 201, 'application/json', '{"id"'],
      ['getEstimate', 200, 'application/json', '{"id"'],
      ['listDrawings', 200, 'application/json', expect.stringMatching(/^\{"ite/)],
      ['getDrawing', 200, 'image/svg+xml', expect.stringMatching(/^<(?:\?xml|svg )/)],
      ['getEstimate', 200, 'application/pdf', '%PDF-'],
      // The library holds the request to the pattern of the contract, and sends nothing.
      ['getEstimate', 400, 'application/json', '{"err'],
    ]);
    expect(told[0].bytes).toBeGreaterThan(50_000);
  }, 180_000);
});
