import { nestInSheets, nestInStrip } from '#lib/nesting';
import type { PublishedCase } from '../published-case.js';

const rectangle = (length: number, width: number) =>
  [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ] as const;

/** Optimum known by construction: the pieces are the sheet, cut up. */
const cutUpSheets = (): number => {
  const outcome = nestInSheets({
    pieces: [{ id: 'quarter', outline: rectangle(610, 305), count: 12, turnsDeg: [0, 90, 180, 270] }],
    stock: [{ id: 'sheet', outline: rectangle(1220, 610), cost: 1 }],
    kerfMm: 0,
    edgeTrimMm: 0,
    seed: 1,
    workUnits: 500,
  });
  return outcome.ok ? outcome.value.cost : Number.NaN;
};

/** Two triangles make a rectangle: eight of 300 x 200 mm fill four of them, two abreast on 400 mm. */
const triangles = (): number => {
  const outcome = nestInStrip({
    pieces: [
      {
        id: 'triangle',
        outline: [
          [0, 0],
          [300, 0],
          [0, 200],
        ],
        count: 8,
        turnsDeg: [0, 180],
      },
    ],
    widthMm: 400.1,
    kerfMm: 0,
    edgeTrimMm: 0,
    seed: 1,
    workUnits: 300,
  });
  return outcome.ok ? outcome.value.lengthMm : Number.NaN;
};

export const nestingBounds: readonly PublishedCase[] = [
  {
    id: 'nesting-quarters-of-three-sheets',
    room: 'nesting',
    title: 'Sheets for twelve quarter sheets',
    source: 'ARITHMETIC',
    locus: '12 / 4',
    unit: '1',
    printed: '3',
    ours: cutUpSheets,
    kind: 'by-hand',
  },
  {
    id: 'nesting-eight-triangles',
    room: 'nesting',
    title: 'Roll length for eight right triangles of 300 x 200 mm on 400 mm',
    source: 'ARITHMETIC',
    locus: '4 x 300 x 200 / 400',
    unit: 'mm',
    printed: '600',
    ours: triangles,
    kind: 'by-hand',
    tolerance: {
      absolute: 0.5,
      because: 'sloping edges keep 24 grid steps apart, and the roll is 0.1 mm wider than the pieces',
    },
  },
];
