import { pointer, problem, type Problem } from '#lib/kernel';
import type { Wording } from './ask-number.js';
import { choiceFaults, countFaults, repeatedFaults } from './request-faults.js';
import { otherwiseIn, settledOr } from './settled-or.js';
import type {
  Answer,
  Assumption,
  Count,
  Form,
  Otherwise,
  Question,
  SettledAs,
  TextLimits,
} from './question.js';

type Asked<T, O> = Wording & { readonly otherwise?: O } & T;
type Maybe<T> = Otherwise<T> | undefined;
export type ValueQuestion<T, O> = Question<T, SettledAs<Answer<T>, O>, O>;

/** The reason of an answer that nobody assumed. */
export const statedInRecord = 'stated in the record';

/** One word of a closed list. */
export const askWhich = <const T extends string, const O extends Maybe<NoInfer<T>> = undefined>(
  asked: Asked<{ readonly choices: readonly T[] }, O>,
): ValueQuestion<T, O> =>
  questionOf(asked, {
    form: { kind: 'choice', choices: asked.choices },
    accepts: (said): said is T => asked.choices.some((choice) => choice === said),
    faults: (said, at) => choiceFaults(at, said, asked.choices),
  });

/** Several words of a closed list, each once. */
export const askSome = <const T extends string, const O extends Maybe<readonly NoInfer<T>[]> = undefined>(
  asked: Asked<{ readonly choices: readonly T[] } & Partial<Count>, O>,
): ValueQuestion<readonly T[], O> => {
  const { choices, least = 0, most = choices.length } = asked;
  return questionOf(asked, {
    form: { kind: 'choices', choices, least, most },
    accepts: (said): said is readonly T[] => Array.isArray(said),
    faults: (said, at) => someFaults(said, at, { choices, least, most }),
  });
};

function someFaults(
  said: unknown,
  at: string,
  { choices, ...count }: Count & { readonly choices: readonly string[] },
): readonly Problem[] {
  if (!Array.isArray(said)) return [problem('not-a-list', at, { of: 'words', value: String(said) })];
  const each = said.flatMap((one: unknown, index) => choiceFaults(`${at}/${index}`, one, choices));
  return [...countFaults(at, said.length, count), ...each, ...repeatedFaults(at, said)];
}

/** A line or a note; `form` is what its characters must look like, and the words for it. */
export const askText = <const O extends Maybe<string> = undefined>(
  asked: Asked<Partial<TextLimits>, O>,
): ValueQuestion<string, O> => {
  const { atLeast = 1, atMost = 200, form } = asked;
  const limits = { atLeast, atMost, ...(form === undefined ? {} : { form }) };
  return questionOf(asked, {
    form: { kind: 'text', ...limits },
    accepts: isText,
    faults: (said, at) => textFaults(said, at, limits),
  });
};

function textFaults(said: unknown, at: string, { atLeast, atMost, form }: TextLimits): readonly Problem[] {
  if (!isText(said))
    return [
      problem('not-text', at, {
        value: String(said),
        expected: form?.words ?? `text of ${atLeast} to ${atMost} characters`,
      }),
    ];
  if (said.length < atLeast || said.length > atMost)
    return [problem('text-length', at, { count: said.length, range: `${atLeast} to ${atMost} characters` })];
  return form === undefined || form.pattern.test(said)
    ? []
    : [problem('not-in-form', at, { value: said, form: form.words })];
}

/** A stable code: lower-case words joined by hyphens. Whether the catalogue has it is for whoever looks it up. */
export const askCode = <const O extends Maybe<string> = undefined>(
  asked: Asked<unknown, O>,
): ValueQuestion<string, O> => askText({ ...asked, ...codeForm });

export const codeForm = {
  atMost: 80,
  form: {
    pattern: /^[a-z0-9]+(?:[.-][a-z0-9]+)*$/,
    words: 'a code of lower-case letters, digits, dots and hyphens',
  },
} as const;

/** A name that a person gave to something of theirs, short enough for a drawing: "Z1", "cleat-port". */
export const askLabel = <const O extends Maybe<string> = undefined>(
  asked: Asked<unknown, O>,
): ValueQuestion<string, O> => askText({ ...asked, ...labelForm });

const labelForm = {
  atMost: 60,
  form: {
    pattern: /^[A-Za-z0-9][A-Za-z0-9._-]*$/,
    words: 'a short name of letters, digits, dots, hyphens and underscores',
  },
} as const;

/** An exact decimal of zero or more as text, such as a price: "12.50". */
export const askDecimal = <const O extends Maybe<string> = undefined>(
  asked: Asked<{ readonly decimals?: number }, O>,
): ValueQuestion<string, O> => askText({ ...asked, ...decimalForm(asked.decimals) });

export const decimalForm = (decimals = 6) => ({
  atMost: 20,
  form: {
    pattern: new RegExp(`^\\d{1,12}(?:\\.\\d{1,${decimals}})?$`),
    words: 'a decimal number in text such as "12.50", without sign or grouping',
  },
});

/** A list of answers to one question. */
export const askEach = <T, const O extends Maybe<readonly T[]> = undefined>(
  asked: Asked<Count & { readonly of: Question<T> }, O>,
): ValueQuestion<readonly T[], O> => {
  const { of, least, most } = asked;
  const count = { least, most };
  return questionOf(asked, {
    form: { kind: 'each', of, ...count },
    accepts: (said): said is readonly T[] => Array.isArray(said),
    faults: (said, at) => eachFaults(said, at, { of, ...count }),
  });
};

/** A list that is far too long is not looked through. */
function eachFaults(
  said: unknown,
  at: string,
  { of, ...count }: Count & { readonly of: Question },
): readonly Problem[] {
  if (!Array.isArray(said)) return [problem('not-a-list', at, { of: of.meaning, value: String(said) })];
  const wrong = countFaults(at, said.length, count);
  return wrong.length > 0 ? wrong : said.flatMap((one: unknown, index) => of.faults(one, pointer(at, index)));
}

/** Yes or no. */
export const askWhether = <const O extends Maybe<boolean> = undefined>(
  asked: Asked<unknown, O>,
): ValueQuestion<boolean, O> =>
  questionOf(asked, {
    form: { kind: 'flag' },
    accepts: (said): said is boolean => typeof said === 'boolean',
    faults: (said, at) =>
      typeof said === 'boolean' ? [] : [problem('not-a-flag', at, { value: String(said) })],
  });

/** A day of the calendar, as ISO 8601 writes it. */
export const askDay = <const O extends Maybe<string> = undefined>(
  asked: Asked<unknown, O>,
): ValueQuestion<string, O> =>
  questionOf(asked, { form: { kind: 'date' }, accepts: isText, faults: (said, at) => dayFaults(at, said) });

const FIRST_DAY = '2000-01-01';
const LAST_DAY = '2199-12-31';

/** A calendar date that exists, in the years that work can be planned for. */
export function dayFaults(at: string, said: unknown): readonly Problem[] {
  if (!isText(said) || !isDay(said))
    return [problem('not-in-form', at, { value: String(said), form: 'a date such as 2026-05-04' })];
  return said >= FIRST_DAY && said <= LAST_DAY
    ? []
    : [problem('out-of-range', at, { value: said, range: `from ${FIRST_DAY} to ${LAST_DAY}` })];
}

function isDay(said: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(said)) return false;
  const day = new Date(`${said}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(said);
}

/** A thing that a room knows how to judge: an outline, a survey, a forecast. */
export const askFor = <T extends object, const O extends Maybe<T> = undefined>(
  asked: Asked<{ readonly faults: (said: T, at: string) => readonly Problem[] }, O>,
): ValueQuestion<T, O> => {
  const accepts = (said: unknown): said is T => typeof said === 'object' && said !== null;
  return questionOf(asked, {
    form: { kind: 'subject' },
    accepts,
    faults: (said, at) =>
      accepts(said) ? asked.faults(said, at) : [problem('not-an-object', at, { value: String(said) })],
  });
};

interface Judged<T> {
  readonly form: Form;
  readonly accepts: (said: unknown) => said is T;
  readonly faults: (said: unknown, at: string) => readonly Problem[];
}

export function questionOf<T, O extends Maybe<T>>(
  asked: Wording & { readonly otherwise?: O },
  { form, accepts, faults }: Judged<T>,
): ValueQuestion<T, O> {
  const { meaning, description, note, example } = asked;
  const otherwise = otherwiseIn(asked);
  return {
    meaning,
    ...(description === undefined ? {} : { description }),
    ...(note === undefined ? {} : { note }),
    ...(example === undefined ? {} : { example }),
    otherwise,
    form,
    accepts,
    faults,
    settle: (said, at, answers) =>
      settledOr(said, {
        at,
        answers,
        otherwise,
        accepts,
        entered: (value): Answer<T> => ({ value, at, because: statedInRecord }),
        assumed: ({ value, because, cite }): Answer<T> => ({ value, at, because, assumedFrom: cite }),
        listed: (answer) => assumptionOf(answer, meaning),
      }),
  };
}

/** A default as a reader of the answer sees it. */
export const assumptionOf = (
  { at, value, because, assumedFrom }: Answer<unknown>,
  meaning: string,
): readonly Assumption[] =>
  assumedFrom === undefined
    ? []
    : [{ at, meaning, value: inWords(value), because, source: assumedFrom.source }];

/** A value as a reader sees it. */
export const inWords = (value: unknown): string => (Array.isArray(value) ? value.join(', ') : String(value));

const isText = (said: unknown): said is string => typeof said === 'string';
