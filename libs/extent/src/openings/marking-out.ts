import {
  distance,
  distanceToSegment,
  edgesOf,
  centroid,
  ringsOf,
  roundedCorners,
  simplifyRing,
  type CornerRadii,
  type Point,
  type Polygon,
  type Region,
} from '#lib/geometry';
import type { OwnFrame } from './own-frame.js';

/** The edge of the panel that a tape is hooked to. */
export interface Datum {
  /** Point that the tape is hooked on. */
  readonly from: Point;
  /** Point that the tape is laid towards. */
  readonly to: Point;
  /** Length of the datum as a check. */
  readonly lengthMm: number;
}

/** A corner of the saw line as a person with a tape finds it. */
export interface MarkedCorner {
  /** The corner in the deck plane. */
  readonly at: Point;
  /** Along the datum edge from its first end. */
  readonly alongMm: number;
  /** Square off the datum edge. */
  readonly offMm: number;
  /** Straight from each end of the datum edge: where the two tapes meet. */
  readonly fromStartMm: number;
  /** Distance from the far end of the datum. */
  readonly fromEndMm: number;
  /** Radius cut at this corner; less than the rule's where the sides are too short. */
  readonly radiusMm: number;
}

export interface SawLine {
  /** Corner where the cut starts. */
  readonly from: Point;
  /** Corner where the cut ends. */
  readonly to: Point;
  /** Between the corner arcs: the straight run of the saw. */
  readonly straightMm: number;
}

export interface MarkingOut {
  /** Line that all dimensions are taken from. */
  readonly datum: Datum;
  /** Where each corner lies from the datum. */
  readonly corners: readonly MarkedCorner[];
  /** The saw lines between the corners. */
  readonly lines: readonly SawLine[];
  /** Corner to opposite corner, to check that it is square; only for four corners. */
  readonly diagonalsMm?: readonly [number, number];
}

/** A bend this slight leaves an edge straight enough to hook a tape to. */
const STRAIGHT_WITHIN_MM = 5;

/** Edges whose worth differs by less than a tape shows. */
const SAME_WORTH_MM = 0.1;

/** Dimensions of the outer saw line from the best datum edge: long, straight, and near. */
export function markingOut(sharp: Polygon, panel: Region, radii: CornerRadii, frame: OwnFrame): MarkingOut {
  const datum = datumFor(sharp, panel, frame);
  const rings = [sharp.outer, ...sharp.holes];
  const rounded = rings.map((ring) => roundedCorners(ring, radii));
  const lines = rounded.flatMap((corners) =>
    corners.map(({ to }, index): SawLine => {
      const next = corners[(index + 1) % corners.length];
      return { from: to, to: next.from, straightMm: distance(to, next.from) };
    }),
  );
  const corners = rounded.flat().map(({ corner, radiusMm: cut }) => marked(corner, cut, datum));
  const { outer } = sharp;
  return {
    datum,
    corners,
    lines,
    ...(outer.length === 4
      ? { diagonalsMm: [distance(outer[0], outer[2]), distance(outer[1], outer[3])] as const }
      : {}),
  };
}

/** Of edges that serve as well the one that comes first in the deck's own frame, and its end that does. */
function datumFor(sharp: Polygon, panel: Region, { into, isMirrored }: OwnFrame): Datum {
  const centre = centroid([sharp]) ?? sharp.outer[0];
  const edges = panel
    .flatMap((polygon) => ringsOf([polygon]))
    .flatMap((ring) => edgesOf(simplifyRing(ring, STRAIGHT_WITHIN_MM)))
    .map(([from, to]) => ({
      from: isMirrored ? to : from,
      to: isMirrored ? from : to,
      worth: distance(from, to) - distanceToSegment(centre, from, to),
      middle: into([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]),
    }));
  const most = Math.max(...edges.map(({ worth }) => worth));
  const { from, to } = edges
    .filter(({ worth }) => worth > most - SAME_WORTH_MM)
    .reduce((best, edge) => (comesFirst(edge.middle, best.middle) ? edge : best));
  return { from, to, lengthMm: distance(from, to) };
}

const comesFirst = ([x, y]: Point, [otherX, otherY]: Point): boolean =>
  Math.abs(x - otherX) > SAME_WORTH_MM ? x < otherX : y < otherY - SAME_WORTH_MM;

function marked(at: Point, radiusMm: number, { from, to, lengthMm }: Datum): MarkedCorner {
  const [ux, uy] = [(to[0] - from[0]) / lengthMm, (to[1] - from[1]) / lengthMm];
  const [dx, dy] = [at[0] - from[0], at[1] - from[1]];
  return {
    at,
    radiusMm,
    alongMm: dx * ux + dy * uy,
    offMm: Math.abs(dy * ux - dx * uy),
    fromStartMm: distance(at, from),
    fromEndMm: distance(at, to),
  };
}
