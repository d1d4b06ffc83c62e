import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { build } from 'esbuild';
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The client as somebody else gets it: packed, installed into a clean folder, and used from there. */
const root = process.cwd();
const folder = mkdtempSync(join(tmpdir(), 'kingplank-consumer-'));
let service: Server;
let url = '';

const stored = {
  id: 'e1',
  createdAt: '2026-01-01T00:00:00Z',
  revision: {},
  inputHash: 'h',
  estimate: { summary: { total: { amount: '12.50', currency: 'EUR' } } },
};

beforeAll(async () => {
  execFileSync(process.execPath, [join(root, 'apps/workshop/pack-sdk.mjs'), '--pack', folder], { cwd: root });
  const tarball = readdirSync(folder).find((name) => name.endsWith('.tgz'));
  writeFileSync(
    join(folder, 'package.json'),
    JSON.stringify({ name: 'consumer', private: true, type: 'module' }),
  );
  execFileSync(
    'npm',
    ['install', '--offline', '--no-audit', '--no-fund', '--loglevel=error', `./${tarball}`],
    { cwd: folder },
  );
  service = createServer((request, response) => {
    response.setHeader('content-type', 'application/json');
    if (request.url?.includes('cursor=b') === true)
      return response.end(JSON.stringify({ items: [{ id: 'third' }] }));
    if (request.method === 'GET')
      return response.end(JSON.stringify({ items: [{ id: 'first' }, { id: 'second' }], nextCursor: 'b' }));
    return response.end(JSON.stringify({ ...stored, key: request.headers['idempotency-key'] }));
  });
  await new Promise<void>((resolve) => {
    service.listen(0, '127.0.0.1', resolve);
  });
  const address = service.address();
  url = `http://127.0.0.1:${typeof address === 'object' && address !== null ? address.port : 0}`;
}, 120_000);

afterAll(async () => {
  await new Promise((resolve) => {
    service.close(resolve);
  });
  rmSync(folder, { recursive: true, force: true });
});

const program = (importLine: string): string => `${importLine}
const client = new Kingplank({ baseUrl: process.argv[2], apiKey: 'k' });
const run = async () => {
  const { estimate } = await client.estimates.create({});
  const ids = [];
  for await (const { id } of client.estimates.list()) ids.push(id);
  console.log(JSON.stringify({ total: estimate.summary.total.amount, ids }));
};
run();
`;

async function outputOf(file: string): Promise<unknown> {
  const { promisify } = await import('node:util');
  const { execFile } = await import('node:child_process');
  const { stdout } = await promisify(execFile)(process.execPath, [join(folder, file), url], { cwd: folder });
  return JSON.parse(stdout);
}

const expected = { total: '12.50', ids: ['first', 'second', 'third'] };

describe('the packed client', () => {
  test('holds no more than its build, its read-me and its manifest', () => {
    const files = readdirSync(join(folder, 'node_modules/kingplank-sdk')).sort();
    expect(files).toEqual(['CHANGELOG.md', 'README.md', 'dist', 'package.json']);
    expect(
      JSON.parse(readFileSync(join(folder, 'node_modules/kingplank-sdk/package.json'), 'utf8'))
        .dependencies ?? {},
    ).toEqual({});
  });

  test('works as an ES module', async () => {
    writeFileSync(join(folder, 'es.mjs'), program(`import { Kingplank } from 'kingplank-sdk';`));
    expect(await outputOf('es.mjs')).toEqual(expected);
  });

  test('works from CommonJS', async () => {
    writeFileSync(join(folder, 'common.cjs'), program(`const { Kingplank } = require('kingplank-sdk');`));
    expect(await outputOf('common.cjs')).toEqual(expected);
  });

  test('bundles for a browser without anything of Node', async () => {
    writeFileSync(
      join(folder, 'page.js'),
      `import { Kingplank } from 'kingplank-sdk';\nglobalThis.client = new Kingplank({ baseUrl: 'http://127.0.0.1', apiKey: 'kp_pub_x' });\n`,
    );
    const { outputFiles, warnings } = await build({
      entryPoints: [join(folder, 'page.js')],
      bundle: true,
      write: false,
      platform: 'browser',
      format: 'iife',
      absWorkingDir: folder,
    });
    expect(warnings).toEqual([]);
    expect(outputFiles[0].text).not.toMatch(/require\(|node:/);
  });

  /** What the compiler says under settings stricter than most consumers'. */
  const compile = (file: string, module: string): string => {
    const config = join(folder, `tsconfig.${file}.json`);
    writeFileSync(
      config,
      JSON.stringify({
        compilerOptions: {
          noEmit: true,
          strict: true,
          exactOptionalPropertyTypes: true,
          noUncheckedIndexedAccess: true,
          skipLibCheck: false,
          target: 'es2022',
          module,
          moduleResolution: module === 'esnext' ? 'bundler' : module,
          lib: ['es2023', 'dom', 'dom.iterable'],
          types: [],
        },
        files: [file],
      }),
    );
    return spawnSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', config], {
      cwd: folder,
      encoding: 'utf8',
    }).stdout;
  };

  test.each([
    ['es module', 'honest.mts', 'nodenext'],
    ['CommonJS', 'honest.cts', 'nodenext'],
    ['bundler', 'honest.ts', 'esnext'],
  ])('compiles under the strictest settings as %s, and its types are real', (_, file, module) => {
    writeFileSync(
      join(folder, file),
      `import { Kingplank, type StoredEstimate } from 'kingplank-sdk';
export async function total(client: Kingplank): Promise<string> {
  const stored: StoredEstimate = await client.estimates.create({ panel: { outline: [[0, 0], [1, 0], [1, 1]] }, outerSkin: { thicknessMm: '1/8 in' }, innerSkin: { thicknessMm: 2 }, core: { thicknessMm: 12.7 } });
  return stored.estimate.totals.total.amount;
}
`,
    );
    expect(compile(file, module)).toBe('');
  });

  test('refuses what the contract does not know', () => {
    writeFileSync(
      join(folder, 'wrong.mts'),
      `import { Kingplank } from 'kingplank-sdk';
export const wrong = (client: Kingplank) => client.estimates.create({ panel: { outline: 'square' } });
export const absent = async (client: Kingplank) => (await client.estimates.get('x')).estimate.nothingLikeThis;
`,
    );
    const errors = compile('wrong.mts', 'nodenext');
    expect(errors).toMatch(/wrong\.mts\(2,/);
    expect(errors).toMatch(/nothingLikeThis/);
  });
});
