import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { NextReadings } from '#lib/extent';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { answer } from '../../edge/problems.js';
import { Workbench } from '../../workbench/workbench.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { NextReadingsRequestDto } from './next-readings.dto.js';
import { nextReadingsJob } from './next-readings.job.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class NextReadingsController {
  constructor(private readonly workbench: Workbench) {}

  @Post('next-readings')
  @RoomEndpoint({
    operationId: 'findNextReadings',
    summary: 'Where to tap, meter or plug next, and when to stop',
    description:
      'Takes the panel and its readings so far. Answers the places and kinds of reading that would save most hours of work for their minutes, best first and spread out, only where a reading can be taken; what the whole batch is expected to save and how far it narrows the range of bad core; and whether that is worth the time. An empty list of readings asks where to begin.',
    result: 'NextReadings',
  })
  async nextReadings(
    @CallerParam() { organisationId }: Caller,
    @Body() request: NextReadingsRequestDto,
  ): Promise<NextReadings> {
    return answer(await this.workbench.do(nextReadingsJob, request, { organisationId }));
  }
}
