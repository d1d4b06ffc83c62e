import { USUAL_BODY_BYTES } from './edge/body.js';
import { LONGEST_DOCUMENT, LONGEST_LIST, SHOWN, shownText } from './edge/answer-limits.js';

type Node = Record<string, unknown>;

const file = (description: string): object => ({
  type: 'string',
  format: 'binary',
  description,
  minLength: 1,
  maxLength: LONGEST_DOCUMENT,
});

const document = (description: string, pattern: string): object => ({
  type: 'string',
  description,
  minLength: 0,
  maxLength: LONGEST_DOCUMENT,
  pattern,
});

/** Kinds of text in answers; what a request may say is limited field by field. */
export const namedTexts: Readonly<Record<string, object>> = {
  Text: {
    type: 'string',
    description: 'Words or a name, without control characters other than tab and line break.',
    ...shownText,
  },
  Instant: {
    type: 'string',
    description: 'RFC 3339 instant, with its offset from UTC.',
    format: 'date-time',
    minLength: 20,
    maxLength: 35,
    pattern: '^\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d+)?(Z|[+-]\\d\\d:\\d\\d)$',
  },
  Id: {
    type: 'string',
    description: 'Id that the service gave (UUID).',
    format: 'uuid',
    minLength: 36,
    maxLength: 36,
    pattern: '^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$',
  },
  Decimal: {
    type: 'string',
    description: 'Exact decimal text, with a point where it has a fraction.',
    minLength: 1,
    maxLength: 40,
    pattern: '^-?\\d+(\\.\\d+)?$',
  },
  Currency: {
    type: 'string',
    description: 'ISO 4217 code of a currency.',
    minLength: 3,
    maxLength: 3,
    pattern: '^[A-Z]{3}$',
  },
  UsText: {
    type: 'string',
    description: 'The field of the same name beside `us`, in US customary units; ≈ marks a rounded text.',
    minLength: 1,
    maxLength: 60,
    pattern: '^.*$',
  },
  CsvText: document('RFC 4180 rows under one row of headings.', SHOWN),
  CalendarText: document('RFC 5545 calendar.', '^BEGIN:VCALENDAR'),
  HtmlText: document('A page that needs nothing else to be read.', '^<!'),
  XmlText: document('XML 1.0 in UTF-8.', '^<'),
  SvgText: document('SVG 1.1, to scale.', '^<'),
  PdfFile: file('PDF/A, ready to print.'),
  DxfFile: file('ASCII DXF in mm, one layer for each kind of line.'),
  PngFile: file('PNG picture.'),
  JpegFile: file('JPEG picture.'),
  MergePatch: {
    type: 'object',
    description: 'RFC 7396 merge patch: what is named is replaced, null takes an optional member away.',
    maxProperties: 100,
    additionalProperties: {
      description: 'New value of the member, or null.',
      type: ['string', 'number', 'boolean', 'array', 'object', 'null'],
      minLength: 0,
      maxLength: USUAL_BODY_BYTES,
      pattern: '^[^\\x00]*$',
      minItems: 0,
      maxItems: LONGEST_LIST,
      items: {},
    },
  },
};

const ids = /^(?:organisationId|keyId|eventId|renewsId|renewedBy|rootId|publishableKeyId)$/;
const idWords = /^Ids? of the (?:event|estimate|key|organisation|operation|publishable|webhook|endpoint)/;

/** The kind of a text that says nothing of itself but its words; undefined for whatever is limited already. */
export function textNameOf(
  part: Node,
  member: string,
): { readonly name: string; readonly beside: Node } | undefined {
  const { type, ...beside } = part;
  const isPlain = Object.keys(beside).every((key) => key === 'description' || key === 'examples');
  return type === 'string' && isPlain
    ? { name: kindOf(member, String(beside.description ?? '')), beside }
    : undefined;
}

function kindOf(member: string, words: string): string {
  if (ids.test(member) || (member === 'id' && idWords.test(words))) return 'Id';
  if (member === 'currency') return 'Currency';
  if (/RFC 3339/.test(words) || /^(?:created|used|expires|revoked|published|finished)At$/i.test(member))
    return 'Instant';
  if (/decimal text|exact decimal/i.test(words)) return 'Decimal';
  return 'Text';
}
