/** Builds libs/sdk/dist: one ES module, one CommonJS file, and the types for both. `--pack DIR` also makes the tarball there. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const sdk = join(root, 'libs', 'sdk');
const dist = join(sdk, 'dist');

rmSync(dist, { recursive: true, force: true });
/** @type {import('esbuild').BuildOptions} */
const shared = {
  entryPoints: [join(sdk, 'src', 'index.ts')],
  bundle: true,
  target: 'es2022',
  platform: 'neutral',
  sourcemap: true,
  tsconfigRaw: {},
};
await build({ ...shared, format: 'esm', outfile: join(dist, 'index.js') });
await build({ ...shared, format: 'cjs', outfile: join(dist, 'index.cjs') });

const types = join(dist, 'types');
run(process.execPath, [
  join(root, 'node_modules/typescript/bin/tsc'),
  join(sdk, 'src/index.ts'),
  '--declaration',
  '--emitDeclarationOnly',
  '--outDir',
  types,
  '--target',
  'es2022',
  '--module',
  'nodenext',
  '--moduleResolution',
  'nodenext',
  '--strict',
  '--skipLibCheck',
  '--types',
  'node',
  '--lib',
  'es2023,dom,dom.iterable',
]);
cpSync(types, join(dist, 'types-cjs'), { recursive: true });
writeFileSync(join(dist, 'types-cjs', 'package.json'), '{ "type": "commonjs" }\n');

const packAt = process.argv.indexOf('--pack');
if (packAt > 0) {
  const folder = process.argv[packAt + 1];
  mkdirSync(folder, { recursive: true });
  run('npm', ['pack', '--silent', '--pack-destination', folder], sdk);
}

function run(command, args, cwd = root) {
  const { status } = spawnSync(command, args, { cwd, stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
}
