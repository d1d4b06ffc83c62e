import { MisusedClientError } from './errors.js';
import type { Logger } from './log.js';

/** The version of the contract that this client was generated from; sent with every request. */
export const API_VERSION = '1.0';
export const CLIENT_VERSION = '0.5.0';

export interface ClientOptions {
  /** Where the service answers, e.g. `http://127.0.0.1:3000`. Default: the environment's `KINGPLANK_BASE_URL`. */
  readonly baseUrl?: string;
  /** Default: the environment's `KINGPLANK_API_KEY`. */
  readonly apiKey?: string;
  /** Time for one call, its retries and its body included. Default 30,000. */
  readonly timeoutMs?: number;
  /** Default 2. */
  readonly maxRetries?: number;
  /** `us` adds a member `us` with US customary texts to what has a dimension, and sets documents and drawings in them. Default `si`. */
  readonly units?: 'si' | 'us';
  /** Sent with every call, e.g. `{ traceparent }`. */
  readonly headers?: Readonly<Record<string, string>>;
  /** Another implementation of `fetch`, for tests and unusual runtimes. */
  readonly fetch?: typeof globalThis.fetch;
  /** Handed to `fetch` as they are, e.g. a dispatcher for a proxy. */
  readonly fetchOptions?: Readonly<Record<string, unknown>>;
  /** Told what is asked and answered, never a key or a body. */
  readonly logger?: Logger;
  /** How much the logger is told. Default: the environment's `KINGPLANK_LOG`, otherwise `warn`. */
  readonly logLevel?: LogLevel;
  /** Secrets of webhook endpoints, the newest first. Default: the environment's `KINGPLANK_WEBHOOK_SECRET`. */
  readonly webhookSecrets?: readonly string[];
  /** A secret key in a page can be read by anybody who opens it. Only for pages that nobody else opens. */
  readonly allowSecretKeyInBrowser?: boolean;
}

export type LogLevel = 'debug' | 'info' | 'warn' | 'error' | 'off';

const logLevels: readonly LogLevel[] = ['debug', 'info', 'warn', 'error', 'off'];

/** The options of a client with every question answered. */
export interface Settings extends Omit<ClientOptions, 'baseUrl' | 'apiKey' | 'logger' | 'logLevel'> {
  readonly baseUrl: string;
  readonly apiKey: string;
  readonly timeoutMs: number;
  readonly maxRetries: number;
  readonly fetch: typeof globalThis.fetch;
  readonly logger: Logger | undefined;
  readonly logLevel: LogLevel;
  readonly webhookSecrets: readonly string[];
}

/**
 * Options of the caller, then of the environment, then defaults.
 *
 * @throws {MisusedClientError} without an address or a key, or with a secret key in a browser
 */
export function settingsOf(options: ClientOptions): Settings {
  const baseUrl = options.baseUrl ?? fromEnvironment('KINGPLANK_BASE_URL');
  const apiKey = options.apiKey ?? fromEnvironment('KINGPLANK_API_KEY');
  if (baseUrl === undefined || !URL.canParse(baseUrl))
    throw new MisusedClientError(
      'Give `baseUrl`, such as "http://127.0.0.1:3000", or set KINGPLANK_BASE_URL.',
    );
  if (apiKey === undefined || apiKey === '')
    throw new MisusedClientError('Give `apiKey`, or set KINGPLANK_API_KEY.');
  refuseSecretInBrowser(apiKey, options.allowSecretKeyInBrowser === true);
  const secret = fromEnvironment('KINGPLANK_WEBHOOK_SECRET');
  return {
    ...options,
    baseUrl: baseUrl.replace(/\/+$/, ''),
    apiKey,
    timeoutMs: options.timeoutMs ?? 30_000,
    maxRetries: options.maxRetries ?? 2,
    fetch: options.fetch ?? globalThis.fetch.bind(globalThis),
    logger: options.logger ?? globalThis.console,
    logLevel: options.logLevel ?? levelNamed(fromEnvironment('KINGPLANK_LOG')) ?? 'warn',
    webhookSecrets: options.webhookSecrets ?? (secret === undefined ? [] : [secret]),
  };
}

/** Keys that a page may hold: they reach one shop's form, or one estimate, and nothing else. */
const madeForBrowsers = /^kp_(pub|es)_/;

function refuseSecretInBrowser(apiKey: string, isAllowed: boolean): void {
  const isBrowser = 'document' in globalThis && 'window' in globalThis;
  if (!isBrowser || isAllowed || madeForBrowsers.test(apiKey)) return;
  throw new MisusedClientError(
    'A secret key does not belong in a page: everybody who opens the page can read it. Use a publishable key (kp_pub_…), or set `allowSecretKeyInBrowser` for a page that only you open.',
  );
}

const levelNamed = (name: string | undefined): LogLevel | undefined =>
  logLevels.find((level) => level === name);

/** Node, Deno and bundles without either: an absent environment holds nothing. */
export function fromEnvironment(name: string): string | undefined {
  const process: { env?: Record<string, string | undefined> } | undefined = Reflect.get(
    globalThis,
    'process',
  );
  const value = process?.env?.[name];
  return value === undefined || value === '' ? undefined : value;
}
