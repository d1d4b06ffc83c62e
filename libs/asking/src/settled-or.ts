import { Defect } from '#lib/kernel';
import type { Answers, Assumption, Default, Otherwise, SettledAs, Settling } from './question.js';

interface HowToSettle<T, V> {
  readonly at: string;
  readonly answers: Answers;
  readonly otherwise: Otherwise<T> | undefined;
  readonly accepts: (said: unknown) => said is T;
  readonly entered: (said: T) => V;
  readonly assumed: (taken: Default<T>) => V;
  readonly listed: (value: V) => readonly Assumption[];
}

/** What the caller said, else the default, which is then listed. The one place where a default comes in. */
export function settledOr<T, V, O>(said: unknown, how: HowToSettle<T, V>): Settling<SettledAs<V, O>> {
  if (said !== undefined) return ended<V, O>({ value: enteredBy(said, how), assumptions: [] });
  const { otherwise, answers, at } = how;
  const taken = typeof otherwise === 'function' ? otherwise(answers) : otherwise;
  if (taken === undefined) throw new Defect(`${at} must be answered, and was settled unanswered`);
  if (taken === 'unknown') return ended<V, O>({ value: taken, assumptions: [] });
  const value = how.assumed(taken);
  return ended<V, O>({ value, assumptions: how.listed(value) });
}

function enteredBy<T, V>(said: unknown, { accepts, entered, at }: HowToSettle<T, V>): V {
  if (accepts(said)) return entered(said);
  throw new Defect(`${at} was settled before its faults were looked for`);
}

/** A part or a list: settled when it is there, left open when it is not. */
export const openOr = <V, O>(
  said: unknown,
  settled: (said: unknown) => Settling<V>,
): Settling<SettledAs<V, O>> =>
  ended(said === undefined ? { value: 'unknown', assumptions: [] } : settled(said));

/** The compiler cannot follow from a question to whether its answer may stay unknown; `SettledAs` says it. */
const ended = <V, O>(settling: Settling<V | 'unknown'>): Settling<SettledAs<V, O>> =>
  settling as Settling<SettledAs<V, O>>;

/** An absent `otherwise` is the type `undefined` too. */
export const otherwiseIn = <O>({ otherwise }: { readonly otherwise?: O }): O => otherwise as O;
