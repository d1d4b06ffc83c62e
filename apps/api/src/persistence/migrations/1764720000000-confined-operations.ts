import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Who sees only some estimates sees only the operations about those, whoever asked for them. */
export class ConfinedOperations1764720000000 implements MigrationInterface {
  readonly name = 'ConfinedOperations1764720000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(
      `CREATE POLICY operation_confined ON operation AS RESTRICTIVE FOR ALL USING (
         coalesce(current_setting('kingplank.confined', true), '') = ''
         OR EXISTS (SELECT 1 FROM estimate e WHERE e.id::text = operation.task->>'estimateId'))`,
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DROP POLICY operation_confined ON operation');
  }
}
