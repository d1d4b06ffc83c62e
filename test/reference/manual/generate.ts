import { mkdirSync, readdirSync, unlinkSync, writeFileSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { manualPages } from './manual-pages.js';

/** Writes the verification manual: `npm run manual`. Pages of rooms that are gone are taken away. */
const here = dirname(fileURLToPath(import.meta.url));
const folder = here.replace(`${sep}dist${sep}test${sep}`, `${sep}test${sep}`);
const root = join(folder, '..', '..', '..');

const pages = await manualPages(root);
mkdirSync(folder, { recursive: true });
for (const name of readdirSync(folder)) {
  if (/\.(md|svg)$/.test(name) && !pages.has(name)) unlinkSync(join(folder, name));
}
for (const [name, text] of pages) writeFileSync(join(folder, name), text);
console.log(`Wrote ${pages.size} files of the verification manual.`);
