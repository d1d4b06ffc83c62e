import { outsideRequests } from '../edge/request-context.js';

/** Work that is looked for by the clock and on call, one round at a time, outside any request. */
export class Rounds {
  private readonly stopping = new AbortController();
  private timer: NodeJS.Timeout | undefined;
  private round: Promise<void> | undefined;
  private isWanted = false;

  constructor(
    private readonly lookEveryMs: number,
    /** One round; it tells its failures itself. */
    private readonly work: () => Promise<void>,
  ) {}

  /** Aborted once no more is to be begun. */
  get stop(): AbortSignal {
    return this.stopping.signal;
  }

  /** Once the database is open. */
  start(): void {
    this.timer = setInterval(() => {
      this.wake();
    }, this.lookEveryMs).unref();
    this.wake();
  }

  /** There may be something to do; a round that is under way is followed by another. */
  wake(): void {
    this.isWanted = true;
    if (this.timer === undefined || this.stop.aborted) return;
    this.round ??= outsideRequests(() => this.go()).finally(() => {
      this.round = undefined;
    });
  }

  /** Begins nothing more and waits for the round under way. */
  async end(): Promise<void> {
    clearInterval(this.timer);
    this.stopping.abort();
    await this.round;
  }

  private async go(): Promise<void> {
    while (this.isWanted && !this.stop.aborted) {
      this.isWanted = false;
      await this.work();
    }
  }
}
