import tseslint from 'typescript-eslint';

const sources = ['**/*.{ts,mjs}'];
const testFiles = ['**/*.spec.ts', 'test/**/*.ts'];
const scripts = ['apps/workshop/**/*.{ts,mjs}', 'test/bench/**/*.ts'];
const rooms = {
  files: ['libs/*/src/**/*.ts'],
  ignores: [...testFiles, 'libs/sdk/**', 'libs/deck-element/**'],
};

const impurePackages = [
  'node:',
  '@nestjs/',
  'typeorm',
  'pg$',
  'express',
  'reflect-metadata',
  'class-validator',
  'fs$',
  'path$',
  'http$',
];

const impureGlobals = [
  'process',
  'console',
  'fetch',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'performance',
  'crypto',
  'require',
  'Buffer',
];

/** Rooms take time, chance, data and settings as values. */
export const purityRules = [
  {
    ...rooms,
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: impurePackages.map((name) => ({
            regex: `^${name}`,
            message: `Rooms are pure: not ${name.replace('$', '')}.`,
          })),
        },
      ],
      'no-restricted-globals': [
        'error',
        ...impureGlobals.map((name) => ({
          name,
          message: `Rooms are pure; take what ${name} would give in as a value.`,
        })),
      ],
      'no-restricted-properties': [
        'error',
        {
          object: 'Math',
          property: 'random',
          message: 'Chance comes in as a seed; see randomStream in kernel.',
        },
        { object: 'Date', property: 'now', message: 'Time comes in as a value.' },
      ],
    },
  },
  {
    files: ['libs/{sdk,deck-element}/src/**/*.ts'],
    ignores: testFiles,
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: ['#lib/', 'node:', '@nestjs/', 'typeorm'].map((name) => ({
            regex: `^${name}`,
            message: `The client and what is built on it see only the OpenAPI document: not ${name}.`,
          })),
        },
      ],
    },
  },
];

/** What keeps a function readable. Lines are laid out by the formatter at 110 columns, so a line says what it costs. */
const shape = {
  'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
  'max-depth': ['error', 3],
  'max-params': ['error', 4],
  'no-console': 'error',
  'eqeqeq': 'error',
  'no-else-return': 'error',
  'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx'] }],
};

const types = {
  '@typescript-eslint/no-extraneous-class': ['error', { allowWithDecorator: true }],
  '@typescript-eslint/consistent-type-imports': [
    'error',
    { fixStyle: 'inline-type-imports', disallowTypeAnnotations: false },
  ],
  '@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'never' }],
};

const noEnum = { selector: 'TSEnumDeclaration', message: 'Use a union of string literals.' };
const noDefaultExport = { selector: 'ExportDefaultDeclaration', message: 'Named exports only.' };
const noClock = {
  selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
  message: 'Time comes in as a value.',
};
const noConversion = {
  selector:
    'BinaryExpression[operator=/^[*\\/]$/] > Literal[raw=/^(25\\.4|304\\.8|1e-?[369]|1_000_000|1000000|273\\.15|0\\.45359237)$/]',
  message: 'Conversions are named functions in libs/units.',
};

/**
 * What typescript-eslint's strict set switches on, as one list: a rule that it sets twice or that we set anew
 * would stand twice, and of two that say the same neither can be proven.
 */
function strictRules() {
  const all = Object.assign({}, ...tseslint.configs.strict.map(({ rules }) => rules ?? {}));
  const ours = { ...shape, ...types };
  return Object.fromEntries(
    Object.entries(all).filter(([name, setting]) => [setting].flat()[0] !== 'off' && !(name in ours)),
  );
}

export const houseRules = [
  {
    files: sources,
    languageOptions: { parser: tseslint.parser },
    plugins: { '@typescript-eslint': tseslint.plugin },
    linterOptions: { noInlineConfig: true },
    rules: {
      ...strictRules(),
      ...shape,
      ...types,
      'no-restricted-syntax': ['error', noEnum, noDefaultExport, noClock, noConversion],
    },
  },
  {
    // The only files where a plain number is given its unit.
    files: [
      'libs/units/src/brands.ts',
      'libs/provenance/src/{arithmetic,formula}.ts',
      'libs/asking/src/settled-or.ts',
    ],
    rules: { '@typescript-eslint/consistent-type-assertions': 'off' },
  },
  {
    // The client believes the contract that its types were generated from; the one file where an answer gets its type.
    files: ['libs/sdk/src/resource.ts'],
    rules: { '@typescript-eslint/consistent-type-assertions': 'off' },
  },
  {
    files: ['libs/units/**/*.ts'],
    rules: { 'no-restricted-syntax': ['error', noEnum, noDefaultExport, noClock] },
  },
  {
    files: ['apps/**/*.ts'],
    rules: {
      'no-restricted-syntax': ['error', noEnum, noDefaultExport, noConversion],
      // Nest reads constructor parameter types at run time, so those imports must not be type-only.
      '@typescript-eslint/consistent-type-imports': 'off',
    },
  },
  {
    files: testFiles,
    rules: {
      'max-lines-per-function': 'off',
      'no-restricted-syntax': 'off',
      'no-console': 'off',
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/consistent-type-assertions': 'off',
    },
  },
  // Scripts talk to the one who runs them.
  { files: scripts, rules: { 'no-console': 'off' } },
  // Tools read their configuration from a default export.
  { files: ['eslint.config.mjs', 'test/jest.config.mjs'], rules: { 'no-restricted-syntax': 'off' } },
];
