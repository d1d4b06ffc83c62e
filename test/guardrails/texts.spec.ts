import { expect, test } from '@jest/globals';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { exportsOf } from './exports.js';
import { root, sourceFiles, type SourceFile } from './source-files.js';

/** Folders that are made, not written. */
const made = /(^|\/)(node_modules|dist|coverage|data|demo-output|\.git|\.cache[^/]*)(\/|$)/;

const paths = ['.ci', 'apps', 'libs', 'test']
  .flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(root.length)),
  )
  .concat(readdirSync(root, { withFileTypes: true }).flatMap((entry) => (entry.isFile() ? [entry.name] : [])))
  .filter((path) => !made.test(path) || path.startsWith('libs/catalogue/data/'));

const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');
const pages = paths.filter((path) => path.endsWith('.md'));

test('no file keeps a mark of an unfinished merge', () => {
  const mark = new RegExp(`^(${'<'.repeat(7)} |${'>'.repeat(7)} |${'='.repeat(7)}$)`, 'm');
  const readable = paths.filter((path) =>
    /\.(ts|mjs|md|json|typ|html|css|yml|sql|csv|svg)$|\/run$/.test(path),
  );
  expect(readable.length).toBeGreaterThan(900);
  expect(readable.filter((path) => mark.test(textOf(path)))).toEqual([]);
});

test('every link of a page to a file of the project leads there', () => {
  const links = pages.flatMap((page) =>
    [...textOf(page).matchAll(/\]\(([^)\s]+)\)/g)].map(([, to]) => [page, to.replace(/#.*/, '')] as const),
  );
  const inside = links.filter(([, to]) => to !== '' && !/^[a-z]+:/.test(to));
  expect(inside.filter(([page, to]) => !existsSync(join(root, dirname(page), to)))).toEqual([]);
});

/** `libs/x/src/y.ts` in running text, with the braces and stars of a shell left alone. */
test('every file that a page names is there', () => {
  const named = pages.flatMap((page) =>
    [...textOf(page).matchAll(/`((?:apps|libs|test|\.ci)\/[\w./-]+)`/g)].map(
      ([, path]) => [page, path] as const,
    ),
  );
  expect(named.filter(([, path]) => !existsSync(join(root, path)))).toEqual([]);
});

test('every command that a page shows is a script of the package', () => {
  const { scripts } = JSON.parse(textOf('package.json'));
  const shown = pages.flatMap((page) =>
    [...textOf(page).matchAll(/(?:`|^)npm (?:run (?:-s )?)?([\w:-]+)/gm)].map(
      ([, name]) => [page, name] as const,
    ),
  );
  const known = ['ci', 'i', 'install', 'run', 'pack'];
  expect(shown.length).toBeGreaterThan(5);
  expect(shown.filter(([, name]) => !(name in scripts) && !known.includes(name))).toEqual([]);
});

test('the map for contributors stays a map: at most 9 kB', () => {
  expect(Buffer.byteLength(textOf('DEVELOPERS.md'))).toBeLessThanOrEqual(9 * 1024);
});

/** A page of a room names its functions; each has to be one that the room hands out. */
test.each(
  readdirSync(join(root, 'libs'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !['sdk', 'deck-element'].includes(entry.name))
    .map(({ name }) => name),
)('the page of %s says what it answers, by which functions, decided how, checked where', (room) => {
  const page = textOf(`libs/${room}/README.md`);
  const headings = [...page.matchAll(/^## (.+)$/gm)].map(([, title]) => title);
  expect(headings).toEqual(['Public functions', 'Decisions', 'Where its figures are checked']);
  const listed = page.slice(page.indexOf('## Public functions'), page.indexOf('## Decisions'));
  const named = [...listed.matchAll(/`(\w+)`/g)].map(([, name]) => name);
  const index = sourceFiles.filter(({ path }) => path === `libs/${room}/src/index.ts`);
  const handedOut = new Set(
    [...index, ...handedOnWhole(index)].flatMap((file) => [
      ...exportsOf(file),
      ...file.imports.flatMap(({ names, isReExport }) =>
        isReExport && names !== 'all' ? names.map((one) => one.as) : [],
      ),
    ]),
  );
  expect(named.length).toBeGreaterThan(1);
  expect(named.filter((name) => !handedOut.has(name))).toEqual([]);
});

/** The files that an index hands on with a star. */
const handedOnWhole = (index: readonly SourceFile[]): readonly SourceFile[] => {
  const whole = index.flatMap(({ imports }) => imports.filter(({ names }) => names === 'all'));
  return sourceFiles.filter(({ path }) => whole.some(({ from }) => from === path));
};
