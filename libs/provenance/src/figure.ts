import type { In } from '#lib/units';
import type { Cite } from './cite.js';

/** A number that can answer "why?": its value, its unit, and where it came from, down to the leaves. */
export interface Figure<U extends string = string> {
  readonly value: In<U>;
  readonly unit: U;
  readonly meaning: string;
  readonly origin: Origin;
}

export type Origin = Entered | FromCatalogue | Assumed | Computed;

/** Typed by the caller; `at` is the JSON Pointer of the field. */
export interface Entered {
  readonly kind: 'entered';
  readonly at: string;
}

export interface FromCatalogue {
  readonly kind: 'catalogue';
  readonly item: string;
  readonly field: string;
  readonly cite: Cite;
  readonly low?: number;
  readonly high?: number;
}

/** Nobody said it; we took a default and say so. `at` is the field that would replace it. */
export interface Assumed {
  readonly kind: 'assumed';
  readonly at: string;
  readonly because: string;
  readonly cite: Cite;
  readonly low?: number;
  readonly high?: number;
}

export interface Computed {
  readonly kind: 'computed';
  readonly formula: string;
  readonly title: string;
  readonly symbol: string;
  readonly cite: Cite;
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
