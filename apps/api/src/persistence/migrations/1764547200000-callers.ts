import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * Organisations run themselves, and pages may ask.
 *
 * The role `operator` becomes two: one that makes organisations, and one that runs its own. Keys have scopes, end by
 * themselves, know when they were last used, and are renewed. Publishable keys stand in pages and make estimates; a
 * secret opens one estimate and its revisions; a chandler sees what was shared with it. Row security holds such callers
 * to what they may see (`kingplank.confined`), whatever a query asks for.
 */
export class Callers1764547200000 implements MigrationInterface {
  readonly name = 'Callers1764547200000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of up) await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const statement of down) await runner.query(statement);
  }
}

const up = [
  'ALTER TABLE api_key DROP CONSTRAINT api_key_roles_some',
  `UPDATE api_key SET roles = ARRAY(SELECT DISTINCT unnest(array_remove(roles, 'operator') ||
   ARRAY['surveyor', 'chandler', 'auditor', 'catalogue-admin', 'organisation-admin', 'platform-operator']))
   WHERE 'operator' = ANY(roles)`,
  "ALTER TABLE api_key ADD COLUMN kind text NOT NULL DEFAULT 'secret'",
  "ALTER TABLE api_key ADD COLUMN scopes text[] NOT NULL DEFAULT '{}'",
  'ALTER TABLE api_key ADD COLUMN expires_at timestamptz',
  'ALTER TABLE api_key ADD COLUMN last_used_at timestamptz',
  'ALTER TABLE api_key ADD COLUMN renews_id uuid CONSTRAINT api_key_renews_fkey REFERENCES api_key (id)',
  // Only of publishable keys, whose text stands in pages and is no secret.
  'ALTER TABLE api_key ADD COLUMN shown_text text',
  'ALTER TABLE api_key ADD COLUMN page jsonb',
  `ALTER TABLE api_key ADD CONSTRAINT api_key_kind_whole CHECK (
     (kind = 'secret' AND cardinality(roles) > 0 AND shown_text IS NULL AND page IS NULL) OR
     (kind = 'publishable' AND cardinality(roles) = 0 AND shown_text IS NOT NULL AND page IS NOT NULL))`,
  // An integrator could do what surveyor and chandler can; its scopes say so from now on.
  `UPDATE api_key SET scopes = ARRAY['calculate', 'estimates:read', 'estimates:write', 'orders:read', 'catalogue:read', 'letterhead:read']
   WHERE 'integrator' = ANY(roles)`,
  `CREATE TABLE estimate_secret (
     hash text CONSTRAINT estimate_secret_pkey PRIMARY KEY,
     organisation_id uuid NOT NULL CONSTRAINT estimate_secret_organisation_fkey REFERENCES organisation (id),
     key_id uuid NOT NULL CONSTRAINT estimate_secret_key_fkey REFERENCES api_key (id),
     root_id uuid,
     reference text,
     revisions_left integer NOT NULL CONSTRAINT estimate_secret_revisions_counted CHECK (revisions_left >= 0),
     created_at timestamptz NOT NULL DEFAULT now(),
     expires_at timestamptz NOT NULL
   )`,
  'CREATE INDEX estimate_secret_age_idx ON estimate_secret (expires_at)',
  `CREATE TABLE estimate_share (
     root_id uuid NOT NULL CONSTRAINT estimate_share_estimate_fkey REFERENCES estimate (id),
     key_id uuid NOT NULL CONSTRAINT estimate_share_key_fkey REFERENCES api_key (id),
     organisation_id uuid NOT NULL CONSTRAINT estimate_share_organisation_fkey REFERENCES organisation (id),
     created_at timestamptz NOT NULL DEFAULT now(),
     CONSTRAINT estimate_share_pkey PRIMARY KEY (root_id, key_id)
   )`,
  `CREATE TABLE page_use (
     key_id uuid NOT NULL CONSTRAINT page_use_key_fkey REFERENCES api_key (id),
     organisation_id uuid NOT NULL CONSTRAINT page_use_organisation_fkey REFERENCES organisation (id),
     day date NOT NULL,
     made integer NOT NULL,
     CONSTRAINT page_use_pkey PRIMARY KEY (key_id, day)
   )`,
  ...['estimate_secret', 'estimate_share', 'page_use'].flatMap((table) => [
    `ALTER TABLE ${table} ENABLE ROW LEVEL SECURITY`,
    `ALTER TABLE ${table} FORCE ROW LEVEL SECURITY`,
    `CREATE POLICY ${table}_organisation ON ${table} FOR ALL USING (organisation_id = kingplank_organisation())`,
    `GRANT SELECT, INSERT, UPDATE, DELETE ON ${table} TO kingplank_service`,
  ]),
  `CREATE POLICY estimate_secret_shown ON estimate_secret FOR SELECT
   USING (hash = current_setting('kingplank.key_hash', true))`,
  'CREATE POLICY estimate_secret_old ON estimate_secret FOR SELECT USING (kingplank_is_worker())',
  'CREATE POLICY estimate_secret_removal ON estimate_secret FOR DELETE USING (kingplank_is_worker())',
  `CREATE FUNCTION kingplank_may_see(root uuid) RETURNS boolean LANGUAGE sql STABLE AS $$
     SELECT coalesce(current_setting('kingplank.confined', true), '') = ''
       OR EXISTS (SELECT 1 FROM estimate_secret s
                  WHERE 'secret:' || s.hash = current_setting('kingplank.confined', true)
                    AND s.root_id = root AND s.expires_at > now())
       OR EXISTS (SELECT 1 FROM estimate_share s
                  WHERE 'key:' || s.key_id::text = current_setting('kingplank.confined', true) AND s.root_id = root) $$`,
  'CREATE POLICY estimate_confined ON estimate AS RESTRICTIVE FOR ALL USING (kingplank_may_see(root_id))',
  'CREATE INDEX audit_entry_organisation_idx ON audit_entry (organisation_id, id DESC)',
];

const down = [
  'DROP INDEX audit_entry_organisation_idx',
  'DROP POLICY estimate_confined ON estimate',
  'DROP FUNCTION kingplank_may_see(uuid)',
  ...['page_use', 'estimate_share', 'estimate_secret'].map((table) => `DROP TABLE ${table}`),
  // Estimates that pages made keep the key that made them; as a key it opens nothing.
  "UPDATE api_key SET revoked_at = coalesce(revoked_at, now()), roles = ARRAY['surveyor'] WHERE kind = 'publishable'",
  'ALTER TABLE api_key DROP CONSTRAINT api_key_kind_whole',
  ...['page', 'shown_text', 'renews_id', 'last_used_at', 'expires_at', 'scopes', 'kind'].map(
    (column) => `ALTER TABLE api_key DROP COLUMN ${column}`,
  ),
  `UPDATE api_key SET roles = array_append(array_remove(roles, 'platform-operator'), 'operator')
   WHERE 'platform-operator' = ANY(roles)`,
  `UPDATE api_key SET roles = array_remove(array_remove(roles, 'organisation-admin'), 'auditor')`,
  "UPDATE api_key SET roles = ARRAY['surveyor'], revoked_at = coalesce(revoked_at, now()) WHERE cardinality(roles) = 0",
  'ALTER TABLE api_key ADD CONSTRAINT api_key_roles_some CHECK (cardinality(roles) > 0)',
];
