import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { panelAnswer, type PanelAnswer } from '#lib/panel';
import { RoomEndpoint } from '../room-endpoint.js';
import { answer } from '../../edge/problems.js';
import { PanelCheckRequestDto } from './panel-check.dto.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class PanelCheckController {
  @Post('panel-check')
  @RoomEndpoint({
    operationId: 'checkPanel',
    summary: 'Is the repaired panel as stiff and as strong as it was?',
    description:
      'Takes the panel with its skins and core as built and as repaired. Answers the panel as built, as found, opened and repaired under the same loads: deflection, skin stress, core shear, wrinkling, dents, fittings, the yardstick; each check with demand, capacity, what governs and what would make it pass. A comparison, not a design approval: highly loaded spots go to a naval architect or a qualified surveyor.',
    result: 'PanelAnswer',
  })
  check(@Body() request: PanelCheckRequestDto): PanelAnswer {
    return answer(panelAnswer(request));
  }
}
