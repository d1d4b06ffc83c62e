import type { Known, Problem, Range } from '#lib/kernel';
import type { Cite, Figure } from '#lib/provenance';

/**
 * What may be asked of a caller, as a value. From it follow the type of the request, what is wrong with an answer, what
 * is taken when nobody answers, the assumption that says so, and the field of the contract.
 *
 * `T` is what a request may say, `S` what settling makes of it, `O` what happens when it is silent.
 */
export interface Question<T = unknown, S = unknown, O = unknown> {
  readonly form: Form;
  readonly meaning: string;
  /** More than `meaning` says, for the reader of the contract. */
  readonly description?: string;
  readonly note?: string;
  readonly example?: unknown;
  /** Absent: it must be answered. */
  readonly otherwise: O;
  readonly accepts: (value: unknown) => value is T;
  readonly faults: (value: unknown, at: string) => readonly Problem[];
  readonly settle: (said: unknown, at: string, answers: Answers) => Settling<S>;
}

/** What a good answer looks like, for whoever draws it in a contract or on a screen. */
export type Form =
  | { readonly kind: 'number'; readonly unit: string; readonly range: Range; readonly isWhole: boolean }
  | { readonly kind: 'choice'; readonly choices: readonly string[] }
  | ({ readonly kind: 'choices'; readonly choices: readonly string[] } & Count)
  | ({ readonly kind: 'text' } & TextLimits)
  | { readonly kind: 'flag' }
  | { readonly kind: 'date' }
  | { readonly kind: 'subject' }
  | { readonly kind: 'place' }
  | ({ readonly kind: 'outline' } & Count)
  | ({ readonly kind: 'outlines' } & Count)
  | ({ readonly kind: 'each'; readonly of: Question } & Count)
  | ({ readonly kind: 'kinds' } & Kinds & Count)
  | { readonly kind: 'part'; readonly of: Questions }
  | ({ readonly kind: 'list'; readonly of: Questions } & Count);

/** Objects of several kinds: `by` names the member that says which, and each kind asks its own questions. */
export interface Kinds {
  readonly by: string;
  readonly kinds: Readonly<Record<string, Questions>>;
}

export interface TextLimits {
  readonly atLeast: number;
  readonly atMost: number;
  readonly form?: { readonly pattern: RegExp; readonly words: string };
}

export interface Count {
  readonly least: number;
  readonly most: number;
}

export type Questions = Readonly<Record<string, Question>>;

/** What is taken when nobody answers, with the reason and the source that a reader can check. */
export interface Default<T = number> {
  readonly value: T;
  readonly low?: number;
  readonly high?: number;
  readonly because: string;
  readonly cite: Cite;
}

/** A default, the admission that nobody knows, or either of them by what else was answered. */
export type Otherwise<T> = Default<T> | 'unknown' | ((answers: Answers) => Default<T> | 'unknown');

/** Other answers, for defaults that depend on them. */
export interface Answers {
  readonly of: <S>(question: Question<unknown, S>) => S;
}

/** A word, a flag or a thing settled: what holds, and whether the caller or a stated default said so. */
export interface Answer<T> {
  readonly value: T;
  readonly at: string;
  readonly because: string;
  /** Absent when the caller said it. */
  readonly assumedFrom?: Cite;
}

/** One default that an answer rests on, as a reader of the estimate sees it. */
export interface Assumption {
  /** JSON Pointer, in the request, of the field that would replace the default. */
  readonly at: string;
  /** What was asked. */
  readonly meaning: string;
  /** What was taken instead, as text. */
  readonly value: string;
  /** Why that was taken. */
  readonly because: string;
  /** What the default leans on. */
  readonly source: string;
}

export interface Settling<S> {
  readonly value: S;
  readonly assumptions: readonly Assumption[];
}

/** `V`, or `Known<V>` where the question may stay open. */
export type SettledAs<V, O> = O extends 'unknown'
  ? Known<V>
  : O extends (answers: Answers) => infer R
    ? 'unknown' extends R
      ? Known<V>
      : V
    : V;

export type FigureAs<U extends string, O> = SettledAs<Figure<U>, O>;

type Needed<Q extends Questions> = {
  [K in keyof Q]: Q[K] extends Question<unknown, unknown, undefined> ? K : never;
}[keyof Q];

type Said<Q> = Q extends Question<infer T> ? T : never;

type Flat<T> = { readonly [K in keyof T]: T[K] };

/** The request that a set of questions asks for. */
export type AnswersTo<Q extends Questions> = Flat<
  { readonly [K in Needed<Q>]: Said<Q[K]> } & { readonly [K in Exclude<keyof Q, Needed<Q>>]?: Said<Q[K]> }
>;

/** Every question of a set answered. */
export type Settlement<Q extends Questions> = {
  readonly [K in keyof Q]: Q[K] extends Question<unknown, infer S> ? S : never;
};
