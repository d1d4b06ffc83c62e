import { problemKinds } from '../edge/problems.js';

const kinds = Object.keys(problemKinds);

/** The shape of every refusal, as `problem-filter.ts` writes it. */
export const problemSchemas = {
  ProblemDocument: {
    type: 'object',
    description: 'RFC 9457 problem document; names all faults at once.',
    required: ['type', 'title', 'status', 'detail', 'requestId'],
    properties: {
      type: { type: 'string', format: 'uri-reference', enum: kinds.map((kind) => `/problems/${kind}`) },
      title: { type: 'string' },
      status: { type: 'integer', minimum: 400, maximum: 599 },
      detail: { type: 'string' },
      instance: { type: 'string', format: 'uri-reference' },
      requestId: { type: 'string' },
      errors: { type: 'array', maxItems: 100, items: { $ref: '#/components/schemas/ProblemEntry' } },
      errorCount: {
        type: 'integer',
        description: 'How many faults there are in all; errors shows the first 100.',
      },
    },
  },
  ProblemEntry: {
    type: 'object',
    required: ['code', 'title', 'detail', 'facts'],
    properties: {
      pointer: {
        type: 'string',
        format: 'json-pointer',
        description: 'RFC 6901 pointer into the request body; empty for the whole body.',
      },
      parameter: { type: 'string', description: 'Name of the query or path parameter.' },
      header: { type: 'string', description: 'Name of the header field.' },
      row: {
        type: 'integer',
        minimum: 2,
        description:
          'Row of a sheet, as a spreadsheet counts them: the headings are row 1. Empty lines do not count.',
      },
      column: { type: 'string', description: 'Heading of the column of a sheet.' },
      code: { type: 'string', description: 'Stable; see /problems.' },
      title: { type: 'string' },
      detail: { type: 'string', description: 'What is wrong, and what would be right.' },
      facts: {
        type: 'object',
        additionalProperties: { oneOf: [{ type: 'string' }, { type: 'number' }, { type: 'boolean' }] },
      },
    },
  },
} as const satisfies Readonly<Record<string, unknown>>;
