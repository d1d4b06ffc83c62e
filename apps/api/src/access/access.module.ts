import { Global, Module } from '@nestjs/common';
import { APP_GUARD, APP_INTERCEPTOR } from '@nestjs/core';
import { KeptAnswers } from '../idempotency/kept-answers.js';
import { RunningKeys } from '../idempotency/running-keys.js';
import { LimitedAnswers } from '../edge/limited-answers.js';
import { AccessGuard } from './access.guard.js';
import { AccessService } from './access.service.js';
import { KeyRing } from './key-ring.js';
import { SharedLimit } from './shared-limit.js';
import { KeysController } from './keys.controller.js';
import { ClientSessionsController, PublishableKeysController } from './pages.controller.js';
import { AuditController } from './audit.controller.js';
import { OnceInterceptor } from './once.interceptor.js';
import { OrganisationsController } from './organisations.controller.js';

@Global()
@Module({
  controllers: [
    OrganisationsController,
    KeysController,
    PublishableKeysController,
    ClientSessionsController,
    AuditController,
  ],
  providers: [
    KeyRing,
    SharedLimit,
    AccessService,
    RunningKeys,
    KeptAnswers,
    { provide: APP_GUARD, useClass: AccessGuard },
    { provide: APP_INTERCEPTOR, useClass: OnceInterceptor },
    { provide: APP_INTERCEPTOR, useClass: LimitedAnswers },
  ],
  exports: [KeyRing, RunningKeys],
})
export class AccessModule {}
