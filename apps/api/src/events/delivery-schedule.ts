import type { Attempted } from './events.repository.js';
import type { Posted } from './post.js';

/**
 * Seconds to wait after each attempt that failed; after the last of them nothing is tried any more. Ten attempts in
 * 75.6 h. Source: Standard Webhooks, specification, "Deliverability and reliability" (schedule as proposed there; from memory).
 */
export const waitsS: readonly number[] = [5, 300, 1800, 7200, 18_000, 36_000, 50_400, 72_000, 86_400];

/** The answer that says that nobody is there any more. */
export const GONE = 410;
const LONGEST_WAIT_S = 86_400;

/**
 * What comes of an attempt: a status of 2xx is success and nothing else is, a redirect neither. Waits are between the
 * stated time and a tenth more, so that what failed together is not tried together, and as long as the endpoint asks.
 */
export function outcomeOf(
  attempt: number,
  { status, failure, retryAfterS = 0 }: Posted,
  chance: number,
): Attempted {
  const told = { lastStatus: status, lastFailure: failure };
  if (status !== undefined && status >= 200 && status < 300)
    return { ...told, status: 'delivered', againInS: 0 };
  const lastFailure = failure ?? `The endpoint answered ${status ?? 'nothing'}; only 200 to 299 is success.`;
  const waitS = waitsS.at(attempt - 1);
  if (waitS === undefined || status === GONE) return { ...told, lastFailure, status: 'failed', againInS: 0 };
  const askedS = Math.min(retryAfterS, LONGEST_WAIT_S);
  return { ...told, lastFailure, status: 'waiting', againInS: Math.max(waitS * (1 + chance / 10), askedS) };
}
