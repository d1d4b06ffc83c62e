import { describe, expect, test } from '@jest/globals';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { allCases } from '../reference/all-cases.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
const sourcesFolder = join(root, 'libs/catalogue/data/sources');

interface SourceEntry {
  readonly key: string;
}

const sources: readonly SourceEntry[] = readdirSync(sourcesFolder).flatMap(
  (name) => JSON.parse(readFileSync(join(sourcesFolder, name), 'utf8')) as SourceEntry[],
);
const known = new Set(sources.map(({ key }) => key));

function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory())
      return entry.name === 'generated' || entry.name === 'node_modules' || entry.name === 'dist'
        ? []
        : filesBelow(path);
    return path.endsWith('.ts') && !path.endsWith('.d.ts') ? [path] : [];
  });
}

const roomFiles = filesBelow(join(root, 'libs')).filter(
  (path) => !path.endsWith('.spec.ts') && !path.includes('/sdk/'),
);

/** Every `source: 'KEY'` in code and every `[KEY]` behind `Source:` in a comment. */
function keysIn(text: string): readonly string[] {
  const cited = [...text.matchAll(/\bsource: '([A-Z0-9][A-Z0-9-]+)'/g)].map(([, key]) => key);
  const commented = [...text.matchAll(/Source:((?:[^\n]*\[[A-Z0-9-]+\])+)/g)].flatMap(([, rest]) =>
    [...rest.matchAll(/\[([A-Z][A-Z0-9-]+)\]/g)].map(([, key]) => key),
  );
  return [...cited, ...commented];
}

test('every source key stands once', () => {
  expect(sources.length).toBe(known.size);
});

describe('every source cited in a room is in the bibliography', () => {
  test.each(roomFiles.map((path) => [path.slice(root.length), path]))('%s', (_, path) => {
    expect(keysIn(readFileSync(path, 'utf8')).filter((key) => !known.has(key))).toEqual([]);
  });
});

test('every published case names a known source', async () => {
  expect(
    (await allCases()).filter(({ source }) => !known.has(source)).map(({ id, source }) => `${id}: ${source}`),
  ).toEqual([]);
});

test('every worked example named in a comment exists', () => {
  const missing = roomFiles.flatMap((path) =>
    [...readFileSync(path, 'utf8').matchAll(/Worked:\s+(test\/\S+\.ts)/g)].flatMap(([, named]) =>
      existsSync(join(root, named)) ? [] : [`${path.slice(root.length)}: ${named}`],
    ),
  );
  expect(missing).toEqual([]);
});
