import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Caller } from '../access/roles.js';
import { HttpProblem, notFound } from '../edge/problems.js';
import { Database } from '../persistence/database.js';
import { isId, newId } from '../persistence/ids.js';
import type { OperationState } from './operation-view.js';
import type { Outcome } from './outcome.js';
import { OperationWorker } from './operation-worker.js';
import { OperationsRepository } from './operations.repository.js';

/** Results are kept for a day; more than this for one organisation would crowd out the others. */
const MOST_KEPT = 500;

/** Work that is accepted now and answered later. */
@Injectable()
export class OperationsService {
  constructor(
    private readonly database: Database,
    private readonly worker: OperationWorker,
  ) {}

  /** The same task again gives the operation that is there already. The members of `task` come in a fixed order. */
  async accept({ organisationId }: Caller, kind: string, task: object): Promise<OperationState> {
    const taskHash = createHash('sha256')
      .update(JSON.stringify([kind, task]))
      .digest('hex');
    const state = await this.database.inOrganisation(organisationId, async (tx) => {
      const operations = OperationsRepository.in(tx);
      const id = newId();
      const placed = await operations.place({ id, organisationId, kind, task, taskHash });
      if (placed.id === id && (await operations.countKept()) > MOST_KEPT) throw tooManyKept();
      return placed;
    });
    this.worker.wake();
    return state;
  }

  async operation({ organisationId }: Caller, id: string): Promise<OperationState> {
    const row = isId(id)
      ? await this.database.inOrganisation(organisationId, (tx) => OperationsRepository.in(tx).find(id))
      : null;
    if (row === null) throw unknown(id);
    return row;
  }

  /** @throws {HttpProblem} conflict, before it is done */
  async result(caller: Caller, id: string): Promise<Outcome> {
    const { status, resultHref, mediaType } = await this.operation(caller, id);
    if (status === 'done' && resultHref !== null && mediaType !== null)
      return { href: resultHref, mediaType };
    const content =
      status === 'done'
        ? await this.database.inOrganisation(caller.organisationId, (tx) =>
            OperationsRepository.in(tx).findContent(id),
          )
        : null;
    if (content !== null) return content;
    throw new HttpProblem('conflict', { detail: `The operation is ${status}; it has no result.` });
  }
}

const unknown = (id: string): HttpProblem => notFound(`Operation ${JSON.stringify(id.slice(0, 60))}`);

const tooManyKept = (): HttpProblem =>
  new HttpProblem('too-many-requests', {
    detail: `There are ${MOST_KEPT} operations of this organisation already; each goes a day after it ended.`,
    headers: { 'Retry-After': '600' },
  });
