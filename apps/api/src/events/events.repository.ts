import type { Transaction } from '../persistence/database.js';
import { WebhookEndpointRow, type EndpointSecret, type EventRow } from './event.entities.js';
import type { EventType } from './service-event.js';

interface FeedRequest {
  readonly afterPosition: string;
  readonly limit: number;
  readonly types: readonly EventType[] | null;
}

/** A delivery as a caller sees it. */
export interface DeliveryRow {
  readonly eventId: string;
  readonly type: EventType;
  readonly status: 'waiting' | 'delivered' | 'failed';
  readonly attempts: number;
  readonly dueAt: Date;
  readonly triedAt: Date | null;
  readonly lastStatus: number | null;
  readonly lastFailure: string | null;
}

/** A delivery in the hands of one worker, with all that it needs; `attempt` is what it shows when it comes back. */
export interface DeliveryClaim {
  readonly endpointId: string;
  readonly eventId: string;
  readonly attempt: number;
  readonly url: string;
  readonly secrets: readonly EndpointSecret[];
  readonly type: EventType;
  readonly at: Date;
  readonly data: Readonly<Record<string, unknown>>;
}

/** What came of an attempt. */
export interface Attempted {
  readonly status: 'waiting' | 'delivered' | 'failed';
  readonly againInS: number;
  readonly lastStatus: number | undefined;
  readonly lastFailure: string | undefined;
}

const deliveryColumns = `d.event_id AS "eventId", e.type, d.status, d.attempts, d.due_at AS "dueAt",
  d.tried_at AS "triedAt", d.last_status AS "lastStatus", d.last_failure AS "lastFailure"`;

/** Events, endpoints and deliveries that the transaction may see: of its organisation, or all of them for the worker. */
export class EventsRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): EventsRepository {
    return new EventsRepository(tx);
  }

  /** Oldest first, of what comes after a position. */
  feed({ afterPosition, limit, types }: FeedRequest): Promise<EventRow[]> {
    return this.tx.query(
      `SELECT id, position, type, at, data FROM event
       WHERE organisation_id = kingplank_organisation() AND position > $1 AND ($2::text[] IS NULL OR type = ANY($2))
       ORDER BY position LIMIT $3`,
      [afterPosition, types, limit],
    );
  }

  async addEndpoint(
    endpoint: Omit<WebhookEndpointRow, 'createdAt' | 'disabledBecause' | 'version'>,
  ): Promise<void> {
    await this.tx.insert(WebhookEndpointRow, {
      ...endpoint,
      secrets: [...endpoint.secrets],
      types: [...endpoint.types],
    });
  }

  endpoints(): Promise<WebhookEndpointRow[]> {
    return this.tx.find(WebhookEndpointRow, { order: { id: 'ASC' } });
  }

  endpoint(id: string): Promise<WebhookEndpointRow | null> {
    return this.tx.findOneBy(WebhookEndpointRow, { id });
  }

  /** False when the version is no longer the one that was read. */
  async setSecrets(id: string, version: number, secrets: readonly EndpointSecret[]): Promise<boolean> {
    const { affected } = await this.tx
      .createQueryBuilder()
      .update(WebhookEndpointRow)
      .set({ secrets: [...secrets], version: version + 1 })
      .where({ id, version })
      .execute();
    return affected === 1;
  }

  async removeEndpoint(id: string, version: number): Promise<boolean> {
    return (await this.tx.delete(WebhookEndpointRow, { id, version })).affected === 1;
  }

  deliveries(endpointId: string, limit: number): Promise<readonly DeliveryRow[]> {
    return this.tx.query(
      `SELECT ${deliveryColumns} FROM webhook_delivery d JOIN event e ON e.id = d.event_id
       WHERE d.endpoint_id = $1 ORDER BY e.position DESC LIMIT $2`,
      [endpointId, limit],
    );
  }

  /** Due again at once, with all its attempts before it; an event that the endpoint was never sent is sent now. */
  async repeat(endpointId: string, eventId: string): Promise<DeliveryRow | undefined> {
    await this.tx.query(
      `INSERT INTO webhook_delivery (endpoint_id, event_id, organisation_id)
       SELECT $1, id, organisation_id FROM event WHERE id = $2
       ON CONFLICT (endpoint_id, event_id) DO UPDATE SET status = 'waiting', attempts = 0, due_at = now()`,
      [endpointId, eventId],
    );
    const [row]: readonly (DeliveryRow | undefined)[] = await this.tx.query(
      `SELECT ${deliveryColumns} FROM webhook_delivery d JOIN event e ON e.id = d.event_id
       WHERE d.endpoint_id = $1 AND d.event_id = $2`,
      [endpointId, eventId],
    );
    return row;
  }

  /** Takes deliveries that are due, few of each endpoint, so that no other copy takes them before the lease ends. */
  async claim(most: number, mostOfEach: number, leaseS: number): Promise<readonly DeliveryClaim[]> {
    const [rows]: readonly [readonly DeliveryClaim[], number] = await this.tx.query(
      `UPDATE webhook_delivery d SET attempts = attempts + 1, due_at = now() + make_interval(secs => $3)
       FROM event e, webhook_endpoint w
       WHERE e.id = d.event_id AND w.id = d.endpoint_id AND (d.endpoint_id, d.event_id) IN (
         SELECT endpoint_id, event_id FROM webhook_delivery
         WHERE (endpoint_id, event_id) IN (
           SELECT endpoint_id, event_id FROM (
             SELECT q.endpoint_id, q.event_id, q.due_at,
                    row_number() OVER (PARTITION BY q.endpoint_id ORDER BY q.due_at, q.event_id) AS place
             FROM webhook_delivery q JOIN webhook_endpoint p ON p.id = q.endpoint_id AND p.disabled_because IS NULL
             WHERE q.status = 'waiting' AND q.due_at <= now()) due
           WHERE place <= $2 ORDER BY due_at LIMIT $1)
           AND status = 'waiting' AND due_at <= now()
         FOR UPDATE SKIP LOCKED)
       RETURNING d.endpoint_id AS "endpointId", d.event_id AS "eventId", d.attempts AS attempt,
                 w.url, w.secrets, e.type, e.at, e.data`,
      [most, mostOfEach, leaseS],
    );
    return rows;
  }

  /** Nothing happens when the lease has passed to another worker in the meantime. */
  async settle({ endpointId, eventId, attempt }: DeliveryClaim, outcome: Attempted): Promise<void> {
    await this.tx.query(
      `UPDATE webhook_delivery SET status = $4, due_at = now() + make_interval(secs => $5), tried_at = now(),
              last_status = $6, last_failure = $7
       WHERE endpoint_id = $1 AND event_id = $2 AND attempts = $3`,
      [
        endpointId,
        eventId,
        attempt,
        outcome.status,
        outcome.againInS,
        outcome.lastStatus ?? null,
        outcome.lastFailure ?? null,
      ],
    );
  }

  async disable(endpointId: string, because: string): Promise<void> {
    await this.tx.query(
      'UPDATE webhook_endpoint SET disabled_because = $2, version = version + 1 WHERE id = $1 AND disabled_because IS NULL',
      [endpointId, because],
    );
  }

  /** Events and what was delivered of them, when their time is over. */
  async sweep(days: number): Promise<void> {
    await this.tx.query('DELETE FROM event WHERE at < now() - make_interval(days => $1)', [days]);
  }
}
