import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { nestInSheets, nestInStrip, type NestPiece, type SheetLayout, type SheetRequest } from '#lib/nesting';
import { areApart, liesWithin, overlap, type Place, type Shape } from './exact-layout.js';

const seed = 20_261_125;
const runs = { seed, numRuns: 25, verbose: 1 } as const;

/** A star-shaped outline: any rising angles and radii give one that does not cross itself. */
const star = fc
  .array(fc.integer({ min: 40, max: 260 }), { minLength: 3, maxLength: 9 })
  .map((radii): readonly Place[] =>
    radii.map((radius, k) => {
      const angle = (2 * Math.PI * k) / radii.length;
      return [Math.round(radius * Math.cos(angle) * 10) / 10, Math.round(radius * Math.sin(angle) * 10) / 10];
    }),
  );

const rectangle = (length: number, width: number): readonly Place[] => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];
const turns = fc.constantFrom<readonly number[]>([0], [0, 180], [0, 90, 180, 270], []);

const pieces = fc
  .array(fc.record({ outline: star, count: fc.integer({ min: 1, max: 3 }), turnsDeg: turns }), {
    minLength: 1,
    maxLength: 6,
  })
  .map((list) => list.map((piece, k): NestPiece => ({ id: `p${k}`, ...piece })));

const requests: fc.Arbitrary<SheetRequest> = fc
  .record({
    pieces,
    kerfMm: fc.constantFrom(0, 1, 2.5, 3.2),
    edgeTrimMm: fc.constantFrom(0, 5, 12.7),
    seed: fc.nat(1000),
    workUnits: fc.constantFrom(0, 300),
  })
  .map((rest) => ({
    ...rest,
    stock: [
      { id: 'full', outline: rectangle(1220, 610), cost: 100 },
      { id: 'half', outline: rectangle(610, 610), cost: 58 },
      {
        id: 'mine',
        outline: [
          [0, 0],
          [800, 40],
          [760, 420],
          [500, 380],
          [450, 560],
          [20, 500],
        ] as const,
        holes: [
          [
            [200, 200],
            [260, 200],
            [240, 260],
          ],
        ] as const,
        cost: 0,
        available: 1,
      },
    ],
  }));

/** Everything that can be wrong with a layout, judged without the solver's code. */
function faultsOf(request: SheetRequest, layout: SheetLayout): readonly string[] {
  const faults = layout.sheets.flatMap((sheet) => {
    const shapes = sheet.placements.map(({ pieceId, copy, outline, holes }) => ({
      name: `${pieceId}/${copy}`,
      shape: { outline, holes } satisfies Shape,
    }));
    return shapes.flatMap(({ name, shape }, k) => [
      ...(liesWithin(shape, sheet, request.edgeTrimMm) ? [] : [`${name} sticks out of ${sheet.stockId}`]),
      ...shapes
        .slice(0, k)
        .filter((other) => !areApart(shape, other.shape, request.kerfMm))
        .map((other) => `${name} too near ${other.name}`),
    ]);
  });
  const cut = layout.sheets
    .flatMap(({ placements }) => placements.map(({ pieceId, copy }) => `${pieceId}/${copy}`))
    .sort();
  const asked = request.pieces
    .flatMap(({ id, count = 1 }) => Array.from({ length: count }, (_, k) => `${id}/${k + 1}`))
    .sort();
  return JSON.stringify(cut) === JSON.stringify(asked)
    ? faults
    : [...faults, `cut ${cut.join()} instead of ${asked.join()}`];
}

/** Each corner of the placed outline is the drawn corner, turned and moved, within one step of the grid. */
function farthestCorner(request: SheetRequest, layout: SheetLayout): number {
  const distances = layout.sheets.flatMap(({ placements }) =>
    placements.flatMap(({ pieceId, turnDeg, moveMm, outline }) => {
      const drawn = request.pieces.find(({ id }) => id === pieceId)!.outline;
      const angle = (turnDeg * Math.PI) / 180;
      return outline.map(([x, y]) =>
        Math.min(
          ...drawn.map(([a, b]) =>
            Math.hypot(
              a * Math.cos(angle) - b * Math.sin(angle) + moveMm[0] - x,
              a * Math.sin(angle) + b * Math.cos(angle) + moveMm[1] - y,
            ),
          ),
        ),
      );
    }),
  );
  return Math.max(...distances);
}

describe('any pieces on sheets', () => {
  test('nothing overlaps, keeps the kerf, stays inside the trim, and every piece is cut as often as asked', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const outcome = nestInSheets(request);
        expect(outcome.ok ? faultsOf(request, outcome.value) : outcome.problems).toEqual([]);
        if (outcome.ok) expect(farthestCorner(request, outcome.value)).toBeLessThan(0.0032);
      }),
      runs,
    );
  });

  test('more work never costs more, and the same work gives the same layout', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const [little, again, more] = [50, 50, 400].map((workUnits) =>
          nestInSheets({ ...request, workUnits }),
        );
        expect(little).toEqual(again);
        if (!little.ok || !more.ok) throw new Error('these pieces fit');
        expect(more.value.cost).toBeLessThanOrEqual(little.value.cost);
        expect(little.value.cost).toBeGreaterThanOrEqual(little.value.leastCost);
      }),
      { ...runs, numRuns: 8 },
    );
  });
});

describe('any pieces on a roll', () => {
  test('nothing overlaps, keeps the kerf, and stays inside the roll and its trim', () => {
    fc.assert(
      fc.property(pieces, fc.constantFrom(0, 2.5), fc.constantFrom(0, 12.7), (list, kerfMm, edgeTrimMm) => {
        const outcome = nestInStrip({
          pieces: list,
          widthMm: 900,
          kerfMm,
          edgeTrimMm,
          seed: 3,
          workUnits: 300,
        });
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
        const { placements, lengthMm } = outcome.value;
        const roll: Shape = { outline: rectangle(lengthMm, 900), holes: [] };
        placements.forEach((shape, k) => {
          expect(liesWithin(shape, roll, edgeTrimMm)).toBe(true);
          expect(placements.slice(0, k).every((other) => areApart(shape, other, kerfMm))).toBe(true);
        });
        expect(placements).toHaveLength(list.reduce((sum, { count = 1 }) => sum + count, 0));
      }),
      { ...runs, numRuns: 15 },
    );
  });
});

describe('the judge itself', () => {
  const square = (x: number, y: number, size: number): Shape => ({
    outline: [
      [x, y],
      [x + size, y],
      [x + size, y + size],
      [x, y + size],
    ],
    holes: [],
  });

  test('touching along an edge is no overlap, one ten-thousandth more is', () => {
    expect(overlap(square(0, 0, 10), square(10, 3, 10))).toBe(false);
    expect(overlap(square(0, 0, 10), square(9.9999, 3, 10))).toBe(true);
  });

  test('a piece overlaps itself, and a smaller one inside it, but not one in its hole', () => {
    expect(overlap(square(0, 0, 10), square(0, 0, 10))).toBe(true);
    expect(overlap(square(0, 0, 10), square(2, 2, 3))).toBe(true);
    expect(overlap({ ...square(0, 0, 10), holes: [square(2, 2, 6).outline] }, square(3, 3, 4))).toBe(false);
  });

  test('a gap of exactly the kerf is kept, a ten-thousandth less is not', () => {
    expect(areApart(square(0, 0, 10), square(12, 0, 10), 2)).toBe(true);
    expect(areApart(square(0, 0, 10), square(11.9999, 0, 10), 2)).toBe(false);
  });

  test('a shape through a sheet edge does not lie within it', () => {
    expect(liesWithin(square(1, 1, 5), square(0, 0, 10), 1)).toBe(true);
    expect(liesWithin(square(0.9999, 1, 5), square(0, 0, 10), 1)).toBe(false);
    expect(liesWithin(square(6, 1, 5), square(0, 0, 10), 0)).toBe(false);
  });
});
