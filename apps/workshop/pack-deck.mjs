/** Builds libs/deck-element/dist: the element with all it needs as one ES module. `--pack DIR` also makes the tarball there. */
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const element = join(root, 'libs', 'deck-element');

run(process.execPath, [
  join(root, 'apps/desk/bundle.mjs'),
  '--element',
  join(element, 'dist', 'kingplank-deck.js'),
]);
const packAt = process.argv.indexOf('--pack');
if (packAt > 0) {
  const folder = process.argv[packAt + 1];
  mkdirSync(folder, { recursive: true });
  run('npm', ['pack', '--silent', '--pack-destination', folder], element);
}

function run(command, args, cwd = root) {
  const { status } = spawnSync(command, args, { cwd, stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
}
