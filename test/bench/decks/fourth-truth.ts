import { containsPoint, regionOf, type Point, type Ring } from '#lib/geometry';
import type { RandomStream } from '#lib/kernel';
import { CELL_MM, type Deck } from './truth.js';

/**
 * Decks of a fourth make, with code of their own: water that soaks along the grain by diffusion from fittings and from places that
 * nobody sees, ponds in the hollows of an uneven deck, planks of core that went whole, and rot that walked. Every parameter was
 * set before the first run; nothing of the map was chosen by these decks.
 */
const makings = { 'soaked': soak, 'ponds': ponds, 'whole planks': planks, 'walked rot': walks } as const;

export type FourthDamage = keyof typeof makings;
export const fourthDamages: readonly FourthDamage[] = ['soaked', 'ponds', 'whole planks', 'walked rot'];

interface Outline {
  readonly outline: Ring;
  readonly holes: readonly Ring[];
}

/** A quarter deck, a narrow side deck, a wedge in the bow with a round hatch, a cabin top with a slot. */
const outlines: readonly Outline[] = [
  { outline: [[0, 0], [1900, 0], [2050, 420], [1800, 980], [300, 1100], [0, 700]], holes: [] }, // prettier-ignore
  { outline: [[0, 60], [1300, 0], [2700, 90], [4000, 330], [4000, 730], [2700, 470], [1300, 390], [0, 430]], holes: [] }, // prettier-ignore
  { outline: [[0, 650], [1900, 0], [2200, 160], [2200, 1140], [1900, 1300]], holes: [ringRound([1350, 650], 260)] }, // prettier-ignore
  { outline: [[0, 0], [2300, 0], [2300, 1300], [0, 1300]], holes: [[[900, 100], [1400, 100], [1400, 800], [900, 800]]] }, // prettier-ignore
];

function ringRound([x, y]: Point, radiusMm: number): Ring {
  return Array.from({ length: 24 }, (_, index): Point => {
    const angle = (Math.PI * index) / 12;
    return [x + radiusMm * Math.cos(angle), y + radiusMm * Math.sin(angle)];
  });
}

/** Cells of a deck, each with its place and the cells beside it: west, east, south, north; -1 for none. */
interface Cells {
  readonly places: readonly Point[];
  readonly beside: readonly (readonly number[])[];
  readonly numberAt: ReadonlyMap<string, number>;
  readonly fittings: readonly Point[];
  readonly leaky: number;
}

const keyOf = (column: number, row: number): string => `${column}:${row}`;

function cellsOf({ outline, holes }: Outline, random: RandomStream): Cells {
  const region = regionOf(outline, holes);
  const columns = Math.ceil(Math.max(...outline.map(([x]) => x)) / CELL_MM);
  const rows = Math.ceil(Math.max(...outline.map(([, y]) => y)) / CELL_MM);
  const spots: (readonly [number, number])[] = [];
  for (let column = 0; column < columns; column += 1)
    for (let row = 0; row < rows; row += 1)
      if (containsPoint(region, placeOf(column, row))) spots.push([column, row]);
  const numberAt = new Map(spots.map(([column, row], index) => [keyOf(column, row), index]));
  const beside = spots.map(([column, row]) =>
    [[-1, 0], [1, 0], [0, -1], [0, 1]].map(([c, r]) => numberAt.get(keyOf(column + c, row + r)) ?? -1),
  ); // prettier-ignore
  const places = spots.map(([column, row]) => placeOf(column, row));
  const fittings = Array.from({ length: 6 }, () => places[Math.floor(random() * places.length)]);
  return { places, beside, numberAt, fittings, leaky: 1 + Math.floor(3 * random()) };
}

const placeOf = (column: number, row: number): Point => [(column + 0.5) * CELL_MM, (row + 0.5) * CELL_MM];

export function fourthDeck(damage: FourthDamage, share: number, random: RandomStream): Deck {
  const shape = outlines[Math.floor(random() * outlines.length)];
  const cells = cellsOf(shape, random);
  const wetness = makings[damage](cells, random);
  const order = [...wetness.keys()].sort((one, other) => wetness[other] - wetness[one]);
  const isBadCell = new Uint8Array(wetness.length);
  for (const cell of order.slice(0, Math.max(1, Math.round(share * order.length)))) isBadCell[cell] = 1;
  return {
    ...shape,
    region: regionOf(shape.outline, shape.holes),
    fittings: cells.fittings.map((at, index) => ({ at, isLeaking: index < cells.leaky })),
    cells: cells.places.map((at, index) => ({ at, isBad: isBadCell[index] === 1 })),
    isBad: ([x, y]) => {
      const cell = cells.numberAt.get(keyOf(Math.floor(x / CELL_MM), Math.floor(y / CELL_MM)));
      return cell !== undefined && isBadCell[cell] === 1;
    },
    badShare: isBadCell.reduce((sum, one) => sum + one, 0) / isBadCell.length,
  };
}

const nearestCell = ({ places }: Cells, [x, y]: Point): number =>
  places.reduce(
    (best, [px, py], index) =>
      (px - x) ** 2 + (py - y) ** 2 < (places[best][0] - x) ** 2 + (places[best][1] - y) ** 2 ? index : best,
    0,
  );

/** Diffusion of water with more conductance along the grain, and glue lines across it that let little through. */
function soak(cells: Cells, random: RandomStream): Float64Array {
  const { places, beside, fittings, leaky } = cells;
  const alongX = 0.16 + 0.07 * random();
  const alongY = 0.04 + 0.08 * random();
  const pitchMm = 250 + 500 * random();
  const passes = places.map(([x], index) => {
    const [, next] = beside[index];
    return next >= 0 && Math.floor(x / pitchMm) !== Math.floor(places[next][0] / pitchMm) ? 0.15 : 1;
  });
  const unseen = Array.from(
    { length: Math.floor(2.5 * random()) },
    () => places[Math.floor(random() * places.length)],
  );
  const sources = [...fittings.slice(0, leaky), ...unseen].map((at) => ({
    cell: nearestCell(cells, at),
    rate: 0.3 + random(),
  }));
  let water = new Float64Array(places.length);
  const steps = 150 + Math.floor(450 * random());
  for (let step = 0; step < steps; step += 1) {
    for (const { cell, rate } of sources) water[cell] += rate;
    const before = water;
    water = before.map((own, index) => {
      const [west, east, south, north] = beside[index];
      const flow = (other: number, ease: number): number => (other < 0 ? 0 : ease * (before[other] - own));
      return (
        own +
        flow(west, alongX * (west < 0 ? 0 : passes[west])) +
        flow(east, alongX * passes[index]) +
        flow(south, alongY) +
        flow(north, alongY)
      );
    });
  }
  return water.map((value) => Math.log(value + 1e-9) + 0.25 * random());
}

/** Low places of a deck that sagged between its beams and dents: water stands there and goes in. */
function ponds({ places }: Cells, random: RandomStream): Float64Array {
  const beamsMm = 350 + 450 * random();
  const fall = (random() - 0.5) * 0.012;
  const dents = Array.from({ length: 4 + Math.floor(8 * random()) }, () => ({
    at: places[Math.floor(random() * places.length)],
    deepMm: 1 + 5 * random() ** 2,
    wideMm: 60 + 200 * random(),
  }));
  return Float64Array.from(places, ([x, y]) => {
    const sag = 2 * Math.sin((Math.PI * x) / beamsMm) ** 2;
    const dented = dents.reduce(
      (sum, { at, deepMm, wideMm }) =>
        sum + deepMm / (1 + ((x - at[0]) ** 2 + (y - at[1]) ** 2) / wideMm ** 2) ** 2,
      0,
    );
    return sag + dented + fall * y + 0.15 * random();
  });
}

/** Planks of core with staggered ends; a plank is wet as a whole, neighbours a little with it, and its ends first. */
function planks({ places }: Cells, random: RandomStream): Float64Array {
  const wideMm = 70 + 130 * random();
  const longMm = 350 + 700 * random();
  const wet = new Map<string, number>();
  const wetnessOf = (row: number, plank: number): number => {
    const key = keyOf(plank, row);
    const known = wet.get(key) ?? random() ** 2;
    wet.set(key, known);
    return known;
  };
  return Float64Array.from(places, ([x, y]) => {
    const row = Math.floor(y / wideMm);
    const along = x / longMm + 0.37 * row;
    const plank = Math.floor(along);
    const fromEnd = Math.min(along - plank, 1 - (along - plank));
    const sides = wetnessOf(row - 1, plank) + wetnessOf(row + 1, plank);
    return wetnessOf(row, plank) + 0.12 * sides - 0.35 * fromEnd + 0.05 * random();
  });
}

/** Rot that walked at random from where it began, and wherever it passed often the core is gone. */
function walks(cells: Cells, random: RandomStream): Float64Array {
  const { places, beside } = cells;
  const visits = new Float64Array(places.length);
  const starts = Array.from({ length: 1 + Math.floor(4 * random()) }, () =>
    Math.floor(random() * places.length),
  );
  const lean = 0.25 + 0.2 * random();
  for (const start of starts) {
    const walkers = 60 + Math.floor(200 * random() ** 2);
    for (let walker = 0; walker < walkers; walker += 1)
      for (const cell of walked(start, lean, cells, random)) visits[cell] += 1;
  }
  // Rot that touches: the mean over a hand's breadth, so that single cells do not stand alone.
  let level = visits.map((count) => Math.log(1 + count));
  for (let round = 0; round < 2; round += 1) {
    const before = level;
    level = before.map((own, index) => {
      const near = beside[index].filter((other) => other >= 0);
      return (
        0.5 * own + (0.5 * near.reduce((sum, other) => sum + before[other], 0)) / Math.max(1, near.length)
      );
    });
  }
  return level.map((value) => value + 0.02 * random());
}

/** Cells of one walk of 220 steps, more of them along the grain than across it; a step over the edge stays where it is. */
function walked(start: number, lean: number, { beside }: Cells, random: RandomStream): readonly number[] {
  let here = start;
  return Array.from({ length: 220 }, () => {
    const alongGrain = random() < 2 * lean;
    const way = (alongGrain ? 0 : 2) + (random() < 0.5 ? 0 : 1);
    const next = beside[here][way];
    if (next >= 0) here = next;
    return here;
  });
}
