import { Body, Controller, Delete, Get, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { USUAL_ON_PAGE } from '../edge/dto/query.js';
import { Answers, AnswersNothing, ChangesVersion } from '../edge/endpoint.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { idOfCursor, pageOf } from '../persistence/cursor.js';
import { CallerParam, Needs } from './access.decorators.js';
import { NewClientSessionDto, NewPublishableKeyDto, PageQueryDto } from './access.dto.js';
import { AccessService } from './access.service.js';
import { publishableKeyView, type PublishableKey, type PublishableKeyList } from './access-view.js';
import type { ClientSecret } from './holders.js';
import type { Caller } from './roles.js';

const USUAL_MINUTES = 15;

/** Keys for pages that anybody can read. */
@ApiTags('Pages')
@Controller('v1/publishable-keys')
@Needs('pages:write')
export class PublishableKeysController {
  constructor(private readonly access: AccessService) {}

  @Get()
  @ApiOperation({
    operationId: 'listPublishableKeys',
    summary: 'Keys for pages, oldest first',
    description: 'Their texts are shown, since they stand in pages for everybody to read.',
  })
  @Answers('PublishableKeyList')
  async list(
    @CallerParam() caller: Caller,
    @Query() { limit = USUAL_ON_PAGE, cursor }: PageQueryDto,
  ): Promise<PublishableKeyList> {
    const page = { limit: limit + 1, afterId: idOfCursor(cursor) };
    return pageOf(await this.access.keys(caller, 'publishable', page), limit, publishableKeyView);
  }

  @Post()
  @ApiOperation({
    operationId: 'createPublishableKey',
    summary: 'Make a key for a page: it makes estimates from the origins named, and lists none',
    description:
      'The key is no secret: it stands in the page. It may make an estimate (with an Idempotency-Key of 22 characters or more), preview one and read quantities, from pages of the origins named and within its limits. The answer to an estimate carries `clientSecret`, which opens that estimate for a day. `Origin` keeps other sites out, not scripts: the limits are what holds.',
  })
  @Answers('PublishableKey', { status: 201, headers: ['Location', 'ETag'] })
  async create(
    @CallerParam() caller: Caller,
    @Body() wanted: NewPublishableKeyDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<PublishableKey> {
    const row = await this.access.addPublishableKey(caller, wanted);
    response.setHeader('Location', `/v1/publishable-keys/${row.id}`);
    response.setHeader('ETag', tagOf(row.version));
    return publishableKeyView(row);
  }

  @Get(':id')
  @ApiOperation({
    operationId: 'getPublishableKey',
    summary: 'A key for a page',
    description: 'Its origins, its limits and when it ends.',
  })
  @Answers('PublishableKey', { headers: ['ETag'] })
  async one(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Res({ passthrough: true }) response: Response,
  ): Promise<PublishableKey> {
    const row = await this.access.key(caller, 'publishable', id);
    response.setHeader('ETag', tagOf(row.version));
    return publishableKeyView(row);
  }

  @Delete(':id')
  @AnswersNothing()
  @ApiOperation({
    operationId: 'revokePublishableKey',
    summary: 'Revoke a key for a page, and with it every secret that was given out for it',
    description: 'Pages that use it are refused from then on, and what their visitors made is kept.',
  })
  @ChangesVersion()
  async revoke(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Req() request: Request,
  ): Promise<void> {
    await this.access.revokeKey(caller, 'publishable', id, (version) => {
      refuseUnlessMatch(request, version);
    });
  }
}

/** For shops with a server of their own. */
@ApiTags('Pages')
@Controller('v1/client-sessions')
@Needs('pages:write')
export class ClientSessionsController {
  constructor(private readonly access: AccessService) {}

  @Post()
  @ApiOperation({
    operationId: 'openClientSession',
    summary: 'Open a session in which a page may make one estimate',
    description:
      'The reference of the estimate is fixed by the shop. For shops with a server: it asks with its secret key and hands `clientSecret` to the page of one customer. The page makes one estimate with it in time, and reads and revises that estimate for a day after.',
  })
  @Answers('ClientSecret', { status: 201 })
  open(
    @CallerParam() caller: Caller,
    @Body() { reference, minutes = USUAL_MINUTES }: NewClientSessionDto,
  ): Promise<ClientSecret> {
    return this.access.openSession(caller, { reference, minutes });
  }
}
