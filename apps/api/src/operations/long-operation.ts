import type { ShownProblem } from '../edge/problem-filter.js';

/** Work that goes on after its request was answered with 202. */
export interface LongOperation {
  /** Id of the operation. */
  readonly id: string;
  /** How far the operation has come. */
  readonly status: 'waiting' | 'running' | 'done' | 'failed';
  /** When the request was accepted (RFC 3339). */
  readonly createdAt: string;
  /** When work on it began (RFC 3339). */
  readonly startedAt?: string;
  /** When it ended (RFC 3339). */
  readonly finishedAt?: string;
  /** When the operation and its result are removed. */
  readonly expiresAt: string;
  /** When it is done: where the result is. */
  readonly result?: OperationResult;
  /** When it failed: why. */
  readonly problem?: OperationProblem;
}

export interface OperationResult {
  /** Address of what was made. */
  readonly href: string;
  /** Media type of what was made. */
  readonly mediaType: string;
}

/** The members of an RFC 9457 problem document that outlast the request. */
export interface OperationProblem {
  /** Address of a page that explains the kind of problem. */
  readonly type: string;
  /** Kind of problem in words. */
  readonly title: string;
  /** HTTP status that the request would have had. */
  readonly status: number;
  /** What went wrong this time. */
  readonly detail: string;
  /** What must be put right, each with its place in the request that was accepted. */
  readonly errors?: readonly ShownProblem[];
  /** How many faults were found, where the request was at fault. */
  readonly errorCount?: number;
}
