import type { Problem } from './problem.js';

/** The answer of an operation that a caller's input can make impossible: a value, or every reason why not. */
export type Outcome<T> = Success<T> | Refusal;

export interface Success<T> {
  readonly ok: true;
  readonly value: T;
}

export interface Refusal {
  readonly ok: false;
  readonly problems: readonly Problem[];
}

export const success = <T>(value: T): Success<T> => ({ ok: true, value });

export const refusal = (...problems: readonly Problem[]): Refusal => ({ ok: false, problems });

/** The value when nothing is wrong, otherwise all the problems. */
export const unlessProblems = <T>(problems: readonly Problem[], value: () => T): Outcome<T> =>
  problems.length === 0 ? success(value()) : refusal(...problems);

/** Carries on with the value; problems pass through untouched. */
export const andThen = <T, R>(outcome: Outcome<T>, next: (value: T) => Outcome<R>): Outcome<R> =>
  outcome.ok ? next(outcome.value) : outcome;

export const mapValue = <T, R>(outcome: Outcome<T>, change: (value: T) => R): Outcome<R> =>
  outcome.ok ? success(change(outcome.value)) : outcome;

type ValuesOf<O> = { readonly [K in keyof O]: O[K] extends Outcome<infer V> ? V : never };

/** Collects named outcomes: all values, or all the problems of all of them at once. */
export function allOf<const O extends Readonly<Record<string, Outcome<unknown>>>>(
  outcomes: O,
): Outcome<ValuesOf<O>> {
  const problems = Object.values(outcomes).flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  if (problems.length > 0) return refusal(...problems);
  const values = Object.entries(outcomes).map(([key, outcome]) => [
    key,
    outcome.ok ? outcome.value : undefined,
  ]);
  return success(Object.fromEntries(values));
}

/** The list form of `allOf`. */
export function allOfList<T>(outcomes: readonly Outcome<T>[]): Outcome<readonly T[]> {
  const problems = outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  if (problems.length > 0) return refusal(...problems);
  return success(outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])));
}
