import { expect, test } from '@jest/globals';
import { randomStream } from '#lib/kernel';
import { areApart, liesWithin } from '../../../test/property/exact-layout.js';
import { nestInSheets } from './index.js';

const rectangle = (length: number, width: number): readonly (readonly [number, number])[] => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];

test('whatever fits one cheapest sheet by its boxes is cut from it, apart by the kerf and inside the trim, by exact arithmetic', () => {
  const next = randomStream(7);
  const side = (): number => 40 + Math.floor(next() * 160);
  for (let trial = 0; trial < 40; trial += 1) {
    const pieces = Array.from({ length: 12 }, (_, index) => {
      const [length, width] = [side(), side()];
      return {
        id: `p${index}`,
        outline: [
          [0, 0],
          [length, 0],
          [length, width],
          [length / 2, width - 10],
          [0, width],
        ] as const,
        turnsDeg: [0, 90, 180, 270],
      };
    });
    const outcome = nestInSheets({
      pieces,
      stock: [{ id: 'sheet', outline: rectangle(1220, 610), cost: 10 }],
      kerfMm: 2,
      edgeTrimMm: 5,
      seed: 1,
      workUnits: 1,
    });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    const [sheet] = outcome.value.sheets;
    expect(outcome.value.sheets).toHaveLength(1);
    expect(sheet.placements).toHaveLength(12);
    sheet.placements.forEach((one, index) => {
      expect(liesWithin(one, sheet, 5)).toBe(true);
      for (const other of sheet.placements.slice(index + 1)) expect(areApart(one, other, 2)).toBe(true);
    });
  }
});

test('pieces that fill the sheet better than their boxes are still searched for', () => {
  const triangles = [0, 1].map((index) => ({
    id: `t${index}`,
    outline: [
      [0, 0],
      [600, 0],
      [0, 300],
    ] as const,
    turnsDeg: [0, 180],
  }));
  const outcome = nestInSheets({
    pieces: triangles,
    stock: [{ id: 'snug', outline: rectangle(620, 320), cost: 10 }],
    kerfMm: 2,
    edgeTrimMm: 0,
    seed: 1,
    workUnits: 500,
  });
  expect(outcome.ok && outcome.value.sheets.length).toBe(1);
});

test('what takes several sheets is laid out by boxes and never costs more with a search than without one', () => {
  const next = randomStream(11);
  const side = (): number => 150 + Math.floor(next() * 450);
  for (let trial = 0; trial < 12; trial += 1) {
    const pieces = Array.from({ length: 8 }, (_, index) => ({
      id: `p${index}`,
      outline: rectangle(side(), side()),
      turnsDeg: [0, 90],
    }));
    const costOf = (workUnits: number): number => {
      const outcome = nestInSheets({
        pieces,
        stock: [
          { id: 'small', outline: rectangle(1220, 610), cost: 50 },
          { id: 'large', outline: rectangle(2440, 1220), cost: 160 },
        ],
        kerfMm: 2,
        edgeTrimMm: 5,
        seed: 1,
        workUnits,
      });
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
      outcome.value.sheets.forEach((sheet) =>
        sheet.placements.forEach((one, index) => {
          expect(liesWithin(one, sheet, 5)).toBe(true);
          for (const other of sheet.placements.slice(index + 1)) expect(areApart(one, other, 2)).toBe(true);
        }),
      );
      expect(outcome.value.cost).toBeGreaterThanOrEqual(outcome.value.leastCost);
      return outcome.value.cost;
    };
    const [boxes, searched] = [costOf(0), costOf(200)];
    expect(searched).toBeLessThanOrEqual(boxes);
  }
});

test('the last sheet is one that is just large enough', () => {
  const outcome = nestInSheets({
    pieces: [
      { id: 'a', outline: rectangle(1200, 600), turnsDeg: [0] },
      { id: 'b', outline: rectangle(1200, 600), turnsDeg: [0] },
      { id: 'c', outline: rectangle(500, 280), turnsDeg: [0] },
    ],
    stock: [
      { id: 'whole', outline: rectangle(1220, 1210), cost: 80 },
      { id: 'quarter', outline: rectangle(610, 300), cost: 20 },
    ],
    kerfMm: 2,
    edgeTrimMm: 0,
    seed: 1,
    workUnits: 0,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  expect(outcome.value.sheets.map(({ stockId }) => stockId)).toEqual(['whole', 'quarter']);
  expect(outcome.value.cost).toBe(100);
});
