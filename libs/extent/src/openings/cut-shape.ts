import {
  areaMm2,
  boundsOfPoints,
  containsPoint,
  convexHull,
  difference,
  distanceToEdge,
  intersection,
  offset,
  perimeterMm,
  principalAxisRad,
  rectangle,
  regionOf,
  ringsOf,
  roundCorners,
  rotatePoint,
  simplifyRing,
  union,
  type CornerRadii,
  type Point,
  type Polygon,
  type Region,
  type Ring,
} from '#lib/geometry';
import { m2FromMm2, mFromMm, mm, mm2 } from '#lib/units';
import { quarterApart, type CutRules, type Ground } from './ground.js';
import { withFewerCorners } from './fewer-corners.js';
import { reachUnder } from './reach.js';
import { hasShortEdge, withSawableEdges } from './saw-edges.js';

/** A cut line with straight sides, before and after its corners are rounded. */
export interface CutShape {
  readonly form: 'rectangle' | 'octagon' | 'outline' | 'hull';
  /** Straight lines meeting in sharp corners: what is marked on the deck. */
  readonly sharp: Region;
  /** What is cut out. */
  readonly region: Region;
  readonly lengthMm: number;
  readonly areaMm2: number;
  /** Labour that this shape costs, by the rules' hours. */
  readonly hours: number;
}

/** Parts of a clipped shape smaller than this are slivers between edges, not openings. */
const SLIVER_MM2 = 2000;

/** Straight lines replace an outline that wavers by less than these, coarser first tried last. */
const OUTLINE_TOLERANCES_MM = [15, 40] as const;

/**
 * The straight-sided shape that takes in the target at the least labour: upright rectangles and octagons along the
 * directions of the panel and of the target, and the target's own outline straightened outwards. Each is clipped to the
 * ground that may be cut; what then lies outside is undercut. A shape that a blade cannot follow is taken only where all are such.
 */
export function cheapestShape(target: Region, seeds: Region, ground: Ground): CutShape | undefined {
  const shapes = forms(target, ground).flatMap(({ form, cover }) => {
    const shape = clipped(form, cover, seeds, ground);
    return shape === undefined ? [] : [shape];
  });
  const isSawable = ({ sharp }: CutShape): boolean => !hasShortEdge(sharp, ground.rules.cornerRadiusMm);
  return shapes.reduce<CutShape | undefined>((best, shape) => {
    if (best === undefined || isSawable(shape) !== isSawable(best))
      return best !== undefined && isSawable(best) ? best : shape;
    return shape.hours < best.hours - SAME_HOURS ? shape : best;
  }, undefined);
}

/** A second or two of labour does not decide between shapes; the simpler form comes first. */
const SAME_HOURS = 5e-4;

interface Form {
  readonly form: CutShape['form'];
  readonly cover: Region;
}

function forms(target: Region, ground: Ground): readonly Form[] {
  const points = target.flatMap(({ outer }) => outer);
  const hull = convexHull(points);
  const frames = framesFor(target, ground.directions);
  const whole = target.length === 1 ? target[0].outer : hull;
  return [
    ...frames.map((angle): Form => ({ form: 'rectangle', cover: regionOf(boxAlong(hull, angle)) })),
    ...frames.map((angle): Form => ({
      form: 'octagon',
      cover: intersection(regionOf(boxAlong(hull, angle)), regionOf(boxAlong(hull, angle + Math.PI / 4))),
    })),
    ...OUTLINE_TOLERANCES_MM.flatMap((tolerance) => [
      ...straightCover('outline', whole, tolerance, ground.rules),
      // Where every corner is one of the hull the outline is the hull.
      ...(whole.length === hull.length ? [] : straightCover('hull', hull, tolerance, ground.rules)),
    ]),
  ];
}

const framesFor = (target: Region, directions: readonly number[]): readonly number[] => {
  const own = principalAxisRad(target);
  return directions.every((direction) => quarterApart(direction, own) > 0.05)
    ? [...directions, own]
    : directions;
};

function boxAlong(points: readonly Point[], angle: number): Ring {
  const box = boundsOfPoints(points.map((point) => rotatePoint(point, -angle)));
  if (box === undefined) return [];
  return rectangle(box.minX, box.minY, box.maxX, box.maxY).map((corner) => rotatePoint(corner, angle));
}

function straightCover(
  form: CutShape['form'],
  ring: Ring,
  toleranceMm: number,
  rules: CutRules,
): readonly Form[] {
  const straight = offset(regionOf(simplifyRing(ring, toleranceMm)), toleranceMm, 'miter');
  const cover = straight.flatMap(({ outer, holes }) => regionOf(withFewerCorners(outer, rules), holes));
  const isCovering = areaMm2(difference(regionOf(ring), cover)) < 100;
  return isCovering ? [{ form, cover }] : [];
}

function clipped(form: CutShape['form'], cover: Region, seeds: Region, ground: Ground): CutShape | undefined {
  const clippedCover = intersection(cover, ground.permitted);
  const isWhole = areaMm2(cover) - areaMm2(clippedCover) < 1;
  const inside = isWhole ? clippedCover : withoutTongues(clippedCover, seeds, ground);
  const kept = inside
    .filter((polygon) => areaMm2([polygon]) > SLIVER_MM2 && holdsSome(polygon, seeds))
    .flatMap((polygon) => withRoomToWork(polygon, ground));
  const sharp = withSawableEdges(tidied(kept, ground.permitted), { seeds, ground });
  return sharp.length === 0 ? undefined : shapeOf(form, sharp, ground.rules);
}

/** Narrower than this a part of an opening has no room for the corners at its end. */
const TONGUE_MM = 50;

/** Tongues beside a hatch or an edge are left out where the bad core under them can be reached from the rest, else widened. */
function withoutTongues(inside: Region, seeds: Region, ground: Ground): Region {
  const { permitted, rules } = ground;
  const broad = intersection(
    offset(offset(inside, -TONGUE_MM / 2, 'miter'), TONGUE_MM / 2, 'miter'),
    permitted,
  );
  if (areaMm2(inside) - areaMm2(broad) < 1) return inside;
  if (reachUnder(difference(seeds, broad), broad) <= rules.undercutReachMm) return broad;
  const tongues = difference(inside, broad).filter((part) => areaMm2([part]) > CORNER_MM2);
  return broad.length === 0 ? inside : union(inside, ...tongues.map((part) => slotAlong(part, ground)));
}

/** What opening a shape and closing it again leaves of a corner. */
const CORNER_MM2 = 500;

/** A slit along an edge, through which no tool gets at the core beside it, is widened on the side where the deck may be cut. */
const withRoomToWork = (polygon: Polygon, ground: Ground): Region =>
  hasRoom(polygon) ? [polygon] : slotAlong(polygon, ground);

/** No shape is larger than its edge times the radius of the circle that fits into it: most openings need no second look. */
const hasRoom = (polygon: Polygon): boolean =>
  areaMm2([polygon]) >= (TONGUE_MM / 2) * perimeterMm([polygon]) ||
  offset([polygon], -TONGUE_MM / 2, 'miter').length > 0;

/** Wide enough for a tool, and for two rounded corners at each end. */
function slotAlong(slit: Polygon, { permitted, directions, rules }: Ground): Region {
  const own = principalAxisRad([slit]);
  const along = directions.find((direction) => quarterApart(direction, own) < SLIT_TURN_RAD) ?? own;
  const growMm = Math.max(TONGUE_MM, 2 * rules.cornerRadiusMm);
  const slot = intersection(offset(regionOf(boxAlong(slit.outer, along)), growMm, 'miter'), permitted);
  return slot.filter((part) => areaMm2(intersection([part], [slit])) > 1);
}

/** A slit that runs this near to an edge's direction runs along the edge. */
const SLIT_TURN_RAD = 0.35;

/** A corner inside tells at once; only a polygon without one is clipped. */
const holdsSome = (polygon: Polygon, seeds: Region): boolean =>
  seeds.some(({ outer }) => outer.some((corner) => isWellInside(corner, polygon))) ||
  areaMm2(intersection([polygon], seeds)) > 1;

/** Two millimetres inside, so that more than a square millimetre round the corner is. */
const isWellInside = (corner: Point, polygon: Polygon): boolean =>
  containsPoint([polygon], corner) && distanceToEdge(corner, [polygon]) > 2;

/** Takes away corners that stand for less than a saw's width, if the shape stays where it may be cut. */
function tidied(region: Region, permitted: Region): Region {
  const tidy = region.flatMap(({ outer, holes }) =>
    regionOf(
      simplifyRing(outer, 4),
      holes.map((hole) => simplifyRing(hole, 4)),
    ),
  );
  const isTheSame = ringsOf(tidy).every((ring, index) => ring.length === ringsOf(region)[index]?.length);
  return isTheSame || areaMm2(difference(tidy, permitted)) < 1 ? tidy : region;
}

export function shapeOf(form: CutShape['form'], sharp: Region, rules: CutRules): CutShape {
  const region = rounded(sharp, cornerRadii(rules));
  const corners = ringsOf(sharp).reduce((count, ring) => count + ring.length, 0);
  const [lengthMm, area] = [perimeterMm(region), areaMm2(region)];
  return {
    form,
    sharp,
    region,
    lengthMm,
    areaMm2: area,
    hours: hoursOf({ lengthMm, areaMm2: area, corners, openings: sharp.length }, rules),
  };
}

/** A corner of skin that stays is rounded no wider than the flange, or the cut would come nearer to an edge than that. */
export const cornerRadii = ({ cornerRadiusMm, flangeMm }: CutRules): CornerRadii => ({
  outwardMm: cornerRadiusMm,
  inwardMm: Math.min(cornerRadiusMm, flangeMm),
});

const rounded = (sharp: Region, radii: CornerRadii): Region =>
  sharp.flatMap(({ outer, holes }) =>
    regionOf(
      roundCorners(outer, radii),
      holes.map((hole) => roundCorners(hole, radii)),
    ),
  );

interface CutSize {
  readonly lengthMm: number;
  readonly areaMm2: number;
  readonly corners: number;
  readonly openings: number;
}

/** Labour that depends on where the cut runs: by metre, by area, by corner and by opening. */
export const hoursOf = ({ lengthMm, areaMm2: area, corners, openings }: CutSize, rules: CutRules): number =>
  rules.cutHPerM * mFromMm(mm(lengthMm)) +
  rules.openedHPerM2 * m2FromMm2(mm2(area)) +
  rules.cornerH * corners +
  rules.openingH * openings;
