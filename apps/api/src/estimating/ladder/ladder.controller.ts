import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { MethodLadder } from '#lib/estimate';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { answer } from '../../edge/problems.js';
import { DefectRecordDto } from '../../inputs/defect-record.dto.js';
import { Workbench } from '../../workbench/workbench.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { stocked } from '../stocked.js';
import { ladderJob } from './ladder.job.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class LadderController {
  constructor(
    private readonly catalogue: CurrentCatalogue,
    private readonly workbench: Workbench,
  ) {}

  @Post('ladder')
  @RoomEndpoint({
    operationId: 'judgeLadder',
    summary: 'Every way to mend a deck: whether it fits, why, and what it would take',
    description:
      'Takes what POST /v1/estimates takes and keeps nothing. Each rung is fit, fit with conditions or unfit, with the reason that decides and its number; what is not unfit has hours, days and a price worked out in the rough. Where no rung fits, none is recommended.',
    result: 'MethodLadder',
  })
  async judge(
    @CallerParam() { organisationId }: Caller,
    @Body() record: DefectRecordDto,
  ): Promise<MethodLadder> {
    const catalogue = await this.catalogue.of(organisationId);
    return answer(await this.workbench.do(ladderJob, record, { organisationId }, stocked(catalogue)));
  }
}
