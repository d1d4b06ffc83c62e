import type { Known } from '#lib/kernel';

/** What was found in the core of one place. */
export type CoreState = 'dry-sound' | 'damp-sound' | 'wet-bonded' | 'wet-rotten' | 'dry-debonded';

export const liningKinds = [
  'none',
  'zipped-vinyl',
  'screwed-panels',
  'glued-vinyl',
  'moulded-liner',
] as const;
export type LiningKind = (typeof liningKinds)[number];

/** A fitting that stands on the place, or near enough to have let the water in. */
export interface FittingFacts {
  readonly id: string;
  readonly kind: string;
  readonly holes: Known<number>;
  readonly isHighlyLoaded: boolean;
  readonly isLeaking: Known<boolean>;
  /** On the bad core itself, not merely near it. */
  readonly isOnPlace: boolean;
  readonly baseMm: Known<number>;
}

/** The nearest edge of the deck, where the bad core comes close to it. */
export interface EdgeFacts {
  readonly kind: string;
  /** From the edge to the nearest bad core; 0 is rot right to the joint. */
  readonly gapMm: number;
  /** From the edge to the farthest bad core of this place: how deep the strip runs inboard. */
  readonly deepMm: number;
  /** Where the core ends and solid laminate begins, from the edge inwards. */
  readonly coreEndsMm: Known<number>;
  /** Sound deck that the repair leaves between its cut and the edge. */
  readonly flangeMm: number;
}

/** One place with bad core, one fitting to look after, or a leak over dry core. */
export interface PlaceFacts {
  readonly id: string;
  readonly kind: 'zone' | 'fitting' | 'leak';
  readonly badAreaM2: number;
  readonly longMm: number;
  readonly narrowMm: number;
  readonly core: Known<CoreState>;
  readonly moisturePercent: Known<number>;
  readonly isProvenByPlug: boolean;
  /** From the side of the fastener hole to the first dry, clean core. */
  readonly wetReachMm: Known<number>;
  readonly fittings: readonly FittingFacts[];
  readonly edge: EdgeFacts | 'none';
}

/** What holds for the whole deck panel and for the yard. */
export interface DeckFacts {
  readonly outerSkinMm: number;
  readonly innerSkinMm: number;
  readonly coreMm: number;
  readonly outerSkin: Known<'whole' | 'cracked'>;
  readonly surface: 'smooth-paint' | 'painted-nonskid' | 'moulded-nonskid' | 'planked' | 'bonded-mat';
  readonly overlay: 'none' | 'stays' | 'comes-off';
  readonly below: 'open' | 'lined' | 'none';
  readonly lining: Known<LiningKind>;
  readonly workingHeightMm: Known<number>;
  readonly obstaclesBelow: readonly string[];
  /** Share of the panel with bad core, all places together. */
  readonly badShare: number;
  readonly zoneCount: number;
  readonly panelAreaM2: number;
  readonly finish: 'patch' | 'panel' | 'whole-deck';
  readonly daysAvailable: Known<number>;
  readonly isFreezeExpected: Known<boolean>;
  readonly shelter: 'shed' | 'tent' | 'open';
}

export interface MethodFacts {
  readonly deck: DeckFacts;
  readonly place: PlaceFacts;
}
