import { fileURLToPath } from 'node:url';
import { Injectable, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import type { Response } from 'express';
import { Piscina } from 'piscina';
import type { Catalogue } from '#lib/catalogue';
import type { CoreBill, CoreBillByCode } from '#lib/coring';
import type { VariantComparison } from '#lib/costing';
import type { VariantsRequest } from '#lib/estimate';
import type { ExtentAndOpenings, ExtentAndOpeningsRequest } from '#lib/extent';
import { Defect, type Outcome } from '#lib/kernel';
import type { CuttingPlan, CuttingPlanRequest } from '#lib/nesting';
import { answer, unavailable } from '../edge/problems.js';
import { run, type HeavyAnswer, type HeavyTask } from './heavy-worker.js';

/**
 * One thread searches as long as it is given and one does what takes a second at most, so that the short never wait for
 * the long; the event loop and the other threads stay free to answer.
 */
type Lane = 'search' | 'short';
const LONGEST_QUEUE = 20;
/** A search that needs more is a mistake of ours; its thread ends, the service does not. */
const MEMORY_MB = 512;

/** Sources run untranslated in tests have no file that a thread could load; there the work is done in place. */
const isCompiled = !import.meta.url.endsWith('.ts');

/** Where work that holds a processor for long runs: in a thread, given up when the caller goes away. */
@Injectable()
export class HeavyWork implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly pools = new Map<Lane, Piscina<HeavyTask, HeavyAnswer>>();

  async cuttingPlan(plan: CuttingPlanRequest, response: Response): Promise<CuttingPlan> {
    return answered((await this.done({ plan }, 'search', response)).plan);
  }

  async coreBill(request: CoreBillByCode, catalogue: Catalogue, response: Response): Promise<CoreBill> {
    return answered((await this.done({ bill: { request, catalogue } }, 'search', response)).bill);
  }

  async variants(
    request: VariantsRequest,
    catalogue: Catalogue,
    response: Response,
  ): Promise<VariantComparison> {
    return answered((await this.done({ variants: { request, catalogue } }, 'search', response)).variants);
  }

  async openings(request: ExtentAndOpeningsRequest, response: Response): Promise<ExtentAndOpenings> {
    return answered((await this.done({ openings: request }, 'short', response)).openings);
  }

  /** The short lane loads what it needs before anybody asks. */
  onApplicationBootstrap(): void {
    if (isCompiled) this.poolOf('short');
  }

  async onModuleDestroy(): Promise<void> {
    await Promise.all([...this.pools.values()].map((pool) => pool.destroy()));
  }

  private async done(task: HeavyTask, lane: Lane, response: Response): Promise<HeavyAnswer> {
    const gone = new AbortController();
    const onClose = (): void => {
      if (!response.writableFinished) gone.abort();
    };
    response.once('close', onClose);
    try {
      return await this.ran(structuredClone(task), lane, gone.signal);
    } catch (failure) {
      if (gone.signal.aborted)
        throw unavailable('The caller went away before the answer was ready.', failure);
      throw failure;
    } finally {
      response.off('close', onClose);
    }
  }

  private async ran(task: HeavyTask, lane: Lane, signal: AbortSignal): Promise<HeavyAnswer> {
    if (!isCompiled) return run(task);
    const pool = this.poolOf(lane);
    if (pool.queueSize >= LONGEST_QUEUE) throw unavailable('Too many long jobs are waiting.');
    return pool.run(task, { signal });
  }

  private poolOf(lane: Lane): Piscina<HeavyTask, HeavyAnswer> {
    const known = this.pools.get(lane);
    if (known !== undefined) return known;
    const pool = new Piscina<HeavyTask, HeavyAnswer>({
      filename: fileURLToPath(new URL('./heavy-worker.js', import.meta.url)),
      name: 'run',
      // A thread that has just begun takes a second to be as fast as one that has worked; the short lane keeps its own.
      minThreads: lane === 'short' ? 1 : 0,
      maxThreads: 1,
      maxQueue: LONGEST_QUEUE,
      concurrentTasksPerWorker: 1,
      idleTimeout: 60_000,
      resourceLimits: { maxOldGenerationSizeMb: MEMORY_MB },
    });
    this.pools.set(lane, pool);
    return pool;
  }
}

/** @throws {HttpProblem} unprocessable, with every problem */
function answered<R>(outcome: Outcome<R> | undefined): R {
  if (outcome === undefined) throw new Defect('A long job came back without its answer');
  return answer(outcome);
}
