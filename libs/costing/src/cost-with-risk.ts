import { below, mapValue, refusal, type Outcome } from '#lib/kernel';
import { exactMoney, moneyJson, proportionOf, type MoneyJson } from '#lib/money';
import type { CostLine } from './cost-line.js';
import { commercialRounding } from './exact.js';
import { costRisk, type CostRisk, type CostRiskRequest, type RiskLine } from './risk/cost-risk.js';
import { rollUpDeciding, type CostRollUp, type RollUpRequest } from './roll-up.js';

export interface CostWithRiskRequest extends RollUpRequest {
  readonly risk: Omit<CostRiskRequest, 'currency' | 'lines'>;
  /** Codes of the lines up to where the extent is known; what they cost is then what that knowledge costs. */
  readonly stageZeroLines?: readonly string[];
}

export interface CostWithRisk {
  /** Before any contingency. */
  readonly bare: CostRollUp;
  readonly rollUp: CostRollUp;
  /** Without tax, with overhead and profit. */
  readonly risk: CostRisk;
}

/**
 * Lines rolled up, their risk worked out, and the contingency set to P80 less the point unless the caller set one.
 */
export function costWithRisk({
  risk,
  contingency,
  stageZeroLines,
  ...terms
}: CostWithRiskRequest): Outcome<CostWithRisk> {
  return mapValue(
    rollUpDeciding(terms, (bare) => {
      const stageZero =
        stageZeroLines === undefined
          ? {}
          : { stageZeroCost: withShareOfLoadings(bare, new Set(stageZeroLines)).amount };
      return mapValue(riskOf(bare, { ...stageZero, ...risk }), (found) => ({
        risk: found,
        contingency: contingency ?? { amount: found.contingency.amount },
      }));
    }),
    ({ bare, rollUp, risk: found }) => ({ bare, rollUp, risk: found }),
  );
}

function riskOf(bare: CostRollUp, risk: CostWithRiskRequest['risk']): Outcome<CostRisk> {
  const found = costRisk({ ...risk, currency: bare.currency, lines: riskLinesOf(bare) });
  return found.ok ? found : refusal(...below('/risk', found.problems));
}

/** Some of the lines of a roll-up with their share of overhead and profit. */
export function withShareOfLoadings(
  { lines, direct, net }: CostRollUp,
  codes: ReadonlySet<string>,
): MoneyJson {
  const chosen = lines.reduce(
    (sum, { code, amount }) => (codes.has(code) ? sum + exactMoney(amount).minor : sum),
    0n,
  );
  const whole = exactMoney(direct);
  return moneyJson(
    whole.minor === 0n ? whole : proportionOf(exactMoney(net), chosen, whole.minor, commercialRounding),
  );
}

/** The lines of a roll-up as the risk room takes them: each with its share of overhead and profit, which ride on every line alike. */
export function riskLinesOf(rollUp: CostRollUp): readonly RiskLine[] {
  const loading = loadingOf(rollUp);
  return rollUp.lines.map((line) => riskLine(line, loading));
}

/** Overhead and profit as a factor of every line; one where there are no lines to carry them. */
export function loadingOf({ direct, overhead, profit }: CostRollUp): number {
  const sum = Number(direct.amount);
  return sum === 0 ? 1 : (sum + Number(overhead.amount) + Number(profit.amount)) / sum;
}

const riskLine = (
  { code, title, amount, spread, atExtents, partOrLabour }: CostLine,
  loading: number,
): RiskLine => ({
  code,
  title,
  amount: Number(amount.amount) * loading,
  spread,
  atExtents,
  partOrLabour,
});
