/** Runs the TypeScript sources as ES modules; `#lib/<room>` is the room's index.ts. */
export default {
  rootDir: '..',
  testMatch: ['<rootDir>/libs/**/*.spec.ts', '<rootDir>/apps/**/*.spec.ts', '<rootDir>/test/**/*.spec.ts'],
  testEnvironment: 'node',
  extensionsToTreatAsEsm: ['.ts'],
  modulePathIgnorePatterns: ['<rootDir>/dist/'],
  moduleNameMapper: {
    '^#lib/([^/]+)$': '<rootDir>/libs/$1/src/index.ts',
    '^(\\.{1,2}/.*)\\.js$': '$1',
  },
  transform: {
    '^.+\\.ts$': [
      '@swc/jest',
      {
        jsc: {
          target: 'es2022',
          parser: { syntax: 'typescript', decorators: true },
          transform: { legacyDecorator: true, decoratorMetadata: true },
          keepClassNames: true,
        },
        module: { type: 'es6' },
        sourceMaps: 'inline',
      },
    ],
  },
};
