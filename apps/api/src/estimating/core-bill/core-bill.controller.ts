import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { CoreBill } from '#lib/coring';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { answer } from '../../edge/problems.js';
import { Workbench } from '../../workbench/workbench.js';
import { coreBillJob } from './core-bill.job.js';
import { stocked } from '../stocked.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { CoreBillRequestDto } from './core-bill.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class CoreBillController {
  constructor(
    private readonly catalogue: CurrentCatalogue,
    private readonly workbench: Workbench,
  ) {}

  @Post('core-bill')
  @RoomEndpoint({
    operationId: 'billCore',
    summary: 'Which core fills the cavity, in which labelled pieces, from how many sheets',
    description:
      'Takes openings, the cavity and a core material. Answers stock thicknesses that end flush or just below; pieces that a person can bed and that slide under the lip, by bedding order; sheets cut for the least money, offcuts worth keeping, and waste by cause.',
    result: 'CoreBill',
  })
  async bill(
    @CallerParam() { organisationId }: Caller,
    @Body() request: CoreBillRequestDto,
  ): Promise<CoreBill> {
    const catalogue = await this.catalogue.of(organisationId);
    return answer(await this.workbench.do(coreBillJob, request, { organisationId }, stocked(catalogue)));
  }
}
