import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { curePlan, type CureAndWeather } from '#lib/cure';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { answer } from '../../edge/problems.js';
import { CurePlanRequestDto } from './cure-plan.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class CurePlanController {
  constructor(private readonly catalogue: CurrentCatalogue) {}

  @Post('cure-plan')
  @RoomEndpoint({
    operationId: 'planCure',
    summary: 'When resin gels and may be let go, sanded and loaded; when a step may start',
    description:
      "Takes a resin with its hardener and the temperature of the deck. Works by equivalent age over a steady, day-and-night or hourly temperature of the deck, with the band of the resin's own data; the hours of a forecast in which each step may start, ranked, with what limits them; without a forecast, what to wait for. A planning figure: the thumbnail and the maker's sheet decide.",
    result: 'CureAndWeather',
  })
  async cure(@CallerParam() caller: Caller, @Body() request: CurePlanRequestDto): Promise<CureAndWeather> {
    return answer(curePlan(request, await this.catalogue.of(caller.organisationId)));
  }
}
