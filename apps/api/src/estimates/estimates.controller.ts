import { Body, Controller, Get, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import type { DefectRecord } from '#lib/estimate';
import { AlsoFor, CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { USUAL_ON_PAGE } from '../edge/dto/query.js';
import { Answers, AnswersIn, MayAnswerLater, Refuses } from '../edge/endpoint.js';
import { CSV_TYPE, HTML_TYPE, JSON_TYPE, PDF_TYPE, Produces, XML_TYPE } from '../edge/media.js';
import { isFresh } from '../edge/preconditions.js';
import { inUnits, ShowsUnits, unitsOf } from '../edge/units.js';
import { RemembersItself } from '../idempotency/idempotency-header.js';
import { DefectRecordDto } from '../inputs/defect-record.dto.js';
import { EstimatesQueryDto, FormQueryDto } from './dto/estimates.dto.js';
import { PROMPT_UP_TO } from './estimate-documents.js';
import { EstimateForms } from './estimate-forms.js';
import { storedJson } from './estimate.mapper.js';
import { AskerParam, type Asker } from './estimate-request.js';
import { EstimateOrders, PROMPT_RECORD } from './estimate-orders.js';
import { EstimatesService } from './estimates.service.js';
import { jsonTag } from './made-answer.js';
import type { EstimatePage, Replay, WhyAnswer } from './stored-estimate.js';

/** By order of use: what asks for any text gets the page, and what asks for anything the data. */
const forms = [HTML_TYPE, PDF_TYPE, CSV_TYPE, XML_TYPE] as const;

@ApiTags('Estimates')
@Controller('v1/estimates')
@Needs('estimates:read')
export class EstimatesController {
  constructor(
    private readonly estimates: EstimatesService,
    private readonly orders: EstimateOrders,
    private readonly forms: EstimateForms,
  ) {}

  @Post()
  @Needs('estimates:write')
  @AlsoFor('publishable', 'holder')
  @RemembersItself()
  @ShowsUnits()
  @ApiOperation({
    operationId: 'createEstimate',
    summary: 'Make an estimate from a defect record and keep it',
    description:
      'Takes what was found on the deck and answers with extent, plan, quantities, calendar and price with its range. What the record leaves open is assumed, and listed under `assumptions`; its faults come all at once as 422. ' +
      `The estimate comes later, as an operation that leads to it, with \`Prefer: respond-async\` and for records of more than ${PROMPT_RECORD.zones} zones or ` +
      `${PROMPT_RECORD.readings} readings. A page with a publishable key gets it at once.`,
  })
  @Answers('StoredEstimate', {
    status: 201,
    description: 'The stored estimate.',
    headers: ['Location', 'ETag', 'Idempotency-Replayed'],
  })
  @MayAnswerLater('estimate')
  @Refuses('conflict')
  async create(
    @AskerParam() asker: Asker,
    @Body() record: DefectRecordDto,
    @Req() request: Request,
  ): Promise<void> {
    await this.orders.send({ ...asker, record }, request);
  }

  @Get()
  @ShowsUnits()
  @ApiOperation({
    operationId: 'listEstimates',
    summary: 'List estimates, newest first',
    description:
      'Those that the key may read, page by page with a cursor. Each entry has the totals; its `id` leads to the rest.',
  })
  @Answers('EstimatePage', { headers: ['Link'] })
  async list(
    @CallerParam() caller: Caller,
    @Query() query: EstimatesQueryDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<EstimatePage> {
    const limit = query.limit ?? USUAL_ON_PAGE;
    const page = await this.estimates.page(caller, { ...query, limit });
    if (page.nextCursor !== undefined)
      response.setHeader('Link', `<${nextUrl(query, limit, page.nextCursor)}>; rel="next"`);
    return page;
  }

  @Get(':id')
  @AlsoFor('holder')
  @Produces(JSON_TYPE, ...forms)
  @ShowsUnits()
  @ApiOperation({
    operationId: 'getEstimate',
    summary: 'An estimate: data, report, lines or quotation',
    description:
      'By `Accept`: JSON, a report (PDF, HTML), the lines (CSV) or a UBL 2.1 Quotation (XML). In documents, `Accept-Language` decides how numbers and dates are written. PDF and HTML may come later: with `Prefer: respond-async`, ' +
      `for estimates of more than ${PROMPT_UP_TO.lines} lines or ${PROMPT_UP_TO.zones} zones, and while many documents are waiting.`,
  })
  @AnswersIn('StoredEstimate', forms, ['ETag'])
  @MayAnswerLater()
  async one(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Query() query: FormQueryDto,
    @Req() request: Request,
  ): Promise<void> {
    const response = request.res;
    if (response === undefined) return;
    const type = String(response.locals.mediaType);
    if (type !== JSON_TYPE) {
      await this.forms.send({ caller, id, type, query }, request, response);
      return;
    }
    const { row, resultJson } = await this.estimates.written(caller, id);
    const units = unitsOf(request);
    sendImmutable(
      { etag: jsonTag(row.id, units), type, content: () => inUnits(units, storedJson(row, resultJson)) },
      request,
      response,
    );
  }

  @Get(':id/record')
  @AlsoFor('holder')
  @ApiOperation({
    operationId: 'getEstimateRecord',
    summary: 'The defect record the estimate was made from',
    description: 'As it was sent: change it, and send it for a revision or for a new estimate.',
  })
  @Answers('DefectRecord')
  record(@CallerParam() caller: Caller, @Param('id') id: string): Promise<DefectRecord> {
    return this.estimates.record(caller, id);
  }

  @Get(':id/replay')
  @ApiOperation({
    operationId: 'replayEstimate',
    summary: 'Compute an estimate again from its record and its edition',
    description:
      'The proof that an old figure can be had again: stored and new totals side by side, and whether every digit is the same.',
  })
  @Answers('Replay')
  replay(@CallerParam() caller: Caller, @Param('id') id: string): Promise<Replay> {
    return this.estimates.replay(caller, id);
  }

  @Get(':id/lines/:code/why')
  @AlsoFor('holder')
  @ShowsUnits()
  @ApiOperation({
    operationId: 'explainLine',
    summary: 'Why a line, a check (check:<code>) or a quantity (quantity:<code>) is what it is',
    description:
      'A tree from the figure down to what was entered, read from the catalogue or assumed, with formula and source at each step.',
  })
  @Answers('WhyAnswer')
  @Refuses('conflict')
  why(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Param('code') code: string,
  ): Promise<WhyAnswer> {
    return this.estimates.why(caller, id, code);
  }
}

interface Immutable {
  readonly etag: string;
  readonly type: string;
  readonly content: () => string;
}

/** An estimate never changes, so a caller that has it is told so. */
function sendImmutable({ etag, type, content }: Immutable, request: Request, response: Response): void {
  response.setHeader('ETag', etag);
  response.setHeader('Cache-Control', 'private, no-cache');
  if (isFresh(request, etag)) response.status(304).end();
  else response.type(type).send(content());
}

function nextUrl({ reference }: EstimatesQueryDto, limit: number, cursor: string): string {
  const query = new URLSearchParams({
    limit: String(limit),
    cursor,
    ...(reference === undefined ? {} : { reference }),
  });
  return `/v1/estimates?${query.toString()}`;
}
