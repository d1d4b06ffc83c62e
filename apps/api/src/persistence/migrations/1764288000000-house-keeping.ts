import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * What grows is kept small and found by index.
 *
 * Estimates are found by the caller's reference without reading those of others; their derivations need not be kept;
 * old Idempotency-Keys may be removed by the worker; requests are counted for all copies of the service together. The
 * queue of operations takes turns between organisations.
 */
export class HouseKeeping1764288000000 implements MigrationInterface {
  readonly name = 'HouseKeeping1764288000000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of up) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const statement of down) await runner.query(statement);
  }
}

const up = [
  'CREATE INDEX estimate_reference_idx ON estimate (organisation_id, reference, id DESC)',
  'ALTER TABLE estimate ALTER COLUMN derivations DROP NOT NULL',
  'CREATE INDEX idempotency_key_age_idx ON idempotency_key (created_at)',
  'CREATE POLICY idempotency_key_worker ON idempotency_key FOR SELECT USING (kingplank_is_worker())',
  'CREATE POLICY idempotency_key_removal ON idempotency_key FOR DELETE USING (kingplank_is_worker())',
  'CREATE INDEX operation_turn_idx ON operation (organisation_id, started_at DESC)',
  // Counts of the last minutes may be lost with the power; they cost no log that way.
  `CREATE UNLOGGED TABLE request_count (
     caller text NOT NULL,
     minute integer NOT NULL,
     used integer NOT NULL,
     CONSTRAINT request_count_pkey PRIMARY KEY (caller, minute)
   )`,
  'ALTER TABLE request_count ENABLE ROW LEVEL SECURITY',
  'ALTER TABLE request_count FORCE ROW LEVEL SECURITY',
  'CREATE POLICY request_count_worker ON request_count FOR ALL USING (kingplank_is_worker())',
  'GRANT SELECT, INSERT, UPDATE, DELETE ON request_count TO kingplank_service',
];

const down = [
  'DROP TABLE request_count',
  'DROP INDEX operation_turn_idx',
  'DROP POLICY idempotency_key_removal ON idempotency_key',
  'DROP POLICY idempotency_key_worker ON idempotency_key',
  'DROP INDEX idempotency_key_age_idx',
  "UPDATE estimate SET derivations = '' WHERE derivations IS NULL",
  'ALTER TABLE estimate ALTER COLUMN derivations SET NOT NULL',
  'DROP INDEX estimate_reference_idx',
];
