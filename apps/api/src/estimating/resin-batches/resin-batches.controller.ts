import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { resinBatches, type BatchPlan } from '#lib/resin';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { answer } from '../../edge/problems.js';
import { ResinBatchesRequestDto } from './resin-batches.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class ResinBatchesController {
  constructor(private readonly catalogue: CurrentCatalogue) {}

  @Post('resin-batches')
  @RoomEndpoint({
    operationId: 'planResinBatches',
    summary: 'How much resin each step takes, and in which pots, before it kicks',
    description:
      "Takes a resin, the steps that use it, the temperature and how many people work. Answers resin, hardener and filler by weight and by volume for each step from its own basis, waste apart; a hardener chosen with reasons; a card for each pot with what to weigh in which order, for which pieces, and by when it must be empty. The pots add up to the demand to a tenth of a gram. The maker's own sheet comes first.",
    result: 'BatchPlan',
  })
  async batches(@CallerParam() caller: Caller, @Body() request: ResinBatchesRequestDto): Promise<BatchPlan> {
    return answer(resinBatches(request, await this.catalogue.of(caller.organisationId)));
  }
}
