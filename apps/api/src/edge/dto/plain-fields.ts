import { getSchemaPath } from '@nestjs/swagger';
import { codeForm, decimalForm } from '#lib/asking';
import { below, problem, type Problem } from '#lib/kernel';
import { numberFaults, numberSchema, type Range } from './quantities.js';
import { Field, filled, isRecord, problemsOf, shownValue, type DtoClass, type Said } from './field.js';

interface TextLimits {
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly form?: { readonly pattern: RegExp; readonly words: string };
}

/** A text; 200 characters at most unless told. `form` holds a pattern and the words that explain it. */
export const Text = (said: TextLimits & Said = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: textInWords(said),
    check: (value) => textFaults(value, said),
    schema: { ...textSchema(said), ...described(said) },
  });

const textInWords = ({ atLeast = 1, atMost = 200, form }: TextLimits): string =>
  form?.words ?? `text of ${atLeast} to ${atMost} characters`;

/**
 * What every text keeps to, in a form that patterns of all languages read alike; the marks that `unusableIn` refuses
 * besides cannot be written so.
 */
const USABLE = '^[^\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F-\\x9F]*$';

const textSchema = ({ atLeast = 1, atMost = 200, form }: TextLimits) => ({
  type: 'string' as const,
  minLength: atLeast,
  maxLength: atMost,
  pattern: form === undefined ? USABLE : form.pattern.source,
});

/** A text without limits of its own, for a schema that no class stands for. */
export const usualText = textSchema({});

/** A stable code: lower-case words joined by hyphens. */
export const Code = (said: Said = {}): PropertyDecorator => Text({ ...said, ...codeForm });

/** An ISO 8601 calendar date. */
export const CalendarDate = (said: Said = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a date such as 2027-04-30',
    check: dateFaults,
    schema: { ...dateSchema, ...described(said) },
  });

/** A list of calendar dates. */
export const CalendarDates = (said: Said & ListLimits = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a list of dates such as 2027-04-30',
    check: (value) => listFaults(value, { of: 'dates', ...said }, dateFaults),
    schema: { type: 'array', items: dateSchema, ...listSchema(said), ...described(said) },
  });

const dateSchema = {
  type: 'string' as const,
  format: 'date',
  minLength: 10,
  maxLength: 10,
  pattern: '^\\d{4}-\\d\\d-\\d\\d$',
};

const dateFaults = (value: unknown): readonly Problem[] =>
  isCalendarDate(value)
    ? []
    : [
        problem('not-in-form', '', {
          value: shownValue(value),
          form: 'a calendar date such as 2027-04-30',
        }),
      ];

/** Exact decimal text, such as a price: "12.50". */
export const DecimalText = (said: Said & { readonly decimals?: number } = {}): PropertyDecorator =>
  Text({ ...said, ...decimalForm(said.decimals) });

export const Flag = (said: Said = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'true or false',
    check: (value) =>
      typeof value === 'boolean' ? [] : [problem('not-a-flag', '', { value: shownValue(value) })],
    schema: { type: 'boolean', ...described(said) },
  });

/** One of a closed set of words. */
export const OneOf = (choices: readonly string[], said: Said = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: `one of ${choices.join(', ')}`,
    check: (value) => choiceFaults(value, choices),
    schema: { type: 'string', enum: [...choices], ...described(said) },
  });

/** A list of words of a closed set, each at most once. */
export const SomeOf = (choices: readonly string[], said: Said & ListLimits = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: `a list of ${choices.join(', ')}`,
    check: (value) => [
      ...listFaults(value, { of: 'words', ...said }, (item) => choiceFaults(item, choices)),
      ...repeatFaults(value),
    ],
    schema: {
      type: 'array',
      items: { type: 'string', enum: [...choices] },
      uniqueItems: true,
      ...listSchema(said),
      ...described(said),
    },
  });

/** A list of plain numbers of one unit. */
export const Nums = ({
  each = {},
  ...said
}: Said & ListLimits & { readonly each?: Range & { readonly unit?: string } } = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a list of numbers',
    check: (value) =>
      listFaults(value, { of: 'numbers', ...said }, (one) => numberFaults(one, each, each.unit ?? '1')),
    schema: { type: 'array', items: numberSchema(each), ...listSchema(said), ...described(said) },
  });

/** A list of texts. */
export const Texts = (said: Said & ListLimits & { readonly each?: TextLimits } = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a list of texts',
    check: (value) =>
      listFaults(value, { of: 'texts', ...said }, (item) => textFaults(item, said.each ?? {})),
    schema: {
      type: 'array',
      items: textSchema(said.each ?? {}),
      ...listSchema(said),
      ...described(said),
    },
  });

/** A nested object of another DTO class. */
export const Part = (type: () => DtoClass, said: Said = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'an object',
    part: type,
    read: (raw) => filled(type(), raw),
    check: partFaults,
    schema: { type: () => type(), ...described(said) },
  });

/** A list of nested objects of another DTO class. */
export const Parts = (type: () => DtoClass, said: Said & ListLimits = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a list of objects',
    part: type,
    read: (raw) =>
      Array.isArray(raw) && raw.length <= mostOf(said) ? raw.map((item) => filled(type(), item)) : raw,
    check: (value) => listFaults(value, { of: 'objects', ...said }, partFaults),
    schema: { type: () => type(), isArray: true, ...listSchema(said), ...described(said) },
  });

/** A list whose objects are of several kinds, told apart by the word in one of their fields. */
export const PartsByKind = (
  discriminator: string,
  kinds: () => Readonly<Record<string, DtoClass>>,
  said: Said & ListLimits = {},
): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a list of objects',
    read: (raw) =>
      Array.isArray(raw) && raw.length <= mostOf(said)
        ? raw.map((item) => filledByKind(discriminator, kinds(), item))
        : raw,
    check: (value) =>
      listFaults(value, { of: 'objects', ...said }, (item) => kindFaults(discriminator, kinds(), item)),
    schema: {
      type: 'array',
      items: {
        oneOf: schemasOf(kinds),
        discriminator: { propertyName: discriminator, mapping: mappingOf(kinds) },
      },
      ...listSchema(said),
      ...described(said),
    },
  });

const schemasOf = (kinds: () => Readonly<Record<string, DtoClass>>) =>
  Object.values(kinds()).map((type) => ({ $ref: getSchemaPath(type.name) }));

/** Without it a reader takes the name of a schema for the word in the field. */
const mappingOf = (kinds: () => Readonly<Record<string, DtoClass>>): Record<string, string> =>
  Object.fromEntries(Object.entries(kinds()).map(([kind, type]) => [kind, getSchemaPath(type.name)]));

export interface ListLimits {
  readonly least?: number;
  readonly most?: number;
}

/** Lists without a limit of their own; no list in a request has reason to be longer. */
const MOST_ENTRIES = 1000;
const mostOf = ({ most }: ListLimits): number => most ?? MOST_ENTRIES;

export const listSchema = (limits: ListLimits) => ({ minItems: limits.least ?? 0, maxItems: mostOf(limits) });

export function listFaults(
  value: unknown,
  limits: ListLimits & { readonly of: string },
  each: (item: unknown) => readonly Problem[],
): readonly Problem[] {
  if (!Array.isArray(value)) return [problem('not-a-list', '', { of: limits.of, value: shownValue(value) })];
  if (value.length > mostOf(limits))
    return [problem('too-many', '', { count: value.length, most: mostOf(limits) })];
  const short =
    value.length < (limits.least ?? 0)
      ? [problem('too-few', '', { count: value.length, least: limits.least ?? 0 })]
      : [];
  return [...short, ...value.flatMap((item, index) => below(`/${index}`, each(item)))];
}

export const partFaults = (value: unknown): readonly Problem[] =>
  isRecord(value) ? problemsOf(value) : [problem('not-an-object', '', { value: shownValue(value) })];

function filledByKind(
  discriminator: string,
  kinds: Readonly<Record<string, DtoClass>>,
  raw: unknown,
): unknown {
  const kind = isRecord(raw) ? raw[discriminator] : undefined;
  return typeof kind === 'string' && Object.hasOwn(kinds, kind) ? filled(kinds[kind], raw) : raw;
}

function kindFaults(
  discriminator: string,
  kinds: Readonly<Record<string, DtoClass>>,
  value: unknown,
): readonly Problem[] {
  if (!isRecord(value)) return partFaults(value);
  const kind = value[discriminator];
  if (kind === undefined)
    return [problem('missing', `/${discriminator}`, { expected: `one of ${Object.keys(kinds).join(', ')}` })];
  const wrong = below(`/${discriminator}`, choiceFaults(kind, Object.keys(kinds)));
  return wrong.length > 0 ? wrong : partFaults(value);
}

export const choiceFaults = (value: unknown, choices: readonly string[]): readonly Problem[] =>
  typeof value === 'string' && choices.includes(value)
    ? []
    : [problem('not-one-of', '', { value: shownValue(value), choices: choices.join(', ') })];

export function textFaults(
  value: unknown,
  { atLeast = 1, atMost = 200, form }: TextLimits,
): readonly Problem[] {
  if (typeof value !== 'string')
    return [
      problem('not-text', '', { value: shownValue(value), expected: textInWords({ atLeast, atMost, form }) }),
    ];
  if (value.length < atLeast || value.length > atMost)
    return [problem('text-length', '', { count: value.length, range: `${atLeast} to ${atMost} characters` })];
  const unusable = unusableIn(value);
  if (unusable !== undefined) return [problem('unusable-text', '', { what: unusable })];
  if (form !== undefined && !form.pattern.test(value))
    return [problem('not-in-form', '', { value: shownValue(value), form: form.words })];
  return [];
}

const repeatFaults = (value: unknown): readonly Problem[] =>
  !Array.isArray(value) || value.length > MOST_ENTRIES
    ? []
    : value.flatMap((item: unknown, index) =>
        value.indexOf(item) === index ? [] : [problem('duplicate', `/${index}`, { value: shownValue(item) })],
      );

/**
 * What a text may not hold: control characters other than tab and line break, which no document can show, and marks that
 * turn round the direction of whatever follows, by which a name could make an amount beside it read otherwise. Isolates
 * are left, since right-to-left names need them; documents show them by their code.
 */
function unusableIn(text: string): string | undefined {
  const [found] = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u202A-\u202E]/.exec(text) ?? [];
  if (found === undefined) return undefined;
  const code = `U+${found.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
  return found >= '\u202A'
    ? `the character ${code}, which turns the direction of the text after it`
    : `the control character ${code}`;
}

function isCalendarDate(value: unknown): boolean {
  if (typeof value !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(value)) return false;
  const date = new Date(`${value}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(value);
}

const described = ({ description, example }: Said) => ({
  ...(description === undefined ? {} : { description }),
  ...(example === undefined ? {} : { examples: [example] }),
});
