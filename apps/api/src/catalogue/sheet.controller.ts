import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/access.decorators.js';
import { Answers, ChangesVersion, Refuses } from '../edge/endpoint.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { priceListOf } from './catalogue-document.js';
import { SupplierSheetDto } from './dto/sheet.dto.js';
import { DraftQuery } from './items.controller.js';
import { ItemsService } from './items.service.js';
import { Shelved, type ShelvedRequest } from './shelf-request.js';
import { sheetTaken } from './supplier-sheet.js';

/** What a supplier's sheet did to a price list of a draft. */
export interface TakenSheet {
  /** Code of the price list. */
  readonly priceList: string;
  /** Code of the draft. */
  readonly edition: string;
  /** SKUs of packs that are otherwise now. */
  readonly changed: readonly string[];
  /** Packs that the sheet names and that stay as they were. */
  readonly sameCount: number;
  /** SKUs of rows that are not in the list and were left out, as asked. */
  readonly leftOut: readonly string[];
}

/** Suppliers' own sheets, whose columns are named by whoever sends them. */
@ApiTags('Catalogue')
@Controller('v1/price-lists/:code/sheets')
@Needs('prices:write')
export class SheetController {
  constructor(@Inject(ItemsService) private readonly items: ItemsService) {}

  @Post()
  @HttpCode(200)
  @DraftQuery()
  @ApiOperation({
    operationId: 'takeSheet',
    summary: "Take a supplier's sheet into a price list of a draft, by what its columns mean",
    description:
      'Takes the sheet as CSV text with what each of its columns means. Packs are matched by their SKU and changed in what the columns say of them, others stay: all of the sheet, or nothing and every fault with its row and column.',
  })
  @Answers('TakenSheet', { headers: ['ETag'] })
  @ChangesVersion()
  @Refuses('conflict')
  async take(
    @Shelved('price_list') shelf: ShelvedRequest,
    @Param('code') code: string,
    @Body() sheet: SupplierSheetDto,
  ): Promise<TakenSheet> {
    let leftOut: readonly string[] = [];
    let named = 0;
    const { before, after } = await this.items.change(
      shelf,
      code,
      (body) => {
        const list = priceListOf(body);
        const outcome = sheetTaken(list, sheet);
        ({ leftOut, namedCount: named } = outcome);
        return { ...list, packs: outcome.packs };
      },
      (version) => {
        refuseUnlessMatch(shelf.request, version);
      },
    );
    shelf.request.res?.setHeader('ETag', tagOf(after.version));
    const earlier = new Map(priceListOf(before.body).packs.map((pack) => [pack.sku, JSON.stringify(pack)]));
    const changed = priceListOf(after.body).packs.filter(
      (pack) => earlier.get(pack.sku) !== JSON.stringify(pack),
    );
    return {
      priceList: code,
      edition: shelf.edition ?? '',
      changed: changed.map(({ sku }) => sku),
      sameCount: named - changed.length,
      leftOut,
    };
  }
}
