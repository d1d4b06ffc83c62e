import type { CorePiece, Mosaic } from '#lib/coring';
import type { Point, Polygon, Region, Ring } from '#lib/geometry';

/**
 * Plays the bedding through with code of its own: each piece is moved along its path in small steps, and at each step points along
 * its edge are asked whether they lie in the cavity and outside everything that lies there already, and the other way round.
 * Nothing here is shared with the search for ways in: no swept areas, no contacts, no clipping.
 */
export function conflictsOf(
  { pieces, solidFills }: Pick<Mosaic, 'pieces' | 'solidFills'>,
  { area, undercut, staying = [] }: Cavity,
): readonly string[] {
  const cavity = [ringsIn(area), ...undercut.map(ringsIn)];
  const solid = [
    ...solidFills.map(({ outline, holes }) => thing([outline, ...holes])),
    ...staying.map((polygon) => thing(ringsIn(polygon))),
  ];
  return pieces.flatMap((piece, k) => {
    const below = pieces.slice(0, k).filter(({ layer }) => layer === piece.layer);
    const standing = [...solid, ...below.map(({ outline, holes }) => thing([outline, ...holes]))];
    return conflictsOfOne(piece, { opening: ringsIn(area), cavity, standing });
  });
}

interface Cavity {
  readonly area: Polygon;
  readonly undercut: Region;
  /** Core that was left where it is. */
  readonly staying?: Region;
}

type Rings = readonly Ring[];

interface Thing {
  readonly rings: Rings;
  readonly points: readonly Point[];
  readonly box: readonly [number, number, number, number];
}

interface Site {
  readonly opening: Rings;
  readonly cavity: readonly Rings[];
  readonly standing: readonly Thing[];
}

const STEP_MM = 3;
const ALONG_MM = 10;

const ringsIn = ({ outer, holes }: Polygon): Rings => [outer, ...holes];

function thing(rings: Rings): Thing {
  const points = rings.flatMap((ring) =>
    ring.flatMap((from, k) => between(from, ring[(k + 1) % ring.length])),
  );
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { rings, points, box: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] };
}

function between([ax, ay]: Point, [bx, by]: Point): readonly Point[] {
  const count = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / ALONG_MM));
  return Array.from({ length: count }, (_, k): Point => [
    ax + ((bx - ax) * k) / count,
    ay + ((by - ay) * k) / count,
  ]);
}

function conflictsOfOne(piece: CorePiece, site: Site): readonly string[] {
  if (piece.entry === undefined) return [`${piece.label} has no way in`];
  const shape = thing([piece.outline, ...piece.holes]);
  const { path } = piece.entry;
  const start = moved(shape, path[0]);
  const last = path[path.length - 1];
  return [
    ...(start.points.every((point) => isIn(site.opening, point))
      ? []
      : [`${piece.label} does not start in the opening`]),
    ...(last[0] === 0 && last[1] === 0 ? [] : [`${piece.label} does not end at its place`]),
    ...stepsOf(path).flatMap((shift) => conflictAt(piece.label, moved(shape, shift), site)),
  ].slice(0, 1);
}

const stepsOf = (path: readonly Point[]): readonly Point[] => [
  ...path.slice(1).flatMap(([x, y], k) => {
    const [fromX, fromY] = path[k];
    const count = Math.max(1, Math.ceil(Math.hypot(x - fromX, y - fromY) / STEP_MM));
    return Array.from({ length: count }, (_, j): Point => [
      fromX + ((x - fromX) * j) / count,
      fromY + ((y - fromY) * j) / count,
    ]);
  }),
  path[path.length - 1],
];

const moved = ({ rings, points, box }: Thing, [dx, dy]: Point): Thing => {
  const by = ([x, y]: Point): Point => [x + dx, y + dy];
  return {
    rings: rings.map((ring) => ring.map(by)),
    points: points.map(by),
    box: [box[0] + dx, box[1] + dy, box[2] + dx, box[3] + dy],
  };
};

function conflictAt(label: string, shape: Thing, { cavity, standing }: Site): readonly string[] {
  if (!shape.points.every((point) => cavity.some((rings) => isIn(rings, point)) || isNearAny(cavity, point)))
    return [`${label} leaves the cavity at ${shape.points[0].join(', ')}`];
  const met = standing.find(
    (other) =>
      boxesMeet(shape, other) &&
      (shape.points.some((point) => isInBox(other, point) && isIn(other.rings, point)) ||
        other.points.some((point) => isInBox(shape, point) && isIn(shape.rings, point))),
  );
  return met === undefined ? [] : [`${label} meets another at ${shape.points[0].join(', ')}`];
}

const isInBox = ({ box }: Thing, [x, y]: Point): boolean =>
  x >= box[0] && x <= box[2] && y >= box[1] && y <= box[3];

const boxesMeet = ({ box: a }: Thing, { box: b }: Thing): boolean =>
  a[0] <= b[2] && a[2] >= b[0] && a[1] <= b[3] && a[3] >= b[1];

/** Odd number of edges to the right. */
function isIn(rings: Rings, [x, y]: Point): boolean {
  let isOdd = false;
  for (const ring of rings) {
    for (let k = 0, before = ring.length - 1; k < ring.length; before = k++) {
      const [ax, ay] = ring[before];
      const [bx, by] = ring[k];
      if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) isOdd = !isOdd;
    }
  }
  return isOdd;
}

/** The line along which two parts of the cavity touch is no wall. */
const SEAM_MM = 0.01;
const isNearAny = (parts: readonly Rings[], [x, y]: Point): boolean =>
  [
    [x + SEAM_MM, y],
    [x - SEAM_MM, y],
    [x, y + SEAM_MM],
    [x, y - SEAM_MM],
  ].some(([px, py]) => parts.some((rings) => isIn(rings, [px, py])));
