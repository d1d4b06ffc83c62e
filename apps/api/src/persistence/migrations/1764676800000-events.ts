import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * What happened, as others are told of it: an event is written in the transaction of its deed, together with a delivery
 * for each endpoint that wants it.
 *
 * The worker (`kingplank.worker`) sees events, endpoints and deliveries of all organisations, and nothing else of them.
 */
export class Events1764676800000 implements MigrationInterface {
  readonly name = 'Events1764676800000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of statements) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const table of ['webhook_delivery', 'webhook_endpoint', 'event'])
      await runner.query(`DROP TABLE ${table}`);
  }
}

const statements = [
  `CREATE TABLE event (
     id uuid CONSTRAINT event_pkey PRIMARY KEY,
     position bigint GENERATED ALWAYS AS IDENTITY CONSTRAINT event_position_unique UNIQUE,
     organisation_id uuid NOT NULL CONSTRAINT event_organisation_fkey REFERENCES organisation (id),
     type text NOT NULL,
     at timestamptz NOT NULL DEFAULT now(),
     data jsonb NOT NULL
   )`,
  'CREATE INDEX event_organisation_idx ON event (organisation_id, position)',
  'CREATE INDEX event_age_idx ON event (at)',
  `CREATE TABLE webhook_endpoint (
     id uuid CONSTRAINT webhook_endpoint_pkey PRIMARY KEY,
     organisation_id uuid NOT NULL CONSTRAINT webhook_endpoint_organisation_fkey REFERENCES organisation (id),
     url text NOT NULL,
     types text[] NOT NULL CONSTRAINT webhook_endpoint_types_some CHECK (cardinality(types) > 0),
     secrets jsonb NOT NULL,
     created_at timestamptz NOT NULL DEFAULT now(),
     disabled_because text,
     version integer NOT NULL DEFAULT 1
   )`,
  'CREATE INDEX webhook_endpoint_organisation_idx ON webhook_endpoint (organisation_id, id)',
  `CREATE TABLE webhook_delivery (
     endpoint_id uuid NOT NULL CONSTRAINT webhook_delivery_endpoint_fkey REFERENCES webhook_endpoint (id) ON DELETE CASCADE,
     event_id uuid NOT NULL CONSTRAINT webhook_delivery_event_fkey REFERENCES event (id) ON DELETE CASCADE,
     organisation_id uuid NOT NULL CONSTRAINT webhook_delivery_organisation_fkey REFERENCES organisation (id),
     status text NOT NULL DEFAULT 'waiting' CONSTRAINT webhook_delivery_status_known CHECK (status IN ('waiting', 'delivered', 'failed')),
     attempts integer NOT NULL DEFAULT 0,
     due_at timestamptz NOT NULL DEFAULT now(),
     tried_at timestamptz,
     last_status integer,
     last_failure text,
     CONSTRAINT webhook_delivery_pkey PRIMARY KEY (endpoint_id, event_id)
   )`,
  "CREATE INDEX webhook_delivery_due_idx ON webhook_delivery (due_at) WHERE status = 'waiting'",
  'CREATE INDEX webhook_delivery_event_idx ON webhook_delivery (event_id)',
  ...['event', 'webhook_endpoint', 'webhook_delivery'].flatMap((table) => [
    `ALTER TABLE ${table} ENABLE ROW LEVEL SECURITY`,
    `ALTER TABLE ${table} FORCE ROW LEVEL SECURITY`,
    `CREATE POLICY ${table}_organisation ON ${table} FOR ALL USING (organisation_id = kingplank_organisation() OR kingplank_is_worker())`,
    `GRANT SELECT, INSERT, UPDATE, DELETE ON ${table} TO kingplank_service`,
  ]),
  // An event is never changed; it goes when its time is over.
  'REVOKE UPDATE ON event FROM kingplank_service',
];
