import { Module } from '@nestjs/common';
import { RunningKeys } from '../idempotency/running-keys.js';
import { Engine } from './engine.js';
import { ReportModule } from '../report/report.module.js';
import { DrawingsController } from './drawings.controller.js';
import { EstimatesController } from './estimates.controller.js';
import { EstimatesService } from './estimates.service.js';
import { EstimateForms } from './estimate-forms.js';
import { RevisionsController } from './revisions.controller.js';

@Module({
  imports: [ReportModule],
  controllers: [EstimatesController, RevisionsController, DrawingsController],
  providers: [EstimatesService, Engine, EstimateForms, RunningKeys],
  exports: [Engine],
})
export class EstimatesModule {}
