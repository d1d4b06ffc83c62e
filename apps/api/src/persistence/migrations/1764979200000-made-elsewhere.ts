import type { MigrationInterface, QueryRunner } from 'typeorm';

const whole = (answer: string): string =>
  `ALTER TABLE operation ADD CONSTRAINT operation_done_whole
     CHECK (status <> 'done' OR (finished_at IS NOT NULL AND media_type IS NOT NULL AND (${answer})))`;
const KEPT_HERE = 'headers IS NOT NULL AND content IS NOT NULL';

/** An operation may make something that has an address of its own, instead of a document that is kept beside it. */
export class MadeElsewhere1764979200000 implements MigrationInterface {
  readonly name = 'MadeElsewhere1764979200000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('ALTER TABLE operation ADD COLUMN result_href text');
    await runner.query('ALTER TABLE operation DROP CONSTRAINT operation_done_whole');
    await runner.query(whole(`result_href IS NOT NULL OR (${KEPT_HERE})`));
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('DELETE FROM operation WHERE result_href IS NOT NULL');
    await runner.query('ALTER TABLE operation DROP CONSTRAINT operation_done_whole');
    await runner.query(whole(KEPT_HERE));
    await runner.query('ALTER TABLE operation DROP COLUMN result_href');
  }
}
