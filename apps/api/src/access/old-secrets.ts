import type { Transaction } from '../persistence/database.js';
import { SecretsRepository } from './secrets.repository.js';

/** Secrets that opened their estimate until yesterday open nothing now. */
export const forgetOldSecrets = (tx: Transaction): Promise<void> => SecretsRepository.in(tx).forgetOld();
