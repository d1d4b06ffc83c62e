import { tiedBelow } from '../map/bivariate.js';
import { chanceOf, momentsOf, type Normal } from '../map/posterior.js';
import type { Evidence, ReadingOdds } from '../map/reading-odds.js';
import { foreseen } from './kinds.js';
import { quickCdf } from './normal-table.js';
import type { ReadingKind } from './questions.js';
import type { Standing } from './standing.js';

/** Below this correlation one place says nothing of the other. */
const LEAST_CORRELATION = 0.05;

/**
 * The share of the doubt at each node that one reading elsewhere is expected to remove: the variance, over the two answers of
 * the reading, of the chance that the node is bad, as a share of p (1 - p). That is the squared correlation of "the node is bad"
 * with "the reading says bad", and 1 for a plug at its own place.
 *
 * Each part of the map is normal there, so that the covariance of both is that of two normal numbers below their limits,
 * times how much likelier the answer is over bad core; the parts are mixed by their weights.
 * Source: [RAIFFA-SCHLAIFER-1961] what is expected of a reading before it is made; [DREZNER-WESOLOWSKY-1990]
 * Worked: libs/extent/src/next/telling.spec.ts
 */
export function toldBy(
  kind: ReadingKind,
  node: number,
  standings: readonly Standing[],
  { odds, chance, isAtStake }: Asked,
): Float64Array {
  const parts = standings.map((standing) => readAt(standing, node, kind, odds));
  const saysBad = parts.reduce((sum, { weight, chance: own }) => sum + weight * own, 0);
  const answerVariance = saysBad * (1 - saysBad);
  return chance.map((before, other) => {
    const own = before * (1 - before);
    if (own < 1e-9 || !isAtStake(other)) return 0;
    let both = 0;
    for (const part of parts) both += part.weight * bothBad(part, other);
    return Math.min(1, (both - before * saysBad) ** 2 / (own * answerVariance));
  });
}

interface Asked {
  readonly odds: ReadingOdds;
  readonly chance: Float64Array;
  /** Of other nodes nobody needs to know. */
  readonly isAtStake: (node: number) => boolean;
}

interface ReadPart {
  readonly standing: Standing;
  readonly weight: number;
  readonly covariance: Float64Array;
  /** Of the reading with its edge. */
  readonly score: number;
  readonly sd: number;
  /** How much likelier it says bad over bad core than over sound core. */
  readonly contrast: number;
  /** Chance that it says bad. */
  readonly chance: number;
}

function readAt(standing: Standing, node: number, kind: ReadingKind, odds: ReadingOdds): ReadPart {
  const { bad } = foreseen(kind, standing.team, odds, standing.hearingSd);
  const sd = Math.hypot(Math.sqrt(standing.variance[node]), bad.edge);
  const contrast = bad.ifBad - bad.ifSound;
  const score = standing.mean[node] / sd;
  const covariance = standing.covarianceWith(node);
  return {
    standing,
    weight: standing.weight,
    covariance,
    sd,
    contrast,
    score,
    chance: bad.ifSound + contrast * quickCdf(score),
  };
}

/** Chance that the node is bad and the reading says bad. */
function bothBad({ standing, covariance, score, sd, contrast, chance }: ReadPart, node: number): number {
  const correlation = Math.min(1, covariance[node] / (Math.sqrt(standing.variance[node]) * sd));
  const apart = standing.chance[node] * chance;
  return Math.abs(correlation) < LEAST_CORRELATION
    ? apart
    : apart + contrast * tiedBelow(standing.score[node], score, correlation);
}

export interface Answer {
  readonly chance: number;
  /** What the answer does to the field where it was given: the mean moves by so much, and so much of the variance goes. */
  readonly shift: number;
  readonly shrink: number;
}

/** What an answer does to a place of which so much is known, as expectation propagation has it. Source: [RASMUSSEN-WILLIAMS-2006] section 3.6 */
export function answered(evidence: Evidence, own: Normal): Answer {
  const { mean, variance } = momentsOf(evidence, own);
  return {
    chance: chanceOf(evidence, own),
    shift: (mean - own.mean) / own.variance,
    shrink: (own.variance - variance) / own.variance ** 2,
  };
}

/** Some doubt stays even beside a plug: the field between nodes is not the field on them. */
const LEAST_LEFT = 1e-3;

export const spreadLeft = (variance: number, tie: number, shrink: number): number =>
  Math.max(LEAST_LEFT * variance, variance - tie * tie * shrink);
