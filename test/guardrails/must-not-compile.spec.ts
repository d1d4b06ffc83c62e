import { describe, expect, test } from '@jest/globals';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = join(root, 'test/guardrails/programs');
const programs = readdirSync(folder).filter((name) => name.endsWith('.must-not-compile.ts'));

function errorsIn(file: string): readonly string[] {
  const config = ts.readConfigFile(join(root, 'tsconfig.json'), (path) => ts.sys.readFile(path)).config;
  const { options } = ts.convertCompilerOptionsFromJson(config.compilerOptions, root);
  const program = ts.createProgram([file], {
    ...options,
    noEmit: true,
    incremental: false,
    tsBuildInfoFile: undefined,
  });
  const source = program.getSourceFile(file);
  return [...program.getSemanticDiagnostics(source), ...program.getSyntacticDiagnostics(source)].map(
    ({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'),
  );
}

describe('programs that must not compile', () => {
  test.each(programs)('%s', (name) => {
    const errors = errorsIn(join(folder, name));
    expect(errors.length).toBeGreaterThan(0);
    expect(errors.join('\n')).not.toMatch(/Cannot find module/);
  });

  test('an honest program does', () => {
    expect(errorsIn(join(root, 'libs/units/src/convert.ts'))).toEqual([]);
  });
});
