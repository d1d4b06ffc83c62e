import { kindOf, type ProblemDocument, type ProblemEntry, type ProblemKind } from './problem-document.js';

/** Everything this client throws is one of these; `instanceof` tells which. */
export abstract class KingplankError extends Error {
  /** The service's id of the request, to quote when asking for help. */
  readonly requestId: string | undefined;

  constructor(message: string, requestId?: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.name = new.target.name;
    this.requestId = requestId;
  }
}

/** The client was set up or called wrongly: nothing was sent. */
export class MisusedClientError extends KingplankError {}

/** The service answered, and said no: an RFC 9457 problem. */
export abstract class ProblemError extends KingplankError {
  readonly status: number;
  /** Stable: what kind of refusal it is. */
  readonly code: ProblemKind;
  /** Every fault, with the JSON Pointer of its field, the parameter or the header. */
  readonly errors: readonly ProblemEntry[];
  readonly problem: ProblemDocument;
  readonly headers: Headers;

  constructor(problem: ProblemDocument, headers: Headers = new Headers()) {
    super(messageOf(problem), problem.requestId);
    this.status = problem.status;
    this.code = kindOf(problem);
    this.errors = problem.errors ?? [];
    this.problem = problem;
    this.headers = headers;
  }

  /** The JSON Pointers of the fields that are wrong. */
  get pointers(): readonly string[] {
    return this.errors.flatMap(({ pointer }) => (pointer === undefined ? [] : [pointer]));
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
/** 5xx: the service or what it depends on failed. */
export class ServiceFailedError extends ProblemError {}

/** 429: too many requests. Thrown at once when the wait does not fit into the time of the call. */
export class RateLimitedError extends ProblemError {
  /** How long the service asks to wait; undefined when it did not say. */
  get retryAfterMs(): number | undefined {
    return askedWaitMs(this.headers.get('retry-after'), Date.now());
  }
}

/** No whole answer arrived: the network, DNS or the connection failed, or it broke off in the middle. */
export class ConnectionFailedError extends KingplankError {
  constructor(cause: unknown, message = 'The service could not be reached') {
    super(message, undefined, cause);
  }
}

/** The answer is not what the contract promises, e.g. a proxy's page in place of JSON. */
export class UnreadableAnswerError extends KingplankError {
  constructor(cause: unknown, requestId?: string) {
    super('The answer could not be read as what was asked for', requestId, cause);
  }
}

/** No whole answer within `timeoutMs`. */
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

/** A delivered event that was not signed with one of the secrets, or is too old. */
export class UntrustedEventError extends KingplankError {}

export function errorFor(problem: ProblemDocument, headers?: Headers): ProblemError {
  switch (problem.status) {
    case 401:
      return new UnauthenticatedError(problem, headers);
    case 403:
      return new ForbiddenError(problem, headers);
    case 404:
      return new NotFoundError(problem, headers);
    case 409:
      return new ConflictError(problem, headers);
    case 412:
    case 428:
      return new StaleVersionError(problem, headers);
    case 429:
      return new RateLimitedError(problem, headers);
    default:
      return problem.status >= 500
        ? new ServiceFailedError(problem, headers)
        : new InvalidRequestError(problem, headers);
  }
}

/** What `Retry-After` asks for, in seconds or as an HTTP date. */
export function askedWaitMs(retryAfter: string | null, nowMs: number): number | undefined {
  if (retryAfter === null) return undefined;
  if (/^\d+$/.test(retryAfter.trim())) return Number(retryAfter) * 1000;
  const at = Date.parse(retryAfter);
  return Number.isNaN(at) ? undefined : Math.max(0, at - nowMs);
}
