import { Body, Controller, Get, Param, Patch, Post, Req, Res } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { Answers, ChangesVersion } from '../edge/endpoint.js';
import { Consumes, JSON_TYPE, MERGE_PATCH_TYPE } from '../edge/media.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { CallerParam, ForRoles } from './access.decorators.js';
import { NewOrganisationDto } from './access.dto.js';
import type { OrganisationRow } from './access.entities.js';
import { AccessService } from './access.service.js';
import { organisationView, type Organisation, type OrganisationList } from './access-view.js';
import type { Caller } from './roles.js';

@ApiTags('Access')
@Controller('v1/organisations')
@ForRoles('operator')
export class OrganisationsController {
  constructor(private readonly access: AccessService) {}

  @Get()
  @ApiOperation({ operationId: 'listOrganisations', summary: 'All organisations' })
  @Answers('OrganisationList')
  async list(): Promise<OrganisationList> {
    return { items: (await this.access.organisations()).map(organisationView) };
  }

  @Post()
  @ApiOperation({ operationId: 'createOrganisation', summary: 'Add an organisation' })
  @Answers('Organisation', { status: 201, headers: ['Location', 'ETag'] })
  async create(
    @CallerParam() caller: Caller,
    @Body() organisation: NewOrganisationDto,
    @Res({ passthrough: true }) response: Response,
  ): Promise<Organisation> {
    const row = await this.access.addOrganisation(caller, organisation);
    response.setHeader('Location', `/v1/organisations/${row.id}`);
    return tagged(row, response);
  }

  @Get(':id')
  @ApiOperation({ operationId: 'getOrganisation', summary: 'An organisation' })
  @Answers('Organisation', { headers: ['ETag'] })
  async one(@Param('id') id: string, @Res({ passthrough: true }) response: Response): Promise<Organisation> {
    return tagged(await this.access.organisation(id), response);
  }

  @Patch(':id')
  @Consumes(MERGE_PATCH_TYPE, JSON_TYPE)
  @ApiBody({
    description: 'RFC 7396 merge patch.',
    schema: { type: 'object', properties: { name: { type: 'string', maxLength: 200 } } },
  })
  @ApiOperation({ operationId: 'updateOrganisation', summary: 'Rename an organisation' })
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
