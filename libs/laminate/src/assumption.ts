import type { Cite } from '#lib/provenance';

/** A default that was taken because the request did not say. */
export interface Assumption {
  /** JSON Pointer of the field that would replace it. */
  readonly at: string;
  /** What was taken for the laminate. */
  readonly meaning: string;
  /** What was taken, as a person reads it. */
  readonly value: string;
  /** Why this was taken for the laminate. */
  readonly because: string;
  /** Source of what was taken. */
  readonly cite: Cite;
}

/** A default as it stands in the room: its value as a person reads it, and the reason. */
export interface Standard {
  readonly meaning: string;
  readonly shown: string;
  readonly because: string;
  readonly cite: Cite;
}

export const assumptionOf = (at: string, { meaning, shown, because, cite }: Standard): Assumption => ({
  at,
  meaning,
  value: shown,
  because,
  cite,
});
