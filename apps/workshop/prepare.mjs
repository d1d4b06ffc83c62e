/**
 * Makes a fresh clone ready: installs what the lock file names when it is missing or out of date,
 * and with `--build` compiles. Uses nothing that has to be installed first.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const OLDEST_NODE = [20, 19];

requireNode();
installIfNeeded();
if (process.argv.includes('--build')) build();

function requireNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  const isTooOld = major < OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor < OLDEST_NODE[1]);
  if (isTooOld) stop(`Node ${OLDEST_NODE.join('.')} or newer is needed; this is ${process.versions.node}.`);
}

function installIfNeeded() {
  const stamp = join(root, 'node_modules', '.kingplank-lock');
  const wanted = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
  run('Installing the libraries of the lock file (about 30 s)', 'npm', [
    'ci',
    '--ignore-scripts',
    '--no-audit',
    '--no-fund',
    '--loglevel=error',
  ]);
  writeFileSync(stamp, wanted);
}

function build() {
  run(
    'Making what is compiled from data, types and contract',
    process.execPath,
    [join(root, 'apps/workshop/generate.mjs')],
    true,
  );
  run('Compiling (about 20 s the first time)', process.execPath, [
    join(root, 'node_modules/typescript/bin/tsc'),
    '-p',
    join(root, 'tsconfig.json'),
  ]);
  run('Bundling the desk', process.execPath, [join(root, 'apps/desk/bundle.mjs')], true);
}

function run(what, command, args, isQuiet = false) {
  if (!isQuiet) console.error(`· ${what} …`);
  const started = Date.now();
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (error !== undefined || status !== 0)
    stop(`${what} failed${error === undefined ? '' : `: ${error.message}`}.`);
  if (!isQuiet) console.error(`  done in ${((Date.now() - started) / 1000).toFixed(1)} s`);
}

function stop(why) {
  console.error(why);
  process.exit(1);
}
