import type { Coating, Filler, ResinSystem } from '#lib/catalogue';
import type { Known } from '#lib/kernel';
import type { OperationFlags } from '#lib/work';
import type { HazardStatement } from './hazard-statements.js';

/**
 * What is known of a job that can hurt somebody or spoil the work. Each fact is required, so that one which nobody feeds
 * does not compile; `unknown` is what nobody could say, and never harmless.
 */
export interface CautionContext {
  readonly flags: OperationFlags;
  /** Absent where nothing is mixed. */
  readonly resin: ResinSystem | undefined;
  /** Code of the hardener that is mixed into it. */
  readonly hardener: string | undefined;
  readonly fillers: readonly Filler[];
  readonly coatings: readonly Coating[];
  /** How the topcoats go on. */
  readonly application: 'brush-and-roller' | 'spray-in-booth' | 'spray-elsewhere';
  readonly usesSolvent: boolean;
  readonly usesPumps: boolean;
  readonly openedAreaM2: number;
  /** Under a skin that stays. */
  readonly injectedAreaM2: number;
  readonly yearBuilt: Known<number>;
  readonly surface: 'smooth-paint' | 'painted-nonskid' | 'moulded-nonskid' | 'planked' | 'bonded-mat';
  readonly finishExtent: 'patch' | 'panel' | 'whole-deck';
  readonly under: Known<
    readonly ('wiring' | 'fuel-tank' | 'water-tank' | 'hoses' | 'lining' | 'insulation')[]
  >;
  readonly fittings: readonly {
    readonly id: string;
    readonly kind: string;
    readonly isHighlyLoaded: boolean;
    readonly isThroughBolted: boolean;
  }[];
  readonly solidInserts: number;
  readonly temperatureC: number;
  readonly coldestNightC: Known<number>;
  readonly relativeHumidityPercent: number;
  /** Of the wettest plug in core that stays. */
  readonly coreMoisturePercent: Known<number>;
  readonly coreReadings: CoreReadings;
  readonly evidence: 'opened-and-measured' | 'mapped-with-plugs' | 'sounded-and-metered' | 'single-symptom';
  readonly plugs: number;
  readonly cause: Known<'leaking-fitting' | 'impact' | 'construction'>;
  /** Core without scores or holes, that lets no air out by itself. */
  readonly needsBleedHoles: boolean;
  /** Height of the new stack above the old, mm; negative is below. */
  readonly proudMm: number;
  readonly taperFits: boolean;
  readonly innerSkinSpanMm: Known<number>;
  readonly isInnerSkinAirtight: Known<boolean>;
  readonly innerSkinHasHoles: boolean;
  readonly weightsKg: number;
  readonly largestPotG: number;
  readonly forgottenPotPeakC: number;
  /** Codes of findings of the batch plan. */
  readonly batchFindings: readonly string[];
}

/** Plugs and readings of a meter, by what they say and by whether their core stays or comes out. */
export interface CoreReadings {
  readonly dryStays: number;
  readonly wetStays: number;
  readonly dryOut: number;
}

export type CautionSeverity = 'danger' | 'warning' | 'caution';
export type CautionKind = 'structure' | 'health' | 'fire' | 'site' | 'work';

/** One caution with the condition that called it. */
export interface ProcessCaution {
  readonly code: string;
  readonly severity: CautionSeverity;
  readonly kind: CautionKind;
  readonly text: string;
  readonly because: string;
  readonly protection: readonly string[];
  readonly hazards: readonly HazardStatement[];
  /** Who decides, where it is not the crew. */
  readonly decides?: string;
  readonly source: string;
}

/** A caution as data: `when` gives the stated condition, or nothing. */
export interface CautionRule {
  readonly code: string;
  readonly severity: CautionSeverity;
  readonly kind: CautionKind;
  /** Within a severity, the larger comes first. */
  readonly harm: number;
  readonly when: (context: CautionContext) => string | undefined;
  readonly text: string;
  readonly protection?: readonly string[];
  /** Hazard codes of the materials concerned. */
  readonly hazards?: (context: CautionContext) => readonly string[];
  readonly decides?: string;
  readonly source: string;
}
