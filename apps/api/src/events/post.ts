import { request as requestHttp } from 'node:http';
import { request as requestHttps } from 'node:https';
import { publicLookup, targetFault } from './target.js';

/** How long an endpoint may take to answer. */
const PATIENCE_MS = 15_000;

export interface Posted {
  readonly status?: number;
  /** Seconds, as the endpoint asked; only where it did. */
  readonly retryAfterS?: number;
  /** Why nothing was answered. */
  readonly failure?: string;
}

interface Letter {
  readonly url: string;
  readonly body: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly areLocalAllowed: boolean;
  readonly signal: AbortSignal;
}

/**
 * Posts a body and gives the status that came back. Redirects are not followed, nothing of the answer is read, no proxy
 * of the environment is used, and the address is checked as a literal and again when its name is looked up.
 */
export function post({ url, body, headers, areLocalAllowed, signal }: Letter): Promise<Posted> {
  const fault = targetFault(url, areLocalAllowed);
  if (fault !== undefined) return Promise.resolve({ failure: `The address is not called: ${fault}.` });
  const send = url.startsWith('https:') ? requestHttps : requestHttp;
  return new Promise((resolve) => {
    const asked = send(url, {
      method: 'POST',
      headers: { ...headers, 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) },
      agent: false,
      signal: AbortSignal.any([signal, AbortSignal.timeout(PATIENCE_MS)]),
      ...(areLocalAllowed ? {} : { lookup: publicLookup }),
    });
    asked.on('response', (answer) => {
      answer.destroy();
      resolve({ status: answer.statusCode ?? 0, ...retryAfterOf(answer.headers['retry-after']) });
    });
    asked.on('error', (failure) => {
      resolve({ failure: wordsOf(failure) });
    });
    asked.end(body);
  });
}

const wordsOf = ({ name, message }: Error): string =>
  name === 'AbortError' || name === 'TimeoutError'
    ? `There was no answer within ${PATIENCE_MS / 1000} s.`
    : message.slice(0, 200);

const retryAfterOf = (given: string | undefined): Pick<Posted, 'retryAfterS'> =>
  given !== undefined && /^\d{1,6}$/.test(given) ? { retryAfterS: Number(given) } : {};
