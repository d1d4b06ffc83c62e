import { pointer, problem, type Problem } from '#lib/kernel';
import type { Wording } from './ask-number.js';
import { questionOf, type ValueQuestion } from './ask-value.js';
import { choiceFaults, countFaults, repeatFaults } from './request-faults.js';
import { otherwiseIn, openOr } from './settled-or.js';
import { faultsIn, isObject, settledAll } from './settle.js';
import type {
  Answers,
  AnswersTo,
  Count,
  Kinds,
  Question,
  Questions,
  SettledAs,
  Settlement,
  Settling,
} from './question.js';

export interface PartQuestion<Q extends Questions, O> extends Question<
  AnswersTo<Q>,
  SettledAs<Settlement<Q>, O>,
  O
> {
  readonly of: Q;
}

/**
 * Questions that belong together, as an object of the request. Without `otherwise` it must be there; `'defaults'` lets it
 * be left out and settles each of its questions by its own default; `'unknown'` leaves the whole part open.
 */
export function askPart<
  const Q extends Questions,
  const O extends 'defaults' | 'unknown' | undefined = undefined,
>(asked: Wording & { readonly of: Q; readonly otherwise?: O }): PartQuestion<Q, O> {
  const { of } = asked;
  const otherwise = otherwiseIn(asked);
  return {
    ...asked,
    otherwise,
    form: { kind: 'part', of },
    accepts: (said): said is AnswersTo<Q> => isObject(said),
    faults: (said, at) =>
      isObject(said) ? faultsIn(said, of, at) : [problem('not-an-object', at, { value: String(said) })],
    settle: (said, at, answers) =>
      openOr(said ?? (otherwise === 'defaults' ? {} : undefined), (whole) =>
        settledAll(isObject(whole) ? whole : {}, of, at, answers),
      ),
  };
}

export interface ListQuestion<Q extends Questions, O>
  extends Count, Question<readonly AnswersTo<Q>[], SettledAs<readonly Settlement<Q>[], O>, O> {
  readonly of: Q;
}

/** A list of such objects; `unlike` names the member that no two may share. `'none'` takes an absent list as empty. */
export function askList<
  const Q extends Questions,
  const O extends 'none' | 'unknown' | undefined = undefined,
>(
  asked: Wording & Count & { readonly of: Q; readonly unlike?: keyof Q & string; readonly otherwise?: O },
): ListQuestion<Q, O> {
  const { of, least, most } = asked;
  const otherwise = otherwiseIn(asked);
  return {
    ...asked,
    otherwise,
    form: { kind: 'list', of, least, most },
    accepts: (said): said is readonly AnswersTo<Q>[] => Array.isArray(said),
    faults: (said, at) =>
      isList(said)
        ? listFaults(said, at, asked)
        : [problem('not-a-list', at, { of: asked.meaning, value: String(said) })],
    settle: (said, at, answers) =>
      openOr(said ?? (otherwise === 'none' ? [] : undefined), (list) =>
        settledList(isList(list) ? list : [], of, at, answers),
      ),
  };
}

/** A list of objects of several kinds. The caller names the type, since a kind decides what its fellows are. */
export const askByKind = <T extends object, const O extends 'unknown' | undefined = undefined>(
  asked: Wording & Count & Kinds & { readonly otherwise?: O },
): ValueQuestion<readonly T[], O> => {
  const { by, kinds, least, most } = asked;
  const count = { least, most };
  return questionOf(asked, {
    form: { kind: 'kinds', by, kinds, ...count },
    accepts: (said): said is readonly T[] => Array.isArray(said),
    faults: (said, at) => {
      if (!Array.isArray(said))
        return [problem('not-a-list', at, { of: asked.meaning, value: String(said) })];
      const wrong = countFaults(at, said.length, count);
      return wrong.length > 0
        ? wrong
        : said.flatMap((one: unknown, index) => kindFaults(one, pointer(at, index), { by, kinds }));
    },
  });
};

function kindFaults(one: unknown, at: string, { by, kinds }: Kinds): readonly Problem[] {
  if (!isObject(one)) return [problem('not-an-object', at, { value: String(one) })];
  const kind: unknown = Reflect.get(one, by);
  return typeof kind === 'string' && Object.hasOwn(kinds, kind)
    ? faultsIn(one, kinds[kind], at)
    : choiceFaults(pointer(at, by), kind, Object.keys(kinds));
}

/** A list that is far too long is not looked through. */
function listFaults(
  list: readonly object[],
  at: string,
  { of, unlike, ...count }: Count & { readonly of: Questions; readonly unlike?: string },
): readonly Problem[] {
  if (list.length > count.most) return countFaults(at, list.length, count);
  return [
    ...countFaults(at, list.length, count),
    ...(unlike === undefined
      ? []
      : repeatFaults(
          at,
          unlike,
          list.map((one) => String(Reflect.get(one, unlike))),
        )),
    ...list.flatMap((one, index) => faultsIn(one, of, pointer(at, index))),
  ];
}

function settledList<Q extends Questions>(
  list: readonly object[],
  of: Q,
  at: string,
  answers: Answers,
): Settling<readonly Settlement<Q>[]> {
  const all = list.map((one, index) => settledAll(one, of, pointer(at, index), answers));
  return { value: all.map(({ value }) => value), assumptions: all.flatMap(({ assumptions }) => assumptions) };
}

const isList = (said: unknown): said is readonly object[] =>
  Array.isArray(said) && said.every((one) => isObject(one));
