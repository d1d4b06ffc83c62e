import { Inject, Injectable } from '@nestjs/common';
import { forgetKeysOlderThan } from '../idempotency/old-keys.js';
import { OperationWorker } from '../operations/operation-worker.js';
import { configurationToken, type Configuration } from '../settings/configuration.js';

/** Idempotency-Keys stand for a time only. */
@Injectable()
export class OldKeys {
  constructor(worker: OperationWorker, @Inject(configurationToken) { idempotencyKeyDays }: Configuration) {
    worker.everyHour((tx) => forgetKeysOlderThan(idempotencyKeyDays, tx));
  }
}
