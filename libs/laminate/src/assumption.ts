import type { Assumption } from '#lib/asking';
import type { Cite } from '#lib/provenance';

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
  source: cite.source,
});
