/**
 * A fact that may be unknown. It is required where it is declared, never optional: a fact that nobody feeds does not
 * compile, and "nobody knows" is something that a rule has to answer.
 */
export type Known<T> = T | 'unknown';

export const isKnown = <T>(fact: Known<T>): fact is Exclude<T, 'unknown'> => fact !== 'unknown';
