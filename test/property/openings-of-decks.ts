import { randomStream, type RandomStream } from '#lib/kernel';
import {
  areaMm2,
  difference,
  intersection,
  largestPolygon,
  offset,
  regionOf,
  rotate,
  translate,
  union,
  type Point,
  type Polygon,
  type Region,
} from '#lib/geometry';

/** An opening with what a deck has besides: beams below, core that stays, and a camber that no long piece follows. */
export interface OpeningOfDeck {
  readonly label: string;
  readonly area: Polygon;
  readonly undercut: Region;
  readonly staying: Region;
  readonly supports: readonly { readonly from: Point; readonly to: Point }[];
  readonly longestSideMm?: number;
  readonly form: 'plain' | 'scored';
}

const between = (random: RandomStream, from: number, upTo: number): number => from + random() * (upTo - from);
const ring = (count: number, at: (turn: number) => Point): readonly Point[] =>
  Array.from({ length: count }, (_, k) => at((2 * Math.PI * k) / count));
const box = (x: number, y: number, length: number, width: number): readonly Point[] => [
  [x, y],
  [x + length, y],
  [x + length, y + width],
  [x, y + width],
];

type Shape = (random: RandomStream) => Region;

const circle: Shape = (random) => {
  const r = between(random, 90, 520);
  return regionOf(ring(48, (turn) => [r * Math.cos(turn), r * Math.sin(turn)]));
};

const ellipse: Shape = (random) => {
  const [a, b] = [between(random, 200, 900), between(random, 90, 350)];
  return regionOf(ring(40, (turn) => [a * Math.cos(turn), b * Math.sin(turn)]));
};

/** A foredeck between its sides, blunt forward. */
const tapered: Shape = (random) => {
  const [length, aft, forward] = [
    between(random, 500, 2400),
    between(random, 300, 1000),
    between(random, 80, 320),
  ];
  return regionOf([
    [0, -aft / 2],
    [length, -forward / 2],
    [length, forward / 2],
    [0, aft / 2],
  ]);
};

/** Round three sides of something that stays: a curved C. */
const curvedC: Shape = (random) => {
  const [outer, band] = [between(random, 300, 700), between(random, 90, 280)];
  const whole = regionOf(ring(40, (turn) => [outer * Math.cos(turn), outer * Math.sin(turn)]));
  const hole = regionOf(
    ring(40, (turn) => [(outer - band) * Math.cos(turn), (outer - band) * Math.sin(turn)]),
  );
  const gap = regionOf(box(0, -between(random, 60, 250), outer * 1.2, between(random, 300, 500)));
  return difference(difference(whole, hole), gap);
};

const panel: Shape = (random) => regionOf(box(0, 0, between(random, 300, 1800), between(random, 220, 900)));

const shapes: readonly Shape[] = [circle, tapered, curvedC, ellipse, panel];

/** Seeded openings of five families; beams under a third, core that stays in a third, camber over a third, undercut at half. */
export function openingsOfDecks(seed: number, count: number): readonly OpeningOfDeck[] {
  const random = randomStream(seed);
  const found: OpeningOfDeck[] = [];
  while (found.length < count) {
    const drawn = rotate(
      shapes[found.length % shapes.length](random),
      random() < 0.4 ? between(random, 0, 3) : 0,
    );
    const area = largestPolygon(union(drawn));
    if (area !== undefined && areaMm2([area]) > 15_000) found.push(openingIn(random, area));
  }
  return found;
}

function openingIn(random: RandomStream, area: Polygon): OpeningOfDeck {
  const [isCambered, isOverBeams, keepsCore] = [random() < 1 / 3, random() < 1 / 3, random() < 1 / 3];
  return {
    label: 'A',
    area,
    undercut: random() < 0.5 ? [] : lipOf(random, area),
    staying: keepsCore ? stayingIn(random, area) : [],
    supports: isOverBeams ? beamsUnder(random, area) : [],
    ...(isCambered ? { longestSideMm: between(random, 250, 600) } : {}),
    form: isCambered || random() < 0.5 ? 'scored' : 'plain',
  };
}

const lipOf = (random: RandomStream, area: Polygon): Region =>
  union(difference(offset([area], between(random, 10, 130), 'miter', 0.3), [area]));

/** Sound core in the opening: an island, or a corner of it. */
function stayingIn(random: RandomStream, area: Polygon): Region {
  const [x, y] = area.outer[Math.floor(random() * area.outer.length)];
  const shape =
    random() < 0.5
      ? regionOf(box(-150, -100, between(random, 100, 400), between(random, 80, 300)))
      : regionOf(ring(24, (turn) => [140 * Math.cos(turn), 140 * Math.sin(turn)]));
  const [cx, cy] = [x * between(random, 0.2, 1), y * between(random, 0.2, 1)];
  const kept = intersection([area], translate(shape, [cx, cy]));
  return areaMm2(kept) > areaMm2([area]) / 2 ? [] : union(kept);
}

function beamsUnder(random: RandomStream, area: Polygon): OpeningOfDeck['supports'] {
  const xs = area.outer.map(([x]) => x);
  const [from, upTo] = [Math.min(...xs), Math.max(...xs)];
  return Array.from({ length: 1 + Math.floor(random() * 2) }, () => {
    const x = between(random, from, upTo);
    return { from: [x, -3000] as const, to: [x + between(random, -80, 80), 3000] as const };
  });
}
