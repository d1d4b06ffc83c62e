import { andThen, below, mapValue, refusal, type Outcome } from '#lib/kernel';
import type { CostLine } from './cost-line.js';
import { costRisk, type CostRisk, type CostRiskRequest, type RiskLine } from './risk/cost-risk.js';
import { rollUp, type CostRollUp, type RollUpRequest } from './roll-up.js';

export interface CostWithRiskRequest extends RollUpRequest {
  readonly risk: Omit<CostRiskRequest, 'currency' | 'lines'>;
}

export interface CostWithRisk {
  readonly rollUp: CostRollUp;
  /** Without tax, with overhead and profit. */
  readonly risk: CostRisk;
}

/**
 * Lines rolled up, their risk worked out, and the contingency set to P80 less the point unless the caller set one.
 */
export function costWithRisk(request: CostWithRiskRequest): Outcome<CostWithRisk> {
  const { risk, contingency, ...terms } = request;
  return andThen(rollUp(terms), (bare) => andThen(riskOf(bare, risk), (found) => {
    const allowance = contingency ?? { amount: found.contingency.amount };
    return mapValue(rollUp({ ...terms, contingency: allowance }), (rolled) => ({ rollUp: rolled, risk: found }));
  }));
}

function riskOf(bare: CostRollUp, risk: CostWithRiskRequest['risk']): Outcome<CostRisk> {
  const found = costRisk({ ...risk, currency: bare.currency, lines: riskLinesOf(bare) });
  return found.ok ? found : refusal(...below('/risk', found.problems));
}

/** The lines of a roll-up as the risk room takes them: each with its share of overhead and profit. */
export function riskLinesOf({ lines, direct, overhead, profit }: CostRollUp): readonly RiskLine[] {
  const sum = Number(direct.amount);
  const loading = sum === 0 ? 1 : (sum + Number(overhead.amount) + Number(profit.amount)) / sum;
  return lines.map((line) => riskLine(line, loading));
}

const riskLine = ({ code, title, amount, spread, extentExponent, partOrLabour }: CostLine, loading: number): RiskLine => ({
  code, title, amount: Number(amount.amount) * loading, spread, extentExponent, partOrLabour,
});
