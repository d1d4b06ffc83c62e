import { fileURLToPath } from 'node:url';
import { pool, TerminateError, type Pool } from 'workerpool';
import type { Errand } from './hand-entry.js';
import type { Stocked } from './job.js';

export interface HandKind {
  readonly runsIn: 'thread' | 'process';
  readonly memoryMb: number;
}

/** What a hand is asked to do. */
export interface Task {
  readonly file: string;
  readonly order: unknown;
  readonly stock?: Stocked<unknown>;
}

/** Older ones are forgotten; an organisation uses one catalogue at a time. */
const MOST_STOCKS = 8;
/** A thread ends when told so; a process that is busy is killed after this. */
const END_WITHIN_MS = 20;

const entry = fileURLToPath(new URL('./hand-entry.js', import.meta.url));

/** One thread or process, which does one errand at a time and can be ended in the middle of it. */
export class Hand {
  readonly kind: HandKind['runsIn'];
  private readonly pool: Pool;
  private readonly held: string[] = [];
  private count = 0;
  private isGone = false;
  private ended: Promise<void> | undefined;

  constructor({ runsIn, memoryMb }: HandKind) {
    this.kind = runsIn;
    this.pool = pool(entry, {
      maxWorkers: 1,
      workerType: runsIn,
      workerTerminateTimeout: END_WITHIN_MS,
      workerThreadOpts: { resourceLimits: { maxOldGenerationSizeMb: memoryMb } },
      forkOpts: { serialization: 'advanced', execArgv: [`--max-old-space-size=${memoryMb}`] },
    });
  }

  /** How many errands it was given. */
  get errands(): number {
    return this.count;
  }

  async do({ file, order, stock }: Task): Promise<Awaited<ReturnType<Pool['exec']>>> {
    this.count += 1;
    const errand: Errand = {
      file,
      order,
      ...(stock === undefined ? {} : this.stocked(stock)),
      forget: this.held.splice(0, Math.max(0, this.held.length - MOST_STOCKS)),
    };
    try {
      return await this.pool.exec('run', [errand]);
    } catch (failure) {
      // Whoever died by itself cannot be ended: the library would wait for ever.
      if (failure instanceof TerminateError && this.ended === undefined) this.isGone = true;
      throw failure;
    }
  }

  /** Ends it, whatever it is doing; the errand fails. */
  end(): Promise<void> {
    return (this.ended ??= this.isGone ? Promise.resolve() : this.terminated());
  }

  private async terminated(): Promise<void> {
    await this.pool.terminate(true);
  }

  private stocked({ key, value }: Stocked<unknown>): Pick<Errand, 'stockKey' | 'stock'> {
    if (this.held.includes(key)) return { stockKey: key };
    this.held.push(key);
    return { stockKey: key, stock: value };
  }
}

/** The runtime's own words for a thread that was given more than its memory; a process aborts itself. */
export const ranOutOfMemory = (failure: unknown): boolean =>
  failure instanceof Error && /memory limit|heap out of memory|signalCode: `SIGABRT`/i.test(failure.message);
