import { Controller, Get, Query } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import { CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { USUAL_ON_PAGE } from '../edge/dto/query.js';
import { Answers } from '../edge/endpoint.js';
import { eventView } from './event-view.js';
import { EventsQueryDto } from './events.dto.js';
import { EventsService } from './events.service.js';
import { eventTypes, type EventPage } from './service-event.js';

/** What happened in the organisation, to be read from where one stopped. */
@ApiTags('Events')
@Controller('v1/events')
@Needs('events:read')
export class EventsController {
  constructor(private readonly events: EventsService) {}

  @Get()
  @ApiOperation({
    operationId: 'listEvents',
    summary: 'What happened, oldest first, from where the cursor stands',
    description:
      'A feed for programs that cannot be called: keep `nextCursor` and ask again later. Events are kept for 30 days, and none is missed between two readings.',
  })
  @Answers('EventPage')
  async list(
    @CallerParam() caller: Caller,
    @Query() { limit = USUAL_ON_PAGE, cursor, types }: EventsQueryDto,
  ): Promise<EventPage> {
    const wanted = types?.split(',');
    const rows = await this.events.feed(caller, {
      limit,
      cursor,
      types: wanted === undefined ? undefined : eventTypes.filter((type) => wanted.includes(type)),
    });
    const last = rows.at(-1);
    const items = rows.map(eventView);
    return last === undefined ? { items } : { items, nextCursor: String(last.position) };
  }
}
