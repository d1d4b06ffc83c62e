/**
 * Three kept generators make a client each from the API contract, and what they make must compile under `strict`: what one
 * of them cannot read, a program of somebody else cannot read either. They live in `.ci/linters`, with a lock file of their own.
 */
import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const linters = join(root, '.ci', 'linters');
const contract = join(root, 'test', 'contract', 'openapi.json');
const execute = promisify(execFile);

if (!existsSync(join(linters, 'node_modules'))) {
  console.error('Install the generators first: npm ci --prefix .ci/linters');
  process.exit(1);
}

// Below the folder of the linters, where the compiler finds what the clients import.
const folder = mkdtempSync(join(linters, 'made-'));
const tool = (name, ...args) =>
  execute(join(linters, 'node_modules', '.bin', name), args, { cwd: folder, maxBuffer: 1 << 26 });

writeFileSync(
  join(folder, 'orval.config.cjs'),
  `module.exports = { made: { input: ${JSON.stringify(contract)}, output: { target: 'orval/client.ts', client: 'fetch', mode: 'single' } } };\n`,
);
const compilerOptions = {
  strict: true,
  noEmit: true,
  skipLibCheck: true,
  target: 'es2022',
  module: 'esnext',
  moduleResolution: 'bundler',
  lib: ['es2022', 'dom', 'dom.iterable'],
};
const made = ['hey-api/types.gen.ts', 'orval/client.ts', 'templates/client.ts'];
writeFileSync(
  join(folder, 'tsconfig.json'),
  JSON.stringify({ compilerOptions, include: made.map((file) => `${dirname(file)}/**/*.ts`) }),
);

try {
  await tool('openapi-ts', '--input', contract, '--output', 'hey-api');
  await tool('orval', '--config', 'orval.config.cjs');
  await tool(
    'swagger-typescript-api',
    'generate',
    '--path',
    contract,
    '--output',
    'templates',
    '--name',
    'client.ts',
  );
  for (const file of made)
    if (statSync(join(folder, file)).size < 100_000) throw new Error(`${file} holds next to nothing`);
  await tool('tsc', '--project', 'tsconfig.json');
  console.log(`${made.length} other clients compile.`);
} catch (failure) {
  const { stdout, stderr, message } = Object(failure);
  console.error(stdout || stderr || message);
  process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
