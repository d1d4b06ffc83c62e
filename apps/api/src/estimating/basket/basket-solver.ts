import { fileURLToPath } from 'node:url';
import { Injectable, type OnModuleDestroy } from '@nestjs/common';
import { Piscina } from 'piscina';
import type { Basket, BasketRequest } from '#lib/costing';
import type { Outcome } from '#lib/kernel';
import { answer, unavailable } from '../../edge/problems.js';
import { run } from './basket-worker.js';

/** Orders are solved one by one in a thread or two; the rest of the machine is for estimates and for answering. */
const THREADS = 2;
const LONGEST_QUEUE = 50;

/** Where baskets are solved: in threads, so that the service answers others meanwhile. */
@Injectable()
export class BasketSolver implements OnModuleDestroy {
  private pool: Piscina<BasketRequest, Outcome<Basket>> | undefined;

  /** @throws {HttpProblem} unprocessable, with every problem; unavailable when too many are waiting */
  async solve(request: BasketRequest): Promise<Basket> {
    return answer(await this.done(structuredClone(request)));
  }

  async onModuleDestroy(): Promise<void> {
    await this.pool?.destroy();
  }

  /** Sources run untranslated in tests have no file that a thread could load; there the work is done in place. */
  private async done(request: BasketRequest): Promise<Outcome<Basket>> {
    if (import.meta.url.endsWith('.ts')) return run(request);
    const pool = (this.pool ??= new Piscina<BasketRequest, Outcome<Basket>>({
      filename: fileURLToPath(new URL('./basket-worker.js', import.meta.url)),
      name: 'run',
      minThreads: 0,
      maxThreads: THREADS,
      maxQueue: LONGEST_QUEUE,
      concurrentTasksPerWorker: 1,
      idleTimeout: 60_000,
    }));
    if (pool.queueSize >= LONGEST_QUEUE) throw unavailable('Too many orders are waiting to be solved.');
    return pool.run(request);
  }
}
