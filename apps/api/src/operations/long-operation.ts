import type { ShownProblem } from '../edge/problem-filter.js';

/** Work that goes on after its request was answered with 202. */
export interface LongOperation {
  readonly id: string;
  readonly status: 'waiting' | 'running' | 'done' | 'failed';
  /** RFC 3339 instants, as all others here. */
  readonly createdAt: string;
  readonly startedAt?: string;
  readonly finishedAt?: string;
  /** When the operation and its result are removed. */
  readonly expiresAt: string;
  /** When it is done: where the result is. */
  readonly result?: OperationResult;
  /** When it failed: why. */
  readonly problem?: OperationProblem;
}

export interface OperationResult {
  readonly href: string;
  readonly mediaType: string;
}

/** The members of an RFC 9457 problem document that outlast the request. */
export interface OperationProblem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  /** What must be put right, each with its place in the request that was accepted. */
  readonly errors?: readonly ShownProblem[];
  readonly errorCount?: number;
}
