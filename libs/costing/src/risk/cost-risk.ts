import { answeredIn, faultsIn, saidOr } from '#lib/asking';
import { evidenceGrades, growthCite, growthLaw, growthQuantile, type EvidenceGrade } from '#lib/extent';
import { pointer, problem, refusal, success, type Outcome, type Problem, type ThreePoint } from '#lib/kernel';
import { currencyCodes, findCurrency, moneyFrom, moneyJson, type Currency, type MoneyJson } from '#lib/money';
import { assumed, type Figure } from '#lib/provenance';
import { isOrdered } from '#lib/takeoff';
import { fraction } from '#lib/units';
import type { AtExtent } from '../cost-line.js';
import { moneyNear } from '../exact.js';
import { faultsOfAtExtents } from '../line-faults.js';
import { informationValue, type InformationValue } from './information-value.js';
import { REPLICATES, commonShareQuestions, drawQuestions, type DrawTerms } from './risk-questions.js';
import { latinHypercube, type Design } from './latin-hypercube.js';
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
import { quantilesOf, type SpreadShape } from './spread-quantile.js';

export interface RiskLine {
  readonly code: string;
  readonly title: string;
  /** Likely amount at the recorded extent, in major units, with its share of overhead and profit. */
  readonly amount: number;
  readonly spread?: { readonly low: number; readonly high: number };
  readonly atExtents?: readonly AtExtent[];
  readonly partOrLabour: CommonCause;
}

export interface CostRiskRequest extends DrawTerms {
  readonly currency: string;
  readonly lines: readonly RiskLine[];
  readonly extent:
    | { readonly grade: EvidenceGrade }
    | { readonly low: number; readonly likely: number; readonly high: number };
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
  const strata = saidOr(drawQuestions.samples, request.samples) / REPLICATES;
  const design = latinHypercube(
    { variables: variableCount(model), strata, replicates: REPLICATES },
    saidOr(drawQuestions.seed, request.seed),
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
      : quantilesOf(extent, saidOr(drawQuestions.shape, shape), probabilities);

const modelOf = (request: CostRiskRequest): RiskModel =>
  riskModel(request.lines.map(modelLine), {
    extent: extentTableOf(request),
    shape: saidOr(drawQuestions.shape, request.shape),
    extentToRate: saidOr(drawQuestions.extentToRate, request.extentToRate),
    commonShare: commonSharesOf(request),
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
    seed: saidOr(drawQuestions.seed, request.seed),
    shape: saidOr(drawQuestions.shape, request.shape),
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

/** The extent where a grade alone stands for it, and what rates have in common where nobody said. */
function assumptionsOfRisk(request: CostRiskRequest): readonly Figure[] {
  const { extentToRate, commonShare } = request;
  return [
    ...extentAssumed(request),
    answeredIn(drawQuestions.extentToRate, extentToRate, '/extentToRate'),
    answeredIn(commonShareQuestions.labour, commonShare?.labour, '/commonShare/labour'),
    answeredIn(commonShareQuestions.part, commonShare?.part, '/commonShare/part'),
  ].filter(({ origin }) => origin.kind === 'assumed');
}

function extentAssumed(request: CostRiskRequest): readonly Figure[] {
  if (!('grade' in request.extent)) return [];
  const { low, likely, high } = extentOf(request);
  const because = `evidence grade ${request.extent.grade}`;
  return [
    assumed('1', fraction(likely), 'extent factor', { at: '/extent', because, cite: growthCite, low, high }),
  ];
}

function commonSharesOf({ commonShare }: CostRiskRequest): Readonly<Record<CommonCause, number>> {
  return {
    labour: saidOr(commonShareQuestions.labour, commonShare?.labour),
    part: saidOr(commonShareQuestions.part, commonShare?.part),
  };
}

function faultsOf(request: CostRiskRequest, currency: Currency): readonly Problem[] {
  const answered = faultsIn(request, drawQuestions);
  const areRight = (...places: readonly string[]): boolean =>
    !answered.some(({ at }) => places.some((place) => at.startsWith(place)));
  return [
    ...(request.lines.length === 0 ? [problem('too-few', '/lines', { count: 0, least: 1 })] : []),
    ...answered,
    ...(areRight('/samples') ? replicateFaults(request) : []),
    ...extentFaults(request.extent),
    ...(areRight('/extentToRate', '/commonShare') ? correlationFaults(request) : []),
    ...request.lines.flatMap((line, index) => lineFaults(line, pointer('/lines', index))),
    ...amountFault(request.stageZeroCost, '/stageZeroCost', currency),
    ...amountFault(request.worthOfRepair, '/worthOfRepair', currency),
  ];
}

const replicateFaults = ({ samples = REPLICATES }: CostRiskRequest): readonly Problem[] =>
  samples % REPLICATES === 0
    ? []
    : [problem('out-of-range', '/samples', { value: samples, range: `a multiple of ${REPLICATES}` })];

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

/** What rates share with the extent and among themselves is together no more than all of their variance. */
function correlationFaults(request: CostRiskRequest): readonly Problem[] {
  const withExtent = saidOr(drawQuestions.extentToRate, request.extentToRate);
  const most = 1 - withExtent ** 2;
  return Object.entries(commonSharesOf(request))
    .filter(([, share]) => share > most + 1e-12)
    .map(([common]) =>
      problem('contradiction', pointer('/commonShare', common), {
        other: '/extentToRate',
        why: `beside a correlation of ${withExtent} with the extent, rates have at most ${most} in common`,
      }),
    );
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
