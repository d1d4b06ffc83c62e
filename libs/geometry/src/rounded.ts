import { distance, type Point, type Ring } from './point.js';

/** One corner of a ring as it is cut: the arc that replaces it, or radius 0 where it is straight. */
export interface RoundedCorner {
  /** The sharp corner, where the straight lines would meet. */
  readonly corner: Point;
  readonly radiusMm: number;
  /** First and last place of the arc; both are the corner itself when the radius is 0. */
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  /** Angle turned through, rad; positive from x towards y. */
  readonly turnRad: number;
}

/** How far the chords of an arc may leave it. */
const CHORD_MM = 0.05;

/** Corners that point out of the region (its ring turns from x towards y) and those that point into it, mm. */
export interface CornerRadii {
  readonly outwardMm: number;
  /** Rounding such a corner adds to the region. */
  readonly inwardMm: number;
}

/**
 * The arc of its radius that touches both edges at each corner. Where the edges are too short for it the largest
 * arc that fits is given, with its own radius: the caller says so.
 */
export function roundedCorners(ring: Ring, radius: number | CornerRadii): readonly RoundedCorner[] {
  const radii = typeof radius === 'number' ? { outwardMm: radius, inwardMm: radius } : radius;
  return ring.map((corner, index) => {
    const before = ring[(index + ring.length - 1) % ring.length];
    const after = ring[(index + 1) % ring.length];
    return roundedCorner(before, corner, after, radii);
  });
}

/** The ring with each corner replaced by its arc. */
export const roundCorners = (ring: Ring, radius: number | CornerRadii): Ring =>
  roundedCorners(ring, radius).flatMap(arcPoints);

function roundedCorner(
  before: Point,
  corner: Point,
  after: Point,
  { outwardMm, inwardMm }: CornerRadii,
): RoundedCorner {
  const [inMm, outMm] = [distance(before, corner), distance(corner, after)];
  const [ux, uy] = [(corner[0] - before[0]) / inMm, (corner[1] - before[1]) / inMm];
  const [vx, vy] = [(after[0] - corner[0]) / outMm, (after[1] - corner[1]) / outMm];
  const turnRad = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
  const tangent = Math.tan(Math.abs(turnRad) / 2);
  const radius = Math.min(turnRad > 0 ? outwardMm : inwardMm, Math.min(inMm, outMm) / 2 / tangent);
  if (!(radius > 1e-6) || !Number.isFinite(radius) || Math.abs(turnRad) < 1e-9) {
    return { corner, radiusMm: 0, from: corner, to: corner, centre: corner, turnRad };
  }
  const set = radius * tangent;
  const sign = Math.sign(turnRad);
  const from: Point = [corner[0] - ux * set, corner[1] - uy * set];
  return {
    corner,
    radiusMm: radius,
    turnRad,
    from,
    to: [corner[0] + vx * set, corner[1] + vy * set],
    centre: [from[0] - sign * uy * radius, from[1] + sign * ux * radius],
  };
}

function arcPoints({ radiusMm, from, to, centre, turnRad }: RoundedCorner): readonly Point[] {
  if (radiusMm === 0) return [from];
  const step = 2 * Math.acos(Math.max(0.5, 1 - CHORD_MM / radiusMm));
  const count = Math.max(2, Math.ceil(Math.abs(turnRad) / step));
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const between = Array.from({ length: count - 1 }, (_, index): Point => {
    const angle = start + (turnRad * (index + 1)) / count;
    return [centre[0] + radiusMm * Math.cos(angle), centre[1] + radiusMm * Math.sin(angle)];
  });
  return [from, ...between, to];
}
