import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { priceJob, type PricedJob } from '#lib/costing';
import { RoomEndpoint } from '../room-endpoint.js';
import { answer } from '../../edge/problems.js';
import { CostRollupRequestDto } from './cost-rollup.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class CostRollupController {
  @Post('cost-rollup')
  @RoomEndpoint({
    operationId: 'rollUpCost',
    summary: 'From lines to totals, to the cent, and to a range with what drives it',
    description:
      'Takes priced lines and groups of tax. Each line is multiplied exactly and rounded once; lines make sections, then overhead, profit, contingency and tax by group on net sums. Split by cause and by part or labour. With risk: P10, P50, P80 and P90 from hidden extent and unit-rate spreads, drivers, and what opening first is worth.',
    result: 'PricedJob',
  })
  rollUp(@Body() request: CostRollupRequestDto): PricedJob {
    return answer(priceJob(request));
  }
}
