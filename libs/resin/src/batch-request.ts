import type { StepCode } from './step-definitions.js';
import type { ResinDemand, StepDemand } from './resin-demand.js';
import { demandQuestions, type ResinDemandRequest } from './resin-request.js';
import { ask, remembered, type AnswersTo, type ProcessAssumption } from '#lib/asking';

/** What planning the pots is asked; materials stand beside it. */
export const batchQuestions = {
  ...demandQuestions,
  temperatureC: ask({
    meaning: 'temperature',
    note: 'Air and resin where it is mixed.',
    unit: 'degC',
    range: { from: -20, upTo: 60 },
    example: 20,
  }),
  deckTemperatureC: ask({
    meaning: 'deck temperature',
    description: 'Temperature of the deck; absent: as the air.',
    unit: 'degC',
    range: { from: -20, upTo: 90 },
    otherwise: 'unknown',
  }),
  people: ask({
    meaning: 'people',
    description: 'People who mix and spread at the same time.',
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
  /** Component that is added. */
  readonly what: 'resin' | 'hardener' | 'filler';
  /** Name of the component. */
  readonly name: string;
  /** How much of it to add. */
  readonly addG: number;
  /** What the scale shows after it, pot tared. */
  readonly scaleShowsG: number;
  /** Volume of the part: by pump or measuring cup; loose volume for fillers. */
  readonly volumeMl: number;
}

/** Everything that stands on one card beside the pot. */
export interface PlannedBatch {
  /** Number of the pot, from 1, in the order of mixing. */
  readonly number: number;
  /** Step that the pot is for, by its place in the request. */
  readonly stepIndex: number;
  /** Kind of step that the pot is for. */
  readonly step: StepCode;
  /** Name of that step. */
  readonly title: string;
  /** Resin in the pot. */
  readonly resinG: number;
  /** Hardener in the pot. */
  readonly hardenerG: number;
  /** Filler in the pot. */
  readonly fillerG: number;
  /** Code of the filler in the pot. */
  readonly filler?: string;
  /** Mass of resin and hardener mixed. */
  readonly mixedG: number;
  /** Volume of resin and hardener mixed. */
  readonly mixedMl: number;
  /** What goes on the scale, in order. */
  readonly weigh: readonly Weighing[];
  /** The same in strokes of a metering pump, where its stroke was stated. */
  readonly pumps?: string;
  /** Pieces or places that the pot is enough for. */
  readonly covers: readonly string[];
  /** Time that spreading the pot takes. */
  readonly spreadMin: number;
  /** Time from mixing within which the pot must be spread out. */
  readonly useWithinMin: number;
  /** Time until the pot would gel, left in the cup. */
  readonly potLifeMin: number;
  /** Temperature that a pot left standing may reach. */
  readonly forgottenPotPeakC: number;
  /** What kept the pot from being larger. */
  readonly limitedBy: BatchLimit;
  /** Longest time after which the next pot may meet this one's edge. */
  readonly edgeOpenMin: number;
}

export interface BatchFinding {
  /** What was found about the mixing. */
  readonly code:
    'piece-too-large' | 'pot-too-short' | 'layer-heats' | 'deck-warmer-than-limit' | 'small-pots';
  /** Whether it stops the plan, warns, or is only worth knowing. */
  readonly severity: 'stop' | 'warn' | 'note';
  /** The finding in a sentence. */
  readonly text: string;
  /** Numbers and words that the sentence is made of. */
  readonly facts: Readonly<Record<string, string | number>>;
}

export interface HardenerVerdict {
  /** Code of the hardener judged. */
  readonly code: string;
  /** Name of the hardener judged. */
  readonly name: string;
  /** Whether it was chosen, would do, or is refused in this warmth. */
  readonly verdict: 'chosen' | 'workable' | 'refused';
  /** What speaks for or against it. */
  readonly reasons: readonly string[];
}

export interface BatchPlan {
  /** The system that is mixed, and why its hardener was chosen. */
  readonly resin: {
    /** Code of the resin system in the catalogue. */
    readonly code: string;
    /** Name of the resin system. */
    readonly name: string;
    /** Code of the hardener that is mixed in. */
    readonly hardener: string;
    /** Name of the hardener on the can. */
    readonly hardenerName: string;
    /** Why this hardener suits the warmth of the work. */
    readonly why: string;
  };
  /** Hardeners of the system, each with its verdict in this warmth. */
  readonly considered: readonly HardenerVerdict[];
  /** What each step needs, with waste. */
  readonly demand: ResinDemand;
  /** Pots in the order they are mixed. */
  readonly batches: readonly PlannedBatch[];
  /** How long a pot of 100 g stays workable in the warmth of the work. */
  readonly potLife: {
    /** Likely pot life of 100 g, in minutes. */
    readonly at100GMin: number;
    /** Shortest pot life to reckon with. */
    readonly lowMin: number;
    /** Longest pot life to hope for. */
    readonly highMin: number;
    /** Warmth that the pot life holds for. */
    readonly temperatureC: number;
  };
  /** Rise of temperature if no heat left the pot at all. */
  readonly adiabaticRiseK: number;
  /** What stops the mixing or deserves a warning. */
  readonly findings: readonly BatchFinding[];
  /** Figures of the plan that nobody stated. */
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
