import { Controller, Delete, Get, Param, Put, Query, Req } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { AlsoFor, CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { Answers, AnswersNothing, AnswersOnlyIn, MayBeForNewOnly, pictureSchema } from '../edge/endpoint.js';
import { Consumes, JPEG_TYPE, MostBytes, PNG_TYPE, Produces } from '../edge/media.js';
import { isForNewOnly } from '../edge/preconditions.js';
import { PhotographQueryDto } from './dto/photograph.dto.js';
import { MOST_PHOTOGRAPHS, photographLimits } from './photograph-limits.js';
import {
  PhotographsService,
  type DeckPhotograph,
  type PhotographList,
  type PhotographPlace,
} from './photographs.service.js';

/** Photographs stand beside the estimate, which is never changed; report and page show them. */
@ApiTags('Estimates')
@Controller('v1/estimates/:id/photographs')
@Needs('estimates:read')
export class PhotographsController {
  constructor(private readonly photographs: PhotographsService) {}

  @Get()
  @AlsoFor('holder')
  @ApiOperation({
    operationId: 'listPhotographs',
    summary: 'Photographs of the deck of an estimate and of its revisions',
    description: 'In the order of their numbers, which the report prints them in.',
  })
  @Answers('PhotographList')
  list(@CallerParam() caller: Caller, @Param('id') id: string): Promise<PhotographList> {
    return this.photographs.list(caller, id);
  }

  @Get(':number')
  @AlsoFor('holder')
  @Produces(JPEG_TYPE)
  @ApiOperation({
    operationId: 'getPhotograph',
    summary: 'A photograph as it is printed',
    description: 'Turned upright and without the place and the device that a camera writes into it.',
  })
  @AnswersOnlyIn([JPEG_TYPE])
  async one(
    @CallerParam() caller: Caller,
    @Param() place: PhotographPlace,
    @Req() request: Request,
  ): Promise<void> {
    const picture = await this.photographs.picture(caller, place);
    request.res?.type(JPEG_TYPE).send(Buffer.from(picture));
  }

  @Put(':number')
  @Needs('estimates:write')
  @AlsoFor('holder')
  @MayBeForNewOnly('another photograph has the number')
  @Consumes(JPEG_TYPE, PNG_TYPE)
  @MostBytes(photographLimits.mostBytes)
  @ApiBody({ schema: pictureSchema(photographLimits.mostBytes) })
  @ApiOperation({
    operationId: 'setPhotograph',
    summary: 'Add a photograph under a number, or put another in its place',
    description: `A JPEG or PNG of at most ${photographLimits.mostBytes} bytes and ${photographLimits.mostPixelsASide} pixels a side, judged by its content; numbers are 1 to ${MOST_PHOTOGRAPHS}. It is drawn anew at the size it is printed: place, device, time and whatever else the file holds are not kept. The secret of one estimate adds photographs and puts none in the place of another.`,
  })
  @Answers('DeckPhotograph')
  put(
    @CallerParam() caller: Caller,
    @Param() place: PhotographPlace,
    @Query() said: PhotographQueryDto,
    @Req() request: Request,
  ): Promise<DeckPhotograph> {
    const uploaded: unknown = request.body;
    return this.photographs.put(caller, place, {
      said,
      uploaded: uploaded instanceof Uint8Array ? uploaded : new Uint8Array(),
      isNewOnly: caller.kind !== 'secret' || isForNewOnly(request),
    });
  }

  @Delete(':number')
  @Needs('estimates:write')
  @AnswersNothing()
  @ApiOperation({
    operationId: 'removePhotograph',
    summary: 'Take a photograph away for good',
    description: 'Reports that are made from now on lack it; it cannot be had again.',
  })
  async remove(@CallerParam() caller: Caller, @Param() place: PhotographPlace): Promise<void> {
    await this.photographs.remove(caller, place);
  }
}
