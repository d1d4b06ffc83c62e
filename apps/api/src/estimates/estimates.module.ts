import { Module } from '@nestjs/common';
import { OldKeys } from './old-keys.js';
import { EstimatingModule } from '../estimating/estimating.module.js';
import { BasketController } from './basket.controller.js';
import { EstimateBasketService } from './basket.service.js';
import { EstimateCalendarController } from './calendar.controller.js';
import { EditionTrialController } from './edition-trial.controller.js';
import { Engine } from './engine.js';
import { OperationsModule } from '../operations/operations.module.js';
import { DocumentsModule } from '../documents/documents.module.js';
import { DrawingsController } from './drawings.controller.js';
import { EstimatesController } from './estimates.controller.js';
import { EstimatesService } from './estimates.service.js';
import { EstimateDocuments } from './estimate-documents.js';
import { EstimateOrders } from './estimate-orders.js';
import { EstimateForms } from './estimate-forms.js';
import { PhotographsController } from './photographs.controller.js';
import { PhotographsService } from './photographs.service.js';
import { PartiesController } from './parties.controller.js';
import { SharesController } from './shares.controller.js';
import { RevisionsController } from './revisions.controller.js';

@Module({
  imports: [DocumentsModule, EstimatingModule, OperationsModule],
  controllers: [
    EstimatesController,
    RevisionsController,
    DrawingsController,
    EstimateCalendarController,
    BasketController,
    SharesController,
    PhotographsController,
    PartiesController,
    EditionTrialController,
  ],
  providers: [
    EstimatesService,
    Engine,
    EstimateForms,
    EstimateOrders,
    EstimateDocuments,
    EstimateBasketService,
    PhotographsService,
    OldKeys,
  ],
  exports: [Engine],
})
export class EstimatesModule {}
