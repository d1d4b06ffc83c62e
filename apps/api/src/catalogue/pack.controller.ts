import { Body, Controller, Delete, Get, Inject, Param, Patch, Put, Res } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiQuery, ApiTags, getSchemaPath } from '@nestjs/swagger';
import type { Response } from 'express';
import { Needs } from '../access/access.decorators.js';
import {
  AnswersNothing,
  AnswersSchema,
  ChangesVersion,
  editionSchema,
  mergePatchSchema,
  Refuses,
} from '../edge/endpoint.js';
import { Consumes, JSON_TYPE, MERGE_PATCH_TYPE } from '../edge/media.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { ReadsQuery } from '../edge/query.guard.js';
import { DraftQuery } from './items.controller.js';
import { ItemsService } from './items.service.js';
import { packOf, withoutPack, withPack, withPackPatched } from './packs.js';
import { Shelved, type ShelvedRequest } from './shelf-request.js';

const pack = { $ref: getSchemaPath('PackDto') };

/** One pack by its own address. Its ETag is that of its price list, because a list is kept and published whole. */
@ApiTags('Catalogue')
@Controller('v1/price-lists/:code/packs/:sku')
@Needs('prices:write')
export class PackController {
  constructor(@Inject(ItemsService) private readonly items: ItemsService) {}

  @Get()
  @ReadsQuery()
  @ApiQuery({
    name: 'edition',
    required: false,
    schema: editionSchema,
    description: 'Code of an edition; the current one when absent.',
  })
  @Needs('catalogue:read')
  @ApiOperation({
    operationId: 'getPack',
    summary: 'One pack of a price list',
    description: 'Its price, price breaks, mass and terms of carriage.',
  })
  @AnswersSchema(pack, [], { headers: ['ETag'] })
  async one(
    @Shelved('price_list') shelf: ShelvedRequest,
    @Param('code') code: string,
    @Param('sku') sku: string,
    @Res({ passthrough: true }) response: Response,
  ): Promise<unknown> {
    const { body, version } = await this.items.get(shelf, code);
    response.setHeader('ETag', tagOf(version));
    return packOf(body, sku);
  }

  @Put()
  @DraftQuery()
  @ApiBody({ schema: pack })
  @ApiOperation({
    operationId: 'putPack',
    summary: 'Put one pack into a price list of a draft, or in the place of another',
    description:
      'The whole pack is replaced; what is not given is gone. A merge patch changes single fields.',
  })
  @AnswersSchema(pack, [], { headers: ['ETag'] })
  @ChangesVersion()
  @Refuses('conflict')
  put(
    @Shelved('price_list') shelf: ShelvedRequest,
    @Param('code') code: string,
    @Param('sku') sku: string,
    @Body() given: unknown,
  ): Promise<unknown> {
    return this.changed(shelf, code, sku, (body) => withPack(body, sku, given));
  }

  @Patch()
  @Consumes(MERGE_PATCH_TYPE, JSON_TYPE)
  @DraftQuery()
  @ApiBody({ description: 'RFC 7396 merge patch of the pack.', schema: mergePatchSchema })
  @ApiOperation({
    operationId: 'updatePack',
    summary: 'Change one pack of a price list of a draft by merge patch, such as its price',
    description:
      'Fields named are replaced, null takes an optional one away, and the pack is then checked as a whole.',
  })
  @AnswersSchema(pack, [], { headers: ['ETag'] })
  @ChangesVersion()
  @Refuses('conflict')
  patch(
    @Shelved('price_list') shelf: ShelvedRequest,
    @Param('code') code: string,
    @Param('sku') sku: string,
    @Body() patch: unknown,
  ): Promise<unknown> {
    return this.changed(shelf, code, sku, (body) => withPackPatched(body, sku, patch));
  }

  @Delete()
  @AnswersNothing()
  @DraftQuery()
  @ApiOperation({
    operationId: 'deletePack',
    summary: 'Take one pack out of a price list of a draft',
    description: 'Estimates made with earlier editions keep it; those made with this one choose another.',
  })
  @ChangesVersion()
  @Refuses('conflict')
  async remove(
    @Shelved('price_list') shelf: ShelvedRequest,
    @Param('code') code: string,
    @Param('sku') sku: string,
  ): Promise<void> {
    await this.items.change(shelf, code, (body) => withoutPack(body, sku), unlessStale(shelf));
  }

  private async changed(
    shelf: ShelvedRequest,
    code: string,
    sku: string,
    update: (body: unknown) => unknown,
  ): Promise<unknown> {
    const { after } = await this.items.change(shelf, code, update, unlessStale(shelf));
    shelf.request.res?.setHeader('ETag', tagOf(after.version));
    return packOf(after.body, sku);
  }
}

const unlessStale =
  ({ request }: ShelvedRequest) =>
  (version: number): void => {
    refuseUnlessMatch(request, version);
  };
