import { riskDefaults, type RiskLine } from '#lib/costing';
import { normalQuantile, triangularQuantile, type ThreePoint } from '#lib/kernel';

/** Net cost that is not exceeded with each of four chances. */
export interface NetRange {
  readonly p10: number;
  readonly p50: number;
  readonly p80: number;
  readonly p90: number;
}

/**
 * Range of a sum of lines that grow with the extent, in closed form: the model of the simulation, without samples.
 *
 * Total = sum of A_i E^k_i U_i. Along the score of the extent the total is exact but for the U_i, which stand at their
 * conditional means; what labour and parts have in common and what each line has of its own is added as a normal
 * deviation, by the root of squares.
 *
 * Source: [COMMON-PRACTICE] first-order second-moment estimate of the model that `costRisk` samples.
 * Worked: libs/estimate/src/preview/preview.spec.ts, beside that simulation
 */
export function netRangeOf(lines: readonly RiskLine[], extent: ThreePoint): NetRange {
  const spreads = lines.map(spreadOf);
  const totalAt = (share: number): number =>
    totalAlongExtent(spreads, triangularQuantile(extent, share), normalQuantile(share));
  const middle = totalAt(0.5);
  const deviation = deviationBesideExtent(spreads, triangularQuantile(extent, 0.5));
  const at = (share: number): number => {
    const away = Math.hypot(totalAt(share) - middle, normalQuantile(share) * deviation);
    return share < 0.5 ? middle - away : middle + away;
  };
  return { p10: at(0.1), p50: middle, p80: at(0.8), p90: at(0.9) };
}

interface Spread {
  readonly line: RiskLine;
  readonly mean: number;
  readonly deviation: number;
}

function spreadOf(line: RiskLine): Spread {
  const { low, high } = line.spread ?? { low: 1, high: 1 };
  return {
    line,
    mean: (low + 1 + high) / 3,
    deviation: Math.sqrt((low * low + 1 + high * high - low - high - low * high) / 18),
  };
}

const grown = ({ line: { amount, extentExponent = 0 } }: Spread, growth: number): number =>
  amount * growth ** extentExponent;

const totalAlongExtent = (spreads: readonly Spread[], growth: number, score: number): number =>
  spreads.reduce(
    (sum, spread) =>
      sum + grown(spread, growth) * (spread.mean + riskDefaults.extentToRate * score * spread.deviation),
    0,
  );

function deviationBesideExtent(spreads: readonly Spread[], growth: number): number {
  const inCommon = { labour: 0, part: 0 };
  let ownVariance = 0;
  for (const spread of spreads) {
    const { partOrLabour } = spread.line;
    const deviation = grown(spread, growth) * spread.deviation;
    const shared = riskDefaults[partOrLabour];
    inCommon[partOrLabour] += Math.sqrt(shared) * deviation;
    ownVariance += Math.max(0, 1 - riskDefaults.extentToRate ** 2 - shared) * deviation ** 2;
  }
  return Math.sqrt(inCommon.labour ** 2 + inCommon.part ** 2 + ownVariance);
}
