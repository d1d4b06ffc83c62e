import { readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { Injectable, type OnModuleDestroy } from '@nestjs/common';
import { Piscina } from 'piscina';
import type { Catalogue } from '#lib/catalogue';
import type { DefectRecord } from '#lib/estimate';
import { Defect } from '#lib/kernel';
import { CurrentCatalogue } from '../catalogue/current-catalogue.js';
import { isRecord } from '../edge/dto/field.js';
import { answer, unavailable } from '../edge/problems.js';
import { projectRoot } from '../settings/project-root.js';
import type { SummaryRow } from './estimate.mapper.js';
import {
  estimated,
  type EstimatingAnswer,
  type EstimatingOrder,
  type WrittenEstimate,
} from './estimating.js';

/** The version of the program, which every estimate keeps. */
export const engineVersion = versionOf(
  JSON.parse(readFileSync(path.join(projectRoot, 'package.json'), 'utf8')),
);

const THREADS = Math.max(1, Math.min(8, os.availableParallelism() - 1));
/** Beyond this many waiting estimates a caller is better told to come back than kept waiting. */
const LONGEST_QUEUE = 200;

/** Where estimates are computed: in threads, so that the service answers others meanwhile. */
@Injectable()
export class Engine implements OnModuleDestroy {
  private pool: Piscina<EstimatingOrder, EstimatingAnswer> | undefined;

  constructor(private readonly catalogues: CurrentCatalogue) {}

  /** An estimate with the organisation's current edition. @throws {HttpProblem} unprocessable, with every problem */
  async estimate(record: DefectRecord, organisationId: string): Promise<WrittenEstimate> {
    return this.estimateWith(record, await this.catalogues.of(organisationId));
  }

  /** The same estimate once more: with the edition and under the version name that it was made with. */
  async again(
    record: DefectRecord,
    organisationId: string,
    { edition, engineVersion: version }: Pick<SummaryRow, 'edition' | 'engineVersion'>,
  ): Promise<{ readonly made: WrittenEstimate; readonly catalogueHash: string }> {
    const catalogue = await this.catalogues.edition(organisationId, edition);
    return { made: await this.estimateWith(record, catalogue, version), catalogueHash: catalogue.hash };
  }

  private async estimateWith(
    record: DefectRecord,
    catalogue: Catalogue,
    version = engineVersion,
  ): Promise<WrittenEstimate> {
    const order: EstimatingOrder = {
      record: plain(record),
      catalogueHash: catalogue.hash,
      engineVersion: version,
    };
    const first = await this.done(order);
    const made = first === 'catalogue-needed' ? await this.done({ ...order, catalogue }) : first;
    if (made === 'catalogue-needed') throw new Defect('A thread asked again for the catalogue it was given');
    return answer(made);
  }

  async onModuleDestroy(): Promise<void> {
    await this.pool?.destroy();
  }

  /** Sources run untranslated in tests have no file that a thread could load; there the work is done in place. */
  private async done(order: EstimatingOrder): Promise<EstimatingAnswer> {
    if (import.meta.url.endsWith('.ts')) return estimated(order);
    const pool = (this.pool ??= new Piscina<EstimatingOrder, EstimatingAnswer>({
      filename: fileURLToPath(new URL('./estimating-worker.js', import.meta.url)),
      name: 'run',
      minThreads: 1,
      maxThreads: THREADS,
      maxQueue: LONGEST_QUEUE,
      concurrentTasksPerWorker: 1,
    }));
    if (pool.queueSize >= LONGEST_QUEUE) throw unavailable('Too many estimates are waiting.');
    return pool.run(order);
  }
}

/** DTOs are objects of classes; a thread, a hash and a column take plain ones. */
const plain = (record: DefectRecord): DefectRecord => structuredClone(record);

function versionOf(manifest: unknown): string {
  if (isRecord(manifest) && typeof manifest.version === 'string') return manifest.version;
  throw new Defect('package.json states no version');
}
