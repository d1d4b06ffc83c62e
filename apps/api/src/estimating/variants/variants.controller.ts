import { Body, Controller, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import type { VariantComparison } from '#lib/costing';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { HeavyWork } from '../heavy-work.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { VariantsRequestDto } from './variants.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class VariantsController {
  constructor(
    private readonly catalogue: CurrentCatalogue,
    private readonly heavy: HeavyWork,
  ) {}

  @Post('variants')
  @RoomEndpoint({
    operationId: 'compareVariants',
    summary: 'Several ways of doing one job, on equal terms',
    description:
      'Each variant is estimated in full with one seed and one edition, then weighed on cost, P80, hours, days, mass added, utilisation and spread. A variant that another beats in everything is marked; one that a rule refuses is listed with the rule.',
    result: 'VariantComparison',
  })
  async compare(
    @CallerParam() caller: Caller,
    @Body() request: VariantsRequestDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<VariantComparison> {
    return this.heavy.variants(request, await this.catalogue.of(caller.organisationId), response);
  }
}
