import type { StepCode } from './step-definitions.js';
import type { ResinDemand, StepDemand } from './resin-demand.js';
import { demandQuestions, type ResinDemandRequest } from './resin-request.js';
import { ask, remembered, type AnswersTo, type ProcessAssumption } from '#lib/asking';

/** What planning the pots is asked; materials stand beside it. */
export const batchQuestions = {
  ...demandQuestions,
  temperatureC: ask({
    meaning: 'temperature',
    description: 'Air and resin where it is mixed.',
    unit: 'degC',
    range: { from: -20, upTo: 60 },
    example: 20,
  }),
  deckTemperatureC: ask({
    meaning: 'deck temperature',
    description: 'The deck; absent: as the air.',
    unit: 'degC',
    range: { from: -20, upTo: 90 },
    otherwise: 'unknown',
  }),
  people: ask({
    meaning: 'people',
    unit: '1',
    range: { from: 1, upTo: 50 },
    isWhole: true,
  }),
  largestPotG: ask({
    meaning: 'largest pot mixed at once',
    unit: 'g',
    range: { from: 40, upTo: 6000 },
    otherwise: remembered(1000, { low: 500, high: 1500, because: 'pots of half a litre to a litre' }),
  }),
  usableFraction: ask({
    meaning: 'share of the pot life within which a pot must be empty',
    unit: '1',
    range: { above: 0, upTo: 0.9 },
    otherwise: remembered(0.5, {
      low: 0.4,
      high: 0.6,
      because: 'small enough to bed inside half the pot life',
    }),
  }),
  mixingMinutes: ask({
    meaning: 'weighing and stirring a pot',
    unit: 'min',
    range: { from: 1, upTo: 30 },
    otherwise: remembered(4, {
      low: 3,
      high: 6,
      because: 'two minutes of stirring with scraping, and the weighing',
    }),
  }),
  pumpResinMlPerStroke: ask({
    meaning: 'resin of one stroke of the pump',
    description: 'Resin given by one stroke of a calibrated pump; with it the cards count strokes.',
    unit: 'ml',
    range: { above: 0, upTo: 500 },
    otherwise: 'unknown',
  }),
};

export interface BatchRequest extends AnswersTo<typeof batchQuestions>, Omit<ResinDemandRequest, 'hardener'> {
  /** Code of a hardener; left out, one is chosen and the reasons given. */
  readonly hardener?: string;
}

export type BatchLimit = 'pot-life' | 'exotherm' | 'pot-size' | 'piece' | 'whole-step';

export interface Weighing {
  readonly what: 'resin' | 'hardener' | 'filler';
  readonly name: string;
  readonly addG: number;
  /** What the scale shows after it, pot tared. */
  readonly scaleShowsG: number;
  /** Volume of the part: by pump or measuring cup; loose volume for fillers. */
  readonly volumeMl: number;
}

/** Everything that stands on one card beside the pot. */
export interface PlannedBatch {
  readonly number: number;
  readonly stepIndex: number;
  readonly step: StepCode;
  readonly title: string;
  readonly resinG: number;
  readonly hardenerG: number;
  readonly fillerG: number;
  readonly filler?: string;
  readonly mixedG: number;
  readonly mixedMl: number;
  readonly weigh: readonly Weighing[];
  readonly pumps?: string;
  readonly covers: readonly string[];
  readonly spreadMin: number;
  readonly useWithinMin: number;
  readonly potLifeMin: number;
  readonly forgottenPotPeakC: number;
  readonly limitedBy: BatchLimit;
  /** Longest time after which the next pot may meet this one's edge. */
  readonly edgeOpenMin: number;
}

export interface BatchFinding {
  readonly code:
    'piece-too-large' | 'pot-too-short' | 'layer-heats' | 'deck-warmer-than-limit' | 'small-pots';
  readonly severity: 'stop' | 'warn' | 'note';
  readonly text: string;
  readonly facts: Readonly<Record<string, string | number>>;
}

export interface HardenerVerdict {
  readonly code: string;
  readonly name: string;
  readonly verdict: 'chosen' | 'workable' | 'refused';
  readonly reasons: readonly string[];
}

export interface BatchPlan {
  readonly resin: {
    readonly code: string;
    readonly name: string;
    readonly hardener: string;
    readonly hardenerName: string;
    readonly why: string;
  };
  readonly considered: readonly HardenerVerdict[];
  readonly demand: ResinDemand;
  readonly batches: readonly PlannedBatch[];
  readonly potLife: {
    readonly at100GMin: number;
    readonly lowMin: number;
    readonly highMin: number;
    readonly temperatureC: number;
  };
  readonly adiabaticRiseK: number;
  readonly findings: readonly BatchFinding[];
  readonly assumptions: readonly ProcessAssumption[];
}

/** One step with what limits its pots. */
export interface StepPots {
  readonly demand: StepDemand;
  readonly totalG: number;
  readonly minutesPerG: number;
  readonly largestG: number;
  readonly limitedBy: BatchLimit;
}
