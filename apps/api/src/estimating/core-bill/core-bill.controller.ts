import { Body, Controller, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import type { CoreBill } from '#lib/coring';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { HeavyWork } from '../heavy-work.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { CoreBillRequestDto } from './core-bill.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class CoreBillController {
  constructor(
    private readonly catalogue: CurrentCatalogue,
    private readonly heavy: HeavyWork,
  ) {}

  @Post('core-bill')
  @RoomEndpoint({
    operationId: 'billCore',
    summary: 'Which core fills the cavity, in which labelled pieces, from how many sheets',
    description:
      'Stock thicknesses that end flush or just below; pieces that a person can bed and that slide under the lip, by bedding order; sheets cut for the least money, offcuts worth keeping, and waste by cause.',
    result: 'CoreBill',
  })
  async bill(
    @CallerParam() caller: Caller,
    @Body() request: CoreBillRequestDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<CoreBill> {
    return this.heavy.coreBill(request, await this.catalogue.of(caller.organisationId), response);
  }
}
