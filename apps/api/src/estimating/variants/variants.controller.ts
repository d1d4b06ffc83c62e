import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { VariantComparison } from '#lib/costing';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { answer } from '../../edge/problems.js';
import { Workbench } from '../../workbench/workbench.js';
import { variantsJob } from './variants.job.js';
import { stocked } from '../stocked.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { VariantsRequestDto } from './variants.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class VariantsController {
  constructor(
    private readonly catalogue: CurrentCatalogue,
    private readonly workbench: Workbench,
  ) {}

  @Post('variants')
  @RoomEndpoint({
    operationId: 'compareVariants',
    summary: 'Several ways of doing one job, on equal terms',
    description:
      'Takes a defect record and up to 12 changes to it. Each variant is estimated in full with one seed and one edition, then weighed on cost, P80, hours, days, mass added, utilisation and spread. A variant that another beats in everything is marked; one that a rule refuses is listed with the rule.',
    result: 'VariantComparison',
  })
  async compare(
    @CallerParam() { organisationId }: Caller,
    @Body() request: VariantsRequestDto,
  ): Promise<VariantComparison> {
    const catalogue = await this.catalogue.of(organisationId);
    return answer(await this.workbench.do(variantsJob, request, { organisationId }, stocked(catalogue)));
  }
}
