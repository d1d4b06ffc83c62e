import { faultsIn } from '#lib/asking';
import { mapValue, problem, refusal, type Outcome, type Problem } from '#lib/kernel';
import { costWithRisk } from './cost-with-risk.js';
import { priceJobQuestions, type PriceJobRequest, type RiskTerms } from './questions.js';
import type { CostRisk } from './risk/cost-risk.js';
import { rollUp, type CostRollUp } from './roll-up.js';

export interface PricedJob {
  /** Lines, loadings and taxes. */
  readonly rollUp: CostRollUp;
  /** Spread of the price; absent when it was not asked for. */
  readonly risk?: CostRisk;
}

/** Lines to totals, and to a distribution where one is asked for. */
export function priceJob(request: PriceJobRequest): Outcome<PricedJob> {
  const faults = faultsIn(request, priceJobQuestions);
  const problems = [...faults, ...contradictionsIn(request)];
  if (problems.length > 0) return refusal(...problems);
  const { contingencyPercent, contingencyAmount, risk, ...terms } = request;
  const contingency =
    contingencyPercent !== undefined
      ? { percent: contingencyPercent }
      : contingencyAmount !== undefined
        ? { amount: contingencyAmount }
        : undefined;
  const stated = contingency === undefined ? terms : { ...terms, contingency };
  if (risk === undefined) return mapValue(rollUp(stated), (rolled) => ({ rollUp: rolled }));
  const { evidence, extentFactor, ...others } = risk;
  return mapValue(
    costWithRisk({
      ...stated,
      risk: { ...others, extent: extentFactor ?? { grade: evidence ?? 'single-symptom' } },
    }),
    ({ rollUp: rolled, risk: found }) => ({ rollUp: rolled, risk: found }),
  );
}

function contradictionsIn({
  contingencyPercent,
  contingencyAmount,
  risk,
}: PriceJobRequest): readonly Problem[] {
  const isTwice = contingencyPercent !== undefined && contingencyAmount !== undefined;
  return [
    ...(isTwice
      ? [
          problem('contradiction', '/contingencyAmount', {
            other: 'contingencyPercent',
            why: 'a contingency is a percentage or an amount, not both',
          }),
        ]
      : []),
    ...(risk === undefined ? [] : extentFaults(risk)),
  ];
}

function extentFaults({ evidence, extentFactor }: RiskTerms): readonly Problem[] {
  if (evidence === undefined && extentFactor === undefined) {
    return [problem('missing', '/risk/evidence', { expected: 'how the extent was found, or extentFactor' })];
  }
  if (evidence === undefined || extentFactor === undefined) return [];
  return [
    problem('contradiction', '/risk/extentFactor', {
      other: 'evidence',
      why: 'the extent factor follows from the evidence; state one of them',
    }),
  ];
}
