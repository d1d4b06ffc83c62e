import { readOutline, readPoint, MOST_CORNERS } from '#lib/geometry';
import { pointer, problem, type Problem } from '#lib/kernel';
import type { Wording } from './ask-number.js';
import { questionOf, type ValueQuestion } from './ask-value.js';
import { countFaults } from './request-faults.js';
import type { Count, Otherwise } from './question.js';

/** A place on the deck, `[xMm, yMm]`: x forward, y to starboard. */
type Place = readonly [xMm: number, yMm: number];
type Corners = readonly Place[];
type Asked<T, O> = Wording & { readonly otherwise?: O } & T;
type Maybe<T> = Otherwise<T> | undefined;

/** One place on the deck. */
export const askPlace = <const O extends Maybe<Place> = undefined>(
  asked: Asked<unknown, O>,
): ValueQuestion<Place, O> =>
  questionOf(
    { example: [400, 300], ...asked },
    {
      form: { kind: 'place' },
      accepts: (said): said is Place => Array.isArray(said),
      faults: (said, at) => {
        const read = readPoint(said, at);
        return read.ok ? [] : read.problems;
      },
    },
  );

/** The corners of a shape in order round its edge. */
export const askOutline = <const O extends Maybe<Corners> = undefined>(
  asked: Asked<unknown, O>,
): ValueQuestion<Corners, O> =>
  questionOf(asked, {
    form: { kind: 'outline', least: 3, most: MOST_CORNERS },
    accepts: (said): said is Corners => Array.isArray(said),
    faults: outlineFaults,
  });

/** Several such shapes. */
export const askOutlines = <const O extends Maybe<readonly Corners[]> = undefined>(
  asked: Asked<Count, O>,
): ValueQuestion<readonly Corners[], O> => {
  const { least, most } = asked;
  return questionOf(asked, {
    form: { kind: 'outlines', least, most },
    accepts: (said): said is readonly Corners[] => Array.isArray(said),
    faults: (said, at) => outlinesFaults(said, at, { least, most }),
  });
};

/** A list that is far too long is not looked through. */
function outlinesFaults(said: unknown, at: string, count: Count): readonly Problem[] {
  if (!Array.isArray(said)) return [problem('not-a-list', at, { of: 'outlines', value: String(said) })];
  const wrong = countFaults(at, said.length, count);
  return wrong.length > 0
    ? wrong
    : said.flatMap((one: unknown, index) => outlineFaults(one, pointer(at, index)));
}

/** The corners of a shape, judged by the geometry that will work with it. */
function outlineFaults(said: unknown, at: string): readonly Problem[] {
  if (!Array.isArray(said)) return [problem('not-a-list', at, { of: 'points', value: String(said) })];
  const read = readOutline(said, at);
  return read.ok ? [] : read.problems;
}
