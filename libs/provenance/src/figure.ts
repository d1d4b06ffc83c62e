import type { In } from '#lib/units';
import type { Cite } from './cite.js';

/** A number that can answer "why?": its value, its unit, and where it came from, down to the leaves. */
export interface Figure<U extends string = string> {
  /** The number, in `unit`. */
  readonly value: In<U>;
  /** Unit that the number is in; `1` for a share or ratio. */
  readonly unit: U;
  /** What the number is, in words. */
  readonly meaning: string;
  /** Where it comes from: entered, catalogue, assumed or computed. */
  readonly origin: Origin;
}

export type Origin = Entered | FromCatalogue | Assumed | Computed;

/** Typed by the caller; `at` is the JSON Pointer of the field. */
export interface Entered {
  /** Says that somebody entered the figure. */
  readonly kind: 'entered';
  /** JSON Pointer to the answer in the request. */
  readonly at: string;
}

export interface FromCatalogue {
  /** Says that the figure stands in the catalogue. */
  readonly kind: 'catalogue';
  /** Code of the material or list it belongs to. */
  readonly item: string;
  /** Field of that item. */
  readonly field: string;
  /** Where the catalogue has the value from. */
  readonly cite: Cite;
  /** Low end of the value's spread. */
  readonly low?: number;
  /** High end of the value's spread. */
  readonly high?: number;
}

/** Nobody said it; we took a default and say so. `at` is the field that would replace it. */
export interface Assumed {
  /** Says that the figure was assumed because nobody stated it. */
  readonly kind: 'assumed';
  /** JSON Pointer to the answer that would replace it. */
  readonly at: string;
  /** Why this value and no other was taken. */
  readonly because: string;
  /** Source that the assumption leans on. */
  readonly cite: Cite;
  /** Lowest value that would be as believable. */
  readonly low?: number;
  /** Highest value that would be as believable. */
  readonly high?: number;
}

export interface Computed {
  /** Says that a formula gave the figure. */
  readonly kind: 'computed';
  /** Id of the formula. */
  readonly formula: string;
  /** What the formula is called. */
  readonly title: string;
  /** Letter that stands for the result in the source. */
  readonly symbol: string;
  /** Where the formula is printed. */
  readonly cite: Cite;
  /** What went in, by symbol; each a figure with its own origin. */
  readonly inputs: Readonly<Record<string, Figure>>;
}

/** `NoInfer` keeps the unit from widening to a union that would accept a value of another unit. */
export const entered = <U extends string>(
  unit: U,
  value: In<NoInfer<U>>,
  meaning: string,
  at: string,
): Figure<U> => ({
  value,
  unit,
  meaning,
  origin: { kind: 'entered', at },
});

export const fromCatalogue = <U extends string>(
  unit: U,
  value: In<NoInfer<U>>,
  meaning: string,
  origin: Omit<FromCatalogue, 'kind'>,
): Figure<U> => ({ value, unit, meaning, origin: { kind: 'catalogue', ...origin } });

export const assumed = <U extends string>(
  unit: U,
  value: In<NoInfer<U>>,
  meaning: string,
  origin: Omit<Assumed, 'kind'>,
): Figure<U> => ({ value, unit, meaning, origin: { kind: 'assumed', ...origin } });

/** The result of a kernel (geometry, matrices, series) that is not one formula; `origin.formula` names the method. */
export const derived = <U extends string>(
  unit: U,
  value: In<NoInfer<U>>,
  meaning: string,
  origin: Omit<Computed, 'kind'>,
): Figure<U> => ({ value, unit, meaning, origin: { kind: 'computed', ...origin } });

/** Every assumed leaf below a figure, each once. */
export function assumptionsOf(figure: Figure): readonly Figure[] {
  const found = new Map<string, Figure>();
  collectAssumed(figure, found);
  return [...found.values()];
}

function collectAssumed(figure: Figure, found: Map<string, Figure>): void {
  if (figure.origin.kind === 'assumed') found.set(figure.origin.at, figure);
  if (figure.origin.kind !== 'computed') return;
  for (const input of Object.values(figure.origin.inputs)) collectAssumed(input, found);
}
