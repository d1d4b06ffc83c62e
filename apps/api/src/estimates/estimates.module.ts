import { Module } from '@nestjs/common';
import { RunningKeys } from '../idempotency/running-keys.js';
import { Engine } from './engine.js';
import { EstimatesController } from './estimates.controller.js';
import { EstimatesService } from './estimates.service.js';
import { EstimateForms } from './forms.js';

@Module({
  controllers: [EstimatesController],
  providers: [EstimatesService, Engine, EstimateForms, RunningKeys],
})
export class EstimatesModule {}
