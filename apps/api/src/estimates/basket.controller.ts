import { Body, Controller, Get, HttpCode, Param, Post, Query, Req } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { basketCsv } from '#lib/costing';
import { AlsoFor, CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { AnswersIn } from '../edge/endpoint.js';
import { CSV_TYPE, JSON_TYPE, Produces, XML_TYPE } from '../edge/media.js';
import { shownJson, ShowsUnits, unitsOf } from '../edge/units.js';
import { StoresNothing } from '../idempotency/remembers.js';
import { EstimateBasketService, type EstimateBasket } from './basket.service.js';
import { BasketChoicesDto, OrderQueryDto } from './dto/estimates.dto.js';

interface Sending {
  readonly id: string;
  readonly supplier: string | undefined;
  readonly request: Request;
  /** Ids of the estimates, when an order is made. */
  readonly orderFor?: readonly string[];
}

@ApiTags('Estimates')
@Controller('v1/estimates/:id/basket')
@Needs('orders:read')
@AlsoFor('holder')
export class BasketController {
  constructor(private readonly baskets: EstimateBasketService) {}

  @Get()
  @Produces(JSON_TYPE, CSV_TYPE, XML_TYPE)
  @ShowsUnits()
  @ApiOperation({
    operationId: 'getEstimateBasket',
    summary: 'The cheapest whole packs for an estimate',
    description:
      'By `Accept`: JSON, CSV, or a UBL 2.1 Order to one supplier. Under the choices that most people make; a POST to the same address takes others.',
  })
  @AnswersIn('EstimateBasket', [CSV_TYPE, XML_TYPE])
  async basket(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Query() { supplier, pricedAt }: OrderQueryDto,
    @Req() request: Request,
  ): Promise<void> {
    const basket = await this.baskets.basket(caller, id, pricedAt === undefined ? {} : { pricedAt });
    await this.send(caller, basket, { id, supplier, request });
  }

  @Post()
  @StoresNothing()
  @HttpCode(200)
  @Produces(JSON_TYPE, CSV_TYPE, XML_TYPE)
  @ShowsUnits()
  @ApiOperation({
    operationId: 'fillEstimateBasket',
    summary: 'The cheapest whole packs for one estimate or several, under choices',
    description:
      'Takes what is on hand, what else would do, other estimates to buy for and the edition whose prices count. By `Accept`: JSON, CSV, or a UBL 2.1 Order to one supplier, which is told as the event `order.made`. The basket itself is not stored.',
  })
  @AnswersIn('EstimateBasket', [CSV_TYPE, XML_TYPE])
  async fill(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Body() { supplier, ...choices }: BasketChoicesDto,
    @Req() request: Request,
  ): Promise<void> {
    const basket = await this.baskets.basket(caller, id, choices);
    const estimateIds = [id, ...(choices.together ?? [])];
    await this.send(caller, basket, { id, supplier, request, orderFor: estimateIds });
  }

  /** An order that is made, and not only looked at, is told before it is sent. */
  private async send(
    caller: Caller,
    basket: EstimateBasket,
    { id, supplier, request, orderFor }: Sending,
  ): Promise<void> {
    const response = request.res;
    if (response === undefined) return;
    const type = String(response.locals.mediaType);
    if (type === XML_TYPE) {
      const issueDate = new Date().toISOString().slice(0, 10);
      const order = await this.baskets.ublOrder(caller, basket, { id, supplier, issueDate });
      if (orderFor !== undefined)
        await this.baskets.tellOrder(caller, {
          estimateIds: orderFor,
          pricedAt: basket.pricedAt,
          supplier: order.supplier,
        });
      response.type(XML_TYPE).send(order.xml);
    } else if (type === CSV_TYPE) response.type(CSV_TYPE).send(basketCsv(basket));
    else response.type(JSON_TYPE).send(shownJson(unitsOf(request), basket));
  }
}
