import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { laminateSchedule, type LaminateSchedule } from '#lib/laminate';
import { CallerParam } from '../../access/access.decorators.js';
import type { Caller } from '../../access/roles.js';
import { CurrentCatalogue } from '../../catalogue/current-catalogue.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { answer } from '../../edge/problems.js';
import { LaminateScheduleRequestDto } from './laminate-schedule.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class LaminateScheduleController {
  constructor(private readonly catalogue: CurrentCatalogue) {}

  @Post('laminate-schedule')
  @RoomEndpoint({
    operationId: 'scheduleLaminate',
    summary: 'How many plies of what give back the old skin, and how they are cut and laid',
    description:
      'Takes the old skin, the resin and the fabrics at hand. Answers the best three skins from the fabrics at hand that restore stiffness, strength and the bending of the panel, proven best, with why the others lost; ply outlines, roll lengths, masses and stages; closing plies over the cut of a skin bonded back. A comparison, not a design approval.',
    result: 'LaminateSchedule',
  })
  async schedule(
    @CallerParam() caller: Caller,
    @Body() request: LaminateScheduleRequestDto,
  ): Promise<LaminateSchedule> {
    return answer(laminateSchedule(request, await this.catalogue.of(caller.organisationId)));
  }
}
