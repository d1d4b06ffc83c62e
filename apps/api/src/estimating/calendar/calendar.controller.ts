import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { jobCalendar, type JobCalendar } from '#lib/calendar';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { answer } from '../../edge/problems.js';
import { CalendarRequestDto } from './calendar.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class CalendarController {
  constructor(private readonly catalogue: CurrentCatalogue) {}

  @Post('calendar')
  @RoomEndpoint({
    operationId: 'planCalendar',
    summary: 'Which day what is done, what decides the finish, and how sure that is',
    description:
      'Takes a start, the amounts of work, a crew and the resin. Answers the operations of the job in their order under crew, working hours, cures, drying, weather and the hold after opening; the chain that decides; early, likely and late finish from a seeded simulation of the spreads; milestones, iCalendar text (RFC 5545) and what to do today.',
    result: 'JobCalendar',
  })
  async calendar(@CallerParam() caller: Caller, @Body() request: CalendarRequestDto): Promise<JobCalendar> {
    return answer(jobCalendar(request, await this.catalogue.of(caller.organisationId)));
  }
}
