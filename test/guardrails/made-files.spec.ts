import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@jest/globals';
import { digestOf, writeMade } from '../../apps/workshop/generate/made-file.mjs';
import { root } from './source-files.js';

const folder = mkdtempSync(join(tmpdir(), 'made-'));
const file = join(folder, 'below', 'made.ts');

async function madeWith(digest: string): Promise<number> {
  let calls = 0;
  await writeMade({
    from: 'a test',
    digest,
    files: [file],
    make: () => {
      calls += 1;
      return [`export const calls = '${digest}';\n`];
    },
  });
  return calls;
}

test('a made file is written when it is missing and when what it is made from has changed, and not else', async () => {
  expect([await madeWith('one'), await madeWith('one'), await madeWith('two')]).toEqual([1, 0, 1]);
  expect(readFileSync(file, 'utf8')).toMatch(/^\/\/ Made from a test .* two\nexport const calls = 'two';\n$/);
});

test('a digest follows the content of the files, their order and the words beside them', () => {
  const [a, b] = ['package.json', 'tsconfig.json'].map((name) => join(root, name));
  const digests = [digestOf([a, b]), digestOf([b, a]), digestOf([a]), digestOf([a, b], '5.0')];
  expect(new Set(digests).size).toBe(4);
  expect(digestOf([a, b])).toBe(digests[0]);
});

test('what is made is not committed', () => {
  const ignored = readFileSync(join(root, '.gitignore'), 'utf8');
  for (const made of [
    '/libs/catalogue/src/generated/',
    '/libs/sdk/src/generated/',
    '/apps/api/src/schemas/generated/schemas.ts',
  ])
    expect(ignored).toContain(`${made}\n`);
});
