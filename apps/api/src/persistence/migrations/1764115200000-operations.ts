import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * Work that is accepted now and answered later, with its result.
 *
 * The worker (`kingplank.worker`) sees the operations of all organisations, and nothing else of them; the work itself is
 * done in the organisation it belongs to.
 */
export class Operations1764115200000 implements MigrationInterface {
  readonly name = 'Operations1764115200000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of statements) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DROP TABLE operation');
    await runner.query('DROP FUNCTION kingplank_is_worker()');
  }
}

const statements = [
  `CREATE FUNCTION kingplank_is_worker() RETURNS boolean LANGUAGE sql STABLE
   AS $$ SELECT coalesce(current_setting('kingplank.worker', true), '') = 'on' $$`,
  `CREATE TABLE operation (
     id uuid CONSTRAINT operation_pkey PRIMARY KEY,
     organisation_id uuid NOT NULL CONSTRAINT operation_organisation_fkey REFERENCES organisation (id),
     kind text NOT NULL,
     task jsonb NOT NULL,
     task_hash text NOT NULL,
     status text NOT NULL DEFAULT 'waiting' CONSTRAINT operation_status_known CHECK (status IN ('waiting', 'running', 'done', 'failed')),
     attempts integer NOT NULL DEFAULT 0,
     created_at timestamptz NOT NULL DEFAULT now(),
     due_at timestamptz NOT NULL DEFAULT now(),
     started_at timestamptz,
     finished_at timestamptz,
     expires_at timestamptz NOT NULL,
     problem jsonb,
     media_type text,
     headers jsonb,
     content bytea,
     CONSTRAINT operation_task_unique UNIQUE (organisation_id, task_hash),
     CONSTRAINT operation_done_whole CHECK (status <> 'done' OR (finished_at IS NOT NULL AND media_type IS NOT NULL AND headers IS NOT NULL AND content IS NOT NULL)),
     CONSTRAINT operation_failed_reasoned CHECK (status <> 'failed' OR (finished_at IS NOT NULL AND problem IS NOT NULL))
   )`,
  // Documents are compressed already.
  'ALTER TABLE operation ALTER COLUMN content SET STORAGE EXTERNAL',
  "CREATE INDEX operation_due_idx ON operation (due_at, id) WHERE status IN ('waiting', 'running')",
  'CREATE INDEX operation_expiry_idx ON operation (expires_at)',
  'ALTER TABLE operation ENABLE ROW LEVEL SECURITY',
  'ALTER TABLE operation FORCE ROW LEVEL SECURITY',
  'CREATE POLICY operation_organisation ON operation FOR ALL USING (organisation_id = kingplank_organisation() OR kingplank_is_worker())',
  'GRANT SELECT, INSERT, UPDATE, DELETE ON operation TO kingplank_service',
];
