import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * An edition can be published ahead of the time from which it counts. Until then it is frozen like any other, and may
 * be taken back into a draft; from then on it is never changed.
 */
export class EditionTimes1764806400000 implements MigrationInterface {
  readonly name = 'EditionTimes1764806400000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of up) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const statement of down) await runner.query(statement);
  }
}

const keeping = (exception: string): string =>
  `CREATE OR REPLACE FUNCTION kingplank_keep_edition() RETURNS trigger LANGUAGE plpgsql AS $$
   BEGIN
     IF OLD.state = 'published'${exception} THEN
       RAISE EXCEPTION 'a published edition is never changed' USING ERRCODE = '23514', CONSTRAINT = 'edition_published_kept';
     END IF;
     RETURN coalesce(NEW, OLD);
   END $$`;

const up = [
  'ALTER TABLE edition ADD COLUMN effective_at timestamptz',
  `ALTER TABLE edition ADD CONSTRAINT edition_effective_published CHECK (effective_at IS NULL OR state = 'published')`,
  'DROP INDEX edition_current_idx',
  "CREATE INDEX edition_current_idx ON edition (organisation_id, coalesce(effective_at, published_at) DESC) WHERE state = 'published'",
  keeping(
    ` AND NOT (TG_OP = 'UPDATE' AND NEW.state = 'draft' AND coalesce(OLD.effective_at > clock_timestamp(), false))`,
  ),
];

const down = [
  // What does not count yet must not count at once.
  `UPDATE edition SET state = 'draft', published_at = NULL, content_hash = NULL, effective_at = NULL
   WHERE state = 'published' AND effective_at > clock_timestamp()`,
  'ALTER TABLE edition DISABLE TRIGGER edition_keep_published',
  'UPDATE edition SET published_at = effective_at WHERE effective_at IS NOT NULL',
  'ALTER TABLE edition ENABLE TRIGGER edition_keep_published',
  keeping(''),
  'DROP INDEX edition_current_idx',
  "CREATE INDEX edition_current_idx ON edition (organisation_id, published_at DESC) WHERE state = 'published'",
  'ALTER TABLE edition DROP CONSTRAINT edition_effective_published',
  'ALTER TABLE edition DROP COLUMN effective_at',
];
