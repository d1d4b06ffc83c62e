import { LONGEST_TEXT, shownText } from '../edge/answer-limits.js';
import { problemKinds } from '../edge/problems.js';

const kinds = Object.keys(problemKinds);

/** The shape of every refusal, as `problem-filter.ts` writes it. */
export const problemSchemas = {
  ProblemDocument: {
    type: 'object',
    description: 'RFC 9457 problem document; names all faults at once.',
    required: ['type', 'title', 'status', 'detail', 'requestId'],
    properties: {
      type: {
        type: 'string',
        format: 'uri-reference',
        enum: kinds.map((kind) => `/problems/${kind}`),
        description: 'Address of a page that explains this kind of refusal.',
      },
      title: { type: 'string', description: 'The kind of refusal, in words.' },
      status: {
        type: 'integer',
        format: 'int32',
        minimum: 400,
        maximum: 599,
        description: 'HTTP status of the refusal.',
      },
      detail: { type: 'string', description: 'What was refused this time, and why.' },
      instance: {
        type: 'string',
        format: 'uri-reference',
        minLength: 1,
        maxLength: LONGEST_TEXT,
        pattern: '^/[\\s\\S]*$',
        description: 'Path that was asked.',
      },
      requestId: {
        type: 'string',
        description: 'Names the request in the logs; say it when you ask for help.',
      },
      errors: {
        type: 'array',
        maxItems: 100,
        items: { $ref: '#/components/schemas/ProblemEntry' },
        description: 'All that is wrong with the request, each with its place.',
      },
      errorCount: {
        type: 'integer',
        format: 'int32',
        minimum: 0,
        maximum: 1_000_000,
        description: 'How many faults there are in all; errors shows the first 100.',
      },
    },
  },
  ProblemEntry: {
    type: 'object',
    description: 'One thing that is wrong, with its place in the request.',
    required: ['code', 'title', 'detail', 'facts'],
    properties: {
      pointer: {
        type: 'string',
        format: 'json-pointer',
        minLength: 0,
        maxLength: LONGEST_TEXT,
        pattern: '^(/[\\s\\S]*)?$',
        description: 'RFC 6901 pointer into the request body; empty for the whole body.',
      },
      parameter: { type: 'string', description: 'Name of the query or path parameter.' },
      header: { type: 'string', description: 'Name of the header field.' },
      row: {
        type: 'integer',
        format: 'int32',
        minimum: 2,
        maximum: 1_000_000,
        description:
          'Row of a sheet, as a spreadsheet counts them: the headings are row 1. Empty lines do not count.',
      },
      column: { type: 'string', description: 'Heading of the column of a sheet.' },
      code: { type: 'string', description: 'Stable; see /problems.' },
      title: { type: 'string', description: 'The kind of fault, in words.' },
      detail: { type: 'string', description: 'What is wrong, and what would be right.' },
      facts: {
        type: 'object',
        description: 'Numbers and words of the detail, by name.',
        additionalProperties: {
          type: ['string', 'number', 'boolean'],
          ...shownText,
          description: 'A number or word.',
        },
      },
    },
  },
} as const satisfies Readonly<Record<string, unknown>>;
