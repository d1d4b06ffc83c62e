/** A text that breaks exactly one rule, in a file where the rule holds. */
export interface Plant {
  readonly rule: string;
  readonly at: string;
  readonly text: string;
}

const ROOM = 'libs/panel/src/plant.ts';
const SCRIPT = 'apps/workshop/plant.mjs';

const imports = (from: string): string => `import { x } from '${from}';\nexport const y = x;\n`;
const lines = (count: number): string =>
  `export function y(): number {\n  let x = 0;\n${'  x += 1;\n'.repeat(count)}  return x;\n}\n`;
const strict = (name: string, text: string, at = ROOM): Plant => ({
  rule: `@typescript-eslint/${name}`,
  at,
  text,
});

/** Rules of typescript-eslint. */
const strictPlants: readonly Plant[] = [
  strict('ban-ts-comment', `// @ts-nocheck\nexport const y = 1;\n`),
  strict('no-array-constructor', `export const y = new Array(1, 2);\n`),
  strict('no-duplicate-enum-values', `export enum Y { a = 1, b = 1 }\n`, 'test/plant.ts'),
  strict('no-dynamic-delete', `export const y = (o: Record<string, 1>, k: string) => delete o[k];\n`),
  strict('no-empty-object-type', `export type Y = {};\n`),
  strict('no-explicit-any', `export const y = (x: any) => x;\n`),
  strict('no-extra-non-null-assertion', `export const y = (x?: { z: 1 }) => x!!.z;\n`, 'test/plant.ts'),
  strict('no-invalid-void-type', `export type Y = 1 | void;\n`),
  strict('no-misused-new', `export interface Y { new (): Y }\n`),
  strict('no-namespace', `export namespace Y { export const x = 1; }\n`),
  strict(
    'no-non-null-asserted-nullish-coalescing',
    `export const y = (x: () => 1) => x()! ?? 1;\n`,
    'test/plant.ts',
  ),
  strict(
    'no-non-null-asserted-optional-chain',
    `export const y = (x?: { z: 1 }) => x?.z!;\n`,
    'test/plant.ts',
  ),
  strict('no-non-null-assertion', `export const y = (x?: number) => x!;\n`),
  strict('no-require-imports', `export const y = require('x');\n`, SCRIPT),
  strict('no-this-alias', `export function y(this: 1) {\n  const self = this;\n  return () => self;\n}\n`),
  strict('no-unnecessary-type-constraint', `export type Y<T extends unknown> = T[];\n`),
  strict('no-unsafe-declaration-merging', `export interface Y { x: 1 }\nexport class Y { z = 1; }\n`),
  strict('no-unsafe-function-type', `export type Y = Function;\n`),
  strict('no-unused-expressions', `export const y = 1;\ny;\n`),
  strict('no-unused-vars', `const x = 1;\nexport const y = 1;\n`),
  strict('no-useless-constructor', `export class Y {\n  x = 1;\n  constructor() {}\n}\n`),
  strict('no-wrapper-object-types', `export type Y = String;\n`),
  strict('prefer-as-const', `export const y: 'a' = 'a';\n`),
  strict('prefer-literal-enum-member', `const x = 1;\nexport enum Y { a = x }\n`, 'test/plant.ts'),
  strict('prefer-namespace-keyword', `declare module Y {}\n`, 'libs/panel/src/plant.d.ts'),
  strict('triple-slash-reference', `/// <reference path="x" />\nexport const y = 1;\n`),
  strict(
    'unified-signatures',
    `export declare function y(x: 1): void;\nexport declare function y(x: 2): void;\n`,
  ),
  strict('no-extraneous-class', `export class Y {\n  static z = 1;\n}\n`),
  strict('consistent-type-imports', `import { X } from './x.js';\nexport type Y = X;\n`),
  strict('consistent-type-assertions', `export const y = (x: unknown) => x as number;\n`),
  { rule: 'no-var', at: ROOM, text: `export var y = 1;\n` },
  { rule: 'prefer-const', at: ROOM, text: `let x = 1;\nexport const y = x;\n` },
  {
    rule: 'prefer-rest-params',
    at: ROOM,
    text: `export function y() {\n  return arguments;\n}\n`,
  },
  {
    rule: 'prefer-spread',
    at: ROOM,
    text: `export const y = (f: (...x: number[]) => 1, x: number[]) => f.apply(undefined, x);\n`,
  },
];

const shapePlants: readonly Plant[] = [ROOM, SCRIPT].flatMap((at) => [
  { rule: 'max-lines-per-function', at, text: lines(57) },
  {
    rule: 'max-depth',
    at,
    text: `export function y(x) {\n  if (x) for (;;) while (x) if (x) return x;\n  return 1;\n}\n`,
  },
  { rule: 'max-params', at, text: `export const y = (a, b, c, d, e) => [a, b, c, d, e];\n` },
  { rule: 'eqeqeq', at, text: `export const y = (x) => x == 1;\n` },
  {
    rule: 'no-else-return',
    at,
    text: `export function y(x) {\n  if (x) {\n    return 1;\n  } else {\n    return 2;\n  }\n}\n`,
  },
  { rule: 'no-warning-comments', at, text: `// todo: later\nexport const y = 1;\n` },
  { rule: 'no-warning-comments', at, text: `// fixme\nexport const y = 1;\n` },
  { rule: 'no-warning-comments', at, text: `// xxx\nexport const y = 1;\n` },
]);

const ENUM = `export enum Y { a }\n`;
const DEFAULT_EXPORT = `export default 1;\n`;
const CLOCK = `export const y = new Date();\n`;
const CONVERSION = `export const y = (x: number) => x * 25.4;\n`;
const syntax = (at: string, ...texts: readonly string[]): readonly Plant[] =>
  texts.map((text) => ({ rule: 'no-restricted-syntax', at, text }));

const syntaxPlants: readonly Plant[] = [
  ...syntax(ROOM, ENUM, DEFAULT_EXPORT, CLOCK, CONVERSION),
  ...syntax('libs/units/src/plant.ts', ENUM, DEFAULT_EXPORT, CLOCK),
  ...syntax('apps/api/src/plant.ts', ENUM, DEFAULT_EXPORT, CONVERSION),
  ...['304.8', '1e3', '1e-6', '1e9', '1_000_000', '1000000', '273.15', '0.45359237'].flatMap((factor) =>
    syntax(ROOM, `export const y = (x: number) => x / ${factor};\n`),
  ),
];

const purityPlants: readonly Plant[] = [
  ...[
    'process.env',
    'console',
    'fetch',
    'setTimeout',
    'setInterval',
    'setImmediate',
    'performance.now()',
    'crypto',
    'require',
    'Buffer',
  ].map((text) => ({ rule: 'no-restricted-globals', at: ROOM, text: `export const y = ${text};\n` })),
  ...['Math.random()', 'Date.now()'].map((text) => ({
    rule: 'no-restricted-properties',
    at: ROOM,
    text: `export const y = ${text};\n`,
  })),
  ...[
    'node:fs',
    '@nestjs/common',
    'typeorm',
    'pg',
    'express',
    'reflect-metadata',
    'class-validator',
    'fs',
    'path',
    'http',
  ].map((from) => ({ rule: 'no-restricted-imports', at: ROOM, text: imports(from) })),
  ...['#lib/kernel', 'node:fs', '@nestjs/common', 'typeorm'].map((from) => ({
    rule: 'no-restricted-imports',
    at: 'libs/sdk/src/plant.ts',
    text: imports(from),
  })),
];

const floorPlants: readonly Plant[] = [
  ['#lib/estimate', ROOM],
  ['#lib/laminate', ROOM],
  ['#lib/nowhere', ROOM],
  ['#lib/panel', ROOM],
  ['#lib/units/src/brands.js', ROOM],
  ['../../units/src/brands.js', ROOM],
  ['../../../units/src/brands.js', 'libs/panel/src/plate/plant.ts'],
  ['../../../../apps/api/src/main.js', 'libs/panel/src/plate/plant.ts'],
  ['#lib/kernel', 'libs/lodger/src/plant.ts'],
].map(([from, at]) => ({ rule: 'rooms/floors', at, text: imports(from) }));

const shell = (rule: string, from: string, at: string): Plant => ({
  rule: `shell/${rule}`,
  at: `apps/api/src/${at}`,
  text: imports(from),
});

/** One for each reason that the rules of the service can give; every edge is judged in shell-floors.spec.ts. */
const shellPlants: readonly Plant[] = [
  shell('floors', '../edge/log.js', 'lodger/plant.ts'),
  shell('floors', '../estimates/x.js', 'access/plant.ts'),
  shell('floors', '../service.js', 'edge/plant.ts'),
  shell('own-repository', '../access/access.repository.js', 'letterhead/plant.ts'),
  shell('typeorm-at-home', 'typeorm', 'access/plant.service.ts'),
];

export const plants: readonly Plant[] = [
  ...strictPlants,
  ...shapePlants,
  { rule: 'no-console', at: ROOM.replace('libs', 'apps'), text: `console.log(1);\nexport const y = 1;\n` },
  ...syntaxPlants,
  ...purityPlants,
  ...floorPlants,
  ...shellPlants,
];

/** What a comment that switches a rule off would hide. */
export const suppressed: Plant = {
  rule: 'no-restricted-properties',
  at: ROOM,
  text: `// eslint-disable-next-line\nexport const y = Math.random();\n`,
};

/** Texts that every rule lets pass, because a ban that hits them would be too wide. */
export const harmless: readonly (readonly [string, string])[] = [
  [
    ROOM,
    `import { success, type Outcome } from '#lib/kernel';\nimport { mm, type Mm } from '#lib/units';\n\nexport const twice = (length: Mm): Outcome<Mm> => success(mm(length * 2));\n`,
  ],
  [ROOM, imports('./plate/plant.js')],
  ['libs/panel/src/plate/plant.ts', imports('../yardstick/plant.js')],
  ['libs/panel/src/plate/deep/plant.ts', imports('../../yardstick/plant.js')],
  [ROOM, lines(56)],
];
