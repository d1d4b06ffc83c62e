import { Body, Controller, Delete, Get, HttpCode, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import type { History } from '../audit/history.js';
import { checkedAs } from '../edge/dto.pipe.js';
import { Answers, AnswersNothing, ChangesVersion, Refuses } from '../edge/endpoint.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import type { EditionRow } from './catalogue.entities.js';
import { Clock } from '../settings/clock.js';
import {
  EditionComparisonQueryDto,
  NewEditionDto,
  PublicationDto,
  RestorationDto,
} from './dto/editions.dto.js';
import type { EditionComparison } from './edition-comparison.js';
import { editionView, type Edition, type EditionList } from './edition-view.js';
import { EditionsService } from './editions.service.js';

@ApiTags('Catalogue')
@Controller('v1/editions')
@Needs('catalogue:read')
export class EditionsController {
  constructor(
    private readonly editions: EditionsService,
    private readonly clock: Clock,
  ) {}

  @Get()
  @ApiOperation({
    operationId: 'listEditions',
    summary: 'Editions of the catalogue, newest first, and the current one',
    description:
      'Drafts, publications and which edition counts now. An estimate keeps the edition that it was made with.',
  })
  @Answers('EditionList')
  async list(@CallerParam() caller: Caller): Promise<EditionList> {
    const { current, editions } = await this.editions.list(caller);
    const now = this.clock.now();
    return { current: current.code, items: editions.map((edition) => editionView(edition, now)) };
  }

  @Post()
  @Needs('prices:write')
  @ApiOperation({
    operationId: 'createEdition',
    summary: 'Make a draft by copying an edition',
    description:
      'A draft holds a copy of everything in the edition it is based on, and can be changed until it is published. Without a base the current edition is copied.',
  })
  @Answers('Edition', { status: 201, headers: ['Location', 'ETag'] })
  @Refuses('conflict', 'not-found')
  async create(
    @CallerParam() caller: Caller,
    @Body() draft: NewEditionDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<Edition> {
    const row = await this.editions.addDraft(caller, draft);
    response.setHeader('Location', `/v1/editions/${row.code}`);
    return this.tagged(row, response);
  }

  @Get(':code')
  @ApiOperation({
    operationId: 'getEdition',
    summary: 'An edition',
    description:
      'The ETag covers all that the edition holds, so that a publication can name what was reviewed.',
  })
  @Answers('Edition', { headers: ['ETag'] })
  async one(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Res({ passthrough: true }) response: Response,
  ): Promise<Edition> {
    return this.tagged(await this.editions.get(caller, code), response);
  }

  @Post(':code/publication')
  @HttpCode(200)
  @Needs('catalogue:write')
  @ApiOperation({
    operationId: 'publishEdition',
    summary: 'Publish a draft: it becomes current, now or later, and stays as it is',
    description:
      'With `effectiveAt` the edition is frozen now and counts from then on; until then the present edition stays current, and the publication can be taken back. Where several are scheduled, the one that came into effect last is current. A draft that refers to what it lacks is refused with 422, each reference by name.',
  })
  @ApiBody({ type: PublicationDto, required: false })
  @Answers('Edition', { headers: ['ETag'] })
  @ChangesVersion()
  @Refuses('conflict', 'unprocessable')
  async publish(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Body() body: unknown,
    @Req() request: Request,
  ): Promise<Edition> {
    const { effectiveAt } = checkedAs(PublicationDto, body ?? {});
    const check = unlessStale(request);
    return this.tagged(await this.editions.publish(caller, code, { effectiveAt, check }), request.res);
  }

  @Delete(':code/publication')
  @HttpCode(200)
  @Needs('catalogue:write')
  @ApiOperation({
    operationId: 'withdrawEdition',
    summary: 'Take back a publication before it counts: the edition is a draft again',
    description:
      'Only a publication whose time has not come. Once an edition counts, another is made current instead.',
  })
  @Answers('Edition', { headers: ['ETag'] })
  @ChangesVersion()
  @Refuses('conflict')
  async withdraw(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Req() request: Request,
    @Res({ passthrough: true }) response: Response,
  ): Promise<Edition> {
    return this.tagged(await this.editions.withdraw(caller, code, unlessStale(request)), response);
  }

  @Post(':code/restoration')
  @Needs('catalogue:write')
  @ApiOperation({
    operationId: 'restoreEdition',
    summary: 'Make what an earlier edition held current again, under a new code',
    description: 'The way back after a bad publication: one call, and the next estimate is priced as before.',
  })
  @Answers('Edition', { status: 201, headers: ['Location', 'ETag'] })
  @Refuses('conflict')
  async restore(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Body() restoration: RestorationDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<Edition> {
    const row = await this.editions.restore(caller, code, restoration);
    response.setHeader('Location', `/v1/editions/${row.code}`);
    return this.tagged(row, response);
  }

  @Get(':code/comparison')
  @ApiOperation({
    operationId: 'compareEditions',
    summary: 'What an edition holds otherwise than another, entry by entry and field by field',
    description:
      'For reading before publishing: added, removed and changed entries, with the value of each field before and after.',
  })
  @Answers('EditionComparison')
  compare(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Query() query: EditionComparisonQueryDto,
  ): Promise<EditionComparison> {
    return this.editions.compare(caller, code, query.with);
  }

  @Delete(':code')
  @AnswersNothing()
  @Needs('catalogue:write')
  @ApiOperation({
    operationId: 'deleteEdition',
    summary: 'Throw a draft away',
    description: 'Only a draft can be thrown away; what was published stays for the estimates made with it.',
  })
  @ChangesVersion()
  @Refuses('conflict')
  async remove(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Req() request: Request,
  ): Promise<void> {
    await this.editions.removeDraft(caller, code, unlessStale(request));
  }

  @Get(':code/history')
  @ApiOperation({
    operationId: 'getEditionHistory',
    summary: 'Who did what to an edition',
    description: 'Changes of the edition and of every entry in it, with the keys that made them.',
  })
  @Answers('History')
  history(@CallerParam() caller: Caller, @Param('code') code: string): Promise<History> {
    return this.editions.history(caller, code);
  }

  private tagged(row: EditionRow, response: Response | undefined): Edition {
    response?.setHeader('ETag', tagOf(row.version));
    return editionView(row, this.clock.now());
  }
}

const unlessStale =
  (request: Request) =>
  (version: number): void => {
    refuseUnlessMatch(request, version);
  };
