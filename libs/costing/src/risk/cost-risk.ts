import { evidenceGrades, growthCite, growthLaw, growthQuantile, type EvidenceGrade } from '#lib/extent';
import { pointer, problem, refusal, success, type Outcome, type Problem, type ThreePoint } from '#lib/kernel';
import { currencyCodes, findCurrency, moneyFrom, moneyJson, type Currency, type MoneyJson } from '#lib/money';
import { assumed, type Cite, type Figure } from '#lib/provenance';
import { isOrdered } from '#lib/takeoff';
import { fraction } from '#lib/units';
import type { AtExtent } from '../cost-line.js';
import { moneyNear } from '../exact.js';
import { faultsOfAtExtents } from '../line-faults.js';
import { informationValue, type InformationValue } from './information-value.js';
import { latinHypercube, type Design } from './latin-hypercube.js';
import { riskDefaults } from './risk-defaults.js';
import {
  EXTENT,
  commonIndex,
  ownIndices,
  riskModel,
  simulate,
  totalAt,
  variableCount,
  type CommonCause,
  type ModelLine,
  type RiskModel,
} from './risk-model.js';
import { contingencyAtP80 } from './risk-formulas.js';
import {
  binsOfLevels,
  deviation,
  histogram,
  mean,
  quantileError,
  quantileOfSorted,
  varianceShare,
  type HistogramBar,
} from './sample-statistics.js';
import { quantilesOf, spreadShapes, type SpreadShape } from './spread-quantile.js';

export interface RiskLine {
  readonly code: string;
  readonly title: string;
  /** Likely amount at the recorded extent, in major units, with its share of overhead and profit. */
  readonly amount: number;
  readonly spread?: { readonly low: number; readonly high: number };
  readonly atExtents?: readonly AtExtent[];
  readonly partOrLabour: CommonCause;
}

export interface CostRiskRequest {
  readonly currency: string;
  readonly lines: readonly RiskLine[];
  readonly extent:
    | { readonly grade: EvidenceGrade }
    | { readonly low: number; readonly likely: number; readonly high: number };
  /** A multiple of ten; ten thousand when absent. */
  readonly samples?: number;
  readonly seed?: number;
  readonly shape?: SpreadShape;
  readonly extentToRate?: number;
  readonly commonShare?: Readonly<Partial<Record<CommonCause, number>>>;
  /** Price of "stage 0: open and map"; its worth is reported when given. */
  readonly stageZeroCost?: string;
  /** What the repair is worth to the owner; above it he would rather not repair. */
  readonly worthOfRepair?: string;
}

export interface Driver {
  /** Code of what moves the price. */
  readonly code: string;
  /** Name of what moves the price. */
  readonly title: string;
  /** Price when this alone is at its low end (P10) and everything else at its median. */
  readonly atP10: MoneyJson;
  /** Price when this alone is at its high end. */
  readonly atP90: MoneyJson;
  /** Price from its low to its high end. */
  readonly swing: MoneyJson;
  /** Of the variance, first order. */
  readonly varianceShare: number;
}

export interface CostRisk {
  /** Currency that the spread is in. */
  readonly currency: string;
  /** Jobs that were drawn. */
  readonly samples: number;
  /** Seed of the draw; the same seed gives the same cents. */
  readonly seed: number;
  /** How each line was drawn between its ends. */
  readonly shape: SpreadShape;
  /** Extent found over extent recorded, as three points. */
  readonly extent: ThreePoint;
  /** Price at the likely quantities. */
  readonly point: MoneyJson;
  /** Mean of the drawn prices. */
  readonly mean: MoneyJson;
  /** Standard deviation of the drawn prices. */
  readonly deviation: MoneyJson;
  /** Drawn price that one in ten stays below. */
  readonly p10: MoneyJson;
  /** Drawn price that half stay below. */
  readonly p50: MoneyJson;
  /** Drawn price that eight in ten stay below. */
  readonly p80: MoneyJson;
  /** Drawn price that nine in ten stay below. */
  readonly p90: MoneyJson;
  /** How uncertain that last price is from drawing. */
  readonly p90StandardError: MoneyJson;
  /** The same as a share of the price. */
  readonly p90RelativeError: number;
  /** P80 minus the point, none when the point already covers it. */
  readonly contingency: MoneyJson;
  /** How likely the job costs no more than the point. */
  readonly shareAtPoint: number;
  /** Lines and facts that move the price most. */
  readonly drivers: readonly Driver[];
  /** Of the variance, by drivers acting together. */
  readonly jointShare: number;
  /** Drawn prices in bars. */
  readonly histogram: readonly HistogramBar[];
  /** What opening up first would be worth. */
  readonly information: InformationValue;
  /** Spreads that nobody stated. */
  readonly assumptions: readonly Figure[];
}

const REPLICATES = 10;
const MOST_SAMPLES = 200_000;
const BARS = 40;
const P90_SCORE = 1.2815515655446004;

/** The cost as a distribution: hidden extent and unit rates together, reproducible by its seed. */
export function costRisk(request: CostRiskRequest): Outcome<CostRisk> {
  const currency = findCurrency(request.currency);
  if (currency === undefined) {
    return refusal(
      problem('not-one-of', '/currency', { value: request.currency, choices: currencyCodes.join(', ') }),
    );
  }
  const problems = faultsOf(request, currency);
  if (problems.length > 0) return refusal(...problems);
  const model = modelOf(request);
  const strata = (request.samples ?? riskDefaults.samples) / REPLICATES;
  const design = latinHypercube(
    { variables: variableCount(model), strata, replicates: REPLICATES },
    request.seed ?? riskDefaults.seed,
  );
  return success(described(request, { model, design, totals: simulate(model, design), currency }));
}

interface Simulated {
  readonly model: RiskModel;
  readonly design: Design;
  readonly totals: Float64Array;
  readonly currency: Currency;
}

/** The factors as stated; of a grade, those at P10, P50 and P90. */
const extentOf = ({ extent }: CostRiskRequest): ThreePoint =>
  'grade' in extent
    ? {
        low: growthQuantile(lawOf(extent.grade), 0.1),
        likely: growthQuantile(lawOf(extent.grade), 0.5),
        high: growthQuantile(lawOf(extent.grade), 0.9),
      }
    : { low: extent.low, likely: extent.likely, high: extent.high };

/** Of lines alone neither the area nor the panel is known: the law of a small one that nothing holds. */
const lawOf = (grade: EvidenceGrade) =>
  growthLaw({ grade, recordedM2: 0.5, mostM2: Number.POSITIVE_INFINITY });

const extentTableOf =
  ({ extent, shape }: CostRiskRequest) =>
  (probabilities: Float64Array): Float64Array =>
    'grade' in extent
      ? probabilities.map((probability) => growthQuantile(lawOf(extent.grade), probability))
      : quantilesOf(extent, shape ?? riskDefaults.shape, probabilities);

const modelOf = (request: CostRiskRequest): RiskModel =>
  riskModel(request.lines.map(modelLine), {
    extent: extentTableOf(request),
    shape: request.shape ?? riskDefaults.shape,
    extentToRate: request.extentToRate ?? riskDefaults.extentToRate,
    commonShare: {
      labour: request.commonShare?.labour ?? riskDefaults.labour,
      part: request.commonShare?.part ?? riskDefaults.part,
    },
  });

const modelLine = ({ code, title, amount, spread, atExtents, partOrLabour }: RiskLine): ModelLine => ({
  code,
  title,
  amount,
  spread: spread ?? { low: 1, high: 1 },
  atExtents: atExtents ?? [],
  common: partOrLabour,
});

function described(request: CostRiskRequest, simulated: Simulated): CostRisk {
  const { design, totals, currency } = simulated;
  const sorted = totals.slice().sort();
  const near = (major: number): MoneyJson => moneyJson(moneyNear(major, currency, 'half-away-from-zero'));
  const at = (p: number): number => quantileOfSorted(sorted, p);
  const point = request.lines.reduce((sum, { amount }) => sum + amount, 0);
  const error = quantileError(totals, design, 0.9);
  const { drivers, jointShare } = driversOf(simulated, near);
  return {
    currency: currency.code,
    samples: totals.length,
    seed: request.seed ?? riskDefaults.seed,
    shape: request.shape ?? riskDefaults.shape,
    extent: extentOf(request),
    point: near(point),
    mean: near(mean(totals)),
    deviation: near(deviation(totals)),
    p10: near(at(0.1)),
    p50: near(at(0.5)),
    p80: near(at(0.8)),
    p90: near(at(0.9)),
    p90StandardError: near(error),
    p90RelativeError: at(0.9) === 0 ? 0 : error / at(0.9),
    contingency: near(contingencyAtP80.evaluate({ p80: fraction(at(0.8)), point: fraction(point) })),
    shareAtPoint: shareAtMost(sorted, point),
    drivers,
    jointShare,
    histogram: histogram(sorted, BARS),
    information: informationValue({
      totals,
      extentLevels: design.levels[EXTENT],
      currency,
      stageZeroCost: major(request.stageZeroCost, currency),
      worthOfRepair: major(request.worthOfRepair, currency),
    }),
    assumptions: assumptionsOfRisk(request),
  };
}

const major = (text: string | undefined, currency: Currency): number | undefined =>
  text === undefined || moneyFrom(text, currency) === undefined ? undefined : Number(text);

/** Share of the samples that cost no more, to a millionth of the amount. */
const shareAtMost = (sorted: Float64Array, amount: number): number =>
  sorted.filter((total) => total <= amount * (1 + 1e-6)).length / sorted.length;

interface NamedVariable {
  readonly index: number;
  readonly code: string;
  readonly title: string;
}

function variablesOf(model: RiskModel): readonly NamedVariable[] {
  const own = ownIndices(model);
  return [
    { index: EXTENT, code: 'extent', title: 'Hidden extent' },
    { index: commonIndex.labour, code: 'labour-in-common', title: 'Hours, all labour alike' },
    { index: commonIndex.part, code: 'parts-in-common', title: 'Use and price, all parts alike' },
    ...model.lines.flatMap(({ code, title }, line) =>
      own[line] < 0 ? [] : [{ index: own[line], code, title }],
    ),
  ];
}

function driversOf(
  { model, design, totals }: Simulated,
  near: (major: number) => MoneyJson,
): { readonly drivers: readonly Driver[]; readonly jointShare: number } {
  const whole = { mean: mean(totals), variance: deviation(totals) ** 2 };
  const own = ownIndices(model);
  const bins = binsOfLevels(totals.length);
  const medians = new Array<number>(variableCount(model)).fill(0);
  const drivers = variablesOf(model)
    .map(({ index, code, title }) => {
      const low = totalAt(model, own, medians.with(index, -P90_SCORE));
      const high = totalAt(model, own, medians.with(index, P90_SCORE));
      const share = varianceShare(totals, design.levels[index], { ...whole, bins });
      return { code, title, low, high, share };
    })
    .sort((a, b) => b.share - a.share || b.high - b.low - (a.high - a.low));
  const explained = drivers.reduce((sum, { share }) => sum + share, 0);
  return {
    drivers: drivers.map(({ code, title, low, high, share }) => ({
      code,
      title,
      atP10: near(low),
      atP90: near(high),
      swing: near(high - low),
      varianceShare: share,
    })),
    jointShare: whole.variance <= 0 ? 0 : Math.max(0, 1 - explained),
  };
}

const judged: Cite = { source: 'RISK-JUDGEMENT' };

function assumptionsOfRisk(request: CostRiskRequest): readonly Figure[] {
  const figures: Figure[] = [];
  const add = (at: string, value: number, meaning: string): void => {
    figures.push(assumed('1', fraction(value), meaning, { at, because: 'nothing was stated', cite: judged }));
  };
  if ('grade' in request.extent) {
    const { low, likely, high } = extentOf(request);
    figures.push(
      assumed('1', fraction(likely), 'extent factor', {
        at: '/extent',
        because: `evidence grade ${request.extent.grade}`,
        cite: growthCite,
        low,
        high,
      }),
    );
  }
  if (request.extentToRate === undefined)
    add('/extentToRate', riskDefaults.extentToRate, 'correlation of unit rates with the extent');
  if (request.commonShare?.labour === undefined)
    add('/commonShare/labour', riskDefaults.labour, 'share of variance that labour has in common');
  if (request.commonShare?.part === undefined)
    add('/commonShare/part', riskDefaults.part, 'share of variance that parts have in common');
  return figures;
}

function faultsOf(request: CostRiskRequest, currency: Currency): readonly Problem[] {
  const samples = request.samples ?? riskDefaults.samples;
  const isSampleCount = Number.isInteger(samples / REPLICATES) && samples >= 100 && samples <= MOST_SAMPLES;
  return [
    ...(request.lines.length === 0 ? [problem('too-few', '/lines', { count: 0, least: 1 })] : []),
    ...(isSampleCount
      ? []
      : [
          problem('out-of-range', '/samples', {
            value: samples,
            range: `a multiple of ${REPLICATES} from 100 to ${MOST_SAMPLES}`,
          }),
        ]),
    ...(Number.isSafeInteger(request.seed ?? 1)
      ? []
      : [problem('not-a-number', '/seed', { value: String(request.seed), hint: ', whole' })]),
    ...(spreadShapes.includes(request.shape ?? 'triangular')
      ? []
      : [
          problem('not-one-of', '/shape', { value: String(request.shape), choices: spreadShapes.join(', ') }),
        ]),
    ...extentFaults(request.extent),
    ...correlationFaults(request),
    ...request.lines.flatMap((line, index) => lineFaults(line, pointer('/lines', index))),
    ...amountFault(request.stageZeroCost, '/stageZeroCost', currency),
    ...amountFault(request.worthOfRepair, '/worthOfRepair', currency),
  ];
}

function extentFaults(extent: CostRiskRequest['extent']): readonly Problem[] {
  if ('grade' in extent) {
    if (evidenceGrades.includes(extent.grade)) return [];
    return [
      problem('not-one-of', '/extent/grade', {
        value: extent.grade,
        choices: evidenceGrades.join(', '),
      }),
    ];
  }
  if (extent.low >= 0 && isOrdered(extent)) return [];
  return [
    problem('out-of-range', '/extent', {
      value: `${extent.low}, ${extent.likely}, ${extent.high}`,
      range: 'three factors of 0 or more in rising order',
    }),
  ];
}

function correlationFaults({ extentToRate, commonShare }: CostRiskRequest): readonly Problem[] {
  const withExtent = extentToRate ?? riskDefaults.extentToRate;
  const inRange = (value: number): boolean => value >= 0 && value <= 1;
  const faults = inRange(withExtent)
    ? []
    : [problem('out-of-range', '/extentToRate', { value: withExtent, range: '0 to 1' })];
  const shares = (['labour', 'part'] as const).flatMap((common) => {
    const share = commonShare?.[common] ?? riskDefaults[common];
    const at = pointer('/commonShare', common);
    const most = 1 - withExtent ** 2;
    if (!inRange(share)) return [problem('out-of-range', at, { value: share, range: '0 to 1' })];
    return share <= most + 1e-12
      ? []
      : [
          problem('contradiction', at, {
            other: '/extentToRate',
            why: `beside a correlation of ${withExtent} with the extent, rates have at most ${most} in common`,
          }),
        ];
  });
  return [...faults, ...shares];
}

function lineFaults({ amount, spread, atExtents }: RiskLine, at: string): readonly Problem[] {
  return [
    ...(Number.isFinite(amount) && amount >= 0
      ? []
      : [problem('out-of-range', pointer(at, 'amount'), { value: amount, range: '0 or more' })]),
    ...faultsOfAtExtents(atExtents, pointer(at, 'atExtents')),
    ...(spread === undefined || (spread.low >= 0 && isOrdered({ ...spread, likely: 1 }))
      ? []
      : [
          problem('out-of-range', pointer(at, 'spread'), {
            value: `${spread.low} to ${spread.high}`,
            range: 'from 0 up to 1 at the low end, 1 or more at the high end',
          }),
        ]),
  ];
}

const amountFault = (text: string | undefined, at: string, currency: Currency): readonly Problem[] => {
  if (text === undefined) return [];
  const read = moneyFrom(text, currency);
  return read !== undefined && read.minor >= 0n
    ? []
    : [problem('not-a-decimal', at, { value: text, most: currency.minorDigits })];
};
