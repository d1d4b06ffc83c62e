import { applyDecorators, HttpCode } from '@nestjs/common';
import { ApiHeader, ApiResponse } from '@nestjs/swagger';
import { USUAL_BODY_BYTES } from './body.js';
import {
  CALENDAR_TYPE,
  CSV_TYPE,
  DXF_TYPE,
  HTML_TYPE,
  JPEG_TYPE,
  PDF_TYPE,
  PNG_TYPE,
  SVG_TYPE,
  XML_TYPE,
} from './media.js';
import { otherPathPattern } from './path.guard.js';
import { problemKinds, type ProblemKind } from './problems.js';

type InlineSchema = Readonly<Record<string, unknown>>;

/** Documents a 200 answer by a schema given in place. */
export const Shown = (schema: InlineSchema, status = 200): MethodDecorator =>
  ApiResponse({ status, description: 'The answer.', schema });

/** Header fields that an answer can carry, with what they say. */
const knownHeaders = {
  'Location': 'Where the new resource is.',
  'ETag': 'The version of the resource.',
  'Link': 'RFC 8288: rel="next" leads to the next page.',
  'Retry-After': 'Seconds to wait before asking again.',
  'Preference-Applied': 'RFC 7240: respond-async when it was preferred and done.',
  'Idempotency-Replayed': 'true when the answer is that of an earlier request with the same key.',
} as const;

type KnownHeader = keyof typeof knownHeaders;

/** All fields of a request together have at most so many bytes, so that none is longer. */
export const LONGEST_FIELD = 16_384;

const headerSchemas: Readonly<Partial<Record<KnownHeader, InlineSchema>>> = {
  'Retry-After': { type: 'integer', format: 'int32', minimum: 0, maximum: 86_400 },
  'Idempotency-Replayed': { type: 'string', enum: ['true'] },
  'Preference-Applied': { type: 'string', enum: ['respond-async'] },
};

interface Answer {
  readonly status?: number;
  readonly description?: string;
  readonly headers?: readonly KnownHeader[];
}

/**
 * Documents an answer by the name of a type exported from `libs/` or `apps/api`; its schema is generated from the type
 * itself (`npm run gen`), so that the document cannot say something else than the code.
 */
export const Answers = (
  type: string,
  { status = 200, description = 'The answer.', headers = [] }: Answer = {},
): MethodDecorator =>
  ApiResponse({
    status,
    description,
    headers: headersOf(headers),
    schema: { $ref: `#/components/schemas/${type}` },
  });

/** Documents an answer that has other forms beside JSON, chosen by Accept. */
export const AnswersIn = (
  type: string,
  otherTypes: readonly string[],
  headers: readonly KnownHeader[] = [],
): MethodDecorator =>
  applyDecorators(
    ApiResponse({
      status: 200,
      description: 'The answer, in the form agreed by Accept.',
      headers: headersOf(headers),
      content: {
        'application/json': { schema: { $ref: `#/components/schemas/${type}` } },
        ...Object.fromEntries(otherTypes.map((other) => [other, { schema: contentSchema(other) }])),
      },
    }),
    ApiResponse({ status: 304, description: 'The caller has this version already.' }),
  );

/** Documents an answer whose schema is that of a request DTO, or is given in place. */
export const AnswersSchema = (
  schema: InlineSchema,
  otherTypes: readonly string[],
  { status = 200, description = 'The answer.', headers = [] }: Answer = {},
): MethodDecorator =>
  ApiResponse({
    status,
    description,
    headers: headersOf(headers),
    content: {
      'application/json': { schema },
      ...Object.fromEntries(otherTypes.map((other) => [other, { schema: contentSchema(other) }])),
    },
  });

/** A success that has nothing to say. */
export const AnswersNothing = (): MethodDecorator =>
  applyDecorators(HttpCode(204), ApiResponse({ status: 204, description: 'Done.' }));

/** A change to one version of a resource: If-Match says which (428 without it, 412 when it is not the present one). */
export const ChangesVersion = (): MethodDecorator =>
  applyDecorators(
    ApiHeader({
      name: 'If-Match',
      required: true,
      schema: headerText(LONGEST_FIELD),
      description: 'ETag of the version that is to be changed; 412 when it was changed since.',
    }),
    Refuses('precondition-failed', 'precondition-required'),
  );

/** `If-None-Match: *` keeps a change from taking the place of what stands there (412 where something does). */
export const MayBeForNewOnly = (taken: string): MethodDecorator =>
  applyDecorators(
    ApiHeader({
      name: 'If-None-Match',
      required: false,
      schema: headerText(LONGEST_FIELD),
      description: `\`*\`: refused with 412 when ${taken}, which then stays as it is.`,
    }),
    Refuses('precondition-failed'),
  );

/** Documents an answer that is never JSON. */
export const AnswersOnlyIn = (
  types: readonly string[],
  headers: readonly KnownHeader[] = [],
): MethodDecorator =>
  applyDecorators(
    ApiResponse({
      status: 200,
      description: 'The answer, in the form agreed by Accept.',
      headers: headersOf(headers),
      content: Object.fromEntries(types.map((type) => [type, { schema: contentSchema(type) }])),
    }),
    ...(headers.includes('ETag')
      ? [ApiResponse({ status: 304, description: 'The caller has this version already.' })]
      : []),
  );

/** Documents that the answer may come later: 202 with an operation to poll, when the caller prefers it or the work is long. */
export const MayAnswerLater = (what = 'document'): MethodDecorator =>
  applyDecorators(
    ApiHeader({
      name: 'Prefer',
      required: false,
      schema: headerText(LONGEST_FIELD),
      description: `\`respond-async\` (RFC 7240): answer 202 with an operation to poll instead of waiting for the ${what}.`,
    }),
    Answers('LongOperation', {
      status: 202,
      description: `The ${what} is being made; the operation at Location says when it is ready.`,
      headers: ['Location', 'Retry-After', 'Preference-Applied'],
    }),
  );

/** Each form that is no JSON has a schema under a name of its own, among those of `openapi-texts.ts`. */
const contentSchema = (type: string) => ({ $ref: `#/components/schemas/${documentNames[type]}` });

const documentNames: Readonly<Record<string, string>> = {
  [CSV_TYPE]: 'CsvText',
  [CALENDAR_TYPE]: 'CalendarText',
  [HTML_TYPE]: 'HtmlText',
  [XML_TYPE]: 'XmlText',
  [SVG_TYPE]: 'SvgText',
  [PDF_TYPE]: 'PdfFile',
  [DXF_TYPE]: 'DxfFile',
  [PNG_TYPE]: 'PngFile',
  [JPEG_TYPE]: 'JpegFile',
};

/** Of a route that takes a merge patch of an entry whose members depend on its kind. */
export const mergePatchSchema = { $ref: '#/components/schemas/MergePatch' };

/** A picture that is sent, of at most so many bytes. */
export const pictureSchema = (mostBytes: number) => ({
  type: 'string' as const,
  format: 'binary',
  minLength: 1,
  maxLength: mostBytes,
  description: 'The bytes of the picture.',
});

/** Code of an edition in a query. */
export const editionSchema = {
  type: 'string' as const,
  minLength: 1,
  maxLength: 80,
  pattern: otherPathPattern,
};

/** A sheet that is sent: as long as a request may be. */
export const sheetSchema = {
  type: 'string',
  minLength: 1,
  maxLength: USUAL_BODY_BYTES,
  pattern: '^[^\\x00]*$',
  description: 'A sheet with its headings in the first row.',
};

/** What a header field of a request or an answer may be. */
export const headerText = (mostCharacters: number) => ({
  type: 'string' as const,
  minLength: 1,
  maxLength: mostCharacters,
  pattern: '^[\\x20-\\x7E]*$',
});

/** Documents refusals that are a route's own; those of the edge are documented for all routes at once. */
export const Refuses = (...kinds: readonly ProblemKind[]): MethodDecorator =>
  applyDecorators(
    ...kinds.map((kind) =>
      ApiResponse({ status: problemKinds[kind].status, description: `${problemKinds[kind].title}.` }),
    ),
  );

export const headersOf = (names: readonly KnownHeader[]) =>
  Object.fromEntries(
    names.map((name) => [
      name,
      { description: knownHeaders[name], schema: headerSchemas[name] ?? headerText(LONGEST_FIELD) },
    ]),
  );
