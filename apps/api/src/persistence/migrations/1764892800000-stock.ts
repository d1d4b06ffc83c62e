import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * How many packs a supplier holds today. It changes by the hour and says nothing about prices, so it stands beside the
 * editions and not in them.
 */
export class Stock1764892800000 implements MigrationInterface {
  readonly name = 'Stock1764892800000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of statements) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DROP TABLE stock');
  }
}

const statements = [
  `CREATE TABLE stock (
     organisation_id uuid NOT NULL CONSTRAINT stock_organisation_fkey REFERENCES organisation (id),
     price_list text NOT NULL,
     sku text NOT NULL,
     packs integer NOT NULL CONSTRAINT stock_counted CHECK (packs >= 0),
     counted_at timestamptz NOT NULL DEFAULT now(),
     CONSTRAINT stock_pkey PRIMARY KEY (organisation_id, price_list, sku)
   )`,
  'ALTER TABLE stock ENABLE ROW LEVEL SECURITY',
  'ALTER TABLE stock FORCE ROW LEVEL SECURITY',
  'CREATE POLICY stock_organisation ON stock FOR ALL USING (organisation_id = kingplank_organisation())',
  'GRANT SELECT, INSERT, UPDATE, DELETE ON stock TO kingplank_service',
];
