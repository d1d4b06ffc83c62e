import { beforeAll, describe, expect, test } from '@jest/globals';
import { ESLint } from 'eslint';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { floors } from './house-rules.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
let eslint: ESLint;

beforeAll(() => {
  eslint = new ESLint({ cwd: root, overrideConfigFile: join(root, 'eslint.config.mjs') });
});

/** Lints a text as if it stood in that file; the rules that fired. */
async function rulesFiredBy(text: string, filePath: string): Promise<readonly string[]> {
  const [result] = await eslint.lintText(text, { filePath: join(root, filePath) });
  return result.messages.map(({ ruleId, message }) => ruleId ?? message);
}

describe('a planted violation is caught', () => {
  test.each([
    [
      'a room importing a higher floor',
      `import { x } from '#lib/estimate';\nexport const y = x;\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-imports',
    ],
    [
      'a room importing its sibling',
      `import { x } from '#lib/laminate';\nexport const y = x;\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-imports',
    ],
    [
      'reaching inside a room',
      `import { x } from '#lib/units/src/brands.js';\nexport const y = x;\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-imports',
    ],
    [
      'leaving the room by a relative path',
      `import { x } from '../../units/src/brands.js';\nexport const y = x;\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-imports',
    ],
    [
      'the file system in a room',
      `import { readFileSync } from 'node:fs';\nexport const y = readFileSync;\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-imports',
    ],
    [
      'Nest in a room',
      `import { Injectable } from '@nestjs/common';\nexport const y = Injectable;\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-imports',
    ],
    [
      'TypeORM in a room',
      `import { Entity } from 'typeorm';\nexport const y = Entity;\n`,
      'libs/costing/src/plant.ts',
      'no-restricted-imports',
    ],
    [
      'a room in the SDK',
      `import { x } from '#lib/kernel';\nexport const y = x;\n`,
      'libs/sdk/src/plant.ts',
      'no-restricted-imports',
    ],
    [
      'the environment in a room',
      `export const y = process.env;\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-globals',
    ],
    [
      'the clock in a room',
      `export const y = Date.now();\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-properties',
    ],
    [
      'the clock by a constructor',
      `export const y = new Date();\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-syntax',
    ],
    [
      'chance in a room',
      `export const y = Math.random();\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-properties',
    ],
    ['an enum', `export enum Y { a }\n`, 'libs/panel/src/plant.ts', 'no-restricted-syntax'],
    ['a default export', `export default 1;\n`, 'libs/panel/src/plant.ts', 'no-restricted-syntax'],
    [
      'a cast',
      `export const y = (x: unknown) => x as number;\n`,
      'libs/panel/src/plant.ts',
      '@typescript-eslint/consistent-type-assertions',
    ],
    [
      'any',
      `export const y = (x: any) => x;\n`,
      'libs/panel/src/plant.ts',
      '@typescript-eslint/no-explicit-any',
    ],
    [
      'a conversion outside units',
      `export const y = (x: number) => x * 25.4;\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-syntax',
    ],
    [
      'a conversion in the shell',
      `export const y = (x: number) => x / 25.4;\n`,
      'apps/api/src/plant.ts',
      'no-restricted-syntax',
    ],
    [
      'five parameters',
      `export const y = (a: 1, b: 1, c: 1, d: 1, e: 1) => [a, b, c, d, e];\n`,
      'libs/panel/src/plant.ts',
      'max-params',
    ],
    [
      'a function of 61 lines',
      `export function y(): number {\n  let x = 0;\n${'  x += 1;\n'.repeat(60)}  return x;\n}\n`,
      'libs/panel/src/plant.ts',
      'max-lines-per-function',
    ],
    [
      'a suppression comment',
      `// eslint-disable-next-line\nexport const y = Math.random();\n`,
      'libs/panel/src/plant.ts',
      'no-restricted-properties',
    ],
  ])('%s', async (_, text, filePath, rule) => {
    expect(await rulesFiredBy(text, filePath)).toContain(rule);
  });

  test.each(
    floors.flat().flatMap((room: string) =>
      floors
        .flat()
        .filter((other: string) => other !== room)
        .map((other: string) => [room, other]),
    ),
  )('the edge %s -> %s is judged by the floors', async (room, other) => {
    const fired = await rulesFiredBy(
      `import { x } from '#lib/${other}';\nexport const y = x;\n`,
      `libs/${room}/src/plant.ts`,
    );
    const floorOf = (name: string): number =>
      floors.findIndex((floor: readonly string[]) => floor.includes(name));
    const isDecision =
      (room === 'geometry' && other === 'units') || (room === 'catalogue' && other === 'provenance');
    const isAllowed = floorOf(other) < floorOf(room) || isDecision;
    expect(fired.includes('no-restricted-imports')).toBe(!isAllowed);
  });
});

test('ordinary room code passes', async () => {
  const text = `import { success, type Outcome } from '#lib/kernel';\nimport { mm, type Mm } from '#lib/units';\n\nexport const twice = (length: Mm): Outcome<Mm> => success(mm(length * 2));\n`;
  expect(await rulesFiredBy(text, 'libs/panel/src/plant.ts')).toEqual([]);
});
