import type { Linter } from 'eslint';
import { blocks } from './linting.js';

/** One thing that somebody could delete from the lint configuration: a rule, or one entry of a list of bans. */
export interface Facet {
  readonly block: Linter.Config;
  readonly rule: string;
  /** The banned name, pattern or selector; '' for the rule as a whole. */
  readonly entry: string;
  /** The rule's setting without it. */
  readonly without: Linter.RuleEntry;
}

export const facets: readonly Facet[] = blocks.flatMap((block) =>
  Object.entries(block.rules ?? {}).flatMap(([rule, setting]) =>
    isOff(setting) ? [] : facetsOf(block, rule, setting ?? 'off'),
  ),
);

/** The settings that lift a rule for some files. */
export const exceptions = blocks.flatMap((block) =>
  Object.entries(block.rules ?? {}).flatMap(([rule, setting]) => (isOff(setting) ? [{ block, rule }] : [])),
);

function isOff(setting: Linter.RuleEntry | undefined): boolean {
  return [setting].flat()[0] === 'off';
}

function facetsOf(block: Linter.Config, rule: string, setting: Linter.RuleEntry): readonly Facet[] {
  const [severity, ...options] = [setting].flat();
  if (rule === 'no-restricted-imports') {
    const { patterns } = options[0];
    return patterns.map((pattern: { regex: string }) => ({
      block,
      rule,
      entry: pattern.regex,
      without: [severity, { patterns: patterns.filter((other: unknown) => other !== pattern) }],
    }));
  }
  if (!rule.startsWith('no-restricted-')) return [{ block, rule, entry: '', without: 'off' }];
  return options.map((option) => ({
    block,
    rule,
    entry: option.name ?? option.selector ?? `${option.object}.${option.property}`,
    without: [severity, ...options.filter((other) => other !== option)],
  }));
}

/** The reasons that a rule of ours can give; each is a promise of its own. */
export const ownMessages = blocks.flatMap(({ plugins }) =>
  Object.entries(plugins ?? {})
    .filter(([plugin]) => !plugin.startsWith('@'))
    .flatMap(([plugin, { rules }]) =>
      Object.entries(rules ?? {}).flatMap(([name, rule]) =>
        Object.entries(rule.meta?.messages ?? {}).map(([id, message]) => ({
          rule: `${plugin}/${name}`,
          id,
          message: String(message),
        })),
      ),
    ),
);
