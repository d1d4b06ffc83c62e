/**
 * Makes the desk's page: one script, one style sheet, one page, in dist/desk. `--element FILE` makes the element alone,
 * with what it needs, as one ES module.
 */
import { copyFileSync, mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..');
const out = join(root, 'dist', 'desk');

/** @type {import('esbuild').BuildOptions} */
const shared = {
  bundle: true,
  minify: true,
  format: 'esm',
  target: 'es2022',
  platform: 'browser',
  legalComments: 'eof',
  logLevel: 'warning',
  alias: {
    'kingplank-sdk': join(root, 'libs/sdk/src/index.ts'),
    'kingplank-deck/page': join(root, 'libs/deck-element/src/page.ts'),
    'kingplank-deck': join(root, 'libs/deck-element/src/index.ts'),
  },
  tsconfigRaw: { compilerOptions: { useDefineForClassFields: true } },
};

const elementAt = process.argv.indexOf('--element');
if (elementAt > 0) {
  await build({
    ...shared,
    entryPoints: [join(root, 'libs/deck-element/src/index.ts')],
    outfile: process.argv[elementAt + 1],
  });
} else {
  mkdirSync(out, { recursive: true });
  await build({ ...shared, entryPoints: [join(here, 'src/main.ts')], outfile: join(out, 'desk.js') });
  for (const name of ['index.html', 'desk.css']) copyFileSync(join(here, name), join(out, name));
}
