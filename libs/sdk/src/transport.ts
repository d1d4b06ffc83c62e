import {
  AbortedError,
  ConnectionFailedError,
  errorFor,
  KingplankError,
  TimedOutError,
  UnreadableAnswerError,
} from './errors.js';
import { log } from './log.js';
import { problemFrom } from './problem-document.js';
import { isWorthRetrying, pause, waitMs } from './retry.js';
import { API_VERSION, CLIENT_VERSION, type Settings } from './settings.js';

export interface CallOptions {
  /** Time for this call, its retries and its body included. */
  readonly timeoutMs?: number;
  readonly maxRetries?: number;
  readonly signal?: AbortSignal;
  /** Writes get one by themselves; give your own to make a retry across processes safe. */
  readonly idempotencyKey?: string;
  /** The ETag the change is based on. */
  readonly ifMatch?: string;
  /** Have the service make a document or an estimate in its own time (`Prefer: respond-async`); the client still waits for it, within `timeoutMs`. */
  readonly inBackground?: boolean;
  /** For this call, as `units` of the client. */
  readonly units?: 'si' | 'us';
  /** For this call, beside those of the client. */
  readonly headers?: Readonly<Record<string, string>>;
}

export type HttpMethod = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

export interface Call {
  readonly method: HttpMethod;
  readonly path: string;
  readonly query?: Readonly<Record<string, string | number | boolean | undefined>> | undefined;
  readonly body?: unknown;
  readonly contentType?: string;
  readonly accept?: string;
}

export interface Exchanged<T> {
  readonly value: T;
  readonly response: Response;
}

/** Takes the body of a good answer. */
export type Reader<T> = (response: Response) => Promise<T>;

/**
 * One call with its time limit, abort and retries, the body included.
 *
 * @throws {KingplankError} and nothing else
 */
export async function exchange<T>(
  settings: Settings,
  call: Call,
  options: CallOptions,
  read: Reader<T>,
): Promise<Exchanged<T>> {
  const limit = limitOf(options.timeoutMs ?? settings.timeoutMs, options.signal);
  const request = requestOf(settings, call, options);
  const retries = options.maxRetries ?? settings.maxRetries;
  for (let tries = 0; ; tries += 1) {
    const outcome = await attempt(settings, request, { limit, read });
    if ('value' in outcome) return outcome;
    const wait = waitMs(tries, outcome.retryAfter, Date.now(), Math.random);
    if (!outcome.mayRetry || tries >= retries || wait > limit.leftMs()) throw outcome.error;
    log(settings, 'info', `${request.name} again in ${Math.round(wait)} ms: ${outcome.error.message}`);
    await pause(wait, limit.signal).catch((error: unknown) => {
      throw limit.errorIfOver(error) ?? outcome.error;
    });
  }
}

/** The time a call may take, and the caller's own wish to end it. */
interface Limit {
  readonly signal: AbortSignal;
  readonly leftMs: () => number;
  /** The error to throw when the call is over, whatever broke first. */
  readonly errorIfOver: (cause: unknown) => KingplankError | undefined;
}

function limitOf(timeoutMs: number, caller: AbortSignal | undefined): Limit {
  const clock = AbortSignal.timeout(timeoutMs);
  const until = Date.now() + timeoutMs;
  return {
    signal: caller === undefined ? clock : AbortSignal.any([clock, caller]),
    leftMs: () => until - Date.now(),
    errorIfOver: (cause) => {
      if (caller?.aborted === true) return new AbortedError(cause);
      return clock.aborted ? new TimedOutError(timeoutMs) : undefined;
    },
  };
}

interface Request {
  readonly name: string;
  readonly url: string;
  readonly init: RequestInit;
}

interface Failed {
  readonly error: KingplankError;
  readonly mayRetry: boolean;
  readonly retryAfter: string | null;
}

async function attempt<T>(
  settings: Settings,
  { name, url, init }: Request,
  { limit, read }: { readonly limit: Limit; readonly read: Reader<T> },
): Promise<Exchanged<T> | Failed> {
  log(settings, 'debug', `${name} asked`);
  const begun = Date.now();
  try {
    const response = await settings.fetch(url, { ...settings.fetchOptions, ...init, signal: limit.signal });
    log(settings, 'debug', `${name} ${response.status} after ${Date.now() - begun} ms`);
    if (!response.ok && response.status !== 304) return await refused(response);
    return { value: await readWith(read, response), response };
  } catch (error) {
    const over = limit.errorIfOver(error);
    if (over !== undefined) return { error: over, mayRetry: false, retryAfter: null };
    if (error instanceof KingplankError) return { error, mayRetry: false, retryAfter: null };
    return { error: new ConnectionFailedError(error), mayRetry: true, retryAfter: null };
  }
}

async function refused(response: Response): Promise<Failed> {
  const retryAfter = response.headers.get('retry-after');
  return {
    error: errorFor(await problemFrom(response), response.headers),
    mayRetry: isWorthRetrying(response.status, retryAfter),
    retryAfter,
  };
}

/** JSON that is none says so; a body that breaks off is a failed connection, which may be tried again. */
async function readWith<T>(read: Reader<T>, response: Response): Promise<T> {
  try {
    return await read(response);
  } catch (error) {
    if (isSyntaxError(error))
      throw new UnreadableAnswerError(error, response.headers.get('x-request-id') ?? undefined);
    throw error;
  }
}

/** By name, because an engine may throw one that was made in another realm. */
const isSyntaxError = (error: unknown): boolean =>
  typeof error === 'object' && error !== null && 'name' in error && error.name === 'SyntaxError';

function requestOf(settings: Settings, call: Call, options: CallOptions): Request {
  const url = new URL(settings.baseUrl + call.path);
  for (const [name, value] of Object.entries(call.query ?? {})) {
    if (value !== undefined) url.searchParams.set(name, String(value));
  }
  return {
    name: `${call.method} ${url.pathname}`,
    url: url.href,
    init: { method: call.method, headers: headersOf(settings, call, options), ...bodyOf(call) },
  };
}

/** Text and bytes go as they are, anything else as JSON. */
function bodyOf({ body }: Call): Pick<RequestInit, 'body'> {
  if (body === undefined) return {};
  if (typeof body === 'string') return { body };
  return { body: body instanceof Uint8Array ? Uint8Array.from(body) : JSON.stringify(body) };
}

function headersOf(settings: Settings, call: Call, options: CallOptions): Record<string, string> {
  const units = options.units ?? settings.units;
  return {
    'authorization': `Bearer ${settings.apiKey}`,
    'accept': call.accept ?? 'application/json',
    'kingplank-version': API_VERSION,
    ...userAgent,
    ...(call.body === undefined ? {} : { 'content-type': call.contentType ?? 'application/json' }),
    ...(call.method === 'GET'
      ? {}
      : { 'idempotency-key': `"${options.idempotencyKey ?? crypto.randomUUID()}"` }),
    ...(options.ifMatch === undefined ? {} : { 'if-match': options.ifMatch }),
    ...(options.inBackground === true ? { prefer: 'respond-async' } : {}),
    ...(units === undefined ? {} : { 'accept-units': units }),
    ...settings.headers,
    ...options.headers,
  };
}

/** Who asks, where that can be said; browsers name themselves. */
const userAgent: Readonly<Record<string, string>> = agentOf();

function agentOf(): Readonly<Record<string, string>> {
  if ('document' in globalThis) return {};
  const process: { version?: string; platform?: string; arch?: string } | undefined = Reflect.get(
    globalThis,
    'process',
  );
  const runtime =
    process?.version === undefined
      ? []
      : [`node/${process.version.replace(/^v/, '')}`, `${process.platform ?? ''}-${process.arch ?? ''}`];
  return { 'user-agent': [`kingplank-sdk/${CLIENT_VERSION}`, ...runtime].join(' ') };
}
