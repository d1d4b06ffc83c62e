import { distanceToSegment, rectangle, type Point } from '#lib/geometry';
import type { RandomStream } from '#lib/kernel';
import {
  CELL_MM,
  deckFrom,
  neighbours,
  normal,
  type Deck,
  type Ground,
  type Heights,
  type PanelShape,
} from './truth.js';

/**
 * Four more ways in which core goes bad, and other panels. Their parameters were fixed before the first run and nothing of the map
 * was chosen by them.
 */
const damages = {
  'along seams': seams,
  'in from the edge': fromEdge,
  'grown from seeds': grown,
  'blocks of scored core': blocks,
} as const satisfies Readonly<Record<string, Heights>>;

export type UnseenDamage = keyof typeof damages;
export const unseenDamages: readonly UnseenDamage[] = [
  'along seams',
  'in from the edge',
  'grown from seeds',
  'blocks of scored core',
];

/** A bent side deck, a cockpit sole with a drain, a coach roof with two hatches, a bridge deck. */
const panels: readonly PanelShape[] = [
  { outline: [[0, 0], [1500, 120], [3000, 420], [3000, 900], [1500, 620], [0, 480]], holes: [] }, // prettier-ignore
  { outline: rectangle(0, 0, 1400, 1100), holes: [rectangle(620, 960, 780, 1060)] },
  { outline: [[0, 150], [2400, 0], [2400, 1200], [0, 1050]], holes: [rectangle(400, 400, 800, 800), rectangle(1500, 350, 2000, 850)] }, // prettier-ignore
  { outline: rectangle(0, 0, 2600, 640), holes: [] },
];

export const unseenDeck = (damage: UnseenDamage, share: number, random: RandomStream): Deck =>
  deckFrom(panels, damages[damage], share, random);

const between = (from: number, to: number, random: RandomStream): number => from + (to - from) * random();

const deckCells = ({ isDeck }: Ground): readonly number[] =>
  [...isDeck.keys()].filter((index) => isDeck[index] === 1);

const overDeck = (ground: Ground, heightAt: (place: Point) => number): Float64Array =>
  Float64Array.from(ground.isDeck, (is, index) => (is === 1 ? heightAt(ground.at(index)) : -1e9));

/** Core wet along joints and cracks: bands whose width wanders along each line, and every line is wetter or drier than the others. */
function seams(ground: Ground, random: RandomStream): Float64Array {
  const deck = deckCells(ground);
  const lines = Array.from({ length: 2 + Math.floor(3 * random()) }, () => crack(ground, deck, random));
  return overDeck(ground, (place) =>
    Math.max(
      ...lines.flatMap((line) => line.map(({ from, to, wet }) => wet - distanceToSegment(place, from, to))),
    ),
  );
}

function crack(ground: Ground, deck: readonly number[], random: RandomStream) {
  let from = ground.at(deck[Math.floor(random() * deck.length)]);
  let way = Math.PI * random();
  const straightness = between(0.05, 0.5, random);
  let wet = between(20, 120, random);
  return Array.from({ length: 12 + Math.floor(20 * random()) }, () => {
    way += straightness * normal(random);
    const to: Point = [from[0] + 50 * Math.cos(way), from[1] + 50 * Math.sin(way)];
    wet = Math.max(5, wet + 15 * normal(random));
    const segment = { from, to, wet };
    from = to;
    return segment;
  });
}

/** Water in from the rim, as under a toe rail: how deep it went wanders along the edge in waves of three lengths. */
function fromEdge(ground: Ground, random: RandomStream): Float64Array {
  const waves = [300, 800, 2200].map((lengthMm) => ({
    turn: Math.PI * random(),
    phase: 2 * Math.PI * random(),
    k: (2 * Math.PI) / (lengthMm * between(0.7, 1.4, random)),
    size: 0.16 * lengthMm ** 0.8 * between(0.5, 1.5, random),
  }));
  const depth = ([x, y]: Point): number =>
    waves.reduce(
      (sum, { turn, phase, k, size }) =>
        sum + size * Math.sin(k * (x * Math.cos(turn) + y * Math.sin(turn)) + phase),
      0,
    );
  const away = stepsFromEdge(ground);
  return Float64Array.from(ground.isDeck, (is, index) =>
    is === 1 ? depth(ground.at(index)) - CELL_MM * away[index] : -1e9,
  );
}

/** Cells from the rim, by walking inwards from every cell that lies at it. */
function stepsFromEdge(ground: Ground): Float64Array {
  const steps = new Float64Array(ground.isDeck.length).fill(Infinity);
  let front = deckCells(ground).filter((index) => neighbours(ground, index).length < 4);
  for (let step = 0; front.length > 0; step += 1) {
    for (const index of front) steps[index] = Math.min(steps[index], step);
    front = [...new Set(front.flatMap((index) => neighbours(ground, index)))].filter(
      (index) => steps[index] === Infinity,
    );
  }
  return steps;
}

/** Rot that grows from a few seeds, one cell of some rim at a time; some seeds grow much faster than others. */
function grown(ground: Ground, random: RandomStream): Float64Array {
  const deck = deckCells(ground);
  const seeds = Array.from({ length: 2 + Math.floor(6 * random()) }, () => ({
    pace: (1 - random()) ** -0.8,
    rim: [deck[Math.floor(random() * deck.length)]],
  }));
  const order = new Float64Array(ground.isDeck.length).fill(-1e9);
  for (let turn = 0; turn < 0.8 * deck.length;) {
    const alive = seeds.filter(({ rim }) => rim.length > 0);
    if (alive.length === 0) break;
    const { rim } = drawnBy(alive, ({ pace }) => pace, random);
    const [cell] = rim.splice(Math.floor(random() * rim.length), 1);
    if (order[cell] > -1e9) continue;
    order[cell] = -turn;
    turn += 1;
    rim.push(...neighbours(ground, cell).filter((next) => order[next] === -1e9));
  }
  return order;
}

function drawnBy<T>(items: readonly T[], weightOf: (item: T) => number, random: RandomStream): T {
  let left = random() * items.reduce((sum, item) => sum + weightOf(item), 0);
  return items.find((item) => (left -= weightOf(item)) <= 0) ?? items[items.length - 1];
}

/** Core scored into blocks: water spreads along open kerfs from block to block, and a block is wet as a whole, but for its middle. */
function blocks(ground: Ground, random: RandomStream): Float64Array {
  const [width, height] = [between(40, 80, random), between(60, 120, random)];
  const turn = between(-0.5, 0.5, random);
  const spot = ([x, y]: Point): readonly [number, number] => [
    (x * Math.cos(turn) + y * Math.sin(turn)) / width,
    (y * Math.cos(turn) - x * Math.sin(turn)) / height,
  ];
  const wet = soaked(
    deckCells(ground).map((index) => blockOf(spot(ground.at(index)))),
    random,
  );
  return overDeck(ground, (place) => {
    const at = spot(place);
    const inside = Math.max(...at.map((value) => Math.abs(value - Math.floor(value) - 0.5)));
    return (wet.get(blockOf(at)) ?? 0) + 0.02 * inside;
  });
}

const blockOf = ([u, v]: readonly [number, number]): string => `${Math.floor(u)} ${Math.floor(v)}`;

/** Wetness by block: it starts by chance and passes through kerfs of which some are closed. */
function soaked(names: readonly string[], random: RandomStream): ReadonlyMap<string, number> {
  const keys = [...new Set(names)];
  let wet = new Map(keys.map((key) => [key, random() ** 6 * 10] as const));
  const kerfs = new Map<string, number>();
  const kerf = (one: string, other: string): number => {
    const key = one < other ? `${one}|${other}` : `${other}|${one}`;
    const known = kerfs.get(key) ?? (random() < 0.3 ? 0 : 0.05 + 0.2 * random());
    kerfs.set(key, known);
    return known;
  };
  for (let round = 0; round < 25; round += 1) {
    const before = wet;
    wet = new Map(
      keys.map((key) => {
        const [u, v] = key.split(' ').map(Number);
        const around = [`${u + 1} ${v}`, `${u - 1} ${v}`, `${u} ${v + 1}`, `${u} ${v - 1}`];
        const own = before.get(key) ?? 0;
        const flow = around.reduce(
          (sum, other) => sum + (before.has(other) ? kerf(key, other) * ((before.get(other) ?? 0) - own) : 0),
          0,
        );
        return [key, own + flow] as const;
      }),
    );
  }
  return wet;
}
