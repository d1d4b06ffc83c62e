import tseslint from 'typescript-eslint';

/** Floors of the house, lowest first. A room may import only rooms on lower floors. */
export const floors = [
  ['kernel'],
  ['units', 'money', 'geometry'],
  ['provenance', 'catalogue', 'nesting'],
  ['asking'],
  ['work'],
  ['cure'],
  ['extent', 'coring', 'laminate', 'panel', 'resin', 'press', 'calendar', 'cautions'],
  ['takeoff'],
  ['costing'],
  ['estimate'],
  ['drawings'],
];

/** Edges inside one floor that are decisions, each explained in DEVELOPERS.md. */
export const sameFloorEdges = {
  money: [],
  units: [],
  geometry: ['units'],
  provenance: [],
  catalogue: ['provenance'],
};

const floorOf = (room) => floors.findIndex((floor) => floor.includes(room));
const allRooms = floors.flat();

const forbiddenFor = (room) =>
  allRooms.filter(
    (other) =>
      other !== room && floorOf(other) >= floorOf(room) && !(sameFloorEdges[room] ?? []).includes(other),
  );

const pureFiles = ['libs/*/src/**/*.ts'];
const testFiles = ['**/*.spec.ts', 'test/**/*.ts'];

/**
 * One block per room holds ALL its import restrictions: in flat config a later block replaces a rule's options,
 * so two blocks that both set `no-restricted-imports` would silently switch the first one off.
 */
export const directionRules = [
  ...allRooms.map((room) => ({
    files: [`libs/${room}/src/**/*.ts`],
    ignores: testFiles,
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            ...forbiddenFor(room).map((other) => ({
              regex: `^#lib/${other}$`,
              message: `${room} may import only lower floors; ${other} is not below it.`,
            })),
            { regex: `^#lib/${room}$`, message: 'Inside a room use relative imports.' },
            { regex: '^#lib/[^/]+/', message: 'Import a room through its index only.' },
            { regex: '^(\\.\\./){2,}', message: 'A relative import must not leave the room.' },
            {
              regex:
                '^(node:|@nestjs/|typeorm|pg$|express|reflect-metadata|class-validator|class-transformer|fs$|path$|http$)',
              message: 'Rooms are pure: no Nest, database, file system or network.',
            },
          ],
        },
      ],
    },
  })),
  {
    files: ['libs/sdk/src/**/*.ts'],
    ignores: testFiles,
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            { regex: '^(#lib/|node:|@nestjs/|typeorm)', message: 'The SDK sees only the OpenAPI document.' },
          ],
        },
      ],
    },
  },
];

/** Rooms take time, chance, data and settings as values. */
export const purityRules = [
  {
    files: pureFiles,
    ignores: [...testFiles, 'libs/sdk/**'],
    rules: {
      'no-restricted-globals': [
        'error',
        ...[
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
        ].map((name) => ({ name, message: 'Rooms are pure; take it in as a value.' })),
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
];

const shape = {
  'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
  'max-depth': ['error', 3],
  'max-params': ['error', 4],
  'no-console': 'error',
  'prefer-const': 'error',
  'eqeqeq': 'error',
  'no-else-return': 'error',
  'no-warning-comments': ['error', { terms: ['fixme', 'xxx'] }],
};

const restrictedSyntax = (extra = []) => [
  'error',
  { selector: 'TSEnumDeclaration', message: 'Use a union of string literals.' },
  { selector: 'ExportDefaultDeclaration', message: 'Named exports only.' },
  { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: 'Time comes in as a value.' },
  ...extra,
];

const conversionsOutsideUnits = [
  {
    selector:
      'BinaryExpression[operator=/^[*\\/]$/] > Literal[raw=/^(25\\.4|304\\.8|1e-?[369]|1_000_000|1000000|273\\.15|0\\.45359237)$/]',
    message: 'Conversions are named functions in libs/units.',
  },
];

export const houseRules = [
  {
    files: ['**/*.ts'],
    extends: [...tseslint.configs.strict],
    linterOptions: { noInlineConfig: true },
    rules: {
      ...shape,
      '@typescript-eslint/no-extraneous-class': ['error', { allowWithDecorator: true }],
      '@typescript-eslint/consistent-type-imports': [
        'error',
        { fixStyle: 'inline-type-imports', disallowTypeAnnotations: false },
      ],
      '@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'never' }],
      'no-restricted-syntax': restrictedSyntax(conversionsOutsideUnits),
    },
  },
  {
    // The only files where a plain number is given its unit.
    files: [
      'libs/units/src/brands.ts',
      'libs/provenance/src/{arithmetic,formula}.ts',
      'libs/estimate/src/job/choice.ts',
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
    rules: { 'no-restricted-syntax': restrictedSyntax() },
  },
  {
    files: ['apps/**/*.ts'],
    rules: {
      'no-restricted-syntax': [
        'error',
        { selector: 'TSEnumDeclaration', message: 'Use a union of string literals.' },
        { selector: 'ExportDefaultDeclaration', message: 'Named exports only.' },
        ...conversionsOutsideUnits,
      ],
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
  {
    files: ['apps/workshop/**/*.ts', 'test/bench/**/*.ts'],
    rules: { 'no-console': 'off' },
  },
];
