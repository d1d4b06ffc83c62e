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
}

const running = new AsyncLocalStorage<RequestContext>();

export const withContext = <T>(context: RequestContext, work: () => T): T => running.run(context, work);

/** Absent outside a request. */
export const currentContext = (): RequestContext | undefined => running.getStore();

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
