import {
  AbortedError,
  ConflictError,
  ConnectionFailedError,
  RateLimitedError,
  ServiceFailedError,
  TimedOutError,
} from 'kingplank-sdk';

/** Nobody answered: what was entered waits, and nothing is wrong with it. */
export const isConnection = (error: unknown): boolean =>
  error instanceof ConnectionFailedError || error instanceof TimedOutError || error instanceof AbortedError;

/** Nobody answered, or the service could not just now; a running twin of the same request is answered next time. */
export const mayWait = (error: unknown): boolean =>
  isConnection(error) ||
  error instanceof ServiceFailedError ||
  error instanceof RateLimitedError ||
  error instanceof ConflictError;
