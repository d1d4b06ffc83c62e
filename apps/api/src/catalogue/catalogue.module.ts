import { Global, Module } from '@nestjs/common';
import { CurrentCatalogue } from './current-catalogue.js';

@Global()
@Module({ providers: [CurrentCatalogue], exports: [CurrentCatalogue] })
export class CatalogueModule {}
