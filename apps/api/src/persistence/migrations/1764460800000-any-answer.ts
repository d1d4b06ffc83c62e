import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * An Idempotency-Key may stand for any change, not for an estimate alone: what was done is written with the deed, the
 * answer, sealed with the caller's own key, right after it.
 */
export class AnyAnswer1764460800000 implements MigrationInterface {
  readonly name = 'AnyAnswer1764460800000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of up) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const statement of down) await runner.query(statement);
  }
}

const up = [
  'ALTER TABLE idempotency_key ALTER COLUMN estimate_id DROP NOT NULL',
  'ALTER TABLE idempotency_key ADD COLUMN claim_id uuid',
  'ALTER TABLE idempotency_key ADD COLUMN subject text',
  'ALTER TABLE idempotency_key ADD COLUMN subject_code text',
  'ALTER TABLE idempotency_key ADD COLUMN answer bytea',
  `ALTER TABLE idempotency_key ADD CONSTRAINT idempotency_key_for_something
   CHECK (estimate_id IS NOT NULL OR claim_id IS NOT NULL)`,
  // Who works across organisations claims a key of its own organisation in such a transaction.
  'CREATE POLICY idempotency_key_operator ON idempotency_key FOR ALL USING (kingplank_is_operator())',
];

const down = [
  'DROP POLICY idempotency_key_operator ON idempotency_key',
  'DELETE FROM idempotency_key WHERE estimate_id IS NULL',
  'ALTER TABLE idempotency_key DROP CONSTRAINT idempotency_key_for_something',
  ...['answer', 'subject_code', 'subject', 'claim_id'].map(
    (column) => `ALTER TABLE idempotency_key DROP COLUMN ${column}`,
  ),
  'ALTER TABLE idempotency_key ALTER COLUMN estimate_id SET NOT NULL',
];
