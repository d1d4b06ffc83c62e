import type { AnswersTo, Question, Questions } from '#lib/asking';
import { Defect } from '#lib/kernel';
import { askedField, saidOf } from './asked.js';
import type { DtoClass, Said } from './field.js';
import { Part, Parts, PartsByKind } from './plain-fields.js';

/** What reads a member that has parts of its own: a class, or a class for each kind. */
type Reader = () => DtoClass | Readonly<Record<string, DtoClass>>;

type Readers<Q extends Questions> = { readonly [K in keyof Q]?: Reader };

/** Decorators of members whose form a field of its own knows, such as an outline that may be named. */
type Fields<Q extends Questions> = { readonly [K in keyof Q]?: (said: Said) => PropertyDecorator };

/**
 * The class to extend for an object that answers a set of questions: each question is a field, in the order it is asked.
 * A subclass gives it the name that the contract calls it by. Throws a `Defect` while the classes load where a question
 * has parts and no class is named for them.
 *
 *     export class SurveyDto extends answering(surveyQuestions, { readings: () => readingKinds, meter: () => MeterDto }) {}
 */
export function answering<Q extends Questions>(
  questions: Q,
  readers?: Readers<Q>,
  fields?: Fields<Q>,
): new () => AnswersTo<Q>;
export function answering(
  questions: Questions,
  readers: Readers<Questions> = {},
  fields: Fields<Questions> = {},
): new () => object {
  class Answering extends Object {}
  for (const [name, question] of Object.entries(questions)) {
    // What the compiler notes of a field that is written out; the contract takes its types from the questions.
    Reflect.defineMetadata('design:type', Object, Answering.prototype, name);
    fieldFor(question, readers[name], fields[name])(Answering.prototype, name);
  }
  return Answering;
}

function fieldFor(
  question: Question,
  reader?: Reader,
  field?: (said: Said) => PropertyDecorator,
): PropertyDecorator {
  if (field !== undefined) return field(saidOf(question));
  return reader === undefined ? askedField(question) : partField(question, reader);
}

function partField(question: Question, reader: Reader): PropertyDecorator {
  const { form } = question;
  const said = saidOf(question);
  if (form.kind === 'kinds')
    return PartsByKind(form.by, () => classesOf(reader), { ...said, ...countOf(form) });
  if (form.kind === 'list') return Parts(() => classOf(reader), { ...said, ...countOf(form) });
  return Part(() => classOf(reader), said);
}

const countOf = ({ least, most }: { readonly least: number; readonly most: number }) => ({ least, most });

function classOf(reader: Reader): DtoClass {
  const read = reader();
  if (typeof read !== 'function') throw new Defect('An object of one kind is read by one class');
  return read;
}

function classesOf(reader: Reader): Readonly<Record<string, DtoClass>> {
  const read = reader();
  if (typeof read === 'function') throw new Defect('Objects of several kinds are read by a class for each');
  return read;
}
