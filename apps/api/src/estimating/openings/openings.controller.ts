import { Body, Controller, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import type { ExtentAndOpenings } from '#lib/extent';
import { HeavyWork } from '../heavy-work.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { OpeningsRequestDto } from './openings.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class OpeningsController {
  constructor(private readonly heavy: HeavyWork) {}

  @Post('openings')
  @RoomEndpoint({
    operationId: 'planOpenings',
    summary: 'From readings or drawn zones to the extent of bad core and the cut line',
    description:
      'Readings become a chance of bad core over the panel, contours, and an area as a range; zones become straight cuts with flange, taper room, undercut, depth of cut, fittings in scope, and what does not fit.',
    result: 'ExtentAndOpenings',
  })
  openings(
    @Body() request: OpeningsRequestDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<ExtentAndOpenings> {
    return this.heavy.openings(request, response);
  }
}
