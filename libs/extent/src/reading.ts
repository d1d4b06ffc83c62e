/** A place on the deck, `[xMm, yMm]`: x forward, y to starboard. */
export type Place = readonly [xMm: number, yMm: number];

export type HammerSound = 'sharp' | 'dull' | 'void';

/** What a plug of core showed. */
export type PlugCondition = 'dry-sound' | 'damp-sound' | 'wet-bonded' | 'rotten' | 'debonded-dry';

interface ReadingAt {
  readonly at: Place;
  /** True when metal, a tank, a fitting or a thick spot nearby makes the reading doubtful. */
  readonly isUnreliable?: boolean;
}

export interface Sounding extends ReadingAt {
  readonly kind: 'sounding';
  readonly sound: HammerSound;
}

export interface MeterReading extends ReadingAt {
  readonly kind: 'moisture';
  /** On the meter's own scale; judged against `dryReference`. */
  readonly value: number;
}

export interface Plug extends ReadingAt {
  readonly kind: 'plug';
  readonly condition: PlugCondition;
  readonly moisturePercent?: number;
  readonly outerSkinMm?: number;
  readonly innerSkinMm?: number;
  readonly coreMm?: number;
}

export type Reading = Sounding | MeterReading | Plug;

export interface Survey {
  readonly readings: readonly Reading[];
  /** Reading of the same meter on sound, dry deck of the same build, and the reading it gives on soaked core. */
  readonly meter?: { readonly dryReference: number; readonly wetReference: number };
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
