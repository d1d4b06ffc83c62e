import { describe, expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { circlesAmong } from './circles.js';
import { deadExports, exportsOf } from './exports.js';
import { functionLengths } from './function-lengths.js';
import { productionFiles, root, sourceFileOf, sourceFiles, type SourceFile } from './source-files.js';

const planted = (texts: Readonly<Record<string, string>>): readonly SourceFile[] =>
  Object.entries(texts).map(([path, text]) => sourceFileOf(path, text));

describe('functions, as the formatter lays them out', () => {
  const lengths = productionFiles.flatMap(functionLengths).sort((a, b) => a - b);
  const quantile = (share: number): number => lengths[Math.floor(share * (lengths.length - 1))];

  test('half of them have at most 8 lines, nine of ten at most 24, none more than 60', () => {
    expect(lengths.length).toBeGreaterThan(3000);
    expect(quantile(0.5)).toBeLessThanOrEqual(8);
    expect(quantile(0.9)).toBeLessThanOrEqual(24);
    expect(quantile(1)).toBeLessThanOrEqual(60);
  });
});

describe('files that import each other', () => {
  test('there are none, by value or by type', () => {
    expect(circlesAmong(productionFiles)).toEqual([]);
  });

  test('a planted circle is found, and what hangs on it is left out', () => {
    const files = planted({
      'libs/a/src/one.ts': `import { two } from './two.js';\nexport const one = two;\n`,
      'libs/a/src/two.ts': `import type { Three } from './three.js';\nexport const two: Three = 2;\n`,
      'libs/a/src/three.ts': `export type Three = typeof import('./one.js').one;\n`,
      'libs/a/src/four.ts': `export { one } from './one.js';\n`,
    });
    expect(circlesAmong(files)).toEqual([['libs/a/src/one.ts', 'libs/a/src/three.ts', 'libs/a/src/two.ts']]);
  });
});

/**
 * Rooms hand their formulas to tests that go through the rooms by name; work of the service is begun by the name of its
 * file; and each unit has its maker, whether a number of it is made today or not.
 */
function isTakenByName(dead: string): boolean {
  const [path, name] = dead.split(': ');
  const begun = path.slice(path.lastIndexOf('/') + 1).replace(/\.ts$/, '.js');
  const isBegun = sourceFiles.some((file) => file.path !== path && file.syntax.text.includes(begun));
  return name === 'formulas' || path.endsWith('/brands.ts') || (name === 'run' && isBegun);
}

describe('exports that nobody uses', () => {
  test('there are none', () => {
    expect(
      deadExports(sourceFiles, ['libs/sdk/src/index.ts', 'libs/deck-element/src/index.ts']).filter(
        (dead) => !isTakenByName(dead),
      ),
    ).toEqual([]);
  });

  test('planted ones are found, though an index hands them on', () => {
    const files = planted({
      'libs/a/src/index.ts': `export { dead, alive } from './names.js';\n`,
      'libs/a/src/names.ts': `export const dead = 1;\nexport const alive = 2;\nexport interface Lost {}\nexport const near = 3;\nexport const far = near;\n`,
      'libs/b/src/user.ts': `import { alive } from '#lib/a';\nimport { far } from '../../a/src/names.js';\nvoid [alive, far];\n`,
    });
    expect(deadExports(files, [])).toEqual(['libs/a/src/names.ts: dead', 'libs/a/src/names.ts: Lost']);
    expect(exportsOf(files[1])).toEqual(['dead', 'alive', 'Lost', 'near', 'far']);
  });
});

describe('libraries', () => {
  const { dependencies, devDependencies, scripts } = JSON.parse(
    readFileSync(join(root, 'package.json'), 'utf8'),
  );
  const listed = [...Object.keys(dependencies), ...Object.keys(devDependencies)];
  const specifiers = sourceFiles.flatMap(({ imports }) => imports.map(({ from }) => from));
  const isLibrary = (from: string): boolean => !/^(node:|\.|\/|(libs|apps|test)\/|kingplank)/.test(from);
  const imported = new Set(specifiers.filter(isLibrary).map(packageOf));

  /** Needed though no file imports them, with what needs them. */
  const needed: Readonly<Record<string, string>> = {
    '@swc/core': 'compiles for @swc/jest',
    'class-transformer': 'Nest’s pipes and mapped types look for it',
  };

  const isNamed = (name: string): boolean =>
    name in needed ||
    name.startsWith('@types/') ||
    Object.values<string>(scripts).some((script) => script.includes(name)) ||
    sourceFiles.some(
      ({ syntax }) =>
        syntax.text.includes(`node_modules/${name}`) || new RegExp(`['"\`]${name}['"\`/]`).test(syntax.text),
    );

  test('none is listed that nothing uses', () => {
    expect(listed.filter((name) => !imported.has(name) && !isNamed(name))).toEqual([]);
  });

  test('what is needed for another reason is listed, and imported nowhere', () => {
    expect(Object.keys(needed).filter((name) => !listed.includes(name) || imported.has(name))).toEqual([]);
  });

  test('none is imported that is not listed', () => {
    const typed = listed.map((name) => name.replace('@types/', ''));
    const known = new Set([...listed, ...typed, ...builtinModules]);
    expect([...imported].filter((name) => !known.has(name))).toEqual([]);
  });
});

/** The package that a specifier means: `@scope/name/part` is `@scope/name`. */
function packageOf(specifier: string): string {
  return /^(@[^/]+\/[^/]+|[^@./][^/]*)/.exec(specifier)?.[0] ?? specifier;
}
