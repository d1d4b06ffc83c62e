import { normalCdf } from '#lib/kernel';
import type { AtExtent } from '../cost-line.js';
import { amountFactorAt } from './at-extents.js';
import type { Design } from './latin-hypercube.js';
import { quantilesOf, type SpreadShape } from './spread-quantile.js';

/** What moves lines together besides the extent. */
export type CommonCause = 'labour' | 'part';

export interface ModelLine {
  readonly code: string;
  readonly title: string;
  /** Likely amount at the recorded extent, with loadings. */
  readonly amount: number;
  readonly spread: { readonly low: number; readonly high: number };
  readonly atExtents: readonly AtExtent[];
  readonly common: CommonCause;
}

export interface ModelTerms {
  /** Found over recorded area at each probability. */
  readonly extent: (probabilities: Float64Array) => Float64Array;
  readonly shape: SpreadShape;
  /** Correlation of every unit rate's normal score with that of the extent. */
  readonly extentToRate: number;
  /** Share of a rate's variance that all labour, or all parts, have in common. */
  readonly commonShare: Readonly<Record<CommonCause, number>>;
}

/**
 * Total cost as a function of independent standard normal scores.
 *
 * Total = sum of A_i g_i(E) U_i, with E the extent factor, g_i what planning line i again at other extents gave, and U_i
 * the rate factor of line i; E and U_i are quantiles of their normal scores. The score of U_i is a Z_E + b Z_common + c Z_i with a2 + b2 + c2 = 1: every line
 * moves with the extent, labour moves with labour and parts with parts, and the rest is its own.
 */
export interface RiskModel {
  readonly lines: readonly ModelLine[];
  readonly terms: ModelTerms;
  readonly extentTable: Float64Array;
  /** Quantile table of each line's rate factor; undefined where the rate is certain. */
  readonly rateTables: readonly (Float64Array | undefined)[];
  readonly loads: readonly Loads[];
}

interface Loads {
  readonly extent: number;
  readonly common: number;
  readonly own: number;
}

const WIDEST_SCORE = 7;
const PER_SCORE = 64;
const TABLE_LENGTH = 2 * WIDEST_SCORE * PER_SCORE + 2;

const shares = Float64Array.from({ length: TABLE_LENGTH }, (_, index) =>
  normalCdf(index / PER_SCORE - WIDEST_SCORE),
);

export function riskModel(lines: readonly ModelLine[], terms: ModelTerms): RiskModel {
  const tables = new Map<string, Float64Array>();
  const rateTable = ({ spread: { low, high } }: ModelLine): Float64Array | undefined => {
    if (low === 1 && high === 1) return undefined;
    const key = `${low}/${high}`;
    const known = tables.get(key) ?? quantilesOf({ low, likely: 1, high }, terms.shape, shares);
    tables.set(key, known);
    return known;
  };
  return {
    lines,
    terms,
    extentTable: terms.extent(shares),
    rateTables: lines.map(rateTable),
    loads: lines.map(({ common }) => loadsOf(terms, common)),
  };
}

function loadsOf({ extentToRate, commonShare }: ModelTerms, common: CommonCause): Loads {
  const shared = Math.sqrt(commonShare[common]);
  return {
    extent: extentToRate,
    common: shared,
    own: Math.sqrt(Math.max(0, 1 - extentToRate ** 2 - shared ** 2)),
  };
}

/** Straight between table points; the step of 1/64 of a deviation keeps the error below 10^-4 of the range. */
function atScore(table: Float64Array, score: number): number {
  const place = (Math.min(WIDEST_SCORE, Math.max(-WIDEST_SCORE, score)) + WIDEST_SCORE) * PER_SCORE;
  const cell = Math.floor(place);
  return table[cell] + (place - cell) * (table[cell + 1] - table[cell]);
}

/** Order of the independent scores: extent, labour in common, parts in common, then each uncertain line's own. */
export const EXTENT = 0;
export const commonIndex: Readonly<Record<CommonCause, number>> = { labour: 1, part: 2 };
export const FIRST_OWN = 3;

/** Place of each line's own score; -1 where its rate is certain. */
export function ownIndices({ rateTables }: RiskModel): readonly number[] {
  let next = FIRST_OWN;
  return rateTables.map((table) => {
    if (table === undefined) return -1;
    next += 1;
    return next - 1;
  });
}

export const variableCount = (model: RiskModel): number =>
  FIRST_OWN + model.rateTables.filter((table) => table !== undefined).length;

/** The total at one set of scores, of which a tornado turns one at a time; `own` is where each line's own score stands. */
export function totalAt(model: RiskModel, own: readonly number[], scores: readonly number[]): number {
  const extent = atScore(model.extentTable, scores[EXTENT]);
  return model.lines.reduce((sum, line, index) => {
    const table = model.rateTables[index];
    const load = model.loads[index];
    const rate =
      table === undefined
        ? 1
        : atScore(
            table,
            load.extent * scores[EXTENT] +
              load.common * scores[commonIndex[line.common]] +
              load.own * scores[own[index]],
          );
    return sum + line.amount * amountFactorAt(line.atExtents, extent) * rate;
  }, 0);
}

/** The total of every sample of a design. */
export function simulate(model: RiskModel, design: Design): Float64Array {
  const count = design.replicates * design.strata;
  const totals = new Float64Array(count);
  const extents = Float64Array.from({ length: count }, (_, i) =>
    atScore(model.extentTable, design.scores[design.levels[EXTENT][i]]),
  );
  const growths = new Map<string, Float64Array>();
  const own = ownIndices(model);
  const shared = { labour: sharedScores(model, design, 'labour'), part: sharedScores(model, design, 'part') };
  model.lines.forEach((line, index) => {
    const key = JSON.stringify(line.atExtents);
    const factor = growths.get(key) ?? extents.map((extent) => amountFactorAt(line.atExtents, extent));
    growths.set(key, factor);
    const table = model.rateTables[index];
    if (table === undefined) addCertain(totals, line.amount, factor);
    else
      addUncertain(
        totals,
        factor,
        { line, table, load: model.loads[index], own: own[index], shared: shared[line.common] },
        design,
      );
  });
  return totals;
}

function addCertain(totals: Float64Array, amount: number, factor: Float64Array): void {
  for (let i = 0; i < totals.length; i += 1) totals[i] += amount * factor[i];
}

interface UncertainLine {
  readonly line: ModelLine;
  readonly table: Float64Array;
  readonly load: Loads;
  readonly own: number;
  /** Of every sample, what the extent and the common cause put into the score. */
  readonly shared: Float64Array;
}

function sharedScores({ terms }: RiskModel, { scores, levels }: Design, common: CommonCause): Float64Array {
  const load = loadsOf(terms, common);
  const [extentLevels, commonLevels] = [levels[EXTENT], levels[commonIndex[common]]];
  return Float64Array.from(
    extentLevels,
    (level, i) => load.extent * scores[level] + load.common * scores[commonLevels[i]],
  );
}

function addUncertain(
  totals: Float64Array,
  factor: Float64Array,
  { line, table, load, own, shared }: UncertainLine,
  { scores, levels }: Design,
): void {
  const ownLevels = levels[own];
  for (let i = 0; i < totals.length; i += 1) {
    const score = shared[i] + load.own * scores[ownLevels[i]];
    totals[i] += line.amount * factor[i] * atScore(table, score);
  }
}
