import type { In } from '#lib/units';
import { assumed, entered, type Cite, type Figure } from '#lib/provenance';

/** A decision that shapes the job: what was chosen, and whether the caller or a stated default chose it. */
export interface Choice<T extends string> {
  readonly value: T;
  readonly at: string;
  readonly because: string;
  /** Absent when the caller said it. */
  readonly assumedFrom?: Cite;
}

export const saidByCaller = <T extends string>(value: T, at: string): Choice<T> => ({
  value,
  at,
  because: 'stated in the record',
});

export const chosenByDefault = <T extends string>(
  value: T,
  at: string,
  because: string,
  cite: Cite,
): Choice<T> => ({
  value,
  at,
  because,
  assumedFrom: cite,
});

export interface Fallback<T> {
  readonly value: T;
  readonly because: string;
  readonly cite: Cite;
}

export const choiceOr = <T extends string>(
  said: T | undefined,
  at: string,
  fallback: Fallback<NoInfer<T>>,
): Choice<T> =>
  said === undefined
    ? chosenByDefault(fallback.value, at, fallback.because, fallback.cite)
    : saidByCaller(said, at);

export interface NumberWanted<U extends string> {
  readonly unit: U;
  readonly meaning: string;
  readonly at: string;
}

export const figureOr = <U extends string>(
  said: number | undefined,
  { unit, meaning, at }: NumberWanted<U>,
  fallback: Fallback<number>,
): Figure<U> =>
  said === undefined
    ? assumed<U>(unit, named<U>(fallback.value), meaning, {
        at,
        because: fallback.because,
        cite: fallback.cite,
      })
    : entered<U>(unit, named<U>(said), meaning, at);

/** The record's numbers are plain JSON; this is the one place in the room where they are given their unit. */
const named = <U extends string>(value: number): In<U> => value as In<U>;
