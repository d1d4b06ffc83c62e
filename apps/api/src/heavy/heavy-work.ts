import { fileURLToPath } from 'node:url';
import { Injectable, type OnModuleDestroy } from '@nestjs/common';
import type { Response } from 'express';
import { Piscina } from 'piscina';
import type { Catalogue } from '#lib/catalogue';
import type { CoreBill, CoreBillByCode } from '#lib/coring';
import type { VariantComparison } from '#lib/costing';
import type { VariantsRequest } from '#lib/estimate';
import { Defect, type Outcome } from '#lib/kernel';
import type { CuttingPlan, CuttingPlanRequest } from '#lib/nesting';
import { answer, unavailable } from '../http/problems.js';
import { run, type HeavyAnswer, type HeavyTask } from './heavy-worker.js';

/** One thread searches; the event loop and the other threads stay free to answer. */
const THREADS = 1;
const LONGEST_QUEUE = 20;
/** A search that needs more is a mistake of ours; its thread ends, the service does not. */
const MEMORY_MB = 512;

/** Where work that holds a processor for long runs: in a thread, given up when the caller goes away. */
@Injectable()
export class HeavyWork implements OnModuleDestroy {
  private pool: Piscina<HeavyTask, HeavyAnswer> | undefined;

  async cuttingPlan(plan: CuttingPlanRequest, response: Response): Promise<CuttingPlan> {
    return answered((await this.done({ plan }, response)).plan);
  }

  async coreBill(request: CoreBillByCode, catalogue: Catalogue, response: Response): Promise<CoreBill> {
    return answered((await this.done({ bill: { request, catalogue } }, response)).bill);
  }

  async variants(request: VariantsRequest, catalogue: Catalogue, response: Response): Promise<VariantComparison> {
    return answered((await this.done({ variants: { request, catalogue } }, response)).variants);
  }

  async onModuleDestroy(): Promise<void> {
    await this.pool?.destroy();
  }

  private async done(task: HeavyTask, response: Response): Promise<HeavyAnswer> {
    const gone = new AbortController();
    const onClose = (): void => { if (!response.writableFinished) gone.abort(); };
    response.once('close', onClose);
    try {
      return await this.ran(structuredClone(task), gone.signal);
    } catch (failure) {
      if (gone.signal.aborted) throw unavailable('The caller went away before the answer was ready.', failure);
      throw failure;
    } finally {
      response.off('close', onClose);
    }
  }

  /** Sources run untranslated in tests have no file that a thread could load; there the work is done in place. */
  private async ran(task: HeavyTask, signal: AbortSignal): Promise<HeavyAnswer> {
    if (import.meta.url.endsWith('.ts')) return run(task);
    const pool = this.pool ??= new Piscina<HeavyTask, HeavyAnswer>({
      filename: fileURLToPath(new URL('./heavy-worker.js', import.meta.url)), name: 'run',
      minThreads: 0, maxThreads: THREADS, maxQueue: LONGEST_QUEUE, concurrentTasksPerWorker: 1, idleTimeout: 60_000,
      resourceLimits: { maxOldGenerationSizeMb: MEMORY_MB },
    });
    if (pool.queueSize >= LONGEST_QUEUE) throw unavailable('Too many long jobs are waiting.');
    return pool.run(task, { signal });
  }
}

/** @throws {HttpProblem} unprocessable, with every problem */
function answered<R>(outcome: Outcome<R> | undefined): R {
  if (outcome === undefined) throw new Defect('A long job came back without its answer');
  return answer(outcome);
}
