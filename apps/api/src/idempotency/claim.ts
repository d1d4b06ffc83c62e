import { AsyncLocalStorage } from 'node:async_hooks';
import type { Transaction } from '../persistence/database.js';
import { IdempotencyRepository } from './idempotency.repository.js';
import type { Claim } from './key-use.js';

/** Another request, in this copy of the service or another, did it first. */
export class KeyTaken extends Error {
  override readonly name = 'KeyTaken';
}

const running = new AsyncLocalStorage<Claim>();

/** Work whose first deed is written together with the key it was asked under. */
export const underClaim = <T>(claim: Claim, work: () => Promise<T>): Promise<T> => running.run(claim, work);

/**
 * Writes the key in the transaction of the deed, so that neither is there without the other.
 *
 * @throws {KeyTaken} which undoes the deed
 */
export async function claimFor(tx: Transaction, subject: string, code: string): Promise<void> {
  const claim = running.getStore();
  if (claim === undefined) return;
  if (!(await IdempotencyRepository.in(tx).claim(claim, subject, code))) throw new KeyTaken();
}
