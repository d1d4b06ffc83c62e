import { Defect, pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import type {
  Answers,
  AnswersTo,
  Assumption,
  Question,
  Questions,
  Settlement,
  Settling,
} from './question.js';

/**
 * Answers every question of a set in one pass: by the caller, or by a default that says so and is listed. Refuses with
 * every fault at once, each with the pointer of its field, before any default is taken.
 */
export function settle<Q extends Questions>(
  request: AnswersTo<Q>,
  questions: Q,
  at = '',
): Outcome<Settling<Settlement<Q>>> {
  const faults = faultsIn(request, questions, at);
  if (faults.length > 0) return refusal(...faults);
  return success(settledAll(request, questions, at, answersAt(placesOf(request, questions, at))));
}

/** The answers of a request whose faults were looked for before. */
export function settledRight<Q extends Questions>(
  request: AnswersTo<Q>,
  questions: Q,
  at = '',
): Settlement<Q> {
  const found = settle(request, questions, at);
  if (found.ok) return found.value.value;
  throw new Defect(
    `Settled before its faults were looked for: ${found.problems.map(({ at }) => at).join(', ')}`,
  );
}

/** What stays assumed in a request that a room reads question by question with `saidOr`. */
export const assumptionsIn = (request: object, questions: Questions, at = ''): readonly Assumption[] =>
  settledAll(request, questions, at, answersAt(placesOf(request, questions, at))).assumptions;

/** Everything wrong with the answers to a set of questions, each fault at its field. */
export const faultsIn = (request: object, questions: Questions, at = ''): readonly Problem[] =>
  Object.entries(questions).flatMap(([name, question]) =>
    faultsOf(question, saidAt(request, name), pointer(at, name)),
  );

function faultsOf(question: Question, said: unknown, at: string): readonly Problem[] {
  if (said !== undefined) return question.faults(said, at);
  return question.otherwise === undefined ? [problem('missing', at, { expected: question.meaning })] : [];
}

export const isObject = (said: unknown): said is object =>
  typeof said === 'object' && said !== null && !Array.isArray(said);

/** The members of a request are named by its questions; what is not there is undefined. */
const saidAt = (request: object, name: string): unknown =>
  Object.getOwnPropertyDescriptor(request, name)?.value;

export function settledAll<Q extends Questions>(
  request: object,
  questions: Q,
  at: string,
  answers: Answers,
): Settling<Settlement<Q>> {
  const settled = Object.entries(questions).map(
    ([name, question]) => [name, question.settle(saidAt(request, name), pointer(at, name), answers)] as const,
  );
  return {
    value: Object.fromEntries(settled.map(([name, { value }]): readonly unknown[] => [name, value])),
    assumptions: settled.flatMap(([, { assumptions }]): readonly Assumption[] => assumptions),
  };
}

interface Asked {
  readonly question: Question;
  readonly said: unknown;
  readonly at: string;
}

/** Where each question stands in this request; entries of lists have no place of their own that a default could ask. */
function placesOf(request: object, questions: Questions, at: string): readonly Asked[] {
  return Object.entries(questions).flatMap(([name, question]) => {
    const place = { question, said: saidAt(request, name), at: pointer(at, name) };
    const { form } = question;
    if (form.kind !== 'part') return [place];
    return [place, ...placesOf(isObject(place.said) ? place.said : {}, form.of, place.at)];
  });
}

/** Answers that a default may ask for; `asking` are the questions that wait for it, so that a circle is seen. */
const answersAt = (places: readonly Asked[], asking: readonly Question[] = []): Answers => ({
  of: (question) => {
    const [place, ...others] = places.filter((asked) => asked.question === question);
    if (place === undefined || others.length > 0)
      throw new Defect(`"${question.meaning}" is asked ${others.length === 0 ? 'nowhere' : 'twice'}`);
    if (asking.includes(question)) throw new Defect(`The default of "${question.meaning}" asks for itself`);
    return question.settle(place.said, place.at, answersAt(places, [...asking, question])).value;
  },
});
