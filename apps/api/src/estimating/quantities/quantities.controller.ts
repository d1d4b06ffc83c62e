import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { AlsoFor } from '../../access/access.decorators.js';
import { RoomEndpoint } from '../room-endpoint.js';
import { answer } from '../../edge/problems.js';
import { QuantitiesRequestDto } from './quantities.dto.js';
import { readQuantities, type QuantitiesRead } from './read-quantities.js';

@ApiTags('Estimating')
@Controller('v1/estimating')
export class QuantitiesController {
  @Post('quantities')
  @AlsoFor('publishable')
  @RoomEndpoint({
    operationId: 'readQuantities',
    description:
      'For a form: shows the person how a text such as `5/8 in` was understood, before it is sent. A wrong text is refused with what would be right.',
    summary: 'Read typed quantities exactly into SI numbers',
    result: 'QuantitiesRead',
    isExact: true,
  })
  quantities(@Body() request: QuantitiesRequestDto): QuantitiesRead {
    return answer(readQuantities(request));
  }
}
