import { Injectable } from '@nestjs/common';
import type { DefectRecord } from '#lib/estimate';
import type { Caller } from '../access/roles.js';
import { CurrentCatalogue } from '../catalogue/current-catalogue.js';
import { Metrics } from '../health/metrics.js';
import { answer, HttpProblem, notFound } from '../http/problems.js';
import { problem } from '#lib/kernel';
import { RunningKeys } from '../idempotency/running-keys.js';
import { Database } from '../persistence/database.js';
import { isUniqueViolation } from '../persistence/failures.js';
import { isId, newId } from '../persistence/ids.js';
import { Engine } from './engine.js';
import type { EstimateRow } from './estimate.entity.js';
import { hashOf, rowOf, storedEstimate, summaryOfRow, type NewEstimateRow } from './estimate.mapper.js';
import { EstimatesRepository, type KeyUse } from './estimates.repository.js';
import type { EstimatePage, RevisionList, RevisionMark, StoredEstimate, WhyAnswer } from './stored-estimate.js';

interface Order {
  readonly caller: Caller;
  readonly record: DefectRecord;
  readonly idempotencyKey?: string;
}

export interface Made {
  readonly stored: StoredEstimate;
  /** True when the answer is that of an earlier request with the same key. */
  readonly isReplay: boolean;
}

interface Plan {
  readonly caller: Caller;
  readonly record: DefectRecord;
  readonly use?: KeyUse;
  readonly revise?: { readonly rootId: string; readonly reason: string };
}

export interface PageQuery {
  readonly limit: number;
  readonly cursor?: string;
  readonly reference?: string;
}

/** One method for each thing a caller can do with estimates: load, call the rooms, store in one transaction. */
@Injectable()
export class EstimatesService {
  constructor(
    private readonly database: Database,
    private readonly catalogue: CurrentCatalogue,
    private readonly engine: Engine,
    private readonly running: RunningKeys,
    private readonly metrics: Metrics,
  ) {}

  create({ caller, record, idempotencyKey }: Order): Promise<Made> {
    return this.once({ caller, record }, 'estimates', idempotencyKey, record);
  }

  async revise(id: string, reason: string, { caller, record, idempotencyKey }: Order): Promise<Made> {
    const { rootId } = await this.row(caller, id);
    return this.once({ caller, record, revise: { rootId, reason } }, `revisions of ${rootId}`, idempotencyKey, { reason, record });
  }

  async get(caller: Caller, id: string): Promise<StoredEstimate> {
    return storedEstimate(await this.row(caller, id));
  }

  async record(caller: Caller, id: string): Promise<DefectRecord> {
    return (await this.row(caller, id)).input;
  }

  async why(caller: Caller, id: string, code: string): Promise<WhyAnswer> {
    const { derivations } = await this.row(caller, id);
    if (!Object.hasOwn(derivations, code)) throw notFound(`A derivation of ${JSON.stringify(code.slice(0, 80))} in estimate ${id}`);
    return { code, figure: derivations[code] };
  }

  page({ organisationId }: Caller, { limit, cursor, reference }: PageQuery): Promise<EstimatePage> {
    const beforeId = cursor === undefined ? undefined : idOfCursor(cursor);
    return this.database.inOrganisation(organisationId, async (tx) => {
      const rows = await EstimatesRepository.in(tx).page({ limit: limit + 1, beforeId, reference });
      const items = rows.slice(0, limit).map(summaryOfRow);
      const last = items.at(-1);
      return rows.length > limit && last !== undefined ? { items, nextCursor: cursorOf(last.id) } : { items };
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
  pair(caller: Caller, id: string, withId?: string): Promise<{ readonly before: EstimateRow; readonly after: EstimateRow }> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const estimates = EstimatesRepository.in(tx);
      const after = found(await estimates.find(checkedId(id)), id);
      const before = withId === undefined
        ? await estimates.findRevision(after.rootId, after.revisionNumber - 1)
        : found(await estimates.find(checkedId(withId)), withId);
      if (before === null) throw notFound(`A revision before estimate ${id}`);
      return { before, after };
    });
  }

  async row({ organisationId }: Caller, id: string): Promise<EstimateRow> {
    const checked = checkedId(id);
    return found(await this.database.inOrganisation(organisationId, (tx) => EstimatesRepository.in(tx).find(checked)), id);
  }

  /** Runs a plan; under a key, at most once. */
  private async once(plan: Plan, operation: string, key: string | undefined, body: unknown): Promise<Made> {
    if (key === undefined) return { stored: await this.make(plan), isReplay: false };
    const { organisationId } = plan.caller;
    const use: KeyUse = { organisationId, operation, key, requestHash: hashOf(body) };
    return this.running.alone([organisationId, operation, key], async () => {
      const earlier = await this.earlier(use);
      return earlier ?? this.madeUnderKey({ ...plan, use }, use);
    });
  }

  private async madeUnderKey(plan: Plan, use: KeyUse): Promise<Made> {
    try {
      return { stored: await this.make(plan), isReplay: false };
    } catch (failure) {
      if (!isUniqueViolation(failure, 'idempotency_key_pkey')) throw failure;
      const earlier = await this.earlier(use);
      if (earlier === undefined) throw failure;
      return earlier;
    }
  }

  private async earlier(use: KeyUse): Promise<Made | undefined> {
    const row = await this.database.inOrganisation(use.organisationId, async (tx) => {
      const estimates = EstimatesRepository.in(tx);
      const known = await estimates.findKey(use);
      if (known === null) return undefined;
      if (known.requestHash !== use.requestHash) throw reusedKey();
      return found(await estimates.find(known.estimateId), known.estimateId);
    });
    return row === undefined ? undefined : { stored: storedEstimate(row), isReplay: true };
  }

  private async make(plan: Plan): Promise<StoredEstimate> {
    const { caller, record } = plan;
    const catalogue = await this.catalogue.of(caller.organisationId);
    const made = answer(await this.engine.estimate(record, catalogue));
    const id = newId();
    const [row, createdAt] = await this.database.inOrganisation(caller.organisationId, async (tx) => {
      const estimates = EstimatesRepository.in(tx);
      const revision = await revisionMark(estimates, id, plan);
      const newRow: NewEstimateRow = rowOf({ id, organisationId: caller.organisationId, createdByKeyId: caller.keyId, revision }, record, made);
      const at = await estimates.add(newRow);
      if (plan.use !== undefined) await estimates.rememberKey(plan.use, id);
      return [newRow, at] as const;
    });
    this.metrics.estimateMade();
    return storedEstimate({ ...row, createdAt });
  }
}

async function revisionMark(estimates: EstimatesRepository, id: string, { revise }: Plan): Promise<RevisionMark> {
  if (revise === undefined) return { rootId: id, number: 0 };
  return { rootId: revise.rootId, number: await estimates.lastRevisionNumber(revise.rootId) + 1, reason: revise.reason };
}

function found<T>(row: T | null, id: string): T {
  if (row === null) throw notFound(`Estimate ${id}`);
  return row;
}

function checkedId(id: string): string {
  if (!isId(id)) throw notFound(`Estimate ${JSON.stringify(id.slice(0, 60))}`);
  return id;
}

const reusedKey = (): HttpProblem => new HttpProblem('unprocessable', {
  detail: 'This Idempotency-Key was used for another body; a new request needs a new key.',
  problems: [{ ...problem('contradiction', '', { other: 'an earlier request', why: 'the same key came with another body' }), header: 'Idempotency-Key' }],
});

const cursorOf = (id: string): string => Buffer.from(id.replaceAll('-', ''), 'hex').toString('base64url');

function idOfCursor(cursor: string): string {
  const hex = Buffer.from(cursor, 'base64url').toString('hex');
  const id = hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
  if (isId(id) && cursorOf(id) === cursor) return id;
  throw new HttpProblem('bad-request', {
    detail: 'The cursor is not one that this service gave.',
    problems: [{ ...problem('not-in-form', '', { value: JSON.stringify(cursor.slice(0, 60)), form: 'a cursor from the answer before' }), parameter: 'cursor' }],
  });
}
