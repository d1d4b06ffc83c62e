import { Global, Module } from '@nestjs/common';
import { CurrentCatalogue } from './current-catalogue.js';
import { EditionsController } from './editions.controller.js';
import { EditionsService } from './editions.service.js';
import { itemControllers } from './items.controller.js';
import { ItemsService } from './items.service.js';
import { PackController } from './pack.controller.js';
import { PacksController } from './packs.controller.js';
import { PriceChangesController } from './price-changes.controller.js';
import { SheetController } from './sheet.controller.js';
import { StockController } from './stock.controller.js';
import { StockService } from './stock.service.js';

@Global()
@Module({
  controllers: [
    EditionsController,
    PacksController,
    PackController,
    PriceChangesController,
    SheetController,
    StockController,
    ...itemControllers,
  ],
  providers: [CurrentCatalogue, EditionsService, ItemsService, StockService],
  exports: [CurrentCatalogue],
})
export class CatalogueModule {}
