import type { Transaction } from '../persistence/database.js';

/** An Idempotency-Key stands for its answer for this many days; afterwards it may be used for something else. */
export const forgetKeysOlderThan = async (days: number, tx: Transaction): Promise<void> => {
  await tx.query('DELETE FROM idempotency_key WHERE created_at < now() - make_interval(days => $1)', [days]);
};
