import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What stands at the head of an organisation's documents. */
export class Letterhead1764201600000 implements MigrationInterface {
  readonly name = 'Letterhead1764201600000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of statements) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DROP TABLE letterhead');
  }
}

const statements = [
  `CREATE TABLE letterhead (
     organisation_id uuid CONSTRAINT letterhead_pkey PRIMARY KEY CONSTRAINT letterhead_organisation_fkey REFERENCES organisation (id),
     lines text[] NOT NULL CONSTRAINT letterhead_lines_few CHECK (cardinality(lines) <= 6),
     logo_description text CONSTRAINT letterhead_description_length CHECK (char_length(logo_description) BETWEEN 1 AND 200),
     logo bytea CONSTRAINT letterhead_logo_size CHECK (octet_length(logo) <= 4194304),
     updated_at timestamptz NOT NULL DEFAULT now(),
     version integer NOT NULL DEFAULT 1
   )`,
  'ALTER TABLE letterhead ALTER COLUMN logo SET STORAGE EXTERNAL',
  'ALTER TABLE letterhead ENABLE ROW LEVEL SECURITY',
  'ALTER TABLE letterhead FORCE ROW LEVEL SECURITY',
  'CREATE POLICY letterhead_organisation ON letterhead FOR ALL USING (organisation_id = kingplank_organisation())',
  'GRANT SELECT, INSERT, UPDATE, DELETE ON letterhead TO kingplank_service',
];
