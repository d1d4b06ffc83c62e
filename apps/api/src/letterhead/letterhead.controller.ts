import { Body, Controller, Delete, Get, Put, Req } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import {
  Answers,
  AnswersNothing,
  AnswersOnlyIn,
  ChangesVersion,
  pictureSchema,
  Refuses,
} from '../edge/endpoint.js';
import { Consumes, JPEG_TYPE, PNG_TYPE, Produces } from '../edge/media.js';
import { isFresh, refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { logoLimits } from './logo-limits.js';
import { LetterheadDto } from './letterhead.dto.js';
import { letterheadView, type OrganisationLetterhead } from './letterhead-view.js';
import { LetterheadService, type NamedLetterhead } from './letterhead.service.js';

/** Lines and logo share one version, so that nobody changes the one unseen by whoever changes the other. */
@ApiTags('Access')
@Controller('v1/letterhead')
export class LetterheadController {
  constructor(private readonly letterheads: LetterheadService) {}

  @Get()
  @Needs('letterhead:read')
  @ApiOperation({
    operationId: 'getLetterhead',
    summary: 'What stands at the head of the documents of the own organisation',
    description: 'Name of the organisation, the lines under it, and where the logo is if there is one.',
  })
  @Answers('OrganisationLetterhead', { headers: ['ETag'] })
  async one(@CallerParam() caller: Caller, @Req() request: Request): Promise<OrganisationLetterhead> {
    return tagged(await this.letterheads.letterhead(caller), request);
  }

  @Put()
  @Needs('letterhead:write')
  @ApiOperation({
    operationId: 'setLetterhead',
    summary: 'Set the lines of the letterhead; the name is that of the organisation',
    description: 'The lines count for documents that are made from now on.',
  })
  @Answers('OrganisationLetterhead', { headers: ['ETag'] })
  @ChangesVersion()
  async set(
    @CallerParam() caller: Caller,
    @Body() text: LetterheadDto,
    @Req() request: Request,
  ): Promise<OrganisationLetterhead> {
    return tagged(
      await this.letterheads.setText(caller, text, (version) => {
        refuseUnlessMatch(request, version);
      }),
      request,
    );
  }

  @Get('logo')
  @Needs('letterhead:read')
  @Produces(PNG_TYPE)
  @ApiOperation({
    operationId: 'getLogo',
    summary: 'The logo as it is printed',
    description: 'A PNG, whatever form it was given in.',
  })
  @AnswersOnlyIn([PNG_TYPE], ['ETag'])
  @Refuses('not-found')
  async logo(@CallerParam() caller: Caller, @Req() request: Request): Promise<void> {
    const response = request.res;
    if (response === undefined) return;
    const { logo, version } = await this.letterheads.logo(caller);
    response.setHeader('ETag', tagOf(version));
    if (isFresh(request, tagOf(version))) response.status(304).end();
    else response.type(PNG_TYPE).send(Buffer.from(logo));
  }

  @Put('logo')
  @Needs('letterhead:write')
  @Consumes(PNG_TYPE, JPEG_TYPE)
  @ApiBody({ schema: pictureSchema(logoLimits.mostBytes) })
  @ApiOperation({
    operationId: 'setLogo',
    summary: 'Set the logo of the letterhead',
    description: `A PNG or JPEG of at most ${logoLimits.mostBytes} bytes and ${logoLimits.mostPixelsASide} pixels a side, judged by its content. It is drawn anew at the size it is printed, so that nothing hidden in the file is kept. Drawings that can hold programs, such as SVG, are not taken.`,
  })
  @Answers('OrganisationLetterhead', { headers: ['ETag'] })
  @ChangesVersion()
  async setLogo(
    @CallerParam() caller: Caller,
    @Body() uploaded: unknown,
    @Req() request: Request,
  ): Promise<OrganisationLetterhead> {
    const bytes = uploaded instanceof Uint8Array ? uploaded : new Uint8Array();
    return tagged(
      await this.letterheads.setLogo(caller, bytes, (version) => {
        refuseUnlessMatch(request, version);
      }),
      request,
    );
  }

  @Delete('logo')
  @Needs('letterhead:write')
  @AnswersNothing()
  @Refuses('not-found')
  @ApiOperation({
    operationId: 'removeLogo',
    summary: 'Take the logo off the letterhead',
    description: 'Documents that are made from now on have the name alone.',
  })
  @ChangesVersion()
  async removeLogo(@CallerParam() caller: Caller, @Req() request: Request): Promise<void> {
    await this.letterheads.removeLogo(caller, (version) => {
      refuseUnlessMatch(request, version);
    });
  }
}

function tagged({ name, state }: NamedLetterhead, request: Request): OrganisationLetterhead {
  request.res?.setHeader('ETag', tagOf(state.version));
  return letterheadView(name, state);
}
