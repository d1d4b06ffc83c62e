import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';

export const root = join(import.meta.dirname, '..', '..', '..');

/** The first line of a made file: what made it, and the digest of all that it was made from. */
const headOf = (from, digest) => `// Made from ${from} by \`npm run gen\`; never edited. ${digest}\n`;

/** What is written by hand and compiled below a folder of the project, without its tests. */
export const sourcesBelow = (folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.spec.ts'))
    .filter((name) => !/node_modules|generated|\/dist\//.test(name))
    .sort()
    .map((name) => join(root, folder, name));

/** The digest of files and words, in their order. */
export function digestOf(files, ...words) {
  const hash = createHash('sha256');
  for (const word of words) hash.update(word).update('\0');
  for (const file of files) hash.update(readFileSync(file)).update('\0');
  return hash.digest('hex').slice(0, 16);
}

/**
 * Writes the files that `make` gives (path and text), unless each stands there already with the digest of today.
 *
 * @param {{ from: string, digest: string, files: readonly string[], make: () => Promise<readonly string[]> | readonly string[] }} made
 */
export async function writeMade({ from, digest, files, make }) {
  const head = headOf(from, digest);
  if (files.every((file) => existsSync(file) && readFileSync(file, 'utf8').startsWith(head))) return;
  const texts = await make();
  files.forEach((file, index) => {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, head + texts[index]);
    console.error(`  made ${relative(root, file)}`);
  });
}
