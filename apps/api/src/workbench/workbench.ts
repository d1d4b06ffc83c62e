import os from 'node:os';
import { fileURLToPath } from 'node:url';
import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import { Metrics, type Reading } from '../edge/metrics.js';
import { patience } from '../edge/request-context.js';
import { configurationToken, type Configuration } from '../settings/configuration.js';
import { laneOf, type Customer, type Job, type LaneName, type Stocked } from './job.js';
import type { Task } from './hand.js';
import { Lane, type LaneSize } from './lane.js';

/** How a job's time is told from its expected time: a slow machine, or a deck that is harder than it looks. */
interface Pace {
  readonly spentMs: number;
  readonly expectedMs: number;
}

/** Old jobs count half as much after this many newer ones. */
const REMEMBERED_JOBS = 20;

/** The one place where work that holds a processor is done: in threads and processes, so that the service answers others. */
@Injectable()
export class Workbench implements OnModuleDestroy {
  private readonly lanes: Readonly<Record<LaneName, Lane>>;
  private readonly paces = new Map<string, Pace>();
  private readonly rehearsals: Task[] = [];

  constructor(@Inject(configurationToken) { requestTimeoutMs }: Configuration, metrics: Metrics) {
    const sizes = laneSizes(os.availableParallelism(), requestTimeoutMs);
    this.lanes = {
      prompt: new Lane(sizes.prompt),
      long: new Lane(sizes.long),
      press: new Lane(sizes.press),
    };
    this.measuredBy(metrics);
  }

  /**
   * Does one order of a job, in its turn.
   *
   * @throws {HttpProblem} unavailable, when the wait would be too long or nobody waits any more
   */
  async do<Order, Stock, Answer>(
    job: Job<Order, Stock, Answer>,
    order: Order,
    { organisationId, signal = patience() }: Customer,
    stock?: Stocked<Stock>,
  ): Promise<Answer> {
    const lane = this.lanes[laneOf(job, order)];
    const usualMs = job.expectedMs(order);
    const expectedMs = usualMs * this.paceOf(job.code);
    const { answer, workedMs } = await lane.do(
      taskOf(job, order, stock),
      { organisationId, expectedMs },
      signal,
    );
    this.learn(job.code, { expectedMs: usualMs, spentMs: workedMs });
    return answer;
  }

  /** How long an order would take from now, waiting included. */
  foreseenMs<Order, Stock, Answer>(
    job: Job<Order, Stock, Answer>,
    order: Order,
    { organisationId }: Customer,
  ): number {
    const expectedMs = job.expectedMs(order) * this.paceOf(job.code);
    return this.lanes[laneOf(job, order)].waitMs({ organisationId, expectedMs }) + expectedMs;
  }

  waitingIn(lane: LaneName): number {
    return this.lanes[lane].waiting;
  }

  /** Something that every prompt hand does once before the service says that it is ready. */
  rehearse<Order, Stock, Answer>(job: Job<Order, Stock, Answer>, order: Order, stock?: Stocked<Stock>): void {
    this.rehearsals.push(taskOf(job, order, stock));
  }

  warm(): Promise<void> {
    return this.lanes.prompt.warm(this.rehearsals);
  }

  async onModuleDestroy(): Promise<void> {
    await Promise.all(Object.values(this.lanes).map((lane) => lane.close()));
  }

  private paceOf(code: string): number {
    const known = this.paces.get(code);
    return known === undefined ? 1 : known.spentMs / known.expectedMs;
  }

  private learn(code: string, { spentMs, expectedMs }: Pace): void {
    const known = this.paces.get(code) ?? { spentMs: expectedMs, expectedMs };
    const kept = 1 - 1 / REMEMBERED_JOBS;
    this.paces.set(code, {
      spentMs: known.spentMs * kept + spentMs,
      expectedMs: known.expectedMs * kept + expectedMs,
    });
  }

  private measuredBy(metrics: Metrics): void {
    const each =
      (read: (lane: Lane) => number): (() => readonly Reading[]) =>
      () =>
        Object.entries(this.lanes).map(([lane, one]) => ({ labels: { lane }, value: read(one) }));
    const shown: readonly (readonly [string, string, (lane: Lane) => number])[] = [
      ['hands', 'Threads or processes that are there.', (lane) => lane.hands],
      ['waiting', 'Jobs that wait for a hand.', (lane) => lane.waiting],
      ['running', 'Jobs that are being done.', (lane) => lane.running],
      ['done', 'Jobs done since the start.', ({ counts }) => counts.done],
      ['cancelled', 'Jobs that nobody waited for any more.', ({ counts }) => counts.cancelled],
      ['over_budget', 'Jobs ended at their limit of time or memory.', ({ counts }) => counts.overBudget],
      ['refused', 'Jobs told to come back, for the wait was too long.', ({ counts }) => counts.refused],
    ];
    for (const [name, help, read] of shown) metrics.gauge(`workbench_${name}`, help, each(read));
  }
}

function taskOf<Order, Stock, Answer>(
  job: Job<Order, Stock, Answer>,
  order: Order,
  stock?: Stocked<Stock>,
): Task {
  return { file: fileURLToPath(job.file), order, ...(stock === undefined ? {} : { stock }) };
}

const MEMORY_MB = 512;
const IDLE_MS = 60_000;
/** An operation is answered later and may take as long as its lease is renewed. */
const LONGEST_LATER_MS = 120_000;

/** Prompt work has at least two hands, of which one organisation gets all but one. */
function laneSizes(processors: number, requestTimeoutMs: number): Readonly<Record<LaneName, LaneSize>> {
  const prompt = Math.max(2, Math.min(8, processors - 1));
  const long = Math.max(1, Math.min(4, Math.floor(processors / 2)));
  const longestWaitMs = requestTimeoutMs / 2;
  return {
    prompt: {
      runsIn: 'thread',
      hands: prompt,
      reserved: 1,
      memoryMb: MEMORY_MB,
      longestWaitMs,
      longestJobMs: requestTimeoutMs,
      errandsEach: Number.POSITIVE_INFINITY,
    },
    long: {
      runsIn: 'thread',
      hands: long,
      reserved: long > 1 ? 1 : 0,
      memoryMb: MEMORY_MB,
      longestWaitMs,
      longestJobMs: LONGEST_LATER_MS,
      errandsEach: Number.POSITIVE_INFINITY,
      idleMs: IDLE_MS,
    },
    // Each holds a compiler and the fonts, about 100 MB, and up to 10 MB more with every document.
    press: {
      runsIn: 'process',
      hands: 2,
      reserved: 0,
      memoryMb: MEMORY_MB,
      longestWaitMs,
      longestJobMs: LONGEST_LATER_MS,
      errandsEach: 40,
      idleMs: IDLE_MS,
    },
  };
}
