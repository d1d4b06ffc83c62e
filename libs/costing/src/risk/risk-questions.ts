import { ask, askPart, askWhich, type AnswersTo, type Default } from '#lib/asking';
import type { Cite } from '#lib/provenance';
import { spreadShapes } from './spread-quantile.js';

/** Judgement: no published correlation was found for this trade. */
const judged: Cite = { source: 'RISK-JUDGEMENT' };
const judgedAt = <const T>(value: T, because: string): Default<T> => ({ value, because, cite: judged });

export const SHARE = { from: 0, upTo: 1 } as const;

/** Draws come in this many replicates of one size, from whose differences the error of drawing is told. */
export const REPLICATES = 10;

export const commonShareQuestions = {
  labour: ask({
    unit: '1',
    meaning: 'share of variance that labour has in common',
    range: SHARE,
    otherwise: judgedAt(0.5, 'one crew does it all'),
  }),
  part: ask({
    unit: '1',
    meaning: 'share of variance that parts have in common',
    range: SHARE,
    otherwise: judgedAt(0.3, 'prices of one supplier move together'),
  }),
};

/** How amounts that are not sure are drawn. */
export const drawQuestions = {
  samples: ask({
    unit: '1',
    meaning: 'draws of the simulation',
    note: `A multiple of ${REPLICATES}.`,
    range: { from: 100, upTo: 200_000 },
    isWhole: true,
    otherwise: judgedAt(10_000, 'the error of drawing is told'),
  }),
  seed: ask({
    unit: '1',
    meaning: 'seed of the simulation',
    note: 'The same seed gives the same range.',
    range: { from: 0, upTo: 4_294_967_295 },
    isWhole: true,
    otherwise: judgedAt(1, 'any seed will do'),
  }),
  shape: askWhich({
    meaning: 'how three points are read as a distribution',
    choices: spreadShapes,
    otherwise: judgedAt('triangular', 'no more than three points say'),
  }),
  extentToRate: ask({
    unit: '1',
    meaning: 'correlation of unit rates with the extent',
    range: SHARE,
    otherwise: judgedAt(0.3, 'a worse deck is slower to work on'),
  }),
  commonShare: askPart({
    meaning: 'share of the variance of rates that labour, or parts, have in common',
    of: commonShareQuestions,
    otherwise: 'unknown',
  }),
};

export type DrawTerms = AnswersTo<typeof drawQuestions>;
