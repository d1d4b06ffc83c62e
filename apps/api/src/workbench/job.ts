/**
 * Where a job is done. Prompt work never waits behind long work, because each has threads of its own; a press is a
 * process, for libraries that keep native memory for good.
 */
export type LaneName = 'prompt' | 'long' | 'press';

/** The functions a job's file exports are given plain data and give plain data back. */
type Run<Order, Stock, Answer> = (order: Order, stock: Stock) => Answer | Promise<Answer>;

/** One kind of work that holds a processor: a file that a thread or a process loads, and how much work an order is. */
export interface Job<Order, Stock, Answer> {
  /** Names it in measurements. */
  readonly code: string;
  /** A compiled file that exports `run`. */
  readonly file: URL;
  readonly isPressed: boolean;
  /** Rough processor time, from what the order says; which lane it takes and how long others wait follow from it. */
  readonly expectedMs: (order: Order) => number;
  /** What `run` is, for the compiler alone. */
  readonly types?: Run<Order, Stock, Answer>;
}

interface Described<Order> {
  readonly code: string;
  readonly file: URL;
  readonly expectedMs: (order: Order) => number;
}

/** A job for a thread. */
export const threadJob = <Order, Stock, Answer>(
  described: Described<Order>,
): Job<Order, Stock, Awaited<Answer>> => ({ ...described, isPressed: false });

/** A job for a process of its own. */
export const pressJob = <Order, Stock, Answer>(
  described: Described<Order>,
): Job<Order, Stock, Awaited<Answer>> => ({ ...described, isPressed: true });

/** Something large that many orders share: it is sent to a thread once and kept there under its key. */
export interface Stocked<Stock> {
  readonly key: string;
  readonly value: Stock;
}

/** For whom a job is done: others take their turn between the jobs of one organisation. */
export interface Customer {
  readonly organisationId: string;
  /** Ends the work when it is no longer wanted; the request's own patience when absent. */
  readonly signal?: AbortSignal;
}

/** Work above this takes the long lane. */
export const PROMPT_UP_TO_MS = 1500;

export function laneOf<Order, Stock, Answer>(job: Job<Order, Stock, Answer>, order: Order): LaneName {
  if (job.isPressed) return 'press';
  return job.expectedMs(order) <= PROMPT_UP_TO_MS ? 'prompt' : 'long';
}
