import { randomStream, type RandomStream } from '#lib/kernel';
import type { CoreBillByCode } from '#lib/coring';
import { rotatePoint, type Point } from '#lib/geometry';

/**
 * Openings of nine makes, drawn for the bench alone: no shape and no range of sizes is shared with the property tests, and the
 * budgets of the work were not chosen by them. All invented.
 */
export interface MadeOpening {
  readonly make: string;
  readonly request: CoreBillByCode;
}

const between = (random: RandomStream, from: number, upTo: number): number => from + random() * (upTo - from);
const oneOf = <T>(random: RandomStream, choices: readonly T[]): T =>
  choices[Math.floor(random() * choices.length)];

type Make = (random: RandomStream) => readonly Point[];

/** A side deck that follows the sheer: a band between two arcs. */
const sheerBand: Make = (random) => {
  const [radius, wide, turn] = [
    between(random, 2500, 9000),
    between(random, 160, 420),
    between(random, 0.12, 0.5),
  ];
  const arc = (r: number, from: number, upTo: number): readonly Point[] =>
    Array.from({ length: 13 }, (_, k): Point => {
      const at = from + ((upTo - from) * k) / 12;
      return [r * Math.sin(at), r * Math.cos(at) - radius];
    });
  return [...arc(radius, turn, 0), ...arc(radius + wide, 0, turn)];
};

/** Saw cuts that step round deck gear: sharp corners at right angles. */
const stepped: Make = (random) => {
  const steps = 2 + Math.floor(random() * 4);
  const tread = Array.from({ length: steps }, () => between(random, 90, 420));
  const rise = Array.from({ length: steps }, () => between(random, 60, 260));
  const length = tread.reduce((sum, one) => sum + one, 0);
  const top = tread.flatMap((_, k): readonly Point[] => {
    const x = length - tread.slice(0, k).reduce((sum, one) => sum + one, 0);
    const y = rise.slice(0, k + 1).reduce((sum, one) => sum + one, 0);
    return [
      [x, y],
      [x - tread[k], y],
    ];
  });
  return [[0, 0], [length, 0], ...top];
};

/** Round a mast partner: a thick C, open to one side, of straight cuts. */
const collar: Make = (random) => {
  const [out, wide, gap] = [between(random, 260, 560), between(random, 100, 200), between(random, 0.5, 1.2)];
  const at = (r: number, turn: number): Point => [r * Math.cos(turn), r * Math.sin(turn)];
  const turns = Array.from({ length: 11 }, (_, k) => gap + ((2 * Math.PI - 2 * gap) * k) / 10);
  return [...turns.map((turn) => at(out, turn)), ...turns.map((turn) => at(out - wide, turn)).reverse()];
};

/** A cross where two bad strips meet. */
const cross: Make = (random) => {
  const [a, b, wide] = [between(random, 300, 900), between(random, 250, 700), between(random, 80, 240)];
  return [
    [-a, -wide],
    [-wide, -wide],
    [-wide, -b],
    [wide, -b],
    [wide, -wide],
    [a, -wide],
    [a, wide],
    [wide, wide],
    [wide, b],
    [-wide, b],
    [-wide, wide],
    [-a, wide],
  ];
};

/** Two panels with a neck between them. */
const waisted: Make = (random) => {
  const [a, b, neck, long] = [
    between(random, 250, 700),
    between(random, 250, 700),
    between(random, 70, 200),
    between(random, 80, 400),
  ];
  const [h, g] = [between(random, 250, 500), between(random, 250, 500)];
  return [
    [0, -h],
    [a, -h],
    [a, -neck],
    [a + long, -neck],
    [a + long, -g],
    [a + long + b, -g],
    [a + long + b, g],
    [a + long, g],
    [a + long, neck],
    [a, neck],
    [a, h],
    [0, h],
  ];
};

/** A sole or a whole panel, hardly off the square. */
const wholePanel: Make = (random) => {
  const [length, wide, off] = [
    between(random, 900, 3200),
    between(random, 500, 1500),
    between(random, -60, 60),
  ];
  return [
    [0, 0],
    [length, off],
    [length - off, wide],
    [off, wide],
  ];
};

/** A scalloped blob as sounding gives it: many corners, no straight side. */
const scalloped: Make = (random) => {
  const [reach, lobes, depth] = [
    between(random, 180, 620),
    3 + Math.floor(random() * 6),
    between(random, 0.1, 0.45),
  ];
  const count = 44;
  return Array.from({ length: count }, (_, k): Point => {
    const turn = (2 * Math.PI * k) / count;
    const away = reach * (1 - depth + depth * Math.cos(lobes * turn));
    return [1.4 * away * Math.cos(turn), away * Math.sin(turn)];
  });
};

/** A comb: a strip with bays between the bases of stanchions. */
const comb: Make = (random) => {
  const teeth = 2 + Math.floor(random() * 4);
  const [pitch, tooth, back, deep] = [
    between(random, 220, 420),
    between(random, 90, 180),
    between(random, 80, 160),
    between(random, 90, 280),
  ];
  const bays = Array.from({ length: teeth }, (_, k): readonly Point[] => {
    const x = k * pitch;
    return [
      [x, -deep],
      [x + tooth, -deep],
      [x + tooth, 0],
      ...(k < teeth - 1 ? [[x + pitch, 0] as const] : []),
    ];
  });
  return [...bays.flat(), [(teeth - 1) * pitch + tooth, back], [0, back]];
};

/** A wedge forward, cut off. */
const wedge: Make = (random) => {
  const [length, aft, forward] = [
    between(random, 400, 1900),
    between(random, 350, 1300),
    between(random, 60, 200),
  ];
  return [
    [0, -aft / 2],
    [length, -forward / 2],
    [length, forward / 2],
    [0, aft / 2],
  ];
};

const makes: Readonly<Record<string, Make>> = {
  'sheer band': sheerBand,
  stepped,
  collar,
  cross,
  waisted,
  'whole panel': wholePanel,
  scalloped,
  comb,
  wedge,
};

const materials = [
  { material: 'core-balsa-150', hasGrain: false },
  { material: 'core-cross-linked-foam-80', hasGrain: false },
  { material: 'core-marine-plywood-550', hasGrain: true },
];

/** Openings turned at random, a third over beams, six in ten undercut, plain and scored core, one layer and two. */
export function madeOpenings(seed: number, count: number): readonly MadeOpening[] {
  const random = randomStream(seed);
  const names = Object.keys(makes);
  return Array.from({ length: count }, (_, k) => {
    const make = names[k % names.length];
    return { make, request: requestOf(random, makes[make](random)) };
  });
}

function requestOf(random: RandomStream, drawn: readonly Point[]): CoreBillByCode {
  const turn = random() < 0.5 ? 0 : between(random, 0, Math.PI);
  const outline = drawn.map((point): Point => rotatePoint(point, turn));
  const { material, hasGrain } = oneOf(random, materials);
  return {
    openings: [{ label: 'A', outline, undercutMm: random() < 0.4 ? 0 : between(random, 10, 170) }],
    material,
    cavityMm: random() < 0.2 ? 42 : between(random, 12, 28),
    ...(hasGrain || random() < 0.5 ? {} : { form: 'scored' as const }),
    ...(random() < 1 / 3 ? { supports: beamsUnder(random, outline) } : {}),
    hourCost: 60,
  };
}

function beamsUnder(random: RandomStream, outline: readonly Point[]): CoreBillByCode['supports'] {
  const xs = outline.map(([x]) => x);
  return Array.from({ length: 1 + Math.floor(random() * 3) }, () => {
    const x = between(random, Math.min(...xs), Math.max(...xs));
    return { from: [x, -4000] as const, to: [x + between(random, -100, 100), 4000] as const };
  });
}
