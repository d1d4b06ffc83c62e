import { Global, Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { AccessGuard } from './access.guard.js';
import { KeyRing } from './key-ring.js';

@Global()
@Module({
  providers: [KeyRing, { provide: APP_GUARD, useClass: AccessGuard }],
  exports: [KeyRing],
})
export class AccessModule {}
