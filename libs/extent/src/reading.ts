/** A place on the deck, `[xMm, yMm]`: x forward, y to starboard. */
export type Place = readonly [xMm: number, yMm: number];

export type HammerSound = 'sharp' | 'dull' | 'void';

/** What a plug of core showed. */
export type PlugCondition = 'dry-sound' | 'damp-sound' | 'wet-bonded' | 'rotten' | 'debonded-dry';

interface ReadingAt {
  /** Where it was taken, [xMm, yMm]. */
  readonly at: Place;
  /** True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
  readonly isUnreliable?: boolean;
}

export interface Sounding extends ReadingAt {
  /** Says that the deck was tapped. */
  readonly kind: 'sounding';
  /** How it sounded. */
  readonly sound: HammerSound;
}

export interface MeterReading extends ReadingAt {
  /** Says that a meter was held to the deck. */
  readonly kind: 'moisture';
  /** On the meter's own scale; judged against `dryReference`. */
  readonly value: number;
}

export interface Plug extends ReadingAt {
  /** Says that a core plug was drilled. */
  readonly kind: 'plug';
  /** What the core in the plug was like. */
  readonly condition: PlugCondition;
  /** Moisture of the plug by mass of dry core. */
  readonly moisturePercent?: number;
  /** Outer skin as measured on the plug. */
  readonly outerSkinMm?: number;
  /** Inner skin as measured on the plug. */
  readonly innerSkinMm?: number;
  /** Core as measured on the plug. */
  readonly coreMm?: number;
}

export type Reading = Sounding | MeterReading | Plug;

export interface Survey {
  /** What was heard, measured and seen on the deck. */
  readonly readings: readonly Reading[];
  /** Reading of the same meter on sound, dry deck of the same build, and the reading it gives on soaked core. */
  readonly meter?: {
    /** What the meter shows on sound, dry deck of this boat. */
    readonly dryReference: number;
    /** What the meter shows where the deck is surely wet. */
    readonly wetReference: number;
  };
}

/** How well the extent is known: opened and measured, plugs on both sides of the boundary, sounding and meter, or one symptom. */
export const evidenceGrades = [
  'opened-and-measured',
  'mapped-with-plugs',
  'sounded-and-metered',
  'single-symptom',
] as const;
export type EvidenceGrade = (typeof evidenceGrades)[number];

/** Grades that know more, the next first. */
export const betterGrades = (grade: EvidenceGrade): readonly EvidenceGrade[] =>
  evidenceGrades.slice(0, evidenceGrades.indexOf(grade)).reverse();
