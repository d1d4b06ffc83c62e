import { belowRules } from './below-rules.js';
import type { CautionContext, CautionRule, CautionSeverity, ProcessCaution } from './caution-context.js';
import { statementsFor } from './hazard-statements.js';
import { healthRules } from './health-rules.js';
import { siteRules } from './site-rules.js';
import { workRules } from './work-rules.js';

export const cautionRules: readonly CautionRule[] = [
  ...healthRules,
  ...siteRules,
  ...belowRules,
  ...workRules,
];

const severities: readonly CautionSeverity[] = ['danger', 'warning', 'caution'];

/** The cautions that this job's own materials, steps and conditions call for, the worst first; each says what called it. */
export function cautionsFor(context: CautionContext): readonly ProcessCaution[] {
  const called = cautionRules.flatMap((rule) => {
    const because = rule.when(context);
    return because === undefined ? [] : [{ rule, because }];
  });
  const ordered = called.sort(
    (a, b) =>
      severities.indexOf(a.rule.severity) - severities.indexOf(b.rule.severity) || b.rule.harm - a.rule.harm,
  );
  return ordered.map(({ rule, because }) => written(rule, because, context));
}

function written(
  { code, severity, kind, text, protection = [], hazards, decides, source }: CautionRule,
  because: string,
  context: CautionContext,
): ProcessCaution {
  return {
    code,
    severity,
    kind,
    text,
    because,
    protection,
    hazards: statementsFor(hazards?.(context) ?? []),
    ...(decides === undefined ? {} : { decides }),
    source,
  };
}
