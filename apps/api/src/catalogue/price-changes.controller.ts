import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/access.decorators.js';
import { Answers, ChangesVersion, Refuses } from '../edge/endpoint.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { answer } from '../edge/problems.js';
import { PriceChangeDto } from './dto/prices.dto.js';
import { DraftQuery } from './items.controller.js';
import { ItemsService } from './items.service.js';
import { priceListOf } from './catalogue-document.js';
import { changedPacks, choiceOf, pricesChanged, type PriceChange } from './price-change.js';
import { Shelved, type ShelvedRequest } from './shelf-request.js';

/** The prices of a list raised or lowered by a percentage. */
@ApiTags('Catalogue')
@Controller('v1/price-lists/:code/price-changes')
@Needs('prices:write')
export class PriceChangesController {
  constructor(@Inject(ItemsService) private readonly items: ItemsService) {}

  @Post()
  @HttpCode(200)
  @DraftQuery()
  @ApiOperation({
    operationId: 'changePrices',
    summary: 'Raise or lower prices of a list of a draft by a percentage',
    description:
      'Changes all packs of the list, or those of the suppliers, materials or SKUs named. Each new price is rounded once, to the step named; the answer says of each pack what it cost before and costs now.',
  })
  @Answers('PriceChange', { headers: ['ETag'] })
  @ChangesVersion()
  @Refuses('conflict')
  async change(
    @Shelved('price_list') shelf: ShelvedRequest,
    @Param('code') code: string,
    @Body() asked: PriceChangeDto,
  ): Promise<PriceChange> {
    const { before, after } = await this.items.change(
      shelf,
      code,
      (body) => {
        const list = priceListOf(body);
        return { ...list, packs: answer(pricesChanged(list, asked)) };
      },
      (version) => {
        refuseUnlessMatch(shelf.request, version);
      },
    );
    shelf.request.res?.setHeader('ETag', tagOf(after.version));
    const { currency, packs } = priceListOf(before.body);
    return {
      priceList: code,
      edition: shelf.edition ?? '',
      currency,
      percent: asked.percent,
      chosenCount: packs.filter(choiceOf(asked)).length,
      changed: changedPacks(packs, priceListOf(after.body).packs),
    };
  }
}
