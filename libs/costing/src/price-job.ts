import { mapValue, problem, refusal, type Outcome, type Problem, type ThreePoint } from '#lib/kernel';
import type { EvidenceGrade } from '#lib/extent';
import { costWithRisk } from './cost-with-risk.js';
import type { CostRisk, CostRiskRequest } from './risk/cost-risk.js';
import { rollUp, type CostRollUp, type RollUpRequest } from './roll-up.js';

export interface RiskTerms extends Omit<CostRiskRequest, 'currency' | 'lines' | 'extent'> {
  /** How well the extent is known; or the factors themselves. */
  readonly evidence?: EvidenceGrade;
  readonly extentFactor?: ThreePoint;
}

export interface PriceJobRequest extends Omit<RollUpRequest, 'contingency'> {
  /** Absent, both: P80 less the point where the risk is asked for, else none. */
  readonly contingencyPercent?: string;
  readonly contingencyAmount?: string;
  readonly risk?: RiskTerms;
}

export interface PricedJob {
  readonly rollUp: CostRollUp;
  readonly risk?: CostRisk;
}

/** Lines to totals, and to a distribution where one is asked for. */
export function priceJob(request: PriceJobRequest): Outcome<PricedJob> {
  const problems = faultsOf(request);
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

function faultsOf({ contingencyPercent, contingencyAmount, risk }: PriceJobRequest): readonly Problem[] {
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
