import type { Transaction } from '../persistence/database.js';

/** How often a caller asked in one minute. */
export interface RequestCount {
  readonly caller: string;
  readonly minute: number;
  readonly used: number;
}

/** Minutes that are over are of no use after this many more. */
const KEPT_MINUTES = 2;

/** What all copies of the service counted together. */
export class RequestCountRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): RequestCountRepository {
    return new RequestCountRepository(tx);
  }

  /** Adds what this copy counted since it last told; returns what all copies counted. */
  async add(counts: readonly RequestCount[]): Promise<readonly RequestCount[]> {
    // In one order everywhere, so that two copies never wait for each other.
    const sorted = [...counts].sort((a, b) => (a.caller < b.caller ? -1 : 1));
    return this.tx.query<readonly RequestCount[]>(
      `INSERT INTO request_count (caller, minute, used)
       SELECT * FROM unnest($1::text[], $2::integer[], $3::integer[])
       ON CONFLICT (caller, minute) DO UPDATE SET used = request_count.used + excluded.used
       RETURNING caller, minute, used`,
      [
        sorted.map(({ caller }) => caller),
        sorted.map(({ minute }) => minute),
        sorted.map(({ used }) => used),
      ],
    );
  }

  async forgetBefore(minute: number): Promise<void> {
    await this.tx.query('DELETE FROM request_count WHERE minute < $1', [minute - KEPT_MINUTES]);
  }
}
