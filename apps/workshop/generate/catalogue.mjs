import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root, writeMade } from './made-file.mjs';

const data = join(root, 'libs', 'catalogue', 'data');

const jsonFiles = (folder) =>
  readdirSync(join(data, folder))
    .filter((name) => name.endsWith('.json'))
    .sort();
const readAll = (folder) =>
  jsonFiles(folder).map((name) => JSON.parse(readFileSync(join(data, folder, name), 'utf8')));

/** The shipped catalogue as one module, so that the rooms stay free of the file system. */
export function writeCatalogue() {
  const content = readCatalogue();
  const hash = createHash('sha256').update(JSON.stringify(content)).digest('hex');
  return writeMade({
    from: 'libs/catalogue/data',
    digest: hash.slice(0, 16),
    files: [join(root, 'libs', 'catalogue', 'src', 'generated', 'shipped.ts')],
    make: () => [moduleOf(content, hash)],
  });
}

/** Throws where an entry stands twice or cites a source that is not there. */
function readCatalogue() {
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
  refuseUnknownCites(new Set(sources.map(({ key }) => key)), [materials, priceLists, labourRates]);
  return { materials, priceLists, labourRates, sources };
}

function moduleOf({ materials, priceLists, labourRates, sources }, hash) {
  return `import type { Catalogue } from '../catalogue.js';

const read = (...entries: readonly string[]) => JSON.parse(\`[\${entries.join()}]\`);

export const shippedCatalogue: Catalogue = {
  edition: ${JSON.stringify(`shipped-${hash.slice(0, 8)}`)},
  hash: ${JSON.stringify(hash)},
  materials: ${listed(materials)},
  priceLists: ${listed(priceLists)},
  labourRates: ${listed(labourRates)},
  sources: ${listed(sources)},
};
`;
}

/** One entry a line, as JSON text that is read once: the compiler has nothing to check in it. */
const listed = (entries) =>
  `read(\n${entries.map((entry) => `    ${JSON.stringify(JSON.stringify(entry))},\n`).join('')}  )`;

function refuseRepeats(what, names) {
  const repeated = names.filter((name, index) => names.indexOf(name) !== index);
  if (repeated.length > 0) throw new Error(`${what} stands twice: ${[...new Set(repeated)].join(', ')}`);
}

function refuseUnknownCites(known, citing) {
  const unknown = new Set();
  const visit = (value) => {
    if (value === null || typeof value !== 'object') return;
    if (typeof value.cite?.source === 'string' && !known.has(value.cite.source))
      unknown.add(value.cite.source);
    for (const part of Object.values(value)) visit(part);
  };
  visit(citing);
  if (unknown.size > 0)
    throw new Error(`Cited but not in libs/catalogue/data/sources: ${[...unknown].join(', ')}`);
}
