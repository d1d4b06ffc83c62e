import { AbortedError, ConnectionFailedError, errorFor, TimedOutError } from './errors.js';
import { problemFrom } from './problem-document.js';
import { isWorthRetrying, pause, waitMs } from './retry.js';

export interface ClientOptions {
  /** Where the service answers, e.g. `http://127.0.0.1:3000`. */
  readonly baseUrl: string;
  readonly apiKey: string;
  /** Time for one call, all its retries included. Default 30,000. */
  readonly timeoutMs?: number;
  /** Default 2. */
  readonly maxRetries?: number;
  /** `us` adds a member `us` with US customary texts to what has a dimension, and sets documents and drawings in them. Default `si`. */
  readonly units?: 'si' | 'us';
  /** Another implementation of `fetch`, for tests and unusual runtimes. */
  readonly fetch?: typeof globalThis.fetch;
}

export interface CallOptions {
  readonly timeoutMs?: number;
  readonly maxRetries?: number;
  readonly signal?: AbortSignal;
  /** Writes get one by themselves; give your own to make a retry across processes safe. */
  readonly idempotencyKey?: string;
  /** The ETag the change is based on. */
  readonly ifMatch?: string;
  /** Have the service make a document in its own time (`Prefer: respond-async`); the client still waits for it, within `timeoutMs`. */
  readonly inBackground?: boolean;
  /** For this call, as `units` of the client. */
  readonly units?: 'si' | 'us';
}

export interface Call {
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  readonly path: string;
  readonly query?: Readonly<Record<string, string | number | boolean | undefined>>;
  readonly body?: unknown;
  readonly contentType?: string;
  readonly accept?: string;
}

export const DEFAULT_TIMEOUT_MS = 30_000;
const DEFAULT_RETRIES = 2;

/** One call with time limit, abort and retries; throws a `KingplankError` or answers with a 2xx response. */
export async function send(client: ClientOptions, call: Call, options: CallOptions = {}): Promise<Response> {
  const timeoutMs = options.timeoutMs ?? client.timeoutMs ?? DEFAULT_TIMEOUT_MS;
  const clock = AbortSignal.timeout(timeoutMs);
  const signal = options.signal === undefined ? clock : AbortSignal.any([clock, options.signal]);
  const request = requestOf(client, call, options);
  try {
    return await sendWithRetries({
      client,
      request,
      signal,
      retries: options.maxRetries ?? client.maxRetries ?? DEFAULT_RETRIES,
    });
  } catch (error) {
    if (options.signal?.aborted === true) throw new AbortedError(error);
    if (clock.aborted) throw new TimedOutError(timeoutMs);
    throw error;
  }
}

interface Attempt {
  readonly client: ClientOptions;
  readonly request: { readonly url: string; readonly init: RequestInit };
  readonly signal: AbortSignal;
  readonly retries: number;
}

async function sendWithRetries({ client, request, signal, retries }: Attempt): Promise<Response> {
  const fetch = client.fetch ?? globalThis.fetch;
  for (let tries = 0; ; tries += 1) {
    const answer = await fetch(request.url, { ...request.init, signal }).catch(
      (error: unknown) => new ConnectionFailedError(error),
    );
    const isLast = tries >= retries || signal.aborted;
    if (answer instanceof ConnectionFailedError) {
      if (isLast) throw answer;
      await pause(waitMs(tries, null, Date.now(), Math.random), signal);
      continue;
    }
    if (answer.ok || answer.status === 304) return answer;
    const retryAfter = answer.headers.get('retry-after');
    if (isLast || !isWorthRetrying(answer.status, retryAfter)) throw errorFor(await problemFrom(answer));
    // Not awaited: a body that somebody else still holds would never finish cancelling.
    answer.body?.cancel().catch(() => undefined);
    await pause(waitMs(tries, retryAfter, Date.now(), Math.random), signal);
  }
}

function requestOf(client: ClientOptions, call: Call, options: CallOptions): Attempt['request'] {
  const url = new URL(client.baseUrl.replace(/\/$/, '') + call.path);
  for (const [name, value] of Object.entries(call.query ?? {})) {
    if (value !== undefined) url.searchParams.set(name, String(value));
  }
  return {
    url: url.href,
    init: { method: call.method, headers: headersOf(client, call, options), ...bodyOf(call) },
  };
}

/** Text and bytes go as they are, anything else as JSON. */
function bodyOf({ body }: Call): Pick<RequestInit, 'body'> {
  if (body === undefined) return {};
  return {
    body:
      typeof body === 'string'
        ? body
        : body instanceof Uint8Array
          ? Uint8Array.from(body)
          : JSON.stringify(body),
  };
}

function headersOf(client: ClientOptions, call: Call, options: CallOptions): Record<string, string> {
  return {
    authorization: `Bearer ${client.apiKey}`,
    accept: call.accept ?? 'application/json',
    ...(call.body === undefined ? {} : { 'content-type': call.contentType ?? 'application/json' }),
    ...(call.method === 'POST'
      ? { 'idempotency-key': `"${options.idempotencyKey ?? crypto.randomUUID()}"` }
      : {}),
    ...(options.ifMatch === undefined ? {} : { 'if-match': options.ifMatch }),
    ...(options.inBackground === true ? { prefer: 'respond-async' } : {}),
    ...unitsHeader(options.units ?? client.units),
  };
}

const unitsHeader = (units: 'si' | 'us' | undefined): Record<string, string> =>
  units === undefined ? {} : { 'accept-units': units };
