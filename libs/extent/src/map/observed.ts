import { tiesTo } from './interpolation.js';
import type { Field } from './field.js';
import type { Hearing } from './hearing.js';
import type { Point } from '#lib/geometry';

/** How each reading is made up of the unknowns of the field, and of effects that reach all over the deck. */
export interface Makeup {
  /** Unknowns of each reading and their shares, `width` to a reading; unused ones have a share of 0. */
  readonly width: number;
  readonly unknowns: Int32Array;
  readonly shares: Float64Array;
  /** Shares of the effects in each reading, `effects` to a reading. */
  readonly effects: number;
  readonly design: Float64Array;
}

/** Effects that reach all over the deck (the level of damage, the pull of each fitting): shares at a place, and what is believed of them. */
export interface Effects {
  readonly means: readonly number[];
  readonly sds: readonly number[];
  readonly at: (place: Point) => readonly number[];
}

/** The level alone: core is bad where level + field lies above 0. */
export const levelAlone = (mean: number, sd: number): Effects => ({
  means: [mean],
  sds: [sd],
  at: () => [1],
});

/** Readings in terms of the field; `hearingSd` is the size of the observer's own field where there is one. */
export function makeupOf(
  field: Field,
  places: readonly Point[],
  effects: Effects,
  hearing?: { readonly of: Hearing; readonly sd: number },
): Makeup {
  const ties = tiesTo(field.lattice, places);
  const sds = field.sdAt(ties);
  const width = hearing === undefined ? 4 : 8;
  const unknowns = new Int32Array(width * places.length);
  const shares = new Float64Array(width * places.length);
  for (let index = 0; index < places.length; index += 1) {
    for (let corner = 0; corner < 4; corner += 1) {
      const node = ties.nodes[4 * index + corner];
      unknowns[width * index + corner] = field.unknownOf[node];
      shares[width * index + corner] = ties.shares[4 * index + corner] / (field.scale[node] * sds[index]);
      if (hearing === undefined) continue;
      unknowns[width * index + 4 + corner] = hearing.of.ties.nodes[4 * index + corner];
      shares[width * index + 4 + corner] = hearing.sd * hearing.of.ties.shares[4 * index + corner];
    }
  }
  return { width, unknowns, shares, effects: effects.means.length, design: designAt(places, effects) };
}

export const designAt = (places: readonly Point[], { at }: Effects): Float64Array =>
  Float64Array.from(places.flatMap((place) => at(place)));
