import { kindOf, type ProblemDocument, type ProblemEntry, type ProblemKind } from './problem-document.js';

/** Everything this client throws is one of these; `instanceof` tells which. */
export abstract class KingplankError extends Error {
  /** The service's id of the request, to quote when asking for help. */
  readonly requestId: string | undefined;

  protected constructor(message: string, requestId?: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.name = new.target.name;
    this.requestId = requestId;
  }
}

/** The service answered, and said no: an RFC 9457 problem. */
export abstract class ProblemError extends KingplankError {
  readonly status: number;
  /** Stable: what kind of refusal it is. */
  readonly code: ProblemKind;
  readonly errors: readonly ProblemEntry[];
  readonly problem: ProblemDocument;

  constructor(problem: ProblemDocument) {
    super(messageOf(problem), problem.requestId);
    this.status = problem.status;
    this.code = kindOf(problem);
    this.errors = problem.errors ?? [];
    this.problem = problem;
  }
}

const messageOf = ({ title, detail, errors = [] }: ProblemDocument): string =>
  [
    detail ?? title,
    ...errors.map(
      ({ pointer, parameter, header, detail: what }) => `${pointer ?? parameter ?? header ?? ''}: ${what}`,
    ),
  ].join('\n  ');

/** 400, 413, 415 or 422: the request can be put right; `errors` lists every fault with its JSON Pointer. */
export class InvalidRequestError extends ProblemError {}
/** 401: no key, or one the service does not know. */
export class UnauthenticatedError extends ProblemError {}
/** 403: the key's role may not do this. */
export class ForbiddenError extends ProblemError {}
/** 404 */
export class NotFoundError extends ProblemError {}
/** 409: another request with this idempotency key is running, or the state does not allow it. */
export class ConflictError extends ProblemError {}
/** 412 or 428: the thing changed since it was read, or `ifMatch` is missing. */
export class StaleVersionError extends ProblemError {}
/** 429: too many requests; `retryAfterMs` says how long to wait. */
export class RateLimitedError extends ProblemError {}
/** 5xx: the service or what it depends on failed. */
export class ServiceFailedError extends ProblemError {}

/** No answer arrived: the network, DNS or the connection failed. */
export class ConnectionFailedError extends KingplankError {
  constructor(cause: unknown) {
    super('The service could not be reached', undefined, cause);
  }
}

/** No answer within `timeoutMs`. */
export class TimedOutError extends KingplankError {
  constructor(timeoutMs: number) {
    super(`No answer within ${timeoutMs} ms`);
  }
}

/** The caller's own signal ended the call. */
export class AbortedError extends KingplankError {
  constructor(cause: unknown) {
    super('The call was aborted', undefined, cause);
  }
}

export function errorFor(problem: ProblemDocument): ProblemError {
  switch (problem.status) {
    case 401:
      return new UnauthenticatedError(problem);
    case 403:
      return new ForbiddenError(problem);
    case 404:
      return new NotFoundError(problem);
    case 409:
      return new ConflictError(problem);
    case 412:
    case 428:
      return new StaleVersionError(problem);
    case 429:
      return new RateLimitedError(problem);
    default:
      return problem.status >= 500 ? new ServiceFailedError(problem) : new InvalidRequestError(problem);
  }
}
