import {
  Clipper64,
  ClipperOffset,
  ClipType,
  EndType,
  FillRule,
  JoinType,
  PolyTree64,
  type Path64,
  type Paths64,
  type PolyPath64,
} from 'clipper2-ts';
import { Defect } from '#lib/kernel';
import { cutByBox } from './box-cut.js';
import { bounds, signedAreaMm2 } from './measure.js';
import { plainAnswer, type PlainAnswer } from './plain-shapes.js';
import { ringsOf, type Bounds, type Point, type Polygon, type Region, type Ring } from './point.js';

/** The clipping kernel counts in whole micrometres: exact, and finer than any tape. */
const MICROMETRES = 1000;

/** Corners of a rounded offset lie on the true arc; the chords between them leave it by at most this. */
const ARC_TOLERANCE_MM = 0.01;

/** A mitred corner reaches at most this many offsets from its corner before it is cut square. */
const MITER_LIMIT = 4;

export type JoinKind = 'round' | 'miter' | 'square';

const joinTypes = { round: JoinType.Round, miter: JoinType.Miter, square: JoinType.Square } as const;

/** The region inside `outer` and outside every hole; holes may overlap, touch or reach past the edge. */
export const regionOf = (outer: Ring, holes: readonly Ring[] = []): Region =>
  clip(
    'difference',
    [pathOf(outer, 1)],
    holes.map((hole) => pathOf(hole, 1)),
  );

/** Every place in at least one of the regions, counted once. */
export const union = (...regions: readonly Region[]): Region => clip('union', regions.flatMap(pathsOf), []);

/** What is in `from` and not in `taken`. */
export const difference = (from: Region, taken: Region): Region =>
  clip('difference', pathsOf(from), pathsOf(taken));

export const intersection = (a: Region, b: Region): Region =>
  areApart(bounds(a), bounds(b)) ? [] : clip('intersection', pathsOf(a), pathsOf(b));

/** Nothing is shared by what does not even share a box. */
const areApart = (a: Bounds | undefined, b: Bounds | undefined): boolean =>
  a === undefined ||
  b === undefined ||
  a.maxX < b.minX ||
  b.maxX < a.minX ||
  a.maxY < b.minY ||
  b.maxY < a.minY;

/**
 * Grows (`deltaMm` above 0) or shrinks the region by a distance; holes move the other way. The chords of rounded corners
 * leave the true arc by at most `arcToleranceMm`, towards the region.
 */
export function offset(
  region: Region,
  deltaMm: number,
  join: JoinKind = 'round',
  arcToleranceMm = ARC_TOLERANCE_MM,
): Region {
  if (!Number.isFinite(deltaMm)) throw new Defect(`An offset of ${deltaMm} mm`);
  if (deltaMm === 0 || region.length === 0) return region;
  const kernel = new ClipperOffset(MITER_LIMIT, arcToleranceMm * MICROMETRES);
  kernel.addPaths(pathsOf(region), joinTypes[join], EndType.Polygon);
  const grown: Paths64 = [];
  kernel.execute(deltaMm * MICROMETRES, grown);
  return clip('union', grown, []);
}

/** Band of a width round an open line, with round or square ends. */
export function strip(
  line: readonly Point[],
  halfWidthMm: number,
  ends: 'round' | 'square' = 'round',
): Region {
  const kernel = new ClipperOffset(MITER_LIMIT, ARC_TOLERANCE_MM * MICROMETRES);
  kernel.addPaths(
    [line.map(toMicrometres)],
    ends === 'round' ? JoinType.Round : JoinType.Miter,
    ends === 'round' ? EndType.Round : EndType.Square,
  );
  const grown: Paths64 = [];
  kernel.execute(halfWidthMm * MICROMETRES, grown);
  return clip('union', grown, []);
}

const namesOf = {
  union: ClipType.Union,
  difference: ClipType.Difference,
  intersection: ClipType.Intersection,
} as const;

function clip(name: keyof typeof namesOf, subject: Paths64, other: Paths64): Region {
  const plain = plainAnswer(name, subject, other);
  if (plain !== undefined) return regionAs(plain, subject, other);
  const cut = name === 'intersection' ? (cutByBox(subject, other) ?? cutByBox(other, subject)) : undefined;
  return cut === undefined ? swept(namesOf[name], subject, other) : cut.map(polygonOf).sort(byFirstCorner);
}

const polygonOf = (path: Path64): Polygon => ({ outer: fromLeast(pointsOf(path)), holes: [] });

function regionAs({ kind }: PlainAnswer, [first]: Paths64, [second]: Paths64): Region {
  if (kind === 'nothing') return [];
  // What is told by looking runs from x towards y.
  return [
    {
      outer: fromLeast(pointsOf(first)),
      holes: kind === 'hollow' ? [fromLeast([...pointsOf(second)].reverse())] : [],
    },
  ];
}

function swept(kind: ClipType, subject: Paths64, other: Paths64): Region {
  const kernel = new Clipper64();
  kernel.preserveCollinear = false;
  if (subject.length > 0) kernel.addSubject(subject);
  if (other.length > 0) kernel.addClip(other);
  const tree = new PolyTree64();
  kernel.execute(kind, FillRule.NonZero, tree);
  return polygonsBelow(tree).sort(byFirstCorner);
}

function polygonsBelow(node: PolyPath64): Polygon[] {
  return childrenOf(node).flatMap((outer) => {
    const holes = childrenOf(outer);
    const polygon = {
      outer: ringFrom(outer, 1),
      holes: holes.map((hole) => ringFrom(hole, -1)).sort(byFirst),
    };
    return [polygon, ...holes.flatMap(polygonsBelow)];
  });
}

const childrenOf = (node: PolyPath64): readonly PolyPath64[] =>
  Array.from({ length: node.count }, (_, index) => node.child(index));

const ringFrom = (node: PolyPath64, direction: 1 | -1): Ring =>
  fromLeast(directed(pointsOf(node.poly ?? []), direction));

const pointsOf = (path: Path64): Ring =>
  path.map(({ x, y }): Point => [x / MICROMETRES + 0, y / MICROMETRES + 0]);

const directed = (ring: Ring, direction: 1 | -1): Ring =>
  signedAreaMm2(ring) * direction >= 0 ? ring : [...ring].reverse();

/** Starts at the corner with the least x, then y, so that equal shapes are equal values. */
export function fromLeast(ring: Ring): Ring {
  let least = 0;
  for (let index = 1; index < ring.length; index += 1)
    if (comparePoints(ring[index], ring[least]) < 0) least = index;
  return least === 0 ? ring : [...ring.slice(least), ...ring.slice(0, least)];
}

const comparePoints = (a: Point, b: Point): number => a[0] - b[0] || a[1] - b[1];
const byFirst = (a: Ring, b: Ring): number => comparePoints(a[0], b[0]);
const byFirstCorner = (a: Polygon, b: Polygon): number => byFirst(a.outer, b.outer);

const pathsByRegion = new WeakMap<Region, Paths64>();

/** The kernel copies what it is given; a panel or an opening is given to it many times. */
function pathsOf(region: Region): Paths64 {
  const known = pathsByRegion.get(region) ?? ringsOf(region).map((ring) => ring.map(toMicrometres));
  pathsByRegion.set(region, known);
  return known;
}

const pathOf = (ring: Ring, direction: 1 | -1): Path64 => directed(ring, direction).map(toMicrometres);

function toMicrometres([x, y]: Point): { x: number; y: number } {
  if (!Number.isFinite(x) || !Number.isFinite(y)) throw new Defect(`A corner at (${x}, ${y})`);
  return { x: Math.round(x * MICROMETRES), y: Math.round(y * MICROMETRES) };
}
