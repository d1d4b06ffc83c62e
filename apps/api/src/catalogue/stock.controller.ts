import { Body, Controller, Delete, Get, Param, Patch, Put } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import { CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { Answers, AnswersNothing } from '../edge/endpoint.js';
import { CountedPacksDto, PackCountDto } from './dto/stock.dto.js';
import { StockService, type StockCount, type StockList } from './stock.service.js';

const COUNTS_AT_ONCE =
  'It is in force at once, whatever edition is current, and orders made from then on keep to it. The last count wins: a till states what there is and needs no ETag.';

/** What a supplier has today, beside the editions. */
@ApiTags('Catalogue')
@Controller('v1/price-lists/:code')
@Needs('catalogue:read')
export class StockController {
  constructor(private readonly stock: StockService) {}

  @Get('stock')
  @ApiOperation({
    operationId: 'listStock',
    summary: 'What was counted of the packs of a price list',
    description:
      'Whole packs of each SKU, with the time of the count. They hold at once, whatever edition is current.',
  })
  @Answers('StockList')
  list(@CallerParam() caller: Caller, @Param('code') code: string): Promise<StockList> {
    return this.stock.list(caller, code);
  }

  @Patch('stock')
  @Needs('prices:write')
  @ApiOperation({
    operationId: 'countStock',
    summary: 'State how many packs of several SKUs there are now',
    description: COUNTS_AT_ONCE,
  })
  @Answers('StockList')
  count(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Body() { items }: CountedPacksDto,
  ): Promise<StockList> {
    return this.stock.put(caller, code, items);
  }

  @Get('packs/:sku/stock')
  @ApiOperation({
    operationId: 'getStock',
    summary: 'How many packs of a SKU were counted, and when',
    description: 'The last count and its time; 404 when nobody counted.',
  })
  @Answers('StockCount')
  one(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Param('sku') sku: string,
  ): Promise<StockCount> {
    return this.stock.get(caller, code, sku);
  }

  @Put('packs/:sku/stock')
  @Needs('prices:write')
  @ApiOperation({
    operationId: 'setStock',
    summary: 'State how many packs of a SKU there are now',
    description: COUNTS_AT_ONCE,
  })
  @Answers('StockCount')
  async set(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Param('sku') sku: string,
    @Body() { packs }: PackCountDto,
  ): Promise<StockCount> {
    await this.stock.put(caller, code, [{ sku, packs }]);
    return this.stock.get(caller, code, sku);
  }

  @Delete('packs/:sku/stock')
  @AnswersNothing()
  @Needs('prices:write')
  @ApiOperation({
    operationId: 'forgetStock',
    summary: 'Forget a count: the stock that the edition states counts again',
    description: 'For a pack that is no longer counted; its price and all else about it stay.',
  })
  remove(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Param('sku') sku: string,
  ): Promise<void> {
    return this.stock.remove(caller, code, sku);
  }
}
