/**
 * Writes `test/contract/openapi.json`, the contract that is read and committed, from the code; the client's types follow
 * from it. `--check` writes nothing and fails when the committed contract is not what the code says.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const contract = join(root, 'test', 'contract', 'openapi.json');
const isCheck = process.argv.includes('--check');

if (isCheck) check();
else write();

function check() {
  const target = join(mkdtempSync(join(tmpdir(), 'contract-')), 'openapi.json');
  run('apps/workshop/prepare.mjs', '--build');
  run('dist/apps/api/src/openapi.js', target);
  if (readFileSync(target, 'utf8') === readFileSync(contract, 'utf8')) return;
  console.error(
    'test/contract/openapi.json is stale: run `npm run contract`, read the difference, and commit it.',
  );
  process.exit(1);
}

function write() {
  run('apps/workshop/generate.mjs');
  // What uses the client may not compile while its types are stale; the compiler writes its output all the same.
  spawnSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', root], {
    cwd: root,
    stdio: 'ignore',
  });
  run('dist/apps/api/src/openapi.js', contract);
  run('apps/workshop/prepare.mjs', '--build');
}

function run(script, ...args) {
  const { status } = spawnSync(process.execPath, [join(root, script), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}
