import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { basketFrom, type Basket } from '#lib/costing';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { answer } from '../../edge/problems.js';
import { BasketRequestDto } from './basket.dto.js';
import { Workbench } from '../../workbench/workbench.js';
import { basketJob } from './basket.job.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class BasketController {
  constructor(
    private readonly catalogue: CurrentCatalogue,
    private readonly workbench: Workbench,
  ) {}

  @Post('basket')
  @RoomEndpoint({
    operationId: 'fillBasket',
    summary: 'The cheapest whole packs that cover every need, proven, with what is left over',
    description:
      'Takes needs and the packs on offer. Chooses whole packs by an integer programme over price breaks, suppliers, delivery, minimum orders, hazard and oversize rules, with hardener for all the resin bought. What cannot be had is named; a second best of another kind stands beside it.',
    result: 'Basket',
  })
  async basket(
    @CallerParam() { organisationId }: Caller,
    @Body() request: BasketRequestDto,
  ): Promise<Basket> {
    const current = await this.catalogue.of(organisationId);
    const { catalogue } = await this.catalogue.stocked(organisationId, current, request.priceList);
    const order = answer(basketFrom(request, catalogue));
    return answer(await this.workbench.do(basketJob, order, { organisationId }));
  }
}
