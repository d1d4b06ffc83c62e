import { Inject, Injectable } from '@nestjs/common';
import { forgetOldSecrets } from '../access/old-secrets.js';
import { forgetOldEvents } from '../events/old-events.js';
import { forgetKeysOlderThan } from '../idempotency/old-keys.js';
import { OperationWorker } from '../operations/operation-worker.js';
import { configurationToken, type Configuration } from '../settings/configuration.js';

/** Idempotency-Keys stand for a time only, and so do the secrets of pages and what is told. */
@Injectable()
export class OldKeys {
  constructor(worker: OperationWorker, @Inject(configurationToken) { idempotencyKeyDays }: Configuration) {
    worker.everyHour((tx) => forgetKeysOlderThan(idempotencyKeyDays, tx));
    worker.everyHour(forgetOldSecrets);
    worker.everyHour(forgetOldEvents);
  }
}
