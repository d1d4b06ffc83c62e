import { Linter } from 'eslint';
import tseslint from 'typescript-eslint';
import { join } from 'node:path';
import { root } from './source-files.js';

/** Every block of the lint configuration that sets a rule, read from the file that lint reads. */
const { default: configuration } = await import(join(root, 'eslint.config.mjs'));
export const blocks: readonly Linter.Config[] = configuration.filter(
  ({ rules }: Linter.Config) => rules !== undefined,
);

const linter = new Linter();
const language = { languageOptions: { parser: tseslint.parser } };

/** Whether a block speaks about a file: the linter itself is asked, with a rule that always fires. */
const covered = new Map<string, boolean>();
export function covers({ files, ignores }: Linter.Config, path: string): boolean {
  const key = JSON.stringify([files, ignores, path]);
  const known = covered.get(key);
  if (known !== undefined) return known;
  const probe = { ...language, files, ...(ignores === undefined ? {} : { ignores }) };
  const messages = linter.verify('debugger;', [{ ...probe, rules: { 'no-debugger': 'error' } }], path);
  const answer = messages.some(({ ruleId }) => ruleId === 'no-debugger');
  covered.set(key, answer);
  return answer;
}

/** What holds for a file after all blocks that speak about it: of two that set a rule, the later one. */
export function configAt(path: string): Linter.Config {
  const about = blocks.filter((block) => covers(block, path));
  return {
    files: ['**/*.ts', '**/*.mjs'],
    ...language,
    plugins: Object.assign({}, ...about.map(({ plugins }) => plugins ?? {})),
    linterOptions: Object.assign({}, ...about.map(({ linterOptions }) => linterOptions ?? {})),
    rules: Object.assign({}, ...about.map(({ rules }) => rules ?? {})),
  };
}

/** The last block that sets a rule for a file: the one whose word counts. */
export const blockThatSets = (rule: string, path: string): Linter.Config | undefined =>
  blocks.filter((block) => block.rules?.[rule] !== undefined && covers(block, path)).at(-1);

export interface Fired {
  readonly rule: string;
  readonly message: string;
}

export const lint = (text: string, path: string, config: Linter.Config = configAt(path)): readonly Fired[] =>
  linter.verify(text, [config], path).map(({ ruleId, message }) => ({ rule: ruleId ?? 'no rule', message }));

/** The rules that a text breaks if it stood in that file. */
export const rulesFiredBy = (text: string, path: string): readonly string[] =>
  lint(text, path).map(({ rule }) => rule);
