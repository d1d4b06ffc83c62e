import type { Response } from 'express';
import { HttpProblem } from './problems.js';

/** What was counted for one caller in the present minute. */
interface Count {
  minute: number;
  /** By this copy, and not yet told to the others. */
  untold: number;
  /** By all copies, as far as they have told each other. */
  told: number;
}

export interface CountOfMinute {
  readonly caller: string;
  readonly minute: number;
  readonly used: number;
}

export interface Allowance {
  /** Who is counted, such as a key or an organisation. */
  readonly caller: string;
  readonly perMinute: number;
}

const MINUTE_MS = 60_000;
/** More callers than this in one minute share one count, so that the table cannot be made to grow. */
const MOST_CALLERS = 50_000;

/**
 * A limit for each caller in each minute of the clock, told in the RateLimit fields (IETF draft) and refused with 429.
 * Copies of the service tell each other what they counted (`taken`, `told`), so that they count as one.
 */
export class RateLimit {
  private readonly counts = new Map<string, Count>();

  constructor(private readonly now: () => number = Date.now) {}

  /** The tightest allowance is told. @throws {HttpProblem} too-many-requests */
  take(allowances: readonly Allowance[], response: Response): void {
    const seconds = Math.max(1, Math.ceil((MINUTE_MS - (this.now() % MINUTE_MS)) / 1000));
    const left = allowances.map(({ caller, perMinute }) => perMinute - this.usedBy(caller));
    const tightest = left.indexOf(Math.min(...left));
    const { perMinute } = allowances[tightest];
    response.setHeader('RateLimit-Policy', `"per-minute";q=${perMinute};w=60`);
    response.setHeader('RateLimit', `"per-minute";r=${Math.max(0, left[tightest])};t=${seconds}`);
    if (left[tightest] >= 0) return;
    throw new HttpProblem('too-many-requests', {
      detail: `At most ${perMinute} requests a minute are answered for one caller; try again in ${seconds} s.`,
      headers: { 'Retry-After': String(seconds) },
    });
  }

  /** What this copy counted and has not told yet; it counts as told from now on. */
  taken(): readonly CountOfMinute[] {
    const untold = [...this.counts].filter(([, { untold: count }]) => count > 0);
    return untold.map(([caller, count]) => {
      const used = count.untold;
      count.told += used;
      count.untold = 0;
      return { caller, minute: count.minute, used };
    });
  }

  /** What all copies counted. */
  told(counts: readonly CountOfMinute[]): void {
    for (const { caller, minute, used } of counts) {
      const count = this.counts.get(caller);
      if (count?.minute === minute) count.told = Math.max(count.told, used);
    }
  }

  private usedBy(caller: string): number {
    const minute = Math.floor(this.now() / MINUTE_MS);
    if (this.counts.size >= MOST_CALLERS) this.forgetBefore(minute);
    const key = this.counts.size >= MOST_CALLERS && !this.counts.has(caller) ? 'everybody else' : caller;
    const known = this.counts.get(key);
    const count = known?.minute === minute ? known : { minute, untold: 0, told: 0 };
    count.untold += 1;
    this.counts.set(key, count);
    return count.untold + count.told;
  }

  private forgetBefore(minute: number): void {
    for (const [caller, count] of this.counts) if (count.minute < minute) this.counts.delete(caller);
  }
}
