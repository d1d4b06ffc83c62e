import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Photographs of a deck, held with the first estimate of a line of revisions and gone with it. */
export class Photographs1764633600000 implements MigrationInterface {
  readonly name = 'Photographs1764633600000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of statements) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DROP TABLE photograph');
  }
}

const statements = [
  `CREATE TABLE photograph (
     root_id uuid NOT NULL CONSTRAINT photograph_estimate_fkey REFERENCES estimate (id) ON DELETE CASCADE,
     number integer NOT NULL CONSTRAINT photograph_number_few CHECK (number BETWEEN 1 AND 24),
     organisation_id uuid NOT NULL CONSTRAINT photograph_organisation_fkey REFERENCES organisation (id),
     caption text NOT NULL CONSTRAINT photograph_caption_length CHECK (char_length(caption) BETWEEN 1 AND 300),
     x_mm double precision,
     y_mm double precision,
     direction_deg double precision CONSTRAINT photograph_direction_round CHECK (direction_deg >= 0 AND direction_deg < 360),
     picture bytea NOT NULL CONSTRAINT photograph_picture_size CHECK (octet_length(picture) <= 4194304),
     width_px integer NOT NULL,
     height_px integer NOT NULL,
     added_at timestamptz NOT NULL DEFAULT now(),
     CONSTRAINT photograph_pkey PRIMARY KEY (root_id, number),
     CONSTRAINT photograph_place_whole CHECK ((x_mm IS NULL) = (y_mm IS NULL) AND (x_mm IS NOT NULL OR direction_deg IS NULL))
   )`,
  'ALTER TABLE photograph ALTER COLUMN picture SET STORAGE EXTERNAL',
  'ALTER TABLE photograph ENABLE ROW LEVEL SECURITY',
  'ALTER TABLE photograph FORCE ROW LEVEL SECURITY',
  'CREATE POLICY photograph_organisation ON photograph FOR ALL USING (organisation_id = kingplank_organisation())',
  'CREATE POLICY photograph_confined ON photograph AS RESTRICTIVE FOR ALL USING (kingplank_may_see(root_id))',
  'GRANT SELECT, INSERT, UPDATE, DELETE ON photograph TO kingplank_service',
];
