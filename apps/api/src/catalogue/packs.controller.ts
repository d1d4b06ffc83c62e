import { Body, Controller, Get, Inject, Param, Put, Query, Res } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiTags, getSchemaPath } from '@nestjs/swagger';
import type { Response } from 'express';
import { CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller } from '../access/roles.js';
import { AnswersSchema, ChangesVersion, Refuses, sheetSchema } from '../edge/endpoint.js';
import { Consumes, CSV_TYPE, JSON_TYPE, Produces } from '../edge/media.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { csvOf, documentsFrom } from './csv-documents.js';
import { EditionQueryDto } from './dto/editions.dto.js';
import { PackDto } from './dto/prices.dto.js';
import { DraftQuery } from './items.controller.js';
import { ItemsService } from './items.service.js';
import { packsOf } from './packs.js';
import { sheetWork } from './sheet-places.js';
import { Shelved, type ShelvedRequest } from './shelf-request.js';

const packList = {
  type: 'object',
  required: ['packs'],
  properties: {
    packs: {
      type: 'array',
      items: { $ref: getSchemaPath('PackDto') },
      description: 'Packs of the list, one entry for each.',
    },
  },
};

/** The packs of a price list as a supplier's sheet has them: one a row. */
@ApiTags('Catalogue')
@Controller('v1/price-lists/:code/packs')
@Needs('catalogue:read')
export class PacksController {
  constructor(@Inject(ItemsService) private readonly items: ItemsService) {}

  @Get()
  @Produces(JSON_TYPE, CSV_TYPE)
  @ApiOperation({
    operationId: 'listPacks',
    summary: 'The packs of a price list, as JSON or CSV, one a row',
    description:
      'With `Accept: text/csv` the columns are those that the replacement of packs takes, so that a sheet can be changed and sent back.',
  })
  @AnswersSchema(packList, [CSV_TYPE], { headers: ['ETag'] })
  async list(
    @CallerParam() caller: Caller,
    @Param('code') code: string,
    @Query() { edition }: EditionQueryDto,
    @Res() response: Response,
  ): Promise<void> {
    const { body, version } = await this.items.get({ caller, table: 'price_list', edition }, code);
    response.setHeader('ETag', tagOf(version));
    const packs = packsOf(body);
    if (response.locals.mediaType === CSV_TYPE) response.type(CSV_TYPE).send(csvOf(packs));
    else response.json({ packs });
  }

  @Put()
  @Consumes(CSV_TYPE)
  @Needs('prices:write')
  @DraftQuery()
  @ApiBody({ schema: sheetSchema })
  @ApiOperation({
    operationId: 'replacePacks',
    summary: 'Replace all packs of a price list in a draft from CSV, one a row',
    description:
      'Packs that the sheet does not name are gone afterwards. All or none: one wrong row leaves the list as it was, and every fault is named by row and column.',
  })
  @AnswersSchema(packList, [], { headers: ['ETag'] })
  @ChangesVersion()
  @Refuses('conflict')
  async replace(
    @Shelved('price_list') shelf: ShelvedRequest,
    @Param('code') code: string,
    @Body() csv: unknown,
    @Res({ passthrough: true }) response: Response,
  ): Promise<{ readonly packs: readonly unknown[] }> {
    const packs = documentsFrom(String(csv), () => PackDto);
    const { body, version } = await sheetWork('/packs', async () =>
      this.items.patch(shelf, code, { packs }, (present) => {
        refuseUnlessMatch(shelf.request, present);
      }),
    );
    response.setHeader('ETag', tagOf(version));
    return { packs: packsOf(body) };
  }
}
