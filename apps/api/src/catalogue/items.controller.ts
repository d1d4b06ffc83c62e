import {
  applyDecorators,
  Body,
  Controller,
  Delete,
  Get,
  HttpCode,
  Inject,
  Param,
  Patch,
  Post,
  Query,
  Res,
  type Type,
  UseInterceptors,
} from '@nestjs/common';
import {
  ApiBody,
  ApiExcludeController,
  ApiExtraModels,
  ApiOperation,
  ApiQuery,
  ApiTags,
  getSchemaPath,
} from '@nestjs/swagger';
import type { Response } from 'express';
import { currencyCodes } from '#lib/money';
import { keepToLimits, LONGEST_LIST } from '../edge/answer-limits.js';
import { Superseded } from '../edge/superseded.js';
import { CallerParam, Needs } from '../access/access.decorators.js';
import type { Caller, Permission } from '../access/roles.js';
import type { History } from '../audit/history.js';
import { ruleOf, type DtoClass } from '../edge/dto/field.js';
import { OneOf } from '../edge/dto/index.js';
import {
  Answers,
  AnswersNothing,
  AnswersSchema,
  ChangesVersion,
  editionSchema,
  mergePatchSchema,
  Refuses,
  sheetSchema,
} from '../edge/endpoint.js';
import { Consumes, CSV_TYPE, JSON_TYPE, MERGE_PATCH_TYPE, Produces } from '../edge/media.js';
import { refuseUnlessMatch, tagOf } from '../edge/preconditions.js';
import { ReadsQuery } from '../edge/query.guard.js';
import type { CatalogueTable } from './catalogue-rows.js';
import { csvOf } from './csv-documents.js';
import { EditionQueryDto } from './dto/editions.dto.js';
import { materialClasses, materialKinds } from './dto/materials.dto.js';
import { LabourRatesDto, PriceListDto } from './dto/prices.dto.js';
import { SourceDto, waysOfReading } from './dto/source.dto.js';
import type { ItemRow } from './items.repository.js';
import { ItemsService } from './items.service.js';
import { sheetWork } from './sheet-places.js';
import { Shelved, type ShelvedRequest } from './shelf-request.js';

interface Resource {
  readonly table: CatalogueTable;
  readonly path: string;
  /** Singular and plural, as the operations are named. */
  readonly one: string;
  readonly many: string;
  /** One of them in a sentence. */
  readonly called: string;
  readonly classes: readonly DtoClass[];
  /** What it takes to change them. */
  readonly writing: Permission;
  readonly narrowing: Narrowing;
}

/** What a list can be narrowed to, and the parameter that says so. */
interface Narrowing {
  readonly by: 'kind' | 'currency' | 'readAs';
  readonly choices: readonly string[];
  readonly words: string;
}

const byCurrency: Narrowing = {
  by: 'currency',
  choices: currencyCodes,
  words: 'Only those in this currency (ISO 4217).',
};

const resources: readonly Resource[] = [
  {
    table: 'material',
    path: 'materials',
    one: 'Material',
    many: 'Materials',
    called: 'material',
    classes: materialClasses,
    writing: 'catalogue:write',
    narrowing: { by: 'kind', choices: Object.keys(materialKinds), words: 'Only materials of this kind.' },
  },
  {
    table: 'price_list',
    path: 'price-lists',
    one: 'PriceList',
    many: 'PriceLists',
    called: 'price list',
    classes: [PriceListDto],
    writing: 'prices:write',
    narrowing: byCurrency,
  },
  {
    table: 'labour_rates',
    path: 'labour-rates',
    one: 'LabourRates',
    many: 'AllLabourRates',
    called: 'set of labour rates',
    classes: [LabourRatesDto],
    writing: 'catalogue:write',
    narrowing: byCurrency,
  },
  {
    table: 'source',
    path: 'sources',
    one: 'Source',
    many: 'Sources',
    called: 'source',
    classes: [SourceDto],
    writing: 'catalogue:write',
    narrowing: { by: 'readAs', choices: waysOfReading, words: 'Only sources read in this way.' },
  },
];

const documentSchema = ({ classes }: Resource) =>
  classes.length === 1
    ? { $ref: getSchemaPath(classes[0].name) }
    : {
        'x-name': 'Material',
        'oneOf': classes.map(({ name }) => ({ $ref: getSchemaPath(name) })),
        'discriminator': {
          propertyName: 'kind',
          mapping: Object.fromEntries(
            classes.flatMap((type) => kindOf(type).map((kind) => [kind, getSchemaPath(type.name)])),
          ),
        },
      };

/** The one word that a class of materials takes as its kind. */
const kindOf = (type: DtoClass): readonly string[] => {
  const words: unknown = ruleOf(type, 'kind')?.schema.enum;
  return Array.isArray(words) ? words.map(String) : [];
};

/** In the plural, as the address has it. */
const allOf = ({ path }: Resource): string => path.replace('-', ' ');

export const DraftQuery = (): MethodDecorator =>
  applyDecorators(
    ReadsQuery(),
    ApiQuery({
      name: 'edition',
      required: true,
      schema: editionSchema,
      description: 'Code of the draft; a published edition is refused.',
    }),
  );

const listSchema = (resource: Resource) => ({
  type: 'object',
  required: ['edition', 'items'],
  properties: {
    edition: { type: 'string', description: `Code of the edition that holds these ${allOf(resource)}.` },
    items: {
      type: 'array',
      items: documentSchema(resource),
      description: `All ${allOf(resource)} of the edition that were asked for, by code.`,
    },
  },
});

const listSaid = (resource: Resource) => ({
  operationId: `list${resource.many}`,
  summary: `The ${allOf(resource)} of an edition, as JSON or CSV`,
  description: `All ${allOf(resource)} of the current edition, or of the one named. \`Accept: text/csv\` gives the columns of an import.`,
});

const historySaid = (resource: Resource) => ({
  operationId: `get${resource.one}History`,
  summary: `Who changed what about a ${resource.called}`,
  description: `Changes of this ${resource.called} over all editions of the organisation, newest first.`,
});

/** A query says `kind` for what has kinds; elsewhere the word stands for the right one until July 2027. */
function askFor(query: object, { by, choices, words }: Narrowing): void {
  const earlier = by === 'kind' ? '' : ' Its earlier name `kind` is taken until July 2027.';
  OneOf(choices, { optional: true, description: `${words}${earlier}` })(query, by);
  if (by !== 'kind') OneOf(choices, { optional: true, isEarlierName: true })(query, 'kind');
}

interface Narrowed extends EditionQueryDto {
  readonly kind?: string;
  readonly currency?: string;
  readonly readAs?: string;
}

/** The class to extend for the query of a list that can be narrowed. */
function narrowedBy(narrowing: Resource['narrowing']): new () => Narrowed {
  class NarrowedQuery extends EditionQueryDto {}
  askFor(NarrowedQuery.prototype, narrowing);
  return NarrowedQuery;
}

function readingController(resource: Resource): Type {
  const { table, path, one, called, classes, narrowing } = resource;

  class ItemsQueryDto extends narrowedBy(narrowing) {}

  @ApiTags('Catalogue')
  @ApiExtraModels(...classes.map((type) => Object.assign(type)))
  @Controller(`v1/${path}`)
  @Needs('catalogue:read')
  class ReadingController {
    constructor(@Inject(ItemsService) private readonly items: ItemsService) {}

    @Get()
    @Produces(JSON_TYPE, CSV_TYPE)
    @ApiOperation(listSaid(resource))
    @AnswersSchema(listSchema(resource), [CSV_TYPE])
    @Refuses('not-found')
    async list(
      @CallerParam() caller: Caller,
      @Query() { edition, ...narrowed }: ItemsQueryDto,
      @Res() response: Response,
    ): Promise<void> {
      const to = narrowed[narrowing.by] ?? narrowed.kind;
      const listed = await this.items.list({ caller, table, edition }, to);
      const documents = listed.items.map(({ body }) => body);
      if (response.locals.mediaType === CSV_TYPE) response.type(CSV_TYPE).send(csvOf(documents));
      else {
        keepToLimits(documents);
        response.json({ edition: listed.edition.code, items: documents });
      }
    }

    @Get(':code')
    @ApiOperation({
      operationId: `get${one}`,
      summary: `One ${called}`,
      description: `The ${called} as the current edition or the one named holds it, with the ETag that a change names.`,
    })
    @AnswersSchema(documentSchema(resource), [], { headers: ['ETag'] })
    async one(
      @CallerParam() caller: Caller,
      @Param('code') code: string,
      @Query() { edition }: EditionQueryDto,
      @Res({ passthrough: true }) response: Response,
    ): Promise<unknown> {
      return tagged(await this.items.get({ caller, table, edition }, code), response);
    }

    @Get(':code/history')
    @ApiOperation(historySaid(resource))
    @Answers('History')
    history(@CallerParam() caller: Caller, @Param('code') code: string): Promise<History> {
      return this.items.history({ caller, table }, code);
    }
  }
  return ReadingController;
}

function changingController(resource: Resource): Type {
  const { table, path, one, called, writing } = resource;
  const document = documentSchema(resource);

  @ApiTags('Catalogue')
  @Controller(`v1/${path}`)
  @Needs(writing)
  class ChangingController {
    constructor(@Inject(ItemsService) private readonly items: ItemsService) {}

    @Post()
    @DraftQuery()
    @ApiBody({ schema: document })
    @ApiOperation({
      operationId: `create${one}`,
      summary: `Add a ${called} to a draft`,
      description: `A whole ${called}; a code that is taken is refused with 409. What it refers to is looked for on publication.`,
    })
    @AnswersSchema(document, [], { status: 201, headers: ['Location', 'ETag'] })
    @Refuses('conflict', 'not-found')
    async create(
      @Shelved(table) shelf: ShelvedRequest,
      @Body() body: unknown,
      @Res({ passthrough: true }) response: Response,
    ): Promise<unknown> {
      const row = await this.items.add(shelf, body);
      response.setHeader('Location', `/v1/${path}/${row.code}?edition=${shelf.edition ?? ''}`);
      return tagged(row, response);
    }

    @Patch(':code')
    @Consumes(MERGE_PATCH_TYPE, JSON_TYPE)
    @DraftQuery()
    @ApiBody({ description: 'RFC 7396 merge patch.', schema: mergePatchSchema })
    @ApiOperation({
      operationId: `update${one}`,
      summary: `Change a ${called} of a draft by merge patch`,
      description: `Fields named are replaced, null takes an optional one away, and the ${called} is then checked as a whole.`,
    })
    @AnswersSchema(document, [], { headers: ['ETag'] })
    @ChangesVersion()
    @Refuses('conflict')
    async patch(
      @Shelved(table) shelf: ShelvedRequest,
      @Param('code') code: string,
      @Body() patch: unknown,
      @Res({ passthrough: true }) response: Response,
    ): Promise<unknown> {
      return tagged(
        await this.items.patch(shelf, code, patch, (version) => {
          refuseUnlessMatch(shelf.request, version);
        }),
        response,
      );
    }
  }
  return ChangingController;
}

function removingController(resource: Resource): Type {
  const { table, path, one, called, writing } = resource;

  @ApiTags('Catalogue')
  @Controller(`v1/${path}`)
  @Needs(writing)
  class RemovingController {
    constructor(@Inject(ItemsService) private readonly items: ItemsService) {}

    @Delete(':code')
    @AnswersNothing()
    @DraftQuery()
    @ApiOperation({
      operationId: `delete${one}`,
      summary: `Remove a ${called} from a draft`,
      description: `What still refers to the ${called} is named, and refused, on publication.`,
    })
    @ChangesVersion()
    @Refuses('conflict')
    async remove(@Shelved(table) shelf: ShelvedRequest, @Param('code') code: string): Promise<void> {
      await this.items.remove(shelf, code, (version) => {
        refuseUnlessMatch(shelf.request, version);
      });
    }
  }
  return RemovingController;
}

/** Until an entry could be called `import`, sheets were sent to that address below the entries. */
const FORMER_IMPORT = { since: new Date('2026-12-01T00:00:00Z'), until: new Date('2027-07-01T00:00:00Z') };

function importControllers(resource: Resource): readonly Type[] {
  const { table, path, many, called, writing } = resource;

  @ApiTags('Catalogue')
  @Controller(`v1/imports/${path}`)
  @Needs(writing)
  class ImportController {
    constructor(@Inject(ItemsService) private readonly items: ItemsService) {}

    @Post()
    @HttpCode(200)
    @Consumes(CSV_TYPE)
    @DraftQuery()
    @ApiBody({ schema: sheetSchema })
    @ApiOperation({
      operationId: `import${many}`,
      summary: `Add or replace ${allOf(resource)} of a draft from CSV, all or none`,
      description: `A row for each ${called}; known codes are replaced, others stay. One wrong row stops all; each fault is named by row and column.`,
    })
    @AnswersSchema(
      {
        type: 'object',
        required: ['imported'],
        properties: {
          imported: {
            type: 'integer',
            format: 'int32',
            minimum: 0,
            maximum: LONGEST_LIST,
            description: `Rows of ${allOf(resource)} that were taken.`,
          },
        },
      },
      [],
    )
    @Refuses('conflict', 'not-found')
    async import(
      @Shelved(table) shelf: ShelvedRequest,
      @Body() csv: unknown,
    ): Promise<{ readonly imported: number }> {
      return { imported: await sheetWork('', async () => this.items.import(shelf, String(csv))) };
    }
  }
  @ApiExcludeController()
  @Controller(`v1/${path}/import`)
  @Needs(writing)
  @UseInterceptors(new Superseded({ ...FORMER_IMPORT, successor: `/v1/imports/${path}` }))
  class FormerImportController extends ImportController {}

  // The former address comes first, as it must before one that ends with a code.
  return [FormerImportController, ImportController];
}

function tagged({ body, version }: ItemRow, response: Response): unknown {
  response.setHeader('ETag', tagOf(version));
  return body;
}

/** The four kinds of catalogue entries differ only in their documents, so their controllers are made alike. */
export const itemControllers: readonly Type[] = resources.flatMap((resource) => [
  readingController(resource),
  changingController(resource),
  removingController(resource),
  ...importControllers(resource),
]);
