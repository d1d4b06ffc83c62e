import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from '@jest/globals';
import { rulesFiredBy } from './linting.js';
import { shellFloors } from './shell-floors.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
/** The rules of the service's floors that an import breaks if it stood in that file of the service. */
const shellRulesFiredBy = (text: string, file: string): readonly string[] =>
  rulesFiredBy(text, `apps/api/src/${file}`).filter((rule) => rule.startsWith('shell/'));

const modules = shellFloors.flat();
const floorOf = (module: string): number => shellFloors.findIndex((floor) => floor.includes(module));
const imports = (from: string): string => `import { x } from '${from}';\nexport const y = x;\n`;

test('every module of the service stands on one floor', () => {
  const folders = readdirSync(join(root, 'apps/api/src'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
  expect([...modules].sort()).toEqual([...new Set(modules)].sort());
  expect(folders.filter((folder) => !modules.includes(folder))).toEqual([]);
});

describe('the floors of the service', () => {
  test.each(modules.flatMap((from) => modules.filter((to) => to !== from).map((to) => [from, to])))(
    'the edge %s -> %s is judged by the floors',
    (from, to) => {
      const isAllowed = floorOf(to) < floorOf(from);
      const expected = isAllowed ? [] : ['shell/floors'];
      expect(shellRulesFiredBy(imports(`../${to}/plant.js`), `${from}/plant.ts`)).toEqual(expected);
      expect(shellRulesFiredBy(imports(`../../${to}/deep/plant.js`), `${from}/deep/plant.ts`)).toEqual(
        expected,
      );
    },
  );
});

describe('a planted violation in the service is caught', () => {
  test.each([
    ['a file that puts the service together', imports('../service.js'), 'edge/plant.ts', 'shell/floors'],
    ['the same from a folder below', imports('../../service.js'), 'edge/deep/plant.ts', 'shell/floors'],
    ['a module without a floor', imports('../edge/log.js'), 'lodger/plant.ts', 'shell/floors'],
    ['a module without a floor, imported', imports('../lodger/x.js'), 'estimates/plant.ts', 'shell/floors'],
    ['an upward type', `export type { X } from '../estimates/x.js';\n`, 'access/plant.ts', 'shell/floors'],
    ['all of an upper file', `export * from '../estimates/x.js';\n`, 'access/plant.ts', 'shell/floors'],
    [
      'an import at run time',
      `export const y = () => import('../estimates/x.js');\n`,
      'access/plant.ts',
      'shell/floors',
    ],
    [
      "another module's repository",
      imports('../access/access.repository.js'),
      'letterhead/plant.ts',
      'shell/own-repository',
    ],
    ['TypeORM in a service', imports('typeorm'), 'access/plant.service.ts', 'shell/typeorm-at-home'],
    ['the driver in a controller', imports('pg'), 'access/plant.controller.ts', 'shell/typeorm-at-home'],
  ])('%s', (_, text, file, rule) => {
    expect(shellRulesFiredBy(text, file)).toEqual([rule]);
  });

  test.each([
    ['a repository of its own', imports('./plant.repository.js'), 'access/plant.ts'],
    ['TypeORM in an entity', imports('typeorm'), 'access/plant.entity.ts'],
    ['the file that puts it together', imports('./estimates/estimates.module.js'), 'plant.ts'],
    ['a library', imports('express'), 'estimates/plant.ts'],
  ])('%s is no violation', (_, text, file) => {
    expect(shellRulesFiredBy(text, file)).toEqual([]);
  });
});
