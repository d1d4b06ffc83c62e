import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * What a record says of people can be taken out of estimates, which are otherwise never changed: the service itself still
 * may not, the function does this and nothing else, and only to rows of the organisation that asks.
 */
export class ErasedParties1765065600000 implements MigrationInterface {
  readonly name = 'ErasedParties1765065600000';

  async up(runner: QueryRunner): Promise<void> {
    for (const statement of [
      `CREATE FUNCTION kingplank_erase_parties(root uuid) RETURNS void LANGUAGE sql SECURITY DEFINER
       SET search_path FROM CURRENT AS $$
         UPDATE estimate SET input = (input - 'parties' - 'vessel') #- '{occurrence,insurerReference}'
          WHERE root_id = root AND organisation_id = kingplank_organisation()
       $$`,
      'REVOKE ALL ON FUNCTION kingplank_erase_parties(uuid) FROM PUBLIC',
      'GRANT EXECUTE ON FUNCTION kingplank_erase_parties(uuid) TO kingplank_service',
    ])
      await runner.query(statement);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DROP FUNCTION kingplank_erase_parties(uuid)');
  }
}
