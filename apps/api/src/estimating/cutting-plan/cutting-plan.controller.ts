import { Body, Controller, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import type { CuttingPlan } from '#lib/nesting';
import { HeavyWork } from '../heavy-work.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { CuttingPlanRequestDto } from './cutting-plan.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class CuttingPlanController {
  constructor(private readonly heavy: HeavyWork) {}

  @Post('cutting-plan')
  @RoomEndpoint({
    operationId: 'planCutting',
    summary: 'Any pieces from any sheets, offcuts or a roll, for the least money and then the least material',
    description:
      'Pieces of any outline, with holes, in the turns allowed, apart by the kerf and inside the trimmed edge; proven free of overlap by whole-number arithmetic. Runs beside the service for as long as the work budget and the time limit allow.',
    result: 'CuttingPlan',
  })
  plan(
    @Body() request: CuttingPlanRequestDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<CuttingPlan> {
    return this.heavy.cuttingPlan(request, response);
  }
}
