import type { Transaction } from '../persistence/database.js';
import { newId } from '../persistence/ids.js';
import type { EventType, Happening } from './service-event.js';

/**
 * Writes an event in the transaction of its deed, with a delivery for each endpoint that wants it: neither the deed nor
 * its telling is there without the other.
 *
 * Events of one organisation take their positions one transaction after the other, so that whoever has read up to one
 * position has missed nothing below it. Call it last: the organisation's other deeds wait for the commit.
 */
export async function tell<T extends EventType>(
  tx: Transaction,
  { organisationId, type, data }: Happening<T>,
): Promise<void> {
  const id = newId();
  await tx.query('SELECT pg_advisory_xact_lock(hashtextextended($1, 0))', [`event ${organisationId}`]);
  await tx.query(
    'INSERT INTO event (id, organisation_id, type, data, at) VALUES ($1, $2, $3, $4::jsonb, clock_timestamp())',
    [id, organisationId, type, JSON.stringify(data)],
  );
  await tx.query(
    `INSERT INTO webhook_delivery (endpoint_id, event_id, organisation_id)
     SELECT id, $1, organisation_id FROM webhook_endpoint
     WHERE organisation_id = $2 AND disabled_because IS NULL AND $3 = ANY(types)`,
    [id, organisationId, type],
  );
}
