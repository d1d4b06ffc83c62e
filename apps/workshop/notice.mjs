/**
 * Writes `NOTICE.md`: the libraries that the service runs with, at their versions, by licence. From the lock file, and
 * from the library's own package where the lock file is silent. With `--check` it writes nothing and fails when the page is stale.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const target = join(root, 'NOTICE.md');
const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));

const running = Object.entries(packages)
  .filter(([path, { dev, link }]) => path.startsWith('node_modules/') && dev !== true && link !== true)
  .map(([path, { version, license }]) => ({
    name: path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length),
    version,
    licence: license ?? licenceOf(path),
  }));

function licenceOf(path) {
  const { license, licenses } = JSON.parse(readFileSync(join(root, path, 'package.json'), 'utf8'));
  const named = license ?? licenses?.map(({ type }) => type).join(' OR ');
  if (named === undefined) throw new Error(`${path} names no licence: read it before it is used`);
  return named;
}

const licences = [...new Set(running.map(({ licence }) => licence))].sort();

const under = (wanted) => running.filter(({ licence }) => licence === wanted);

const page = [
  '# Notice',
  '',
  'Kingplank itself carries no licence yet: its owner has named none, and until then nobody else may copy or distribute it.',
  '',
  'It runs with the libraries below, each under its own licence; the text of each stands in its package. Made from the lock file by `node apps/workshop/notice.mjs`.',
  ...licences.flatMap((licence) => [
    '',
    `## ${licence}`,
    '',
    [...new Set(under(licence).map(({ name, version }) => `${name} ${version}`))].sort().join(', '),
  ]),
  '',
].join('\n');

const isFresh = existsSync(target) && readFileSync(target, 'utf8') === page;
if (!process.argv.includes('--check')) writeFileSync(target, page);
else if (!isFresh) {
  console.error('NOTICE.md is stale: run node apps/workshop/notice.mjs and commit what it writes.');
  process.exit(1);
}
