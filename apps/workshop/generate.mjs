/**
 * Writes `libs/catalogue/src/generated/shipped.ts` from the JSON data, so that the rooms stay free of the file system.
 * With `--check` it writes nothing and fails when the file is stale.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const data = join(root, 'libs', 'catalogue', 'data');
const target = join(root, 'libs', 'catalogue', 'src', 'generated', 'shipped.ts');

const jsonFiles = (folder) =>
  readdirSync(join(data, folder))
    .filter((name) => name.endsWith('.json'))
    .sort();
const readAll = (folder) =>
  jsonFiles(folder).map((name) => JSON.parse(readFileSync(join(data, folder, name), 'utf8')));

const materials = readAll('materials').flat();
/** A price list has its packs in a folder of its name, a file for each kind of material. */
const priceLists = readAll('price-lists').map((list) => ({
  ...list,
  packs: readAll(`price-lists/${list.code}`).flat(),
}));
const labourRates = readAll('labour-rates').flat();
const sources = readAll('sources')
  .flat()
  .sort((a, b) => (a.key < b.key ? -1 : 1));

refuseRepeats(
  'source key',
  sources.map(({ key }) => key),
);
refuseRepeats(
  'material code',
  materials.map(({ code }) => code),
);
refuseRepeats(
  'SKU',
  priceLists.flatMap(({ code, packs }) => packs.map(({ sku }) => `${code}/${sku}`)),
);
refuseUnknownCites(new Set(sources.map(({ key }) => key)));

const content = { materials, priceLists, labourRates, sources };
const hash = createHash('sha256').update(JSON.stringify(content)).digest('hex');
const catalogue = { edition: `shipped-${hash.slice(0, 8)}`, hash, ...content };
/** One entry a line, as JSON text that is read once: the compiler has nothing to check in it, and a difference stays a line. */
const listed = (entries) =>
  `read(\n${entries.map((entry) => `    ${JSON.stringify(JSON.stringify(entry))},\n`).join('')}  )`;
const text = `import type { Catalogue } from '../catalogue.js';

const read = (...entries: readonly string[]) => JSON.parse(\`[\${entries.join()}]\`);

/** Generated from libs/catalogue/data by \`npm run gen\`; never edited by hand. */
export const shippedCatalogue: Catalogue = {
  edition: ${JSON.stringify(catalogue.edition)},
  hash: ${JSON.stringify(catalogue.hash)},
  materials: ${listed(materials)},
  priceLists: ${listed(priceLists)},
  labourRates: ${listed(labourRates)},
  sources: ${listed(sources)},
};
`;

const isFresh = existsSync(target) && readFileSync(target, 'utf8') === text;
if (process.argv.includes('--check')) {
  if (!isFresh) {
    console.error('The shipped catalogue is stale: run `npm run gen` and commit the result.');
    process.exit(1);
  }
} else if (!isFresh) {
  writeFileSync(target, text);
  console.log(
    `Wrote ${materials.length} materials, ${priceLists.length} price lists, ${sources.length} sources as ${catalogue.edition}.`,
  );
}

function refuseRepeats(what, names) {
  const repeated = names.filter((name, index) => names.indexOf(name) !== index);
  if (repeated.length > 0) throw new Error(`${what} stands twice: ${[...new Set(repeated)].join(', ')}`);
}

function refuseUnknownCites(known) {
  const unknown = new Set();
  const visit = (value) => {
    if (value === null || typeof value !== 'object') return;
    if (typeof value.cite?.source === 'string' && !known.has(value.cite.source))
      unknown.add(value.cite.source);
    for (const part of Object.values(value)) visit(part);
  };
  visit([materials, priceLists, labourRates]);
  if (unknown.size > 0)
    throw new Error(`Cited but not in libs/catalogue/data/sources: ${[...unknown].join(', ')}`);
}
