import { describe, expect, test } from '@jest/globals';
import {
  ask,
  askFor,
  askList,
  askPart,
  askText,
  askWhich,
  fromMemory,
  practice,
  settle,
  type Answers,
  type AnswersTo,
  type Default,
  type Question,
} from './index.js';

const coreMm = ask({ unit: 'mm', meaning: 'core thickness', range: { above: 0, upTo: 200 } });
const side = askWhich({
  meaning: 'side of the work',
  choices: ['above', 'below'],
  otherwise: practice('above', 'the work is face down'),
});
const questions = {
  core: askPart({
    meaning: 'the core',
    of: {
      coreMm,
      cavityMm: ask({
        unit: 'mm',
        meaning: 'cavity',
        range: { above: 0, upTo: 220 },
        otherwise: (answers: Answers) => ({
          value: answers.of(coreMm).value + (answers.of(side).value === 'below' ? 2 : 1),
          because: 'old bond lines',
          cite: fromMemory,
        }),
      }),
    },
  }),
  method: askPart({
    meaning: 'the method',
    otherwise: 'defaults',
    of: {
      side,
      people: ask({
        unit: '1',
        meaning: 'people',
        range: { from: 1, upTo: 20 },
        isWhole: true,
        otherwise: practice(2, 'it takes two'),
      }),
      moistureC: ask({
        unit: '%',
        meaning: 'moisture',
        range: { from: 0, upTo: 1000 },
        otherwise: 'unknown',
      }),
    },
  }),
  zones: askList({
    meaning: 'zones',
    least: 0,
    most: 2,
    unlike: 'id',
    of: { id: askText({ meaning: 'name', atMost: 5 }) },
    otherwise: 'none',
  }),
};
type Request = AnswersTo<typeof questions>;

const settled = (request: Request) => {
  const outcome = settle(request, questions);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const faults = (request: Request): readonly string[] => {
  const outcome = settle(request, questions);
  return outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`);
};

describe('settling a request', () => {
  test('takes what was said, with the field it was said in', () => {
    const { value } = settled({ core: { coreMm: 12.7, cavityMm: 14 }, method: { side: 'below' } });
    expect(value.core.cavityMm).toMatchObject({
      value: 14,
      origin: { kind: 'entered', at: '/core/cavityMm' },
    });
    expect(value.method.side).toEqual({
      value: 'below',
      at: '/method/side',
      because: 'stated in the record',
    });
  });

  test('lists each default once, with its reason and source, where nobody said anything', () => {
    const { value, assumptions } = settled({ core: { coreMm: 12 } });
    expect(value.method.people.value).toBe(2);
    expect(assumptions).toEqual([
      {
        at: '/core/cavityMm',
        meaning: 'cavity',
        value: '13 mm',
        because: 'old bond lines',
        source: 'FROM-MEMORY',
      },
      {
        at: '/method/side',
        meaning: 'side of the work',
        value: 'above',
        because: 'the work is face down',
        source: 'COMMON-PRACTICE',
      },
      {
        at: '/method/people',
        meaning: 'people',
        value: '2',
        because: 'it takes two',
        source: 'COMMON-PRACTICE',
      },
    ]);
  });

  test('lets a default follow other answers, wherever they stand', () =>
    expect(settled({ core: { coreMm: 12 }, method: { side: 'below' } }).value.core.cavityMm.value).toBe(14));

  test('says that a fact is unknown instead of leaving it out', () =>
    expect(settled({ core: { coreMm: 12 } }).value.method.moistureC).toBe('unknown'));

  test('names every fault at once, each at its field', () =>
    expect(
      faults({
        core: { coreMm: 0, cavityMm: Number.NaN },
        method: { people: 2.5, moistureC: 1001 },
        zones: [{ id: 'a' }, { id: 'a' }],
      }),
    ).toEqual([
      'out-of-range /core/coreMm',
      'not-a-number /core/cavityMm',
      'not-a-number /method/people',
      'out-of-range /method/moistureC',
      'duplicate /zones/1/id',
    ]));

  test('asks for what must be answered, and does not look through a list that is far too long', () => {
    const outcome = settle(
      Object.assign({}, { core: {}, zones: Array.from({ length: 3 }, () => ({})) }) as never,
      questions,
    );
    expect(outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`)).toEqual([
      'missing /core/coreMm',
      'too-many /zones',
    ]);
  });

  test('is our own fault when a default asks for itself, or for what is asked nowhere', () => {
    const asked: Question<unknown, unknown>[] = [];
    const loop = {
      a: ask({
        unit: 'mm',
        meaning: 'a',
        range: {},
        otherwise: (answers: Answers): Default => practice(Number(answers.of(asked[0])), 'b'),
      }),
    };
    asked.push(loop.a);
    expect(() => settle({}, loop)).toThrow('asks for itself');
    const stray = {
      c: ask({
        unit: 'mm',
        meaning: 'c',
        range: {},
        otherwise: (answers: Answers) => practice(answers.of(coreMm).value, 'x'),
      }),
    };
    expect(() => settle({}, stray)).toThrow('asked nowhere');
  });

  test('leaves a thing to the room that judges it', () => {
    const judged = { sky: askFor<{ readonly hours: number }>({ meaning: 'sky', faults: () => [] }) };
    expect(settle({ sky: { hours: 3 } }, judged)).toMatchObject({
      ok: true,
      value: { value: { sky: { value: { hours: 3 } } } },
    });
  });
});
