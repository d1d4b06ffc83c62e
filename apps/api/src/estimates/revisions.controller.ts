import { Body, Controller, Get, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { comparisonCsv } from '#lib/costing';
import { AlsoFor, CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { Answers, AnswersIn, MayAnswerLater, Refuses } from '../edge/endpoint.js';
import { CSV_TYPE, HTML_TYPE, JSON_TYPE, PDF_TYPE, Produces } from '../edge/media.js';
import { answer } from '../edge/problems.js';
import { shownJson, ShowsUnits, unitsOf } from '../edge/units.js';
import { RemembersItself } from '../idempotency/idempotency-header.js';
import { comparisonOf, type Comparison } from './comparison.js';
import { ChangeOrderQueryDto, ComparisonQueryDto, RevisionRequestDto } from './dto/estimates.dto.js';
import { AskerParam, type Asker } from './estimate-request.js';
import { EstimateForms } from './estimate-forms.js';
import { EstimateOrders } from './estimate-orders.js';
import { EstimatesService } from './estimates.service.js';
import type { RevisionList } from './stored-estimate.js';

@ApiTags('Estimates')
@Controller('v1/estimates/:id')
@Needs('estimates:read')
@AlsoFor('holder')
export class RevisionsController {
  constructor(
    private readonly estimates: EstimatesService,
    private readonly orders: EstimateOrders,
    private readonly forms: EstimateForms,
  ) {}

  @Post('revisions')
  @Needs('estimates:write')
  @RemembersItself()
  @ShowsUnits()
  @ApiOperation({
    operationId: 'reviseEstimate',
    summary: 'Re-make an estimate after something became known, with the reason',
    description:
      'The earlier revision stays as it was. Send the whole record as it is now known and say why; the change order says what that costs.',
  })
  @Answers('StoredEstimate', {
    status: 201,
    description: 'The new revision.',
    headers: ['Location', 'ETag', 'Idempotency-Replayed'],
  })
  @MayAnswerLater('revision')
  @Refuses('conflict')
  async revise(
    @AskerParam() asker: Asker,
    @Param('id') id: string,
    @Body() { reason, record }: RevisionRequestDto,
    @Req() request: Request,
  ): Promise<void> {
    await this.orders.send({ ...asker, record, revises: { estimateId: id, reason } }, request);
  }

  @Get('revisions')
  @ApiOperation({
    operationId: 'listRevisions',
    summary: 'The revisions of an estimate, first to last',
    description: 'Each with its total and the reason why it was made.',
  })
  @Answers('RevisionList')
  revisions(@CallerParam() caller: Caller, @Param('id') id: string): Promise<RevisionList> {
    return this.estimates.revisions(caller, id);
  }

  @Get('comparison')
  @Produces(JSON_TYPE, CSV_TYPE)
  @ShowsUnits()
  @ApiOperation({
    operationId: 'compareEstimates',
    summary: 'What changed against the revision before, or another estimate, and why',
    description:
      'Lines, totals and figures that differ, and the changed answers of the record that they follow from.',
  })
  @AnswersIn('Comparison', [CSV_TYPE])
  @Refuses('unprocessable')
  async comparison(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Query() query: ComparisonQueryDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<Comparison | string> {
    const { before, after } = await this.estimates.pair(caller, id, query.with);
    const comparison = answer(comparisonOf(before, after));
    if (response.locals.mediaType !== CSV_TYPE) return comparison;
    response.type(CSV_TYPE);
    return comparisonCsv(comparison);
  }

  @Get('change-order')
  @Produces(JSON_TYPE, HTML_TYPE, PDF_TYPE)
  @ShowsUnits()
  @ApiOperation({
    operationId: 'getChangeOrder',
    summary: 'What a revision adds and takes away, for yard and owner to sign',
    description:
      'By `Accept`: JSON, PDF or HTML. Additions and deductions against the revision before, re-measured at the agreed rates, with room for two signatures.',
  })
  @AnswersIn('ChangeOrder', [HTML_TYPE, PDF_TYPE])
  @Refuses('unprocessable')
  async changeOrder(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Query() query: ChangeOrderQueryDto,
    @Req() request: Request,
  ): Promise<void> {
    const response = request.res;
    if (response === undefined) return;
    const type = String(response.locals.mediaType);
    if (type === JSON_TYPE)
      response.type(type).send(shownJson(unitsOf(request), await this.forms.changeOrder(caller, id)));
    else await this.forms.sendChangeOrder({ caller, id, type, query }, request, response);
  }
}
