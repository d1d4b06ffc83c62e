import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { ExtentAndOpenings } from '#lib/extent';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { answer } from '../../edge/problems.js';
import { Workbench } from '../../workbench/workbench.js';
import { openingsJob } from './openings.job.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { OpeningsRequestDto } from './openings.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class OpeningsController {
  constructor(private readonly workbench: Workbench) {}

  @Post('openings')
  @RoomEndpoint({
    operationId: 'planOpenings',
    summary: 'From readings or drawn zones to the extent of bad core and the cut line',
    description:
      'Takes a panel with its readings, or with zones drawn on it. Readings become a chance of bad core over the panel, contours, and an area as a range; zones become straight cuts with flange, taper room, undercut, depth of cut, fittings in scope, and what does not fit.',
    result: 'ExtentAndOpenings',
  })
  async openings(
    @CallerParam() { organisationId }: Caller,
    @Body() request: OpeningsRequestDto,
  ): Promise<ExtentAndOpenings> {
    return answer(await this.workbench.do(openingsJob, request, { organisationId }));
  }
}
