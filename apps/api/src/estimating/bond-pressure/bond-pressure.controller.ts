import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { planBondPressure, type BondPressurePlan } from '#lib/press';
import { RoomEndpoint } from '../room-endpoint.js';
import { answer } from '../../edge/problems.js';
import { BondPressureRequestDto } from './bond-pressure.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class BondPressureController {
  @Post('bond-pressure')
  @RoomEndpoint({
    operationId: 'planBondPressure',
    summary: 'What presses the bed down, what it rests on, and whether the inner skin bears it',
    description:
      'Takes the size of the bed and the inner skin. Weighs up weights, battens with screws and a vacuum bag side by side: pressure needed and had, evenness, quantities, load on the inner skin and props; a recommendation with reasons, refusals with reasons. What no published table supports (screws in glass laminate) is said to be not established.',
    result: 'BondPressurePlan',
  })
  press(@Body() request: BondPressureRequestDto): BondPressurePlan {
    return answer(planBondPressure(request));
  }
}
