import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * All tables of the first release.
 *
 * Every row that belongs to an organisation is guarded by row security, forced so that the owner of the tables is bound
 * by it too. The service works as the role `kingplank_service`, which cannot bypass it, and names the organisation in
 * each transaction (`kingplank.organisation`). Rows of the shipped catalogue belong to nobody: all may read them, and
 * only a transaction marked `kingplank.operator` may write them.
 */
export class Foundation1764028800000 implements MigrationInterface {
  readonly name = 'Foundation1764028800000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of [...access, ...catalogue, ...estimates, ...records, ...security, ...grants])
      await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const table of [...tables].reverse()) await runner.query(`DROP TABLE "${table}" CASCADE`);
    for (const name of ['keep_published', 'keep_edition', 'organisation', 'is_operator'])
      await runner.query(`DROP FUNCTION kingplank_${name}()`);
    // The role belongs to the whole server and may serve other databases; it is left in place.
  }
}

const tables = [
  'organisation',
  'api_key',
  'edition',
  'material',
  'price_list',
  'labour_rates',
  'source',
  'estimate',
  'idempotency_key',
  'audit_entry',
] as const;

const access = [
  `DO $$ BEGIN CREATE ROLE kingplank_service NOLOGIN NOBYPASSRLS;
   EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$`,
  `CREATE FUNCTION kingplank_organisation() RETURNS uuid LANGUAGE sql STABLE
   AS $$ SELECT nullif(current_setting('kingplank.organisation', true), '')::uuid $$`,
  `CREATE FUNCTION kingplank_is_operator() RETURNS boolean LANGUAGE sql STABLE
   AS $$ SELECT coalesce(current_setting('kingplank.operator', true), '') = 'on' $$`,
  `CREATE TABLE organisation (
     id uuid CONSTRAINT organisation_pkey PRIMARY KEY,
     name text NOT NULL CONSTRAINT organisation_name_length CHECK (char_length(name) BETWEEN 1 AND 200),
     created_at timestamptz NOT NULL DEFAULT now(),
     updated_at timestamptz NOT NULL DEFAULT now(),
     version integer NOT NULL DEFAULT 1
   )`,
  `CREATE TABLE api_key (
     id uuid CONSTRAINT api_key_pkey PRIMARY KEY,
     organisation_id uuid NOT NULL CONSTRAINT api_key_organisation_fkey REFERENCES organisation (id),
     name text NOT NULL CONSTRAINT api_key_name_length CHECK (char_length(name) BETWEEN 1 AND 200),
     key_hash text NOT NULL CONSTRAINT api_key_hash_unique UNIQUE,
     prefix text NOT NULL,
     roles text[] NOT NULL CONSTRAINT api_key_roles_some CHECK (cardinality(roles) > 0),
     created_at timestamptz NOT NULL DEFAULT now(),
     revoked_at timestamptz,
     version integer NOT NULL DEFAULT 1
   )`,
  'CREATE INDEX api_key_organisation_idx ON api_key (organisation_id, id)',
];

const catalogueTable = (table: string): string => `CREATE TABLE ${table} (
     edition_id uuid NOT NULL CONSTRAINT ${table}_edition_fkey REFERENCES edition (id) ON DELETE CASCADE,
     code text NOT NULL CONSTRAINT ${table}_code_length CHECK (char_length(code) BETWEEN 1 AND 80),
     organisation_id uuid CONSTRAINT ${table}_organisation_fkey REFERENCES organisation (id),
     kind text NOT NULL,
     name text NOT NULL,
     body jsonb NOT NULL,
     position integer NOT NULL,
     updated_at timestamptz NOT NULL DEFAULT now(),
     version integer NOT NULL DEFAULT 1,
     CONSTRAINT ${table}_pkey PRIMARY KEY (edition_id, code)
   )`;

const catalogueTables = ['material', 'price_list', 'labour_rates', 'source'];

const catalogue = [
  `CREATE TABLE edition (
     id uuid CONSTRAINT edition_pkey PRIMARY KEY,
     organisation_id uuid CONSTRAINT edition_organisation_fkey REFERENCES organisation (id),
     code text NOT NULL,
     state text NOT NULL CONSTRAINT edition_state_known CHECK (state IN ('draft', 'published')),
     based_on_id uuid CONSTRAINT edition_based_on_fkey REFERENCES edition (id),
     note text NOT NULL DEFAULT '',
     content_hash text,
     created_at timestamptz NOT NULL DEFAULT now(),
     published_at timestamptz,
     version integer NOT NULL DEFAULT 1,
     CONSTRAINT edition_published_whole CHECK (state = 'draft' OR (published_at IS NOT NULL AND content_hash IS NOT NULL))
   )`,
  "CREATE UNIQUE INDEX edition_code_unique ON edition (coalesce(organisation_id, '00000000-0000-0000-0000-000000000000'::uuid), code)",
  "CREATE INDEX edition_current_idx ON edition (organisation_id, published_at DESC) WHERE state = 'published'",
  ...catalogueTables.map(catalogueTable),
  `CREATE FUNCTION kingplank_keep_published() RETURNS trigger LANGUAGE plpgsql AS $$
   DECLARE found_state text;
   BEGIN
     SELECT state INTO found_state FROM edition WHERE id = coalesce(NEW.edition_id, OLD.edition_id);
     IF found_state = 'published' THEN
       RAISE EXCEPTION 'a published edition is never changed' USING ERRCODE = '23514', CONSTRAINT = 'edition_published_kept';
     END IF;
     RETURN coalesce(NEW, OLD);
   END $$`,
  `CREATE FUNCTION kingplank_keep_edition() RETURNS trigger LANGUAGE plpgsql AS $$
   BEGIN
     IF OLD.state = 'published' THEN
       RAISE EXCEPTION 'a published edition is never changed' USING ERRCODE = '23514', CONSTRAINT = 'edition_published_kept';
     END IF;
     RETURN coalesce(NEW, OLD);
   END $$`,
  'CREATE TRIGGER edition_keep_published BEFORE UPDATE OR DELETE ON edition FOR EACH ROW EXECUTE FUNCTION kingplank_keep_edition()',
  ...catalogueTables.map(
    (table) =>
      `CREATE TRIGGER ${table}_keep_published BEFORE INSERT OR UPDATE OR DELETE ON ${table} FOR EACH ROW EXECUTE FUNCTION kingplank_keep_published()`,
  ),
];

const estimates = [
  `CREATE TABLE estimate (
     id uuid CONSTRAINT estimate_pkey PRIMARY KEY,
     organisation_id uuid NOT NULL CONSTRAINT estimate_organisation_fkey REFERENCES organisation (id),
     created_at timestamptz NOT NULL DEFAULT now(),
     created_by_key_id uuid NOT NULL CONSTRAINT estimate_key_fkey REFERENCES api_key (id),
     title text NOT NULL,
     reference text,
     root_id uuid NOT NULL CONSTRAINT estimate_root_fkey REFERENCES estimate (id),
     revision_number integer NOT NULL CONSTRAINT estimate_revision_counted CHECK (revision_number >= 0),
     revision_reason text,
     engine_version text NOT NULL,
     edition text NOT NULL,
     catalogue_hash text NOT NULL,
     input_hash text NOT NULL,
     currency text NOT NULL,
     net_amount numeric(20, 4) NOT NULL,
     tax_amount numeric(20, 4) NOT NULL,
     total_amount numeric(20, 4) NOT NULL,
     total_p10_amount numeric(20, 4) NOT NULL,
     total_p50_amount numeric(20, 4) NOT NULL,
     total_p90_amount numeric(20, 4) NOT NULL,
     labour_h double precision NOT NULL,
     verdict text NOT NULL,
     input jsonb NOT NULL,
     -- json, not jsonb: it keeps the very text, so that the document read is the document made, to the byte.
     result json NOT NULL,
     -- Every figure once, compressed by the service; read only to answer why.
     derivations bytea NOT NULL,
     CONSTRAINT estimate_revision_unique UNIQUE (root_id, revision_number),
     CONSTRAINT estimate_revision_reasoned CHECK (revision_number = 0 OR revision_reason IS NOT NULL)
   )`,
  'ALTER TABLE estimate ALTER COLUMN derivations SET STORAGE EXTERNAL',
  // The default compression takes longer than the rest of the insert; a server that has the fast one uses it.
  `DO $$ BEGIN ALTER TABLE estimate ALTER COLUMN result SET COMPRESSION lz4;
   EXCEPTION WHEN feature_not_supported THEN ALTER TABLE estimate ALTER COLUMN result SET STORAGE EXTERNAL; END $$`,
  'CREATE INDEX estimate_organisation_idx ON estimate (organisation_id, id DESC)',
];

const records = [
  `CREATE TABLE idempotency_key (
     organisation_id uuid NOT NULL CONSTRAINT idempotency_key_organisation_fkey REFERENCES organisation (id),
     operation text NOT NULL,
     key text NOT NULL CONSTRAINT idempotency_key_length CHECK (char_length(key) BETWEEN 1 AND 255),
     request_hash text NOT NULL,
     estimate_id uuid NOT NULL CONSTRAINT idempotency_key_estimate_fkey REFERENCES estimate (id),
     created_at timestamptz NOT NULL DEFAULT now(),
     CONSTRAINT idempotency_key_pkey PRIMARY KEY (organisation_id, operation, key)
   )`,
  `CREATE TABLE audit_entry (
     id uuid CONSTRAINT audit_entry_pkey PRIMARY KEY,
     organisation_id uuid CONSTRAINT audit_entry_organisation_fkey REFERENCES organisation (id),
     at timestamptz NOT NULL DEFAULT now(),
     key_id uuid,
     request_id text,
     action text NOT NULL,
     subject text NOT NULL,
     subject_code text NOT NULL,
     edition_id uuid,
     before jsonb,
     after jsonb
   )`,
  'CREATE INDEX audit_entry_subject_idx ON audit_entry (organisation_id, subject, subject_code, id DESC)',
];

const policies: readonly (readonly [string, string])[] = [
  ['organisation', 'FOR ALL USING (id = kingplank_organisation() OR kingplank_is_operator())'],
  [
    'api_key',
    `FOR ALL USING (organisation_id = kingplank_organisation() OR kingplank_is_operator()
     OR key_hash = current_setting('kingplank.key_hash', true))
     WITH CHECK (organisation_id = kingplank_organisation() OR kingplank_is_operator())`,
  ],
  ['estimate', 'FOR ALL USING (organisation_id = kingplank_organisation())'],
  ['idempotency_key', 'FOR ALL USING (organisation_id = kingplank_organisation())'],
  [
    'audit_entry',
    `FOR ALL USING (organisation_id = kingplank_organisation() OR (organisation_id IS NULL AND kingplank_is_operator()))`,
  ],
  ...['edition', ...catalogueTables].map(
    (table) =>
      [
        table,
        `FOR ALL USING (organisation_id = kingplank_organisation() OR organisation_id IS NULL)
     WITH CHECK (organisation_id = kingplank_organisation() OR (organisation_id IS NULL AND kingplank_is_operator()))`,
      ] as const,
  ),
];

const security = [
  ...policies.flatMap(([table, rule]) => [
    `ALTER TABLE ${table} ENABLE ROW LEVEL SECURITY`,
    `ALTER TABLE ${table} FORCE ROW LEVEL SECURITY`,
    `CREATE POLICY ${table}_organisation ON ${table} ${rule}`,
  ]),
  // A shared row may be read by all, and removed only by an operator; FOR ALL would let a reader delete it.
  ...['edition', ...catalogueTables].flatMap((table) => [
    `CREATE POLICY ${table}_removal ON ${table} AS RESTRICTIVE FOR DELETE USING (organisation_id = kingplank_organisation() OR kingplank_is_operator())`,
    `CREATE POLICY ${table}_change ON ${table} AS RESTRICTIVE FOR UPDATE USING (organisation_id = kingplank_organisation() OR kingplank_is_operator())`,
  ]),
];

const grants = [
  `GRANT SELECT, INSERT, UPDATE, DELETE ON ${tables.join(', ')} TO kingplank_service`,
  // What was said once stays said: estimates and the audit trail are only ever added to.
  'REVOKE UPDATE, DELETE ON estimate, audit_entry FROM kingplank_service',
  'GRANT kingplank_service TO CURRENT_USER',
];
