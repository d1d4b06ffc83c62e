import { askedWaitMs } from './errors.js';

const LONGEST_GUESS_MS = 8_000;
const FIRST_WAIT_MS = 250;

const retriedStatuses = new Set([408, 429, 502, 503, 504]);

export const isWorthRetrying = (status: number, retryAfter: string | null): boolean =>
  retriedStatuses.has(status) || (status === 409 && retryAfter !== null);

/**
 * How long to wait before the next try: what `Retry-After` asks, in full; otherwise exponential back-off with full
 * jitter, so that many clients do not return at the same moment.
 */
export const waitMs = (
  tries: number,
  retryAfter: string | null,
  nowMs: number,
  chance: () => number,
): number =>
  askedWaitMs(retryAfter, nowMs) ?? Math.min(LONGEST_GUESS_MS, FIRST_WAIT_MS * 2 ** tries) * chance();

/** Resolves after the wait, or rejects at once when the signal fires. */
export function pause(ms: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    if (signal.aborted) {
      reject(signal.reason);
      return;
    }
    const stop = (): void => {
      clearTimeout(timer);
      reject(signal.reason);
    };
    const timer = setTimeout(() => {
      signal.removeEventListener('abort', stop);
      resolve();
    }, ms);
    signal.addEventListener('abort', stop, { once: true });
  });
}
