import { Body, Controller, Get, HttpCode, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiHeader, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import type { DefectRecord } from '#lib/estimate';
import { CallerParam, ForRoles } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { USUAL_ON_PAGE } from '../http/dto/query.js';
import { Answers, AnswersIn, Refuses } from '../http/endpoint.js';
import { CSV_TYPE, JSON_TYPE, Produces } from '../http/media.js';
import { isFresh } from '../http/preconditions.js';
import { IdempotencyKey } from '../idempotency/idempotency-header.js';
import { compared, type Comparison } from './comparison.js';
import { DefectRecordDto } from './dto/defect-record.dto.js';
import { ComparisonQueryDto, EstimatesQueryDto, RevisionRequestDto } from './dto/estimates.dto.js';
import type { EstimateRow } from './estimate.entity.js';
import { storedEstimate } from './estimate.mapper.js';
import { EstimatesService, type Made } from './estimates.service.js';
import { EstimateForms } from './forms.js';
import type { EstimatePage, RevisionList, StoredEstimate, WhyAnswer } from './stored-estimate.js';

const IdempotencyKeyHeader = (): MethodDecorator => ApiHeader({
  name: 'Idempotency-Key', required: false, schema: { type: 'string', minLength: 1, maxLength: 257 },
  description: 'The same key and body get the same estimate again; another body is refused with 422, a key still at work with 409.',
});

@ApiTags('Estimates')
@Controller('v1/estimates')
export class EstimatesController {
  constructor(private readonly estimates: EstimatesService, private readonly forms: EstimateForms) {}

  @Post()
  @ForRoles('surveyor', 'chandler', 'integrator')
  @IdempotencyKeyHeader()
  @ApiOperation({ operationId: 'createEstimate', summary: 'Make an estimate from a defect record and keep it' })
  @Answers('StoredEstimate', { status: 201, description: 'The stored estimate.', headers: ['Location', 'ETag', 'Idempotency-Replayed'] })
  @Refuses('conflict')
  async create(
    @CallerParam() caller: Caller, @Body() record: DefectRecordDto, @IdempotencyKey() idempotencyKey: string | undefined,
    @Res({ passthrough: true }) response: Response,
  ): Promise<StoredEstimate> {
    return announced(await this.estimates.create({ caller, record, idempotencyKey }), response);
  }

  @Get()
  @ForRoles('surveyor', 'chandler', 'integrator')
  @ApiOperation({ operationId: 'listEstimates', summary: 'List estimates, newest first' })
  @Answers('EstimatePage', { headers: ['Link'] })
  async list(@CallerParam() caller: Caller, @Query() query: EstimatesQueryDto, @Res({ passthrough: true }) response: Response): Promise<EstimatePage> {
    const limit = query.limit ?? USUAL_ON_PAGE;
    const page = await this.estimates.page(caller, { ...query, limit });
    if (page.nextCursor !== undefined) response.setHeader('Link', `<${nextUrl(query, limit, page.nextCursor)}>; rel="next"`);
    return page;
  }

  @Get(':id')
  @ForRoles('surveyor', 'chandler', 'integrator')
  @Produces(JSON_TYPE, CSV_TYPE)
  @ApiOperation({ operationId: 'getEstimate', summary: 'An estimate, as JSON or in another form by Accept' })
  @AnswersIn('StoredEstimate', [CSV_TYPE], ['ETag'])
  async one(@CallerParam() caller: Caller, @Param('id') id: string, @Req() request: Request, @Res() response: Response): Promise<void> {
    const row = await this.estimates.row(caller, id);
    const type = String(response.locals.mediaType);
    const etag = `"${row.id}.${type.replace(/^.*\//, '')}"`;
    response.setHeader('ETag', etag);
    response.setHeader('Cache-Control', 'private, no-cache');
    if (isFresh(request, etag)) {
      response.status(304).end();
      return;
    }
    await this.sendAs(type, row, response);
  }

  @Get(':id/record')
  @ForRoles('surveyor', 'chandler', 'integrator')
  @ApiOperation({ operationId: 'getEstimateRecord', summary: 'The defect record the estimate was made from' })
  @Answers('DefectRecord')
  record(@CallerParam() caller: Caller, @Param('id') id: string): Promise<DefectRecord> {
    return this.estimates.record(caller, id);
  }

  @Get(':id/lines/:code/why')
  @ForRoles('surveyor', 'chandler', 'integrator')
  @ApiOperation({ operationId: 'explainLine', summary: 'Why a line, a check (check:<code>) or a quantity (quantity:<code>) is what it is' })
  @Answers('WhyAnswer')
  why(@CallerParam() caller: Caller, @Param('id') id: string, @Param('code') code: string): Promise<WhyAnswer> {
    return this.estimates.why(caller, id, code);
  }

  @Post(':id/revisions')
  @HttpCode(201)
  @ForRoles('surveyor', 'chandler', 'integrator')
  @IdempotencyKeyHeader()
  @ApiOperation({ operationId: 'reviseEstimate', summary: 'Re-make an estimate after something became known, with the reason' })
  @Answers('StoredEstimate', { status: 201, description: 'The new revision.', headers: ['Location', 'ETag', 'Idempotency-Replayed'] })
  @Refuses('conflict')
  async revise(
    @CallerParam() caller: Caller, @Param('id') id: string, @Body() { reason, record }: RevisionRequestDto,
    @IdempotencyKey() idempotencyKey: string | undefined, @Res({ passthrough: true }) response: Response,
  ): Promise<StoredEstimate> {
    return announced(await this.estimates.revise(id, reason, { caller, record, idempotencyKey }), response);
  }

  @Get(':id/revisions')
  @ForRoles('surveyor', 'chandler', 'integrator')
  @ApiOperation({ operationId: 'listRevisions', summary: 'The revisions of an estimate, first to last' })
  @Answers('RevisionList')
  revisions(@CallerParam() caller: Caller, @Param('id') id: string): Promise<RevisionList> {
    return this.estimates.revisions(caller, id);
  }

  @Get(':id/comparison')
  @ForRoles('surveyor', 'chandler', 'integrator')
  @ApiOperation({ operationId: 'compareEstimates', summary: 'What changed against the revision before, or another estimate, line by line' })
  @Answers('Comparison')
  async comparison(@CallerParam() caller: Caller, @Param('id') id: string, @Query() query: ComparisonQueryDto): Promise<Comparison> {
    const { before, after } = await this.estimates.pair(caller, id, query.with);
    return compared(side(before), side(after));
  }

  private async sendAs(type: string, row: EstimateRow, response: Response): Promise<void> {
    const form = this.forms.find(type);
    if (form === undefined) {
      response.json(storedEstimate(row));
      return;
    }
    const content = await form.write(row, { revisions: [row] });
    response.setHeader('Content-Disposition', `attachment; filename="estimate-${row.id}.${form.extension}"`);
    response.type(type).send(typeof content === 'string' ? content : Buffer.from(content));
  }
}

function announced({ stored, isReplay }: Made, response: Response): StoredEstimate {
  response.setHeader('Location', `/v1/estimates/${stored.id}`);
  response.setHeader('ETag', `"${stored.id}.json"`);
  if (isReplay) response.setHeader('Idempotency-Replayed', 'true');
  return stored;
}

const side = (row: EstimateRow) => {
  const { id, createdAt, revision, estimate } = storedEstimate(row);
  return { about: { id, createdAt, revision, edition: row.edition, engineVersion: row.engineVersion }, estimate };
};

function nextUrl({ reference }: EstimatesQueryDto, limit: number, cursor: string): string {
  const query = new URLSearchParams({ limit: String(limit), cursor, ...(reference === undefined ? {} : { reference }) });
  return `/v1/estimates?${query.toString()}`;
}
