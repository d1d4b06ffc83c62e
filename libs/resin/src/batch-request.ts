import type { StepCode } from './step-definitions.js';
import type { ResinDemand, StepDemand } from './resin-demand.js';
import type { ResinDemandRequest } from './resin-request.js';
import type { ProcessAssumption } from '#lib/asking';

export interface BatchRequest extends Omit<ResinDemandRequest, 'hardener'> {
  /** Code of a hardener; left out, one is chosen and the reasons given. */
  readonly hardener?: string;
  /** Air and resin where it is mixed. */
  readonly temperatureC: number;
  /** Surface that the resin is spread on; the same as the air when left out. */
  readonly deckTemperatureC?: number;
  readonly people: number;
  /** Largest pot that is mixed at once. */
  readonly largestPotG?: number;
  /** Share of the pot life within which a pot must be empty. */
  readonly usableFraction?: number;
  /** Minutes to weigh and stir one pot. */
  readonly mixingMinutes?: number;
  /** A calibrated pump: resin given by one stroke; the hardener pump gives its share. */
  readonly pumpResinMlPerStroke?: number;
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
