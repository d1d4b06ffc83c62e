import { containsPoint, rectangle, regionOf, type Point, type Region, type Ring } from '#lib/geometry';
import type { RandomStream } from '#lib/kernel';

/** Simulated decks are known on squares of this side. */
export const CELL_MM = 20;

/** A panel of deck with the truth of its core, square by square. */
export interface Deck {
  readonly outline: Ring;
  readonly holes: readonly Ring[];
  readonly region: Region;
  /** Places of fittings, of which some leak. */
  readonly fittings: readonly { readonly at: Point; readonly isLeaking: boolean }[];
  readonly cells: readonly { readonly at: Point; readonly isBad: boolean }[];
  readonly isBad: (at: Point) => boolean;
  readonly badShare: number;
}

/** A way of making damage: a height for every cell; the highest are bad. */
export type Heights = (ground: Ground, random: RandomStream) => Float64Array;

/** Cells of the panel in a raster. */
export interface Ground {
  readonly columns: number;
  readonly rows: number;
  readonly isDeck: Uint8Array;
  readonly at: (index: number) => Point;
  readonly fittings: Deck['fittings'];
}

export const normal = (random: RandomStream): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

export interface PanelShape {
  readonly outline: Ring;
  readonly holes: readonly Ring[];
}

/** Side deck, foredeck, L round a corner of a cabin, deck with a hatch. */
const panels: readonly PanelShape[] = [
  { outline: rectangle(0, 0, 3600, 520), holes: [] },
  { outline: [[0, 0], [2300, 500], [2300, 1000], [0, 1500]], holes: [] }, // prettier-ignore
  { outline: [[0, 0], [2200, 0], [2200, 700], [1100, 700], [1100, 1500], [0, 1500]], holes: [] }, // prettier-ignore
  { outline: rectangle(0, 0, 2000, 1100), holes: [rectangle(700, 300, 1300, 800)] },
];

/** Damage by name; nothing here is shared with the map. */
const damages = {
  'leaks with flow': leaks,
  'rounded patches': patches,
  'rough domains': domains,
  'smooth field': waves,
} as const satisfies Readonly<Record<string, Heights>>;

export type DamageName = keyof typeof damages;
export const damageNames: readonly DamageName[] = [
  'leaks with flow',
  'rounded patches',
  'rough domains',
  'smooth field',
];

/** A deck whose bad share is the one wanted, as near as its squares allow. */
export function deckWith(damage: DamageName, share: number, random: RandomStream): Deck {
  return deckFrom(panels, damages[damage], share, random);
}

export function deckFrom(
  shapes: readonly PanelShape[],
  heightsOf: Heights,
  share: number,
  random: RandomStream,
): Deck {
  const shape = shapes[Math.floor(random() * shapes.length)];
  const region = regionOf(shape.outline, shape.holes);
  const ground = groundOf(region, shape.outline, random);
  const heights = heightsOf(ground, random);
  const deck = [...heights.keys()].filter((index) => ground.isDeck[index] === 1);
  const sorted = deck.map((index) => heights[index]).sort((a, b) => b - a);
  const level = sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  const bad = heights.map((height) => (height > level ? 1 : 0));
  const cells = deck.map((index) => ({ at: ground.at(index), isBad: bad[index] === 1 }));
  return {
    ...shape,
    region,
    fittings: ground.fittings,
    cells,
    isBad: ([x, y]) => {
      const [column, row] = [Math.floor(x / CELL_MM), Math.floor(y / CELL_MM)];
      return bad[Math.min(ground.columns - 1, column) * ground.rows + Math.min(ground.rows - 1, row)] === 1;
    },
    badShare: cells.filter(({ isBad }) => isBad).length / cells.length,
  };
}

function groundOf(region: Region, outline: Ring, random: RandomStream): Ground {
  const columns = Math.ceil(Math.max(...outline.map(([x]) => x)) / CELL_MM);
  const rows = Math.ceil(Math.max(...outline.map(([, y]) => y)) / CELL_MM);
  const at = (index: number): Point => [
    (Math.floor(index / rows) + 0.5) * CELL_MM,
    ((index % rows) + 0.5) * CELL_MM,
  ];
  const isDeck = Uint8Array.from({ length: columns * rows }, (_, index) =>
    containsPoint(region, at(index)) ? 1 : 0,
  );
  const deck = [...isDeck.keys()].filter((index) => isDeck[index] === 1);
  const fittings = Array.from({ length: 5 }, (_, index) => ({
    at: at(deck[Math.floor(random() * deck.length)]),
    isLeaking: index < 2,
  }));
  return { columns, rows, isDeck, at, fittings };
}

export const neighbours = ({ columns, rows, isDeck }: Ground, index: number): readonly number[] => {
  const [column, row] = [Math.floor(index / rows), index % rows];
  return [
    column > 0 ? index - rows : -1,
    column < columns - 1 ? index + rows : -1,
    row > 0 ? index - 1 : -1,
    row < rows - 1 ? index + 1 : -1,
  ].filter((other) => other >= 0 && isDeck[other] === 1);
};

/**
 * Water enters at the leaking fittings (and sometimes at one nobody suspects) and fills the core by invasion: the wet rim's
 * easiest cell is next. Along the grain (x) and downhill (+y) is easier than across and up.
 */
function leaks(ground: Ground, random: RandomStream): Float64Array {
  const { rows, fittings } = ground;
  const order = new Float64Array(ground.isDeck.length).fill(-1e9);
  const resistance = Float64Array.from(order, () => random());
  const rim: { readonly index: number; readonly cost: number }[] = [];
  const start = (at: Point) => Math.floor(at[0] / CELL_MM) * rows + Math.floor(at[1] / CELL_MM);
  const hidden = random() < 0.3 ? [fittings[4].at] : [];
  for (const at of [...fittings.filter(({ isLeaking }) => isLeaking).map((one) => one.at), ...hidden])
    rim.push({ index: start(at), cost: 0 });
  let turn = 0;
  while (rim.length > 0) {
    const best = rim.reduce((least, { cost }, index) => (cost < rim[least].cost ? index : least), 0);
    const [{ index, cost }] = rim.splice(best, 1);
    if (order[index] > -1e9) continue;
    order[index] = -turn;
    turn += 1;
    for (const next of neighbours(ground, index)) {
      const way = next === index + 1 ? 0.8 : next === index - 1 ? 1.6 : 0.55;
      if (order[next] === -1e9)
        rim.push({ index: next, cost: 0.985 * cost + way * (0.25 + resistance[next]) });
    }
    if (turn > 0.75 * order.length) break;
  }
  return order;
}

/** Ellipses of many sizes with wavy rims. */
function patches(ground: Ground, random: RandomStream): Float64Array {
  const deck = [...ground.isDeck.keys()].filter((index) => ground.isDeck[index] === 1);
  const many = Array.from({ length: 3 + Math.floor(6 * random()) }, () => ({
    centre: ground.at(deck[Math.floor(random() * deck.length)]),
    radius: 70 * random() ** -0.7,
    squeeze: 0.5 + random(),
    turn: Math.PI * random(),
    phases: [2 * Math.PI * random(), 2 * Math.PI * random()],
  }));
  return Float64Array.from(ground.isDeck, (_, index) => {
    const [x, y] = ground.at(index);
    return Math.max(
      ...many.map(({ centre, radius, squeeze, turn, phases }) => {
        const [dx, dy] = [x - centre[0], y - centre[1]];
        const [u, v] = [dx * Math.cos(turn) + dy * Math.sin(turn), dy * Math.cos(turn) - dx * Math.sin(turn)];
        const angle = Math.atan2(v, u);
        const wave = 1 + 0.15 * Math.sin(3 * angle + phases[0]) + 0.1 * Math.sin(7 * angle + phases[1]);
        return -Math.hypot(u / squeeze, v * squeeze) / (radius * wave);
      }),
    );
  });
}

/** A coarsening two-state lattice: each cell leans to what most cells round it are, noise and all; rims stay rough. */
function domains(ground: Ground, random: RandomStream): Float64Array {
  let value = Float64Array.from(ground.isDeck, () => normal(random));
  for (let round = 0; round < 60; round += 1) {
    const before = value;
    value = value.map((own, index) => {
      if (ground.isDeck[index] === 0) return own;
      const around = neighbours(ground, index);
      const mean = around.reduce((sum, other) => sum + before[other], 0) / Math.max(1, around.length);
      return Math.tanh(1.25 * (0.35 * own + 0.65 * mean)) + 0.06 * normal(random);
    });
  }
  return value;
}

/** Sum of random waves: squared-exponential covariance of a length drawn for the deck. */
function waves(ground: Ground, random: RandomStream): Float64Array {
  const lengthMm = 120 + 400 * random();
  const many = Array.from({ length: 120 }, () => ({
    kx: normal(random) / lengthMm,
    ky: normal(random) / lengthMm,
    phase: 2 * Math.PI * random(),
  }));
  return Float64Array.from(ground.isDeck, (_, index) => {
    const [x, y] = ground.at(index);
    return many.reduce((sum, { kx, ky, phase }) => sum + Math.cos(kx * x + ky * y + phase), 0);
  });
}
