import { Global, Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { AccessGuard } from './access.guard.js';
import { AccessService } from './access.service.js';
import { KeyRing } from './key-ring.js';
import { SharedLimit } from './shared-limit.js';
import { KeysController } from './keys.controller.js';
import { OrganisationsController } from './organisations.controller.js';

@Global()
@Module({
  controllers: [OrganisationsController, KeysController],
  providers: [KeyRing, SharedLimit, AccessService, { provide: APP_GUARD, useClass: AccessGuard }],
  exports: [KeyRing],
})
export class AccessModule {}
