import { setTimeout as delay } from 'node:timers/promises';
import { Injectable, type OnModuleDestroy } from '@nestjs/common';
import { Defect } from '#lib/kernel';
import { failureFacts, Log } from '../edge/log.js';
import { documentOf } from '../edge/problem-filter.js';
import { HttpProblem, problemKinds, TooBusy } from '../edge/problems.js';
import { Database, type Transaction } from '../persistence/database.js';
import { isOutage } from '../persistence/failures.js';
import { Rounds } from '../persistence/rounds.js';
import type { OperationProblem } from './long-operation.js';
import { OperationsRepository, type Claim } from './operations.repository.js';
import type { Outcome } from './outcome.js';

/** Does one kind of task. It must give the same answer when it is asked again: a worker may die before it could tell. */
export type Handler = (organisationId: string, task: unknown, signal: AbortSignal) => Promise<Outcome>;

/** Removes what has expired; doing it twice does no harm. */
export type Chore = (tx: Transaction) => Promise<void>;

const KEEP_HOUSE_EVERY_MS = 3_600_000;

/** A task that makes its worker die must not go round for ever. */
const MOST_ATTEMPTS = 3;
/** A task belongs to its worker for this long after the last sign of life; then another copy takes it. */
const LEASE_S = 15;
const SIGN_OF_LIFE_MS = 5000;
const LONGEST_MS = 120_000;
/** After the first failure; twice as long after each further one, and never for two tasks at the same moment. */
const TRY_AGAIN_S = 5;
/** Tasks of one copy at the same time; there are as many presses. */
const AT_ONCE = 2;
/** A copy that cannot write its answer for so long leaves the task to whoever comes after the lease. */
const LONGEST_OUTAGE_MS = 60_000;
const WRITE_AGAIN_MS = 250;

/** What is to be written about a task. */
type Settle = (operations: OperationsRepository) => Promise<void>;
/** How often a copy looks for tasks that others left behind; its own begin at once. */
const LOOK_EVERY_MS = 5000;

const exhausted: OperationProblem = {
  type: '/problems/internal',
  title: problemKinds.internal.title,
  status: problemKinds.internal.status,
  detail: `The work was begun ${MOST_ATTEMPTS} times and never came to an end.`,
};

/** Works off the operations of all organisations, one at a time; any number of copies may do so on one database. */
@Injectable()
export class OperationWorker implements OnModuleDestroy {
  private readonly handlers = new Map<string, Handler>();
  private readonly rounds = new Rounds(LOOK_EVERY_MS, () => this.workAll());
  private readonly chores: Chore[] = [];
  private keptHouseAt = 0;

  constructor(
    private readonly database: Database,
    private readonly log: Log,
  ) {}

  /** Something to be done about once an hour by one copy or another. */
  everyHour(chore: Chore): void {
    this.chores.push(chore);
  }

  handle(kind: string, handler: Handler): void {
    this.handlers.set(kind, handler);
  }

  /** Once the database is open. */
  start(): void {
    this.rounds.start();
  }

  /** There may be something to do. */
  wake(): void {
    this.rounds.wake();
  }

  onModuleDestroy(): Promise<void> {
    return this.rounds.end();
  }

  /** A database that cannot be reached now is asked again at the next look. */
  private async workAll(): Promise<void> {
    try {
      await this.database.asWorker((tx) => OperationsRepository.in(tx).sweep(MOST_ATTEMPTS, exhausted));
      await this.keepHouse();
      await Promise.all(Array.from({ length: AT_ONCE }, () => this.workOn()));
    } catch (failure) {
      this.log.entry('warn', 'Operations could not be worked off', failureFacts(failure));
    }
  }

  private async workOn(): Promise<void> {
    while (await this.workOne());
  }

  /** Once in a while, what other features keep for a time only is removed by whoever is at it. */
  private async keepHouse(): Promise<void> {
    const now = Date.now();
    if (now < this.keptHouseAt + KEEP_HOUSE_EVERY_MS) return;
    this.keptHouseAt = now;
    for (const chore of this.chores) await this.database.asWorker(chore);
  }

  private async workOne(): Promise<boolean> {
    if (this.rounds.stop.aborted) return false;
    const claim = await this.database.asWorker((tx) =>
      OperationsRepository.in(tx).claim(MOST_ATTEMPTS, LEASE_S),
    );
    if (claim === undefined) return false;
    const alive = setInterval(() => {
      void this.renew(claim);
    }, SIGN_OF_LIFE_MS);
    try {
      await this.settled(await this.outcomeOf(claim));
    } finally {
      clearInterval(alive);
    }
    return true;
  }

  /** What has been worked out is written as soon as the database answers again: an outage is no fault of the task. */
  private async settled(settle: Settle): Promise<void> {
    const until = Date.now() + LONGEST_OUTAGE_MS;
    for (;;) {
      try {
        await this.database.asWorker((tx) => settle(OperationsRepository.in(tx)));
        return;
      } catch (failure) {
        if (!isOutage(failure) || this.rounds.stop.aborted || Date.now() > until) throw failure;
        await delay(WRITE_AGAIN_MS);
      }
    }
  }

  /** One sign of life may be lost; the lease holds for three. */
  private async renew(claim: Claim): Promise<void> {
    try {
      await this.database.asWorker((tx) => OperationsRepository.in(tx).renew(claim, LEASE_S));
    } catch (failure) {
      this.log.entry('warn', 'The lease of an operation could not be renewed', failureFacts(failure));
    }
  }

  /** What is to be written about a task after it was tried. */
  private async outcomeOf(claim: Claim): Promise<Settle> {
    const signal = AbortSignal.any([this.rounds.stop, AbortSignal.timeout(LONGEST_MS)]);
    try {
      const outcome = await this.handlerOf(claim)(claim.organisationId, claim.task, signal);
      return (operations) => operations.finish(claim, outcome);
    } catch (failure) {
      if (this.rounds.stop.aborted) return (operations) => operations.giveBack(claim, 0);
      this.log.entry('warn', 'An operation failed', {
        operation: claim.id,
        attempt: claim.attempt,
        ...failureFacts(failure),
      });
      if (isBusy(failure) || isOutage(failure))
        return (operations) => operations.giveBack(claim, TRY_AGAIN_S * jitter());
      const isPassing = !(failure instanceof HttpProblem) || failure.kind === 'unavailable';
      if (isPassing && claim.attempt < MOST_ATTEMPTS)
        return (operations) => operations.postpone(claim, TRY_AGAIN_S * 2 ** (claim.attempt - 1) * jitter());
      return (operations) => operations.fail(claim, problemOf(failure));
    }
  }

  private handlerOf({ kind }: Claim): Handler {
    const handler = this.handlers.get(kind);
    if (handler === undefined) throw new Defect(`Nobody handles operations of the kind ${kind}`);
    return handler;
  }
}

/** Between a half and one and a half, so that tasks that failed together are not tried together. */
const jitter = (): number => 0.5 + Math.random();

/** The workbench was full: nothing was tried, so no attempt is spent. */
const isBusy = (failure: unknown): boolean => failure instanceof TooBusy;

function problemOf(failure: unknown): OperationProblem {
  if (!(failure instanceof HttpProblem))
    return { ...exhausted, detail: 'The fault is ours and has been recorded.' };
  const { type, title, status, detail, errors, errorCount } = documentOf(failure, '');
  return { type, title, status, detail, ...(errors === undefined ? {} : { errors, errorCount }) };
}
