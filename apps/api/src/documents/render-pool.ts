import { fork, type ChildProcess } from 'node:child_process';
import { Defect } from '#lib/kernel';
import { unavailable, type HttpProblem } from '../edge/problems.js';
import type { RenderOrder, Rendered } from './render.js';
import type { Delivery } from './render-process.js';

export interface PoolSize {
  readonly presses: number;
  readonly longestQueue: number;
  /** Documents after which a press is replaced. */
  readonly documentsEach: number;
  readonly idleMs: number;
}

interface Job {
  readonly order: RenderOrder;
  readonly settle: (delivery: Delivery) => void;
  readonly refuse: (reason: unknown) => void;
}

interface Press {
  readonly child: ChildProcess;
  job: Job | undefined;
  printed: number;
  idle: NodeJS.Timeout | undefined;
}

/** A full queue of usual reports is set in about this time. */
const WAIT_WHEN_FULL_S = 10;

const stopping = (): HttpProblem => unavailable('The service is stopping.');

/**
 * Presses in processes of their own. The typesetting library keeps some megabytes of every document for good, whatever
 * is asked of its cache, and would keep them in a thread too: so a press is let go after a number of documents, and the
 * memory of the service stays flat.
 */
export class RenderPool {
  private readonly presses = new Set<Press>();
  private readonly queue: Job[] = [];
  private isClosed = false;

  constructor(
    private readonly file: string,
    private readonly size: PoolSize,
  ) {}

  /** How many orders wait for a press. */
  get waiting(): number {
    return this.queue.length;
  }

  /** @throws {HttpProblem} unavailable, when there are too many orders or the service stops */
  async run(order: RenderOrder, signal?: AbortSignal): Promise<Rendered> {
    signal?.throwIfAborted();
    if (this.isClosed) throw stopping();
    if (this.queue.length >= this.size.longestQueue)
      throw unavailable('Too many documents are waiting to be set.', undefined, WAIT_WHEN_FULL_S);
    const delivery = await new Promise<Delivery>((resolve, reject) => {
      const job: Job = { order, settle: resolve, refuse: reject };
      signal?.addEventListener(
        'abort',
        () => {
          reject(signal.reason);
          this.withdraw(job);
        },
        { once: true },
      );
      this.queue.push(job);
      this.assign();
    });
    if (!delivery.ok) throw new Defect(delivery.message);
    return delivery.rendered;
  }

  async destroy(): Promise<void> {
    this.isClosed = true;
    for (const job of this.queue.splice(0)) job.refuse(stopping());
    await Promise.all([...this.presses].map((press) => this.letGo(press)));
  }

  private assign(): void {
    if (this.queue.length === 0 || this.isClosed) return;
    const free =
      [...this.presses].find(({ job }) => job === undefined) ??
      (this.presses.size < this.size.presses ? this.opened() : undefined);
    const job = free === undefined ? undefined : this.queue.shift();
    if (free === undefined || job === undefined) return;
    clearTimeout(free.idle);
    free.job = job;
    free.child.send(job.order);
  }

  private opened(): Press {
    const child = fork(this.file, [], { serialization: 'advanced', execArgv: [] });
    const press: Press = { child, job: undefined, printed: 0, idle: undefined };
    this.presses.add(press);
    child.on('message', (delivery: Delivery) => {
      this.delivered(press, delivery);
    });
    child.on('exit', (code) => {
      this.ended(press, code);
    });
    child.on('error', () => {
      child.kill('SIGKILL');
    });
    return press;
  }

  private delivered(press: Press, delivery: Delivery): void {
    const { job } = press;
    press.job = undefined;
    press.printed += 1;
    job?.settle(delivery);
    if (press.printed >= this.size.documentsEach) void this.letGo(press);
    else
      press.idle = setTimeout(() => {
        void this.letGo(press);
      }, this.size.idleMs).unref();
    this.assign();
  }

  /** A press that dies over an order fails that order only. */
  private ended(press: Press, code: number | null): void {
    clearTimeout(press.idle);
    this.presses.delete(press);
    if (this.isClosed) press.job?.refuse(stopping());
    else press.job?.settle({ ok: false, message: `A press ended with ${code ?? 'a signal'} over its order` });
    this.assign();
  }

  /** Nobody waits for it any more: out of the queue, or off the press with the press. */
  private withdraw(job: Job): void {
    const at = this.queue.indexOf(job);
    if (at >= 0) this.queue.splice(at, 1);
    for (const press of this.presses) if (press.job === job) void this.letGo(press);
  }

  private letGo(press: Press): Promise<void> {
    clearTimeout(press.idle);
    this.presses.delete(press);
    return new Promise((resolve) => {
      if (press.child.exitCode !== null || press.child.signalCode !== null) resolve();
      press.child.once('exit', () => {
        resolve();
      });
      press.child.kill('SIGKILL');
    });
  }
}
