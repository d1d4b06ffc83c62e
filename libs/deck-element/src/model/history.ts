/** What was, what is, and what was taken back; the oldest steps are forgotten. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
}

const MOST_STEPS = 200;

export const begun = <T>(present: T): History<T> => ({ past: [], present, future: [] });

export const stepped = <T>({ past, present }: History<T>, next: T): History<T> => ({
  past: [...past, present].slice(-MOST_STEPS),
  present: next,
  future: [],
});

export function undone<T>(history: History<T>): History<T> {
  const present = history.past.at(-1);
  if (present === undefined) return history;
  return { past: history.past.slice(0, -1), present, future: [history.present, ...history.future] };
}

export function redone<T>(history: History<T>): History<T> {
  const [present, ...future] = history.future;
  if (present === undefined) return history;
  return { past: [...history.past, history.present], present, future };
}
