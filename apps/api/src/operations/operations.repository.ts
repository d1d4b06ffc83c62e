import type { Content } from '../edge/content.js';
import { tell } from '../events/outbox.js';
import type { Transaction } from '../persistence/database.js';
import { OperationRow } from './operation.entity.js';
import type { Outcome } from './outcome.js';
import type { OperationProblem } from './long-operation.js';
import type { OperationState } from './operation-view.js';

export interface NewOperation {
  readonly id: string;
  readonly organisationId: string;
  readonly kind: string;
  readonly task: unknown;
  readonly taskHash: string;
}

/** A task in the hands of one worker; `attempt` is what it has to show when it brings the answer. */
export interface Claim {
  readonly id: string;
  readonly organisationId: string;
  readonly kind: string;
  readonly task: unknown;
  readonly attempt: number;
}

type Ended = Pick<Claim, 'id' | 'organisationId'>;

const stateColumns = [
  'id',
  'organisationId',
  'kind',
  'taskHash',
  'status',
  'attempts',
  'createdAt',
  'dueAt',
  'startedAt',
  'finishedAt',
  'expiresAt',
  'problem',
  'mediaType',
  'resultHref',
  'headers',
].map((column) => `operation.${column}`);

/** Operations that the transaction may see: those of its organisation, or all of them for the worker. */
export class OperationsRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): OperationsRepository {
    return new OperationsRepository(tx);
  }

  /** The operation of this very task when there is one; a failed or expired one makes room for a new try. */
  async place({ id, organisationId, kind, task, taskHash }: NewOperation): Promise<OperationState> {
    await this.tx.query(
      "DELETE FROM operation WHERE task_hash = $1 AND (status = 'failed' OR expires_at <= now())",
      [taskHash],
    );
    await this.tx.query(
      `INSERT INTO operation (id, organisation_id, kind, task, task_hash, expires_at) VALUES ($1, $2, $3, $4::jsonb, $5, now() + interval '1 day')
       ON CONFLICT (organisation_id, task_hash) DO NOTHING`,
      [id, organisationId, kind, JSON.stringify(task), taskHash],
    );
    return this.states().where('operation.taskHash = :taskHash', { taskHash }).getOneOrFail();
  }

  async countKept(): Promise<number> {
    const [{ count }] = await this.tx.query<readonly { readonly count: string }[]>(
      'SELECT count(*) FROM operation WHERE expires_at > now()',
    );
    return Number(count);
  }

  find(id: string): Promise<OperationState | null> {
    return this.states().where('operation.id = :id AND operation.expiresAt > now()', { id }).getOne();
  }

  async findContent(id: string): Promise<Content | null> {
    const [found] = await this.tx.query<
      readonly {
        readonly media_type: string;
        readonly headers: Content['headers'];
        readonly content: Uint8Array;
      }[]
    >(
      "SELECT media_type, headers, content FROM operation WHERE id = $1 AND status = 'done' AND content IS NOT NULL AND expires_at > now()",
      [id],
    );
    return found === undefined
      ? null
      : { mediaType: found.media_type, headers: found.headers, content: found.content };
  }

  /**
   * Takes a task that is due, so that no other copy of the service takes it before the lease ends: of the organisation
   * whose last turn is longest ago, the oldest.
   */
  async claim(mostAttempts: number, leaseS: number): Promise<Claim | undefined> {
    const [rows] = await this.tx.query<
      readonly [
        readonly {
          readonly id: string;
          readonly organisation_id: string;
          readonly kind: string;
          readonly task: unknown;
          readonly attempts: number;
        }[],
        number,
      ]
    >(
      `UPDATE operation SET status = 'running', attempts = attempts + 1, started_at = coalesce(started_at, now()), due_at = now() + make_interval(secs => $2)
       WHERE id = (SELECT o.id FROM operation o WHERE o.status IN ('waiting', 'running') AND o.due_at <= now() AND o.attempts < $1 AND o.expires_at > now()
                   ORDER BY (SELECT max(t.started_at) FROM operation t WHERE t.organisation_id = o.organisation_id) NULLS FIRST, o.due_at, o.id
                   LIMIT 1 FOR UPDATE OF o SKIP LOCKED)
       RETURNING id, organisation_id, kind, task, attempts`,
      [mostAttempts, leaseS],
    );
    const [row] = rows;
    return row === undefined
      ? undefined
      : {
          id: row.id,
          organisationId: row.organisation_id,
          kind: row.kind,
          task: row.task,
          attempt: row.attempts,
        };
  }

  async renew({ id, attempt }: Claim, leaseS: number): Promise<void> {
    await this.tx.query(
      "UPDATE operation SET due_at = now() + make_interval(secs => $3) WHERE id = $1 AND attempts = $2 AND status = 'running'",
      [id, attempt, leaseS],
    );
  }

  /** Nothing happens when the lease has passed to another worker in the meantime. */
  async finish(claim: Claim, outcome: Outcome): Promise<void> {
    const { id, attempt } = claim;
    const kept = 'content' in outcome ? outcome : undefined;
    const [, count]: readonly [unknown, number] = await this.tx.query(
      `UPDATE operation SET status = 'done', finished_at = now(), expires_at = now() + interval '1 day', media_type = $3, headers = $4::jsonb, content = $5, result_href = $6
       WHERE id = $1 AND attempts = $2 AND status = 'running'`,
      [
        id,
        attempt,
        outcome.mediaType,
        kept === undefined ? null : JSON.stringify(kept.headers),
        kept === undefined ? null : Buffer.from(kept.content),
        'href' in outcome ? outcome.href : null,
      ],
    );
    if (count === 1) await this.tellEnd(claim, 'done');
  }

  async fail(claim: Claim, problem: OperationProblem): Promise<void> {
    const { id, attempt } = claim;
    const [, count]: readonly [unknown, number] = await this.tx.query(
      "UPDATE operation SET status = 'failed', finished_at = now(), problem = $3::jsonb WHERE id = $1 AND attempts = $2 AND status = 'running'",
      [id, attempt, JSON.stringify(problem)],
    );
    if (count === 1) await this.tellEnd(claim, 'failed');
  }

  /** Back into the queue, to be tried again after a while. */
  async postpone({ id, attempt }: Claim, seconds: number): Promise<void> {
    await this.tx.query(
      "UPDATE operation SET status = 'waiting', due_at = now() + make_interval(secs => $3) WHERE id = $1 AND attempts = $2 AND status = 'running'",
      [id, attempt, seconds],
    );
  }

  /** Back into the queue as if it had not been taken: whoever took it is stopping, or has no hand free. */
  async giveBack({ id, attempt }: Claim, seconds: number): Promise<void> {
    await this.tx.query(
      "UPDATE operation SET status = 'waiting', attempts = attempts - 1, due_at = now() + make_interval(secs => $3) WHERE id = $1 AND attempts = $2 AND status = 'running'",
      [id, attempt, seconds],
    );
  }

  /** Tasks whose every worker died over them fail, and what has expired goes. */
  async sweep(mostAttempts: number, problem: OperationProblem): Promise<void> {
    const [ended]: readonly [readonly Ended[], number] = await this.tx.query(
      `UPDATE operation SET status = 'failed', finished_at = now(), problem = $2::jsonb
       WHERE status IN ('waiting', 'running') AND attempts >= $1 AND due_at <= now()
       RETURNING id, organisation_id AS "organisationId"`,
      [mostAttempts, JSON.stringify(problem)],
    );
    for (const one of ended) await this.tellEnd(one, 'failed');
    await this.tx.query('DELETE FROM operation WHERE expires_at <= now()');
  }

  private tellEnd({ id, organisationId }: Ended, status: 'done' | 'failed'): Promise<void> {
    const data = { id, href: `/v1/operations/${id}`, status };
    return tell(this.tx, { organisationId, type: 'operation.done', data });
  }

  private states() {
    return this.tx.createQueryBuilder(OperationRow, 'operation').select(stateColumns);
  }
}
