import { inWords } from '#lib/asking';
import type { Form, Question } from '#lib/asking';
import { Defect } from '#lib/kernel';
import type { Said } from './field.js';
import { CalendarDate, CalendarDates, Flag, Nums, OneOf, SomeOf, Text, Texts } from './plain-fields.js';
import { Outlines, Point, Points } from './points.js';
import { ArealMass, Area, Length, Mass, Num, Speed, Temperature, Whole, type Range } from './quantities.js';

/**
 * A field of a request, all of it taken from the question it answers: bounds, choices, unit, whether it may be left out,
 * what is taken then, and the words of the contract.
 */
export function askedField(question: Question): PropertyDecorator {
  const { form } = question;
  const said = saidOf(question);
  switch (form.kind) {
    case 'number':
      return numberField(form, said);
    case 'choice':
      return OneOf(form.choices, said);
    case 'choices':
      return SomeOf(form.choices, { ...said, least: form.least, most: form.most });
    case 'text':
      return Text({ ...said, ...form });
    case 'flag':
      return Flag(said);
    case 'date':
      return CalendarDate(said);
    case 'each':
      return listField(form, said);
    case 'place':
      return Point(said);
    case 'outline':
      return Points({ ...said, least: form.least, most: form.most });
    case 'outlines':
      return Outlines({ ...said, least: form.least, most: form.most });
    default:
      throw new Defect(`"${question.meaning}" has parts of its own: name their class`);
  }
}

/** What the contract says of a question whose form a field of its own knows, such as an outline. */
export const saidOf = ({
  meaning,
  description,
  note,
  example,
  otherwise,
  form,
}: Pick<Question, 'meaning' | 'description' | 'note' | 'example' | 'otherwise' | 'form'>): Said => ({
  optional: otherwise !== undefined,
  description: [description ?? sentenceOf(meaning), note, defaultInWords(otherwise, form)]
    .filter((part) => part !== undefined && part !== '')
    .join(' '),
  ...(example === undefined ? {} : { example }),
});

const sentenceOf = (meaning: string): string =>
  `${meaning.charAt(0).toUpperCase()}${meaning.slice(1)}${meaning.endsWith('.') ? '' : '.'}`;

/** A default that depends on other answers is said with the answer, not with the contract. */
function defaultInWords(otherwise: unknown, form: Form): string {
  if (!isDefault(otherwise)) return '';
  const unit = form.kind === 'number' && form.unit !== '1' ? ` ${form.unit}` : '';
  return `Absent: ${inWords(otherwise.value)}${unit} (${otherwise.because}).`;
}

const isDefault = (otherwise: unknown): otherwise is { readonly value: unknown; readonly because: string } =>
  typeof otherwise === 'object' && otherwise !== null && 'value' in otherwise && 'because' in otherwise;

/** A person types a length or a mass with a unit; whatever has no unit of measure in the shop is a plain number. */
const typedUnits: Readonly<Record<string, (said: Range & Said) => PropertyDecorator>> = {
  'mm': Length,
  'm2': Area,
  'kg': Mass,
  'degC': Temperature,
  'g/m2': ArealMass,
  'm/s': Speed,
};

function listField({ of, least, most }: Form & { readonly kind: 'each' }, said: Said): PropertyDecorator {
  const list = { ...said, least, most };
  if (of.form.kind === 'text') return Texts({ ...list, each: of.form });
  if (of.form.kind === 'number') return Nums({ ...list, each: { ...of.form.range, unit: of.form.unit } });
  if (of.form.kind === 'date') return CalendarDates(list);
  throw new Defect(`A list of ${of.meaning} has no field of its own`);
}

function numberField(
  { unit, range, isWhole }: Form & { readonly kind: 'number' },
  said: Said,
): PropertyDecorator {
  if (isWhole) return Whole({ ...range, ...said });
  const typed = Object.hasOwn(typedUnits, unit) ? typedUnits[unit] : undefined;
  return typed === undefined ? Num({ ...range, ...said, unit }) : typed({ ...range, ...said });
}
