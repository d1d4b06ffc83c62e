import { Global, Module } from '@nestjs/common';
import { CurrentCatalogue } from './current-catalogue.js';
import { EditionsController } from './editions.controller.js';
import { EditionsService } from './editions.service.js';
import { itemControllers } from './items.controller.js';
import { ItemsService } from './items.service.js';
import { PacksController } from './packs.controller.js';

@Global()
@Module({
  controllers: [EditionsController, PacksController, ...itemControllers],
  providers: [CurrentCatalogue, EditionsService, ItemsService],
  exports: [CurrentCatalogue],
})
export class CatalogueModule {}
