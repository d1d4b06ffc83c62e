import { Body, Controller, Get, Param, Post, Query, Req } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CallerParam, ForRoles } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { Answers, Refuses } from '../http/endpoint.js';
import { ShowsUnits } from '../http/units.js';
import { TakesIdempotencyKey } from '../idempotency/idempotency-header.js';
import type { Comparison } from './comparison.js';
import { ComparisonQueryDto, RevisionRequestDto } from './dto/estimates.dto.js';
import { AskerParam, type Asker } from './estimate-request.js';
import { sendMade } from './estimates.controller.js';
import { EstimatesService } from './estimates.service.js';
import type { RevisionList } from './stored-estimate.js';
import { comparisonOf } from './subject.js';

@ApiTags('Estimates')
@Controller('v1/estimates/:id')
@ForRoles('surveyor', 'chandler', 'integrator')
export class RevisionsController {
  constructor(private readonly estimates: EstimatesService) {}

  @Post('revisions')
  @TakesIdempotencyKey()
  @ShowsUnits()
  @ApiOperation({ operationId: 'reviseEstimate', summary: 'Re-make an estimate after something became known, with the reason' })
  @Answers('StoredEstimate', { status: 201, description: 'The new revision.', headers: ['Location', 'ETag', 'Idempotency-Replayed'] })
  @Refuses('conflict')
  async revise(@AskerParam() asker: Asker, @Param('id') id: string, @Body() { reason, record }: RevisionRequestDto, @Req() request: Request): Promise<void> {
    sendMade(await this.estimates.revise(id, reason, { ...asker, record }), request);
  }

  @Get('revisions')
  @ApiOperation({ operationId: 'listRevisions', summary: 'The revisions of an estimate, first to last' })
  @Answers('RevisionList')
  revisions(@CallerParam() caller: Caller, @Param('id') id: string): Promise<RevisionList> {
    return this.estimates.revisions(caller, id);
  }

  @Get('comparison')
  @ShowsUnits()
  @ApiOperation({ operationId: 'compareEstimates', summary: 'What changed against the revision before, or another estimate, line by line' })
  @Answers('Comparison')
  async comparison(@CallerParam() caller: Caller, @Param('id') id: string, @Query() query: ComparisonQueryDto): Promise<Comparison> {
    const { before, after } = await this.estimates.pair(caller, id, query.with);
    return comparisonOf(before, after);
  }
}
