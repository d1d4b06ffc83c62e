import { Body, Controller, Delete, Get, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { Answers, AnswersNothing, ChangesVersion, Refuses } from '../edge/endpoint.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { CallerParam, ForRoles } from './access.decorators.js';
import { KeysQueryDto, NewKeyDto } from './access.dto.js';
import { AccessService } from './access.service.js';
import { keyView, type Key, type KeyList, type NewKey } from './access-view.js';
import type { Caller } from './roles.js';

@ApiTags('Access')
@Controller('v1/keys')
@ForRoles('operator')
export class KeysController {
  constructor(private readonly access: AccessService) {}

  @Get()
  @ApiOperation({ operationId: 'listKeys', summary: 'Keys of an organisation' })
  @Answers('KeyList')
  @Refuses('not-found')
  async list(@CallerParam() caller: Caller, @Query() { organisationId }: KeysQueryDto): Promise<KeyList> {
    return { items: (await this.access.keysOf(organisationId ?? caller.organisationId)).map(keyView) };
  }

  @Post()
  @ApiOperation({ operationId: 'createKey', summary: 'Make a key; its text is shown in this answer only' })
  @Answers('NewKey', { status: 201, headers: ['Location', 'ETag'] })
  async create(
    @CallerParam() caller: Caller,
    @Body() wanted: NewKeyDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<NewKey> {
    const { row, text } = await this.access.addKey(caller, wanted);
    response.setHeader('Location', `/v1/keys/${row.id}`);
    response.setHeader('ETag', tagOf(row.version));
    return { ...keyView(row), key: text };
  }

  @Get(':id')
  @ApiOperation({ operationId: 'getKey', summary: 'A key, without its text' })
  @Answers('Key', { headers: ['ETag'] })
  async one(@Param('id') id: string, @Res({ passthrough: true }) response: Response): Promise<Key> {
    const row = await this.access.key(id);
    response.setHeader('ETag', tagOf(row.version));
    return keyView(row);
  }

  @Delete(':id')
  @AnswersNothing()
  @ApiOperation({
    operationId: 'revokeKey',
    summary: 'Revoke a key; other copies of the service refuse it within a second',
  })
  @ChangesVersion()
  @Refuses('conflict')
  async revoke(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Req() request: Request,
  ): Promise<void> {
    await this.access.revokeKey(caller, id, (version) => {
      refuseUnlessMatch(request, version);
    });
  }
}
