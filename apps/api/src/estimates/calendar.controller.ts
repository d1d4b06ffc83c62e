import { Controller, Get, Param, Query, Req } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { AlsoFor, CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { AnswersIn, Refuses } from '../edge/endpoint.js';
import { CALENDAR_TYPE, JSON_TYPE, Produces } from '../edge/media.js';
import { shownJson, ShowsUnits, unitsOf } from '../edge/units.js';
import { isFresh } from '../edge/preconditions.js';
import { CalendarQueryDto } from './dto/estimates.dto.js';
import { dayList, iCalendarOf } from './estimate-calendar.js';
import { EstimatesService } from './estimates.service.js';
import { storedEstimate } from './estimate.mapper.js';
import type { EstimateCalendar } from './stored-estimate.js';

@ApiTags('Estimates')
@Controller('v1/estimates/:id/calendar')
@Needs('estimates:read')
@AlsoFor('holder')
export class EstimateCalendarController {
  constructor(private readonly estimates: EstimatesService) {}

  @Get()
  @Produces(JSON_TYPE, CALENDAR_TYPE)
  @ShowsUnits()
  @ApiOperation({
    operationId: 'getEstimateCalendar',
    summary: 'The calendar of an estimate with its weather, and what to do on a day',
    description:
      'By `Accept`: JSON or iCalendar (RFC 5545). As `text/calendar` the milestones, or with `events=all` the tasks as well, in UTC. The events of a revision carry the UIDs of the first estimate and a higher SEQUENCE, so that a diary moves them.',
  })
  @AnswersIn('EstimateCalendar', [CALENDAR_TYPE], ['ETag'])
  @Refuses('conflict')
  async one(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Query() query: CalendarQueryDto,
    @Req() request: Request,
  ): Promise<void> {
    const response = request.res;
    if (response === undefined) return;
    const stored = storedEstimate(await this.estimates.row(caller, id));
    if (response.locals.mediaType === CALENDAR_TYPE) {
      // RFC 5545, 3.7.2: the method of the object and of its media type are given together.
      send(
        {
          tag: 'ics',
          type: `${CALENDAR_TYPE}; method=PUBLISH; charset=utf-8`,
          content: iCalendarOf(stored, query.events ?? 'milestones'),
        },
        { request, response, id },
      );
      return;
    }
    const {
      revision,
      estimate: {
        process: { calendar, weather },
      },
    } = stored;
    const answer: EstimateCalendar = {
      id: stored.id,
      revision,
      calendar,
      ...(weather === undefined ? {} : { weather }),
      ...(query.on === undefined ? {} : { day: { date: query.on, items: dayList(stored, query.on) } }),
    };
    const units = unitsOf(request);
    send(
      {
        tag: units === 'si' ? 'calendar' : `calendar.${units}`,
        type: JSON_TYPE,
        content: shownJson(units, answer),
      },
      { request, response, id },
    );
  }
}

interface Exchange {
  readonly request: Request;
  readonly response: Response;
  readonly id: string;
}

/** An estimate never changes, and neither does its calendar: a caller that has it is told so. */
function send(
  { tag, type, content }: { readonly tag: string; readonly type: string; readonly content: string },
  { request, response, id }: Exchange,
): void {
  const etag = `"${id}.${tag}"`;
  response.setHeader('ETag', etag);
  response.setHeader('Cache-Control', 'private, no-cache');
  if (tag === 'ics') response.setHeader('Content-Disposition', `attachment; filename="estimate-${id}.ics"`);
  if (isFresh(request, etag)) response.status(304).end();
  else response.type(type).send(content);
}
