import { Module } from '@nestjs/common';
import { OperationsController } from './operations.controller.js';
import { OperationWorker } from './operation-worker.js';
import { OperationsService } from './operations.service.js';

/** Work that outlasts its request. Whoever has such work registers a handler with the worker; this module knows none of them. */
@Module({
  controllers: [OperationsController],
  providers: [OperationsService, OperationWorker],
  exports: [OperationsService, OperationWorker],
})
export class OperationsModule {}
