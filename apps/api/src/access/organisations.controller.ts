import { Body, Controller, Get, Param, Patch, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { Answers, ChangesVersion } from '../edge/endpoint.js';
import { Consumes, JSON_TYPE, MERGE_PATCH_TYPE } from '../edge/media.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { usualText } from '../edge/dto/index.js';
import { USUAL_ON_PAGE } from '../edge/dto/query.js';
import { idOfCursor, pageOf } from '../persistence/cursor.js';
import { CallerParam, Needs } from './access.decorators.js';
import { NewOrganisationDto, PageQueryDto } from './access.dto.js';
import type { OrganisationRow } from './access.entities.js';
import { AccessService } from './access.service.js';
import {
  keyView,
  organisationView,
  type NewOrganisation,
  type Organisation,
  type OrganisationList,
} from './access-view.js';
import type { Caller } from './roles.js';

@ApiTags('Access')
@Controller('v1/organisations')
@Needs('organisations:make')
export class OrganisationsController {
  constructor(private readonly access: AccessService) {}

  @Get()
  @ApiOperation({
    operationId: 'listOrganisations',
    summary: 'All organisations, oldest first',
    description: 'For a platform-operator; everybody else reads the own organisation by its id.',
  })
  @Answers('OrganisationList')
  async list(@Query() { limit = USUAL_ON_PAGE, cursor }: PageQueryDto): Promise<OrganisationList> {
    const afterId = idOfCursor(cursor);
    return pageOf(await this.access.organisations({ limit: limit + 1, afterId }), limit, organisationView);
  }

  @Post()
  @ApiOperation({
    operationId: 'createOrganisation',
    summary: 'Add an organisation, with the first key of its admin',
    description:
      'Takes a name. The answer holds the key of its first admin, whose text is never shown again; with that key the organisation runs itself.',
  })
  @Answers('NewOrganisation', { status: 201, headers: ['Location', 'ETag'] })
  async create(
    @CallerParam() caller: Caller,
    @Body() organisation: NewOrganisationDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<NewOrganisation> {
    const { row, adminKey } = await this.access.addOrganisation(caller, organisation);
    response.setHeader('Location', `/v1/organisations/${row.id}`);
    return { ...tagged(row, response), adminKey: { ...keyView(adminKey.row), key: adminKey.text } };
  }

  @Get(':id')
  @Needs('organisation:read')
  @ApiOperation({
    operationId: 'getOrganisation',
    summary: 'An organisation: your own, or any for a platform-operator',
    description: 'An id of another organisation is answered as an unknown one.',
  })
  @Answers('Organisation', { headers: ['ETag'] })
  async one(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Res({ passthrough: true }) response: Response,
  ): Promise<Organisation> {
    return tagged(await this.access.organisation(caller, id), response);
  }

  @Patch(':id')
  @Needs('organisation:write')
  @Consumes(MERGE_PATCH_TYPE, JSON_TYPE)
  @ApiBody({
    description: 'RFC 7396 merge patch.',
    schema: {
      type: 'object',
      properties: {
        name: { ...usualText, description: 'As it stands at the head of documents.' },
      },
    },
  })
  @ApiOperation({
    operationId: 'updateOrganisation',
    summary: 'Rename an organisation',
    description:
      'Documents that are made from now on bear the new name, also those of earlier estimates; files that were saved before keep the old one.',
  })
  @Answers('Organisation', { headers: ['ETag'] })
  @ChangesVersion()
  async patch(
    @CallerParam() caller: Caller,
    @Param('id') id: string,
    @Body() patch: unknown,
    @Req() request: Request,
  ): Promise<Organisation> {
    const row = await this.access.patchOrganisation(caller, id, patch, (version) => {
      refuseUnlessMatch(request, version);
    });
    request.res?.setHeader('ETag', tagOf(row.version));
    return organisationView(row);
  }
}

function tagged(row: OrganisationRow, response: Response): Organisation {
  response.setHeader('ETag', tagOf(row.version));
  return organisationView(row);
}
