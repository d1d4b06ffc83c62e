import { expect, test } from '@jest/globals';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = join(root, 'test/guardrails/programs');
const programs = readdirSync(folder).map((name) => join(folder, name));
const honest = join(root, 'libs/units/src/convert.ts');

/** One compilation of all of them, because most of its time goes into the library's declarations. */
const compiled = compile([...programs, honest]);

function compile(files: readonly string[]): ts.Program {
  const config = ts.readConfigFile(join(root, 'tsconfig.json'), (path) => ts.sys.readFile(path)).config;
  const { options } = ts.convertCompilerOptionsFromJson(config.compilerOptions, root);
  return ts.createProgram(files, {
    ...options,
    noEmit: true,
    incremental: false,
    tsBuildInfoFile: undefined,
  });
}

const errorsIn = (file: string): readonly string[] => {
  const source = compiled.getSourceFile(file);
  return [...compiled.getSemanticDiagnostics(source), ...compiled.getSyntacticDiagnostics(source)].map(
    ({ code }) => `TS${code}`,
  );
};

/** Each program states in its first line the one error that it must give. */
const stated = (file: string): string | undefined =>
  /^\/\/ must not compile: (TS\d+)/.exec(readFileSync(file, 'utf8'))?.[1];

test.each(programs.map((file) => [file.slice(folder.length + 1), file]))('%s gives its error', (_, file) => {
  expect(errorsIn(file)).toEqual([stated(file)]);
});

test('an honest program compiles', () => {
  expect(errorsIn(honest)).toEqual([]);
});
