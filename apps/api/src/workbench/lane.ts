import type { Pool } from 'workerpool';
import { HttpProblem, TooBusy, unavailable } from '../edge/problems.js';
import { problem } from '#lib/kernel';
import { FairQueue, type Waiting } from './fair-queue.js';
import { Hand, ranOutOfMemory, type HandKind, type Task } from './hand.js';

export interface LaneSize extends HandKind {
  readonly hands: number;
  /** Hands that no single organisation may fill, so that a newcomer finds one. */
  readonly reserved: number;
  /** A newcomer that would wait longer is told when to come back instead. */
  readonly longestWaitMs: number;
  /** How long one job may hold a hand. */
  readonly longestJobMs: number;
  /** Errands after which a hand is replaced; a process may keep native memory for good. */
  readonly errandsEach: number;
  /** A hand that had nothing to do for this long is let go; absent, it is kept. */
  readonly idleMs?: number;
}

/** What happened in a lane since the service began. */
export interface LaneCounts {
  readonly done: number;
  readonly cancelled: number;
  readonly overBudget: number;
  readonly refused: number;
}

/** What a hand gives back, of the type that the job says, and how long it took. */
export interface Delivery {
  readonly answer: Awaited<ReturnType<Pool['exec']>>;
  readonly workedMs: number;
}

interface Ticket extends Waiting {
  readonly task: Task;
  readonly delivery: Promise<Delivery>;
  readonly resolve: (delivery: Delivery) => void;
  readonly reject: (reason: unknown) => void;
}

interface Running {
  readonly ticket: Ticket;
  readonly startedAt: number;
}

/** Work that is nearly done is let end, so that its thread need not be made anew. */
const LET_END_MS = 50;

/** Hands of one kind, and who waits for them. */
export class Lane {
  private counted = { done: 0, cancelled: 0, overBudget: 0, refused: 0 };
  private readonly queue = new FairQueue<Ticket>();
  private readonly idle = new Map<Hand, NodeJS.Timeout | undefined>();
  private readonly busy = new Map<Hand, Running>();
  private isClosed = false;

  constructor(private readonly size: LaneSize) {}

  get counts(): LaneCounts {
    return this.counted;
  }

  get hands(): number {
    return this.busy.size + this.idle.size;
  }

  get waiting(): number {
    return this.queue.size;
  }

  get running(): number {
    return this.busy.size;
  }

  /** Starts every hand and lets it do what it will be asked for, so that the first caller does not wait for loading. */
  async warm(tasks: readonly Task[]): Promise<void> {
    const fresh = Array.from({ length: this.size.hands - this.hands }, () => new Hand(this.size));
    for (const task of tasks) await Promise.all(fresh.map((hand) => hand.do(task)));
    for (const hand of fresh) this.rest(hand);
  }

  /** @throws {HttpProblem} unavailable, with the expected wait; unprocessable, for a job beyond its memory */
  async do(task: Task, newcomer: Waiting, signal: AbortSignal): Promise<Delivery> {
    if (this.isClosed) throw stopping();
    if (signal.aborted) throw givenUp(signal);
    const waitMs = this.waitMs(newcomer);
    if (waitMs > this.size.longestWaitMs) {
      this.counted.refused += 1;
      throw tooBusy(waitMs);
    }
    const ticket = ticketFor(task, newcomer);
    const onAbort = (): void => {
      this.withdraw(ticket, givenUp(signal));
    };
    signal.addEventListener('abort', onAbort, { once: true });
    this.queue.add(ticket);
    this.assign();
    try {
      return await ticket.delivery;
    } finally {
      signal.removeEventListener('abort', onAbort);
    }
  }

  async close(): Promise<void> {
    this.isClosed = true;
    for (const ticket of this.queue.clear()) ticket.reject(stopping());
    for (const { ticket } of this.busy.values()) ticket.reject(stopping());
    await Promise.all([...this.busy.keys(), ...this.idle.keys()].map((hand) => this.letGo(hand)));
  }

  /** How long a newcomer would wait, if everything takes as long as it is expected to. */
  waitMs(newcomer: Waiting): number {
    if (this.busy.size < this.size.hands && this.mayHaveMore(newcomer.organisationId)) return 0;
    const now = performance.now();
    const underWayMs = [...this.busy.values()].reduce(
      (sum, { ticket, startedAt }) => sum + Math.max(0, ticket.expectedMs - (now - startedAt)),
      0,
    );
    return (underWayMs + this.queue.workBefore(newcomer)) / this.size.hands;
  }

  private mayHaveMore(organisationId: string): boolean {
    const own = [...this.busy.values()].filter(({ ticket }) => ticket.organisationId === organisationId);
    return own.length < this.size.hands - this.size.reserved;
  }

  private assign(): void {
    while (this.busy.size < this.size.hands && !this.isClosed) {
      const ticket = this.queue.take((organisationId) => this.mayHaveMore(organisationId));
      if (ticket === undefined) return;
      void this.serve(this.freeHand(), ticket);
    }
  }

  private freeHand(): Hand {
    const [found] = this.idle.keys();
    if (found === undefined) return new Hand(this.size);
    clearTimeout(this.idle.get(found));
    this.idle.delete(found);
    return found;
  }

  private async serve(hand: Hand, ticket: Ticket): Promise<void> {
    const startedAt = performance.now();
    this.busy.set(hand, { ticket, startedAt });
    const limit = setTimeout(() => {
      this.counted.overBudget += 1;
      this.stop(hand, ticket, tooLong(this.size.longestJobMs));
    }, this.size.longestJobMs);
    try {
      const answer = await hand.do(ticket.task);
      ticket.resolve({ answer, workedMs: performance.now() - startedAt });
      this.counted.done += 1;
      this.rest(hand);
    } catch (failure) {
      ticket.reject(this.reasonOf(failure));
      await this.letGo(hand);
    } finally {
      clearTimeout(limit);
      this.busy.delete(hand);
      this.assign();
    }
  }

  private reasonOf(failure: unknown): unknown {
    if (!ranOutOfMemory(failure)) return failure;
    this.counted.overBudget += 1;
    return tooLarge(this.size.memoryMb);
  }

  private rest(hand: Hand): void {
    if (this.isClosed || hand.errands >= this.size.errandsEach) {
      void this.letGo(hand);
      return;
    }
    const { idleMs } = this.size;
    const letGo = (): void => {
      void this.letGo(hand);
    };
    this.idle.set(hand, idleMs === undefined ? undefined : setTimeout(letGo, idleMs).unref());
  }

  private withdraw(ticket: Ticket, reason: HttpProblem): void {
    this.counted.cancelled += 1;
    if (this.queue.remove(ticket)) {
      ticket.reject(reason);
      return;
    }
    const [hand] = [...this.busy].find(([, running]) => running.ticket === ticket) ?? [];
    if (hand === undefined) return;
    setTimeout(() => {
      this.stop(hand, ticket, reason);
    }, LET_END_MS);
  }

  /** Ends a job, if the hand is still at it. */
  private stop(hand: Hand, ticket: Ticket, reason: HttpProblem): void {
    if (this.busy.get(hand)?.ticket !== ticket) return;
    ticket.reject(reason);
    void this.letGo(hand);
  }

  private async letGo(hand: Hand): Promise<void> {
    clearTimeout(this.idle.get(hand));
    this.idle.delete(hand);
    await hand.end();
  }
}

function ticketFor(task: Task, waiting: Waiting): Ticket {
  let resolve: Ticket['resolve'] = () => undefined;
  let reject: Ticket['reject'] = () => undefined;
  const delivery = new Promise<Delivery>((onAnswer, onFailure) => {
    resolve = onAnswer;
    reject = onFailure;
  });
  return { ...waiting, task, delivery, resolve, reject };
}

const stopping = (): HttpProblem => unavailable('The service is stopping.');

const tooBusy = (waitMs: number): HttpProblem => {
  const seconds = Math.max(1, Math.ceil(waitMs / 1000));
  return new TooBusy(
    `There is more to work out than can be answered soon; the wait would be about ${seconds} s.`,
    seconds,
  );
};

const givenUp = (signal: AbortSignal): HttpProblem =>
  signal.reason instanceof HttpProblem
    ? signal.reason
    : unavailable('The work was given up: nobody waits for it, or it took too long.', signal.reason);

const tooLong = (limitMs: number): HttpProblem =>
  unavailable(`One piece of work may take ${limitMs / 1000} s; this one was ended.`);

const tooLarge = (memoryMb: number): HttpProblem => {
  const why = `it needs more than the ${memoryMb} MB that one piece of work may use; divide it`;
  return new HttpProblem('unprocessable', { detail: why, problems: [problem('not-supported', '', { why })] });
};
