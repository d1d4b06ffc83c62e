import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { CuttingPlan } from '#lib/nesting';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { answer } from '../../edge/problems.js';
import { Workbench } from '../../workbench/workbench.js';
import { cuttingPlanJob } from './cutting-plan.job.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { CuttingPlanRequestDto } from './cutting-plan.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class CuttingPlanController {
  constructor(private readonly workbench: Workbench) {}

  @Post('cutting-plan')
  @RoomEndpoint({
    operationId: 'planCutting',
    summary: 'Any pieces from any sheets, offcuts or a roll, for the least money',
    description:
      'Takes pieces and stock. Of two layouts that cost the same, the one with less material is taken. Pieces of any outline, with holes, in the turns allowed, apart by the kerf and inside the trimmed edge; proven free of overlap by whole-number arithmetic. Runs beside the service for as long as the work budget and the time limit allow.',
    result: 'CuttingPlan',
  })
  async plan(
    @CallerParam() { organisationId }: Caller,
    @Body() request: CuttingPlanRequestDto,
  ): Promise<CuttingPlan> {
    return answer(await this.workbench.do(cuttingPlanJob, request, { organisationId }));
  }
}
