import type { Response } from 'express';
import { HttpProblem } from './problems.js';

interface Window {
  endsAt: number;
  used: number;
}

const WINDOW_MS = 60_000;
/** More callers than this in one minute share one window, so that the table cannot be made to grow. */
const MOST_CALLERS = 50_000;

/** A fixed window of one minute for each caller, told in the RateLimit fields (IETF draft) and refused with 429. */
export class RateLimit {
  private readonly windows = new Map<string, Window>();

  constructor(
    private readonly perMinute: number,
    private readonly now: () => number = Date.now,
  ) {}

  /** @throws {HttpProblem} too-many-requests */
  take(caller: string, response: Response): void {
    const window = this.windowOf(caller);
    window.used += 1;
    const left = Math.max(0, this.perMinute - window.used);
    const seconds = Math.max(1, Math.ceil((window.endsAt - this.now()) / 1000));
    response.setHeader('RateLimit-Policy', `"per-minute";q=${this.perMinute};w=60`);
    response.setHeader('RateLimit', `"per-minute";r=${left};t=${seconds}`);
    if (window.used <= this.perMinute) return;
    throw new HttpProblem('too-many-requests', {
      detail: `At most ${this.perMinute} requests a minute are answered for one caller; try again in ${seconds} s.`,
      headers: { 'Retry-After': String(seconds) },
    });
  }

  private windowOf(caller: string): Window {
    const now = this.now();
    if (this.windows.size >= MOST_CALLERS) this.forgetEnded(now);
    const key = this.windows.size >= MOST_CALLERS && !this.windows.has(caller) ? 'everybody else' : caller;
    const known = this.windows.get(key);
    if (known !== undefined && known.endsAt > now) return known;
    const fresh = { endsAt: now + WINDOW_MS, used: 0 };
    this.windows.set(key, fresh);
    return fresh;
  }

  private forgetEnded(now: number): void {
    for (const [caller, { endsAt }] of this.windows) if (endsAt <= now) this.windows.delete(caller);
  }
}
