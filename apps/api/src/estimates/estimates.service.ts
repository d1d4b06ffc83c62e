import { Injectable } from '@nestjs/common';
import type { DefectRecord } from '#lib/estimate';
import { admitted, admittedRevision, openedFor, referenceFor, type ClientSecret } from '../access/holders.js';
import type { Caller } from '../access/roles.js';
import { Metrics } from '../edge/metrics.js';
import { precise } from '../edge/precision.js';
import { HttpProblem, notFound, summaryOf } from '../edge/problems.js';
import { pointer, problem, type Problem } from '#lib/kernel';
import { tell } from '../events/outbox.js';
import type { EstimateNamed, Happening } from '../events/service-event.js';
import { reusedKey } from '../idempotency/idempotency-header.js';
import type { KeyUse } from '../idempotency/key-use.js';
import { RunningKeys } from '../idempotency/running-keys.js';
import { issuerIn } from '../letterhead/issuer.js';
import { printedOf, shownOf } from './photograph.mapper.js';
import { PhotographsRepository } from './photographs.repository.js';
import { Database, type Transaction } from '../persistence/database.js';
import { isUniqueViolation } from '../persistence/failures.js';
import { idOfCursor, pageOf } from '../persistence/cursor.js';
import { isId, newId } from '../persistence/ids.js';
import { derivationOf } from './derivation-graph.js';
import { engineVersion } from '../settings/engine-version.js';
import { hashOf } from './content-hash.js';
import { Engine } from './engine.js';
import type { EstimateRow } from './estimate.entity.js';
import { moneyOf, rowOf, summaryOfRow, type NewEstimateRow } from './estimate.mapper.js';
import { EstimatesRepository, type RecordedRow, type WrittenRow } from './estimates.repository.js';
import type { Revised } from './comparison.js';
import type { Lineage } from './subject.js';
import type { EstimatePage, Replay, RevisionList, RevisionMark, WhyAnswer } from './stored-estimate.js';

/** An estimate that is asked for; of a revision with what it revises and why. */
export interface EstimateOrder {
  readonly caller: Caller;
  readonly record: DefectRecord;
  readonly idempotencyKey?: string;
  readonly revises?: { readonly estimateId: string; readonly reason: string };
}

interface WrittenEstimateRow extends WrittenRow {
  /** For a page, which has no other way to its estimate. */
  readonly secret: ClientSecret | undefined;
}

export interface Made extends WrittenEstimateRow {
  /** True when the answer is that of an earlier request with the same key. */
  readonly isReplay: boolean;
}

/** An order that is known to be possible: nothing is left to be asked of the database but to keep it. */
interface Plan {
  readonly caller: Caller;
  readonly record: DefectRecord;
  readonly use?: KeyUse;
  readonly revise?: { readonly rootId: string; readonly reason: string };
  /** Ends the work; the request's own patience when absent. */
  readonly signal?: AbortSignal;
}

export interface PageQuery {
  readonly limit: number;
  readonly cursor?: string;
  readonly reference?: string;
}

/** One method for each thing a caller can do with estimates: load, call the rooms, store in one transaction. */
@Injectable()
export class EstimatesService {
  private readonly made: { readonly inc: () => void };

  constructor(
    private readonly database: Database,
    private readonly engine: Engine,
    private readonly running: RunningKeys,
    metrics: Metrics,
  ) {
    this.made = metrics.counter('estimates_made_total', 'Estimates computed and stored.');
  }

  /** Makes an estimate or a revision of one; under a key, at most once. */
  async make(order: EstimateOrder, signal?: AbortSignal): Promise<Made> {
    const plan = await this.planOf(order);
    return this.once(signal === undefined ? plan : { ...plan, signal });
  }

  /** What was made under the key of an order before. @throws {HttpProblem} unprocessable, when that was another order */
  async madeBefore(order: EstimateOrder): Promise<Made | undefined> {
    const { caller, use } = await this.planOf(order);
    return use === undefined ? undefined : this.earlier(caller, use);
  }

  async written({ organisationId }: Caller, id: string): Promise<WrittenRow> {
    const checked = checkedId(id);
    return found(
      await this.database.inOrganisation(organisationId, (tx) =>
        EstimatesRepository.in(tx).findWritten(checked),
      ),
      id,
    );
  }

  async record(caller: Caller, id: string): Promise<DefectRecord> {
    return (await this.row(caller, id)).input;
  }

  async why(caller: Caller, id: string, code: string): Promise<WhyAnswer> {
    const { organisationId } = caller;
    const checked = checkedId(id);
    const kept = await this.database.inOrganisation(organisationId, (tx) =>
      EstimatesRepository.in(tx).findDerivations(checked),
    );
    const figure = derivationOf(kept ?? (await this.derivedAgain(caller, id)), code);
    if (figure === undefined)
      throw new HttpProblem('not-found', {
        detail: `Nothing in estimate ${id} is derived under ${JSON.stringify(code.slice(0, 80))}; ask with the code of a line, with "check:" and the code of a check, or with "quantity:" and that of a quantity.`,
      });
    return { code, figure };
  }

  page({ organisationId }: Caller, { limit, cursor, reference }: PageQuery): Promise<EstimatePage> {
    const beforeId = idOfCursor(cursor);
    return this.database.inOrganisation(organisationId, async (tx) => {
      const rows = await EstimatesRepository.in(tx).page({ limit: limit + 1, beforeId, reference });
      return pageOf(rows, limit, summaryOfRow);
    });
  }

  revisions(caller: Caller, id: string): Promise<RevisionList> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const estimates = EstimatesRepository.in(tx);
      const row = found(await estimates.find(checkedId(id)), id);
      return { items: (await estimates.revisionsOf(row.rootId)).map(summaryOfRow) };
    });
  }

  /** The estimate and the one it is compared with: the revision before it, unless another is named. */
  pair(
    caller: Caller,
    id: string,
    withId?: string,
  ): Promise<{ readonly before: EstimateRow; readonly after: EstimateRow }> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const estimates = EstimatesRepository.in(tx);
      const after = found(await estimates.find(checkedId(id)), id);
      const before =
        withId === undefined
          ? await estimates.findRevision(after.rootId, after.revisionNumber - 1)
          : found(await estimates.find(checkedId(withId)), withId);
      if (before === null) throw notFound(`A revision before estimate ${id}`);
      return { before, after };
    });
  }

  /** A revision with the one before it and the first of them: what a change order is made of. */
  async revised(caller: Caller, id: string): Promise<Revised> {
    const { before, after } = await this.pair(caller, id);
    return {
      first: before.revisionNumber === 0 ? before : await this.row(caller, after.rootId),
      before,
      after,
    };
  }

  /** All that a report or a drawing needs. */
  lineage({ organisationId }: Pick<Caller, 'organisationId'>, id: string): Promise<Lineage> {
    const checked = checkedId(id);
    return this.database.inOrganisation(organisationId, async (tx) => {
      const estimates = EstimatesRepository.in(tx);
      const row = found(await estimates.find(checked), id);
      const history = (await estimates.revisionsOf(row.rootId)).filter(
        ({ revisionNumber }) => revisionNumber <= row.revisionNumber,
      );
      const before =
        row.revisionNumber === 0 ? null : await estimates.findRevision(row.rootId, row.revisionNumber - 1);
      const photographs = await PhotographsRepository.in(tx).notesOf(row.rootId);
      return {
        row,
        history,
        ...(await issuerIn(tx, organisationId)),
        photographs: photographs.map(shownOf),
        photographsVersion: photographs
          .map(({ number, addedAt }) => `${number} of ${addedAt.toISOString()}`)
          .join(', '),
        ...(before === null ? {} : { before }),
      };
    });
  }

  /** The same with the pictures, which only a report shows: drawings and tags do without reading them. */
  async withPictures(lineage: Lineage): Promise<Lineage> {
    if (lineage.photographs.length === 0) return lineage;
    const { organisationId, rootId } = lineage.row;
    const rows = await this.database.inOrganisation(organisationId, (tx) =>
      PhotographsRepository.in(tx).of(rootId),
    );
    return { ...lineage, photographs: rows.map(printedOf) };
  }

  /**
   * Derivations that were not kept, worked out again. They count only if the document comes out again to the last digit.
   *
   * @throws {HttpProblem} conflict, when the program is no longer the one that made the estimate
   */
  private async derivedAgain(caller: Caller, id: string): Promise<Uint8Array> {
    const { row, resultJson } = await this.written(caller, id);
    const { made } = await this.engine.again(await this.record(caller, id), caller.organisationId, row);
    if (isSameDocument(made.resultJson, resultJson) && made.derivations !== null) return made.derivations;
    throw new HttpProblem('conflict', {
      detail: `This estimate was made by version ${row.engineVersion} of the program, which derives its figures otherwise than the present one; its derivations were not kept. A revision with the same record has derivations of its own.`,
    });
  }

  /** Computes an estimate again from what it keeps: the proof that its figures can be reproduced. */
  async replay(caller: Caller, id: string): Promise<Replay> {
    const { row, resultJson } = await this.written(caller, id);
    const { made, catalogueHash } = await this.engine.again(
      await this.record(caller, id),
      caller.organisationId,
      row,
    );
    return {
      isSame: isSameDocument(made.resultJson, resultJson),
      madeWith: { engineVersion: row.engineVersion, edition: row.edition, catalogueHash: row.catalogueHash },
      engineVersionNow: engineVersion,
      isSameCatalogue: catalogueHash === row.catalogueHash,
      totalThen: moneyOf(row.totalAmount, row.currency),
      totalNow: made.totals.total,
    };
  }

  /** Estimates to try something on: those of the ids, or the newest ones. @throws {HttpProblem} unprocessable */
  async samples(
    { organisationId }: Caller,
    ids: readonly string[] | undefined,
    most: number,
  ): Promise<readonly RecordedRow[]> {
    const strange = (ids ?? []).flatMap((id, index) => (isId(id) ? [] : [noEstimate(index, id)]));
    const rows =
      strange.length > 0
        ? []
        : await this.database.inOrganisation(organisationId, (tx) =>
            EstimatesRepository.in(tx).latest({ limit: most, ids }),
          );
    const missing = (ids ?? []).flatMap((id, index) =>
      rows.some((row) => row.id === id) ? [] : [noEstimate(index, id)],
    );
    if (missing.length > 0)
      throw new HttpProblem('unprocessable', { detail: summaryOf(missing), problems: missing });
    return rows;
  }

  private rootOf({ organisationId }: Caller, id: string): Promise<string> {
    return this.database.inOrganisation(organisationId, (tx) => rootIdIn(tx, id));
  }

  async row({ organisationId }: Caller, id: string): Promise<EstimateRow> {
    const checked = checkedId(id);
    return found(
      await this.database.inOrganisation(organisationId, (tx) => EstimatesRepository.in(tx).find(checked)),
      id,
    );
  }

  private planOf(order: EstimateOrder): Promise<Plan> {
    return order.revises === undefined ? this.planOfNew(order) : this.planOfRevision(order, order.revises);
  }

  private async planOfNew(order: EstimateOrder): Promise<Plan> {
    const { caller, record, idempotencyKey } = order;
    refuseGuessableKey(caller, idempotencyKey);
    const reference = await referenceFor(this.database, caller, record.reference);
    const named = reference === undefined ? record : { ...record, reference };
    return { caller, record: named, ...useOf(order, 'estimates', record) };
  }

  private async planOfRevision(
    order: EstimateOrder,
    { estimateId, reason }: { readonly estimateId: string; readonly reason: string },
  ): Promise<Plan> {
    const { caller, record } = order;
    const rootId = await this.rootOf(caller, estimateId);
    const use = useOf(order, `revisions of ${rootId}`, { reason, record });
    return { caller, record, revise: { rootId, reason }, ...use };
  }

  private async once(plan: Plan): Promise<Made> {
    const { use } = plan;
    if (use === undefined) return { ...(await this.makeAndKeep(plan)), isReplay: false };
    return this.running.alone([use.organisationId, use.operation, use.key], async () => {
      const earlier = await this.earlier(plan.caller, use);
      return earlier ?? this.madeUnderKey(plan, use);
    });
  }

  private async madeUnderKey(plan: Plan, use: KeyUse): Promise<Made> {
    try {
      return { ...(await this.makeAndKeep(plan)), isReplay: false };
    } catch (failure) {
      if (!isUniqueViolation(failure, 'idempotency_key_pkey')) throw failure;
      const earlier = await this.earlier(plan.caller, use);
      if (earlier === undefined) throw failure;
      return earlier;
    }
  }

  /** A page gets a new secret with the answer: the one it got before is kept by nobody but the page. */
  private async earlier(caller: Caller, use: KeyUse): Promise<Made | undefined> {
    const written = await this.database.inOrganisation(use.organisationId, async (tx) => {
      const estimates = EstimatesRepository.in(tx);
      const known = await estimates.findKey(use);
      if (known === null) return undefined;
      if (known.requestHash !== use.requestHash) throw reusedKey();
      const id = known.estimateId ?? '';
      const secret = caller.kind === 'publishable' ? await openedFor(tx, caller, id) : undefined;
      return { ...found(await estimates.findWritten(id), id), secret };
    });
    return written === undefined ? undefined : { ...written, isReplay: true };
  }

  private async makeAndKeep(plan: Plan): Promise<WrittenEstimateRow> {
    const { caller, record, signal } = plan;
    const { organisationId, keyId } = caller;
    const made = await this.engine.estimate(record, { organisationId, signal }, caller.page?.edition);
    const id = newId();
    const written = await this.database.inOrganisation(organisationId, async (tx) => {
      const estimates = EstimatesRepository.in(tx);
      const secret = plan.revise === undefined ? await admitted(tx, caller, id) : undefined;
      if (plan.revise !== undefined) await admittedRevision(tx, caller);
      const revision = await revisionMark(estimates, id, plan);
      const newRow = rowOf({ id, organisationId, createdByKeyId: keyId, revision }, record, made);
      const createdAt = await estimates.add(newRow);
      if (plan.use !== undefined) await estimates.rememberKey(plan.use, id);
      await tell(tx, happening(caller, newRow));
      return { row: { ...newRow, createdAt }, secret };
    });
    this.made.inc();
    return { ...written, resultJson: made.resultJson };
  }
}

/** Documents that were kept before figures had the precision of their units are read as if they had it. */
const isSameDocument = (made: string, kept: string): boolean =>
  made === kept || made === JSON.stringify(precise(JSON.parse(kept)));

const happening = (caller: Caller, row: NewEstimateRow): Happening => {
  const { id, reference, edition, rootId, revisionNumber, organisationId } = row;
  const named: EstimateNamed = {
    id,
    href: `/v1/estimates/${id}`,
    ...(reference === null ? {} : { reference }),
    edition,
    ...(caller.page === undefined ? {} : { publishableKeyId: caller.keyId }),
  };
  return revisionNumber === 0
    ? { organisationId, type: 'estimate.created', data: named }
    : { organisationId, type: 'estimate.revised', data: { ...named, rootId, revisionNumber } };
};

function useOf(
  { caller, idempotencyKey: key }: EstimateOrder,
  operation: string,
  body: unknown,
): { readonly use?: KeyUse } {
  if (key === undefined) return {};
  const { organisationId } = caller;
  return {
    use: { organisationId, operation: operationOf(operation, caller), key, requestHash: hashOf(body) },
  };
}

/** What pages do under a key of theirs is not what programs do under the same one. */
const operationOf = (operation: string, { kind, keyId }: Caller): string =>
  kind === 'secret' ? operation : `${operation} by ${kind} ${keyId}`;

const LEAST_KEY_LENGTH = 22;

/**
 * Under its Idempotency-Key a page is given its estimate again, with a secret that opens it: the key must be one that
 * nobody guesses.
 */
function refuseGuessableKey({ kind }: Caller, key: string | undefined): void {
  if (kind !== 'publishable' || (key !== undefined && key.length >= LEAST_KEY_LENGTH)) return;
  throw new HttpProblem('bad-request', {
    detail: 'A page makes estimates under an Idempotency-Key that nobody guesses.',
    problems: [
      {
        ...problem('missing', '', {
          expected: `an Idempotency-Key of ${LEAST_KEY_LENGTH} characters or more made by chance, such as a UUID`,
        }),
        header: 'Idempotency-Key',
      },
    ],
  });
}

/** The first estimate of the line of revisions that an estimate is in. @throws {HttpProblem} not-found */
export async function rootIdIn(tx: Transaction, id: string): Promise<string> {
  return found(await EstimatesRepository.in(tx).findRootId(checkedId(id)), id);
}

async function revisionMark(
  estimates: EstimatesRepository,
  id: string,
  { revise }: Plan,
): Promise<RevisionMark> {
  if (revise === undefined) return { rootId: id, number: 0 };
  return {
    rootId: revise.rootId,
    number: (await estimates.lastRevisionNumber(revise.rootId)) + 1,
    reason: revise.reason,
  };
}

const noEstimate = (index: number, id: string): Problem =>
  problem('not-in-form', pointer('', 'estimates', index), {
    value: JSON.stringify(id),
    form: 'the id of an estimate of this organisation',
  });

function found<T>(row: T | null, id: string): T {
  if (row === null) throw notFound(`Estimate ${id}`);
  return row;
}

function checkedId(id: string): string {
  if (!isId(id)) throw notFound(`Estimate ${JSON.stringify(id.slice(0, 60))}`);
  return id;
}
