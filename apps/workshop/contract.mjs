/** The schemas of answers, the API contract and the client types that follow from each other. `--check` fails when either is stale. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const contract = join(root, 'test', 'contract', 'openapi.json');
const isCheck = process.argv.includes('--check');
const target = isCheck ? join(mkdtempSync(join(tmpdir(), 'contract-')), 'openapi.json') : contract;

run('apps/api/schemas.mjs', ...(isCheck ? ['--check'] : []));
if (isCheck) run('apps/workshop/prepare.mjs', '--build');
// What uses the client may not compile while its types are stale; the compiler writes its output all the same.
else
  spawnSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', root], {
    cwd: root,
    stdio: 'ignore',
  });
run('dist/apps/api/src/openapi.js', target);
if (isCheck && readFileSync(target, 'utf8') !== readFileSync(contract, 'utf8')) {
  console.error(
    'test/contract/openapi.json is stale: run `npm run contract`, read the difference, and commit it.',
  );
  process.exit(1);
}
run('dist/apps/workshop/sdk-types.js', ...(isCheck ? ['--check'] : []));
if (!isCheck) run('apps/workshop/prepare.mjs', '--build');

function run(script, ...args) {
  const { status } = spawnSync(process.execPath, [join(root, script), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}
