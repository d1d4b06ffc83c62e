import { Body, Controller, Delete, Get, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import type { History } from '../audit/history.js';
import { USUAL_ON_PAGE } from '../edge/dto/query.js';
import { Answers, AnswersNothing, ChangesVersion, Refuses } from '../edge/endpoint.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { idOfCursor, pageOf } from '../persistence/cursor.js';
import { CallerParam, Needs } from './access.decorators.js';
import { NewKeyDto, PageQueryDto, RenewalDto } from './access.dto.js';
import { AccessService, type MadeKey } from './access.service.js';
import { keyView, type Key, type KeyList, type NewKey } from './access-view.js';
import type { Caller } from './roles.js';

@ApiTags('Access')
@Controller('v1/keys')
@Needs('keys:write')
export class KeysController {
  constructor(private readonly access: AccessService) {}

  @Get()
  @Needs('keys:read')
  @ApiOperation({
    operationId: 'listKeys',
    summary: 'Secret keys of the organisation, oldest first',
    description:
      'Revoked keys stay in the list, so that histories can be read; texts of keys are never shown again.',
  })
  @Answers('KeyList')
  async list(
    @CallerParam() caller: Caller,
    @Query() { limit = USUAL_ON_PAGE, cursor }: PageQueryDto,
  ): Promise<KeyList> {
    const afterId = idOfCursor(cursor);
    return pageOf(await this.access.keys(caller, 'secret', { limit: limit + 1, afterId }), limit, keyView);
  }

  @Post()
  @ApiOperation({
    operationId: 'createKey',
    summary: 'Make a key; its text is shown in this answer only',
    description:
      'Takes a name and roles, for an integrator scopes as well, and `expiresAt` where the key is to end by itself. Store the text at once: the service keeps only its hash.',
  })
  @Answers('NewKey', { status: 201, headers: ['Location', 'ETag'] })
  async create(
    @CallerParam() caller: Caller,
    @Body() wanted: NewKeyDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<NewKey> {
    return shownOnce(await this.access.addKey(caller, wanted), response);
  }

  @Get(':id')
  @Needs('keys:read')
  @ApiOperation({
    operationId: 'getKey',
    summary: 'A key, without its text',
    description: 'What the key may do, when it ends and when it was last used.',
  })
  @Answers('Key', { headers: ['ETag'] })
  async one(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Res({ passthrough: true }) response: Response,
  ): Promise<Key> {
    const row = await this.access.key(caller, 'secret', id);
    response.setHeader('ETag', tagOf(row.version));
    return keyView(row);
  }

  @Post(':id/renewal')
  @ApiOperation({
    operationId: 'renewKey',
    summary: 'Make a key in the place of another, which ends after an overlap',
    description:
      'The new key may do what the old one may, and its text is shown in this answer only. Both count during the overlap, so that programs can be changed one by one. A key that has ended is refused with 409: make another.',
  })
  @Answers('NewKey', { status: 201, headers: ['Location', 'ETag'] })
  @Refuses('conflict')
  async renew(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Body() { overlapHours }: RenewalDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<NewKey> {
    return shownOnce(await this.access.renewKey(caller, id, overlapHours), response);
  }

  @Get(':id/history')
  @Needs('keys:read')
  @ApiOperation({
    operationId: 'getKeyHistory',
    summary: 'Who made, renewed and revoked a key',
    description: 'Entries name the key that did it and the request, as the audit of the organisation does.',
  })
  @Answers('History')
  history(@CallerParam() caller: Caller, @Param('id') id: string): Promise<History> {
    return this.access.history(caller, id);
  }

  @Delete(':id')
  @AnswersNothing()
  @ApiOperation({
    operationId: 'revokeKey',
    summary: 'Revoke a key; other copies of the service refuse it within a second',
    description:
      'The last key of an organisation-admin that does not end by itself is kept, with 409: without it nobody could make another.',
  })
  @ChangesVersion()
  @Refuses('conflict')
  async revoke(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Req() request: Request,
  ): Promise<void> {
    await this.access.revokeKey(caller, 'secret', id, (version) => {
      refuseUnlessMatch(request, version);
    });
  }
}

function shownOnce({ row, text }: MadeKey, response: Response): NewKey {
  response.setHeader('Location', `/v1/keys/${row.id}`);
  response.setHeader('ETag', tagOf(row.version));
  return { ...keyView(row), key: text };
}
