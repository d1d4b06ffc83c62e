import { randomStream, type RandomStream } from '#lib/kernel';
import {
  areaMm2,
  difference,
  intersection,
  largestPolygon,
  offset,
  regionOf,
  rotate,
  roundCorners,
  union,
  type Point,
  type Polygon,
  type Region,
} from '#lib/geometry';

/** An opening as a deck gives it: what is cut out of the skin, and bad core under the skin that stays. */
export interface RandomOpening {
  readonly label: string;
  readonly area: Polygon;
  readonly undercut: Region;
}

const between = (random: RandomStream, from: number, upTo: number): number => from + random() * (upTo - from);

type Shape = (random: RandomStream) => readonly Point[];

const block: Shape = (random) => {
  const [length, width] = [between(random, 180, 1500), between(random, 120, 800)];
  const cut = between(random, 0, Math.min(length, width) / 2);
  return [
    [0, 0],
    [length, 0],
    [length, width - cut],
    [length - cut, width],
    [0, width],
  ];
};

const angle: Shape = (random) => {
  const [length, width] = [between(random, 400, 1400), between(random, 400, 1000)];
  const [a, b] = [between(random, 100, length * 0.6), between(random, 100, width * 0.6)];
  return [
    [0, 0],
    [length, 0],
    [length, b],
    [a, b],
    [a, width],
    [0, width],
  ];
};

const horseshoe: Shape = (random) => {
  const [length, width] = [between(random, 500, 1400), between(random, 400, 1000)];
  const [a, b, floor] = [
    between(random, 90, length * 0.35),
    between(random, 90, length * 0.35),
    between(random, 90, width * 0.5),
  ];
  return [
    [0, 0],
    [length, 0],
    [length, width],
    [length - b, width],
    [length - b, floor],
    [a, floor],
    [a, width],
    [0, width],
  ];
};

const star: Shape = (random) => {
  const corners = 5 + Math.floor(random() * 6);
  const reach = between(random, 150, 600);
  return Array.from({ length: corners }, (_, k): Point => {
    const turn = (2 * Math.PI * (k + 0.6 * random())) / corners;
    const away = reach * between(random, 0.35, 1);
    return [away * Math.cos(turn), away * Math.sin(turn) * 0.8];
  });
};

const slot: Shape = (random) => {
  const [length, width, skew] = [
    between(random, 400, 2600),
    between(random, 45, 260),
    between(random, 0, 120),
  ];
  return [
    [0, 0],
    [length, skew],
    [length, skew + width],
    [0, width * between(random, 0.4, 1)],
  ];
};

const shapes: readonly Shape[] = [block, angle, horseshoe, star, slot];

/** Seeded openings of five families, some turned; about two in three have undercut, all round or along a part, 10 to 160 mm deep. */
export function randomOpenings(seed: number, count: number): readonly RandomOpening[] {
  const random = randomStream(seed);
  const found: RandomOpening[] = [];
  while (found.length < count) {
    const opening = randomOpening(random, shapes[found.length % shapes.length]);
    if (opening !== undefined) found.push(opening);
  }
  return found;
}

function randomOpening(random: RandomStream, shape: Shape): RandomOpening | undefined {
  const drawn = rotate(regionOf(shape(random)), random() < 0.4 ? between(random, 0, Math.PI) : 0);
  const sawn = largestPolygon(drawn);
  if (sawn === undefined || areaMm2([sawn]) < 8000) return undefined;
  const [area = sawn] = largestOf(
    random() < 0.6 ? regionOf(roundCorners(sawn.outer, 20)) : regionOf(sawn.outer),
  );
  return { label: 'A', area, undercut: tidied(undercutOf(random, area)) };
}

/** On the grid of the kernel, so that areas can be compared to the square millimetre. */
function largestOf(region: Region): Region {
  const largest = largestPolygon(region);
  return largest === undefined ? [] : [largest];
}

/** The kernel may leave a loop of a few square millimetres that runs the wrong way round; once more through it, and it is gone. */
const tidied = (region: Region): Region => union(region);

function undercutOf(random: RandomStream, area: Polygon): Region {
  const kind = random();
  const reach = random() < 0.7 ? between(random, 10, 80) : between(random, 80, 160);
  const lip = difference(offset([area], reach, 'miter', 0.3), [area]);
  if (kind < 0.34) return [];
  if (kind < 0.67) return lip;
  const [x, y] = area.outer[Math.floor(random() * area.outer.length)];
  const side = between(random, 150, 700);
  return intersection(
    lip,
    regionOf([
      [x - side, y - side],
      [x + side, y - side],
      [x + side, y + side * random()],
      [x - side, y + side],
    ]),
  );
}
