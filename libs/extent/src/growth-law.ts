import { normalCdf, normalQuantile } from '#lib/kernel';
import type { EvidenceGrade } from './reading.js';
import type { Cite } from '#lib/provenance';

/**
 * Found area over recorded area, as a distribution. With `falseAlarmShare` nearly nothing is found, evenly spread up to
 * `falseAlarmUpTo`; else the factor is lognormal. Both are cut off at `most`, where the panel ends.
 */
export interface GrowthLaw {
  /** Share of jobs where less is found than was recorded. */
  readonly falseAlarmShare: number;
  /** Least ratio of found to recorded area in those jobs. */
  readonly falseAlarmFrom: number;
  /** Greatest ratio of found to recorded area in those jobs. */
  readonly falseAlarmUpTo: number;
  /** Median ratio in all other jobs. */
  readonly median: number;
  /** Scatter of the logarithm of the ratio. */
  readonly sigma: number;
  /** Deviation of the logarithm below the median, where it is another than above. */
  readonly sigmaBelow?: number;
  /** Greatest ratio that is reckoned with. */
  readonly most: number;
  /** An organisation's own found over recorded, rising; they weigh n/(n + 15). */
  readonly pairs: readonly number[];
}

export const growthCite: Cite = {
  source: 'TRADE-EXTENT-JUDGEMENT',
  note: 'judgement, anchored to repairs whose first and last extent were told and to growth of other repair trades; no frequency statistic of decks exists',
};

type GradeLaw = Pick<GrowthLaw, 'falseAlarmShare' | 'falseAlarmFrom' | 'falseAlarmUpTo' | 'median' | 'sigma'>;
const certainlySomething = { falseAlarmShare: 0, falseAlarmFrom: 0, falseAlarmUpTo: 0 };

/** Judgement: about half of the openings that were measured again, and a quarter to two fifths of the others, come out smaller. */
export const growthByGrade: Readonly<Record<EvidenceGrade, GradeLaw>> = {
  'opened-and-measured': { ...certainlySomething, median: 1, sigma: 0.07 },
  'mapped-with-plugs': { ...certainlySomething, median: 1.05, sigma: 0.2 },
  'sounded-and-metered': {
    falseAlarmShare: 0.05,
    falseAlarmFrom: 0.1,
    falseAlarmUpTo: 0.6,
    median: 1.2,
    sigma: 0.38,
  },
  'single-symptom': {
    falseAlarmShare: 0.08,
    falseAlarmFrom: 0,
    falseAlarmUpTo: 0.5,
    median: 1.8,
    sigma: 0.65,
  },
};

/** Above this size the errors of the several edges begin to average out. */
const ONE_EDGE_M2 = 0.5;
/** So many own jobs weigh as much as the judgement. */
const JUDGEMENT_PAIRS = 15;

/** What the law is made for: the area recorded, and the most that the panel lets it become. */
export interface GrowthOf {
  readonly grade: EvidenceGrade;
  readonly recordedM2: number;
  readonly mostM2: number;
  readonly pairs?: readonly number[];
}

export function growthLaw({ grade, recordedM2, mostM2, pairs = [] }: GrowthOf): GrowthLaw {
  const law = growthByGrade[grade];
  return {
    ...law,
    sigma: law.sigma * Math.min(1, (ONE_EDGE_M2 / recordedM2) ** 0.25),
    most: Math.max(1, mostM2 / recordedM2),
    pairs: [...pairs].sort((a, b) => a - b),
  };
}

/** The map of the readings is a distribution of its own: its three quantiles over the area that is cut to. */
export function mappedLaw(
  { p10, p50, p90 }: { readonly p10: number; readonly p50: number; readonly p90: number },
  { recordedM2, mostM2, pairs = [] }: Omit<GrowthOf, 'grade'>,
): GrowthLaw {
  const least = 0.02 * recordedM2;
  const middle = Math.max(least, p50);
  return {
    ...certainlySomething,
    median: middle / recordedM2,
    sigma: Math.log(Math.max(middle, p90) / middle) / P90_SCORE,
    sigmaBelow: Math.log(middle / Math.max(least, Math.min(p10, middle))) / P90_SCORE,
    most: Math.max(1, mostM2 / recordedM2),
    pairs: [...pairs].sort((a, b) => a - b),
  };
}

const P90_SCORE = 1.2815515655446004;

/**
 * Quantile of the growth: of the judged law, drawn towards the organisation's own pairs by n/(n + 15), held to the panel.
 *
 * Source: judgement; the weight is the usual shrinkage of a small sample towards what was believed before
 * Worked: libs/extent/src/growth-law.spec.ts
 */
export function growthQuantile(law: GrowthLaw, probability: number): number {
  return heldAndBlended(law, judgedQuantile(law, probability), probability);
}

function heldAndBlended(law: GrowthLaw, judged: number, probability: number): number {
  const weight = law.pairs.length / (law.pairs.length + JUDGEMENT_PAIRS);
  const blended =
    weight === 0 ? judged : (1 - weight) * judged + weight * pairQuantile(law.pairs, probability);
  return Math.min(law.most, blended);
}

function judgedQuantile(law: GrowthLaw, probability: number): number {
  if (law.falseAlarmShare === 0) return lognormalQuantile(law, probability);
  let [low, high] = [0, Math.max(law.falseAlarmUpTo, lognormalQuantile(law, 1 - 1e-9))];
  for (let halving = 0; halving < 48; halving += 1) {
    const middle = (low + high) / 2;
    if (judgedShare(law, middle) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function lognormalQuantile({ median, sigma, sigmaBelow = sigma }: GrowthLaw, probability: number): number {
  const score = normalQuantile(probability);
  return median * Math.exp((score < 0 ? sigmaBelow : sigma) * score);
}

/** Chance that no more is found than `factor` times the record, by the judged law without the panel's limit. */
export function judgedShare(law: GrowthLaw, factor: number): number {
  const { falseAlarmShare, falseAlarmFrom, falseAlarmUpTo, median, sigma, sigmaBelow = sigma } = law;
  const among = Math.min(1, Math.max(0, (factor - falseAlarmFrom) / (falseAlarmUpTo - falseAlarmFrom)));
  const spread = factor < median ? sigmaBelow : sigma;
  const grown =
    factor <= 0 ? 0 : spread === 0 ? Number(factor >= median) : normalCdf(Math.log(factor / median) / spread);
  return (falseAlarmShare === 0 ? 0 : falseAlarmShare * among) + (1 - falseAlarmShare) * grown;
}

/** Straight between the middles of the steps of the sample. */
function pairQuantile(pairs: readonly number[], probability: number): number {
  const place = Math.min(pairs.length - 1, Math.max(0, probability * pairs.length - 0.5));
  const below = Math.floor(place);
  const above = Math.min(pairs.length - 1, below + 1);
  return pairs[below] + (place - below) * (pairs[above] - pairs[below]);
}

const GRID = 480;

/**
 * The growth at the middles of so many equally likely steps, rising: the distribution function on a fine grid, read
 * backwards. It is `growthQuantile` for thousands of probabilities at once.
 */
export function growthLevels(law: GrowthLaw, count: number): Float64Array {
  const least = Math.min(
    law.falseAlarmShare === 0 ? Number.POSITIVE_INFINITY : 1e-3,
    lognormalQuantile(law, 1e-5),
  );
  const pace = Math.log(lognormalQuantile(law, 1 - 1e-6) / least) / GRID;
  const levels = new Float64Array(count);
  let [cell, fromShare] = [0, 0];
  let toShare = judgedShare(law, least);
  for (let level = 0; level < count; level += 1) {
    const probability = (level + 0.5) / count;
    while (toShare < probability && cell < GRID) {
      cell += 1;
      [fromShare, toShare] = [toShare, judgedShare(law, least * Math.exp(pace * cell))];
    }
    const within = toShare <= fromShare ? 1 : Math.min(1, (probability - fromShare) / (toShare - fromShare));
    const judged = cell === 0 ? least * within : least * Math.exp(pace * (cell - 1 + within));
    levels[level] = heldAndBlended(law, judged, probability);
  }
  return levels;
}

const STEPS = 400;

/** Mean of the growth with everything that holds and blends it. */
export const growthMean = (law: GrowthLaw): number =>
  Array.from({ length: STEPS }, (_, step) => growthQuantile(law, (step + 0.5) / STEPS)).reduce(
    (sum, factor) => sum + factor / STEPS,
    0,
  );

/** Chance that less is found than was recorded. */
export const shareBelowRecord = (law: GrowthLaw): number => judgedShare(law, 1);

/** Separate areas that nobody recorded, each of the size of a hand or two: a second variable, not a larger first one. */
export interface NewAreas {
  /** Mean of a Poisson count. */
  readonly expected: number;
  readonly eachM2: number;
}

const expectedNewAreas: Readonly<Record<EvidenceGrade, { readonly whole: number; readonly part: number }>> = {
  'opened-and-measured': { whole: 0.05, part: 0.05 },
  'mapped-with-plugs': { whole: 0.05, part: 0.1 },
  'sounded-and-metered': { whole: 0.15, part: 0.3 },
  'single-symptom': { whole: 0.3, part: 0.8 },
};
const NEW_AREA_M2 = 0.15;

/** Fewer where somebody sounded the whole deck than where only this part of it was looked at. */
export const newAreas = (grade: EvidenceGrade, soundedDeck: 'whole' | 'part'): NewAreas => ({
  expected: expectedNewAreas[grade][soundedDeck],
  eachM2: NEW_AREA_M2,
});
