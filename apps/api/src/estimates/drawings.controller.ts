import { Controller, Get, Param, Query, Req } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { AlsoFor, CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { Answers, AnswersOnlyIn, MayAnswerLater } from '../edge/endpoint.js';
import { DXF_TYPE, PDF_TYPE, Produces, SVG_TYPE } from '../edge/media.js';
import { ShowsUnits } from '../edge/units.js';
import { DrawingQueryDto } from './dto/estimates.dto.js';
import { EstimateForms } from './estimate-forms.js';
import type { DrawingList } from './stored-estimate.js';

@ApiTags('Estimates')
@Controller('v1/estimates/:id/drawings')
@Needs('estimates:read')
@AlsoFor('holder')
export class DrawingsController {
  constructor(private readonly forms: EstimateForms) {}

  @Get()
  @ApiOperation({
    operationId: 'listDrawings',
    summary: 'Names of the drawings an estimate has',
    description: 'Which drawings there are depends on the job: no plan of core pieces without new core.',
  })
  @Answers('DrawingList')
  list(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Req() request: Request,
  ): Promise<DrawingList> {
    return this.forms.drawingList(caller, id, request);
  }

  @Get(':name')
  @Produces(SVG_TYPE, PDF_TYPE, DXF_TYPE)
  @ShowsUnits()
  @ApiOperation({
    operationId: 'getDrawing',
    summary: 'A drawing as SVG, PDF or DXF',
    description:
      'By `Accept`: SVG or PDF; `templates` is a PDF of the core pieces at 1:1; `piece-plan` and `sheet-layout` come as DXF at 1:1 too, for a cutting machine. Every drawing has its scale and a bar to check a print by. A long one is answered 202 and fetched later.',
  })
  @AnswersOnlyIn([SVG_TYPE, PDF_TYPE, DXF_TYPE], ['ETag'])
  @MayAnswerLater()
  async one(
    @CallerParam() caller: Caller,
    @Param() place: { readonly id: string; readonly name: string },
    @Query() query: DrawingQueryDto,
    @Req() request: Request,
  ): Promise<void> {
    if (request.res !== undefined)
      await this.forms.sendDrawing(
        { caller, ...place, query, type: String(request.res.locals.mediaType) },
        request,
        request.res,
      );
  }
}
