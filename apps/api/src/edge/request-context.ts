import { AsyncLocalStorage } from 'node:async_hooks';
import { randomBytes, randomUUID } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

/** What is known about a request from its first byte on. */
export interface RequestContext {
  readonly requestId: string;
  /** W3C Trace Context: the caller's trace is carried on, with a span of our own. */
  readonly traceId: string;
  readonly spanId: string;
  readonly sampled: boolean;
  /** Aborted when the caller goes away, or when the request has taken as long as it may. */
  readonly patience: AbortSignal;
  /** Filled in once the key is known. */
  readonly caller: RequestCaller;
}

interface RequestCaller {
  organisationId?: string;
  keyId?: string;
  /** What the database lets the caller see of its organisation's estimates; absent for all of them. */
  confinedTo?: string;
}

const running = new AsyncLocalStorage<RequestContext>();

export const withContext = <T>(context: RequestContext, work: () => T): T => running.run(context, work);

/** Absent outside a request. */
export const currentContext = (): RequestContext | undefined => running.getStore();

/** So that every line of the log says whose request it is about. */
export function nameCaller({
  organisationId,
  keyId,
}: {
  readonly organisationId: string;
  readonly keyId: string;
}): void {
  const caller = currentContext()?.caller;
  if (caller !== undefined) Object.assign(caller, { organisationId, keyId });
}

/** From here on, every transaction of the request sees no more than this. */
export function confineRequest(to: string | undefined): void {
  const caller = currentContext()?.caller;
  if (caller !== undefined && to !== undefined) caller.confinedTo = to;
}

/** Work that outlives the request it was begun in, and is not done for its caller. */
export const outsideRequests = <T>(work: () => T): T => running.exit(work);

/** How long work is wanted: as long as the request is; outside a request, for ever. */
export const patience = (): AbortSignal => currentContext()?.patience ?? new AbortController().signal;

export function contextOf(request: IncomingMessage, patience: AbortSignal): RequestContext {
  const parent = parentTrace(request.headers.traceparent);
  return {
    requestId: acceptableId(request.headers['x-request-id']) ?? randomUUID(),
    traceId: parent?.traceId ?? randomBytes(16).toString('hex'),
    spanId: randomBytes(8).toString('hex'),
    sampled: parent?.sampled ?? false,
    patience,
    caller: {},
  };
}

export const traceparentOf = ({ traceId, spanId, sampled }: RequestContext): string =>
  `00-${traceId}-${spanId}-${sampled ? '01' : '00'}`;

const acceptableId = (given: string | string[] | undefined): string | undefined =>
  typeof given === 'string' && /^[A-Za-z0-9._-]{8,64}$/.test(given) ? given : undefined;

function parentTrace(
  given: string | string[] | undefined,
): { readonly traceId: string; readonly sampled: boolean } | undefined {
  const match = /^([0-9a-f]{2})-([0-9a-f]{32})-([0-9a-f]{16})-([0-9a-f]{2})(-.*)?$/.exec(String(given ?? ''));
  if (match === null || match[1] === 'ff' || (match[1] === '00' && match[5] !== undefined)) return undefined;
  if (/^0+$/.test(match[2]) || /^0+$/.test(match[3])) return undefined;
  return { traceId: match[2], sampled: (Number.parseInt(match[4], 16) & 1) === 1 };
}
