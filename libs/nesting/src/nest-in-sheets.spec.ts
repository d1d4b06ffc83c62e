import { describe, expect, test } from '@jest/globals';
import { nestInSheets, type NestPiece, type SheetRequest } from './index.js';

const rectangle = (length: number, width: number): readonly (readonly [number, number])[] => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];
const panel = (id: string, length: number, width: number, count = 1): NestPiece => ({
  id,
  outline: rectangle(length, width),
  count,
  turnsDeg: [0, 90, 180, 270],
});

const request = (change: Partial<SheetRequest> = {}): SheetRequest => ({
  pieces: [panel('a', 600, 300, 4)],
  stock: [{ id: 'full', outline: rectangle(1220, 610), cost: 100 }],
  kerfMm: 2,
  edgeTrimMm: 5,
  seed: 1,
  workUnits: 2000,
  ...change,
});

const layoutOf = (change: Partial<SheetRequest> = {}) => {
  const outcome = nestInSheets(request(change));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

describe('cutting from sheets', () => {
  test('four panels of 600 x 298 mm come out of one sheet of 1220 x 610 mm with a 2 mm kerf', () => {
    const { sheets, cost, utilisation } = layoutOf({ pieces: [panel('a', 600, 298, 4)] });
    expect(sheets).toHaveLength(1);
    expect(cost).toBe(100);
    expect(utilisation).toBeCloseTo((4 * 600 * 298) / (1220 * 610), 12);
  });

  test('a half sheet is bought when it is enough and costs less', () => {
    const stock = [
      { id: 'full', outline: rectangle(1220, 610), cost: 100 },
      { id: 'half', outline: rectangle(610, 610), cost: 58 },
    ];
    expect(
      layoutOf({ stock, pieces: [panel('a', 500, 250, 2)] }).sheets.map(({ stockId }) => stockId),
    ).toEqual(['half']);
  });

  test("an offcut of one's own that costs nothing is used before a sheet is bought", () => {
    const stock = [
      { id: 'full', outline: rectangle(1220, 610), cost: 100 },
      {
        id: 'mine',
        outline: [
          [0, 0],
          [700, 0],
          [700, 300],
          [0, 600],
        ] as const,
        cost: 0,
        available: 1,
      },
    ];
    const { sheets, cost } = layoutOf({ stock, pieces: [panel('a', 400, 200)] });
    expect(sheets.map(({ stockId }) => stockId)).toEqual(['mine']);
    expect(cost).toBe(0);
  });

  test('a piece goes into the hole of another', () => {
    const ring: NestPiece = {
      id: 'ring',
      outline: rectangle(400, 400),
      holes: [
        [
          [50, 50],
          [350, 50],
          [350, 350],
          [50, 350],
        ],
      ],
      turnsDeg: [0],
    };
    const stock = [{ id: 'tight', outline: rectangle(400, 400), cost: 10 }];
    const { sheets } = layoutOf({ stock, pieces: [ring, panel('inner', 280, 290)], edgeTrimMm: 0 });
    expect(sheets).toHaveLength(1);
  });

  test('the same request gives the same layout, another seed may not cost more', () => {
    const pieces = [panel('a', 330, 210, 9), panel('b', 150, 120, 11)];
    expect(layoutOf({ pieces })).toEqual(layoutOf({ pieces }));
  });
});

describe('what cannot be cut', () => {
  const problemsOf = (change: Partial<SheetRequest>) => {
    const outcome = nestInSheets(request(change));
    return outcome.ok ? [] : outcome.problems;
  };

  test('a piece larger than every sheet is named, with its size and the room there is', () => {
    const [found] = problemsOf({ pieces: [panel('a', 600, 300), panel('deck', 1300, 400)] });
    expect(found).toMatchObject({
      code: 'too-large-for-stock',
      at: '/pieces/1',
      facts: { piece: 'deck', size: '1300 x 400 mm', room: '1210 x 600 mm' },
    });
  });

  test('a forbidden turn can make a piece too large', () => {
    const tall = { ...panel('tall', 300, 900), turnsDeg: [0, 180] };
    expect(problemsOf({ pieces: [tall] }).map(({ code }) => code)).toEqual(['too-large-for-stock']);
    expect(problemsOf({ pieces: [{ ...tall, turnsDeg: [0, 90] }] })).toEqual([]);
  });

  test('all faults are told at once: negative trim, a self-crossing piece, an id used twice, a free sheet without number', () => {
    const crossed: NestPiece = {
      id: 'x',
      outline: [
        [0, 0],
        [100, 100],
        [100, 0],
        [0, 100],
      ],
      turnsDeg: [0],
    };
    const stock = [{ id: 'mine', outline: rectangle(700, 500), cost: 0 }];
    expect(
      problemsOf({ edgeTrimMm: -1, pieces: [crossed, panel('b', 10, 10), panel('b', 20, 20)], stock }).map(
        ({ code, at }) => `${code} ${at}`,
      ),
    ).toEqual([
      'out-of-range /edgeTrimMm',
      'outline-crosses-itself /pieces/0/outline',
      'duplicate /pieces/2/id',
      'missing /stock/0/available',
    ]);
  });

  test('five thousand pieces are refused with the limit', () => {
    expect(problemsOf({ pieces: [panel('a', 100, 100, 5000)] })).toMatchObject([
      { code: 'too-many', facts: { count: 5000, most: 1500 } },
    ]);
  });

  test('too few sheets are said to be too few', () => {
    const stock = [{ id: 'last', outline: rectangle(1220, 610), cost: 100, available: 1 }];
    expect(problemsOf({ pieces: [panel('a', 600, 300, 9)], stock }).map(({ at }) => at)).toEqual(['/stock']);
  });
});
