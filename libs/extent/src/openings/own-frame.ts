import {
  edgesOf,
  fromLeast,
  principalAxisRad,
  regionOf,
  ringsOf,
  union,
  type Point,
  type Polygon,
  type Region,
  type Ring,
} from '#lib/geometry';
import { leaningMost, type Moment } from '../leaning.js';
import type { PanelShape, SupportShape } from './request.js';

/**
 * Where a deck is planned: along its own longest edge and in its own handedness. Port and starboard of one boat stand on the
 * same place there, and a deck that is turned or moved does too, so that ties between cuts are broken alike for all of them.
 */
export interface OwnFrame {
  readonly into: (point: Point) => Point;
  readonly back: (point: Point) => Point;
  readonly isMirrored: boolean;
}

/** What a plan of openings hangs on. */
export interface DeckGeometry {
  readonly panel: Region;
  readonly bad: Region;
  readonly supports: readonly SupportShape[];
}

interface Axes {
  readonly origin: Point;
  readonly along: Point;
  readonly across: Point;
  readonly isMirrored: boolean;
}

/** Edges as long as the longest within a pencil's line are as good. */
const SAME_LENGTH_MM = 0.05;

/**
 * The frame whose x runs along the longest edge of the panel and whose y runs into the panel. Of the two hands, and of edges
 * of one length, that one is taken in which the bad core, else the panel, else its supports lean most to the far side: the
 * first moment along their lines that tells the frames apart decides. Frames that no moment tells apart are those of a record
 * that is its own mirror image.
 */
export function ownFrameOf(deck: DeckGeometry): OwnFrame {
  const axes = handTold(candidatesOn(deck.panel), deck);
  return {
    into: (point) => toAxes(point, axes),
    back: (point) => fromAxes(point, axes),
    isMirrored: axes.isMirrored,
  };
}

function candidatesOn(panel: Region): readonly Axes[] {
  const edges = ringsOf(panel).flatMap(edgesOf);
  const longest = edges.reduce((most, [a, b]) => Math.max(most, lengthOf(a, b)), 0);
  return edges
    .filter(([a, b]) => lengthOf(a, b) > longest - SAME_LENGTH_MM)
    .flatMap(([a, b]) => {
      const lengthMm = lengthOf(a, b);
      const along: Point = [(b[0] - a[0]) / lengthMm, (b[1] - a[1]) / lengthMm];
      const origin = middleOf(a, b);
      const across: Point = [-along[1], along[0]];
      return [
        { origin, along, across, isMirrored: false },
        { origin, along: [-along[0], -along[1]] as const, across, isMirrored: true },
      ];
    });
}

const lengthOf = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1]);
const middleOf = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** Powers of x and y whose moments are compared, one after another; a record without these moments is symmetric for every purpose. */
const POWERS: readonly (readonly [number, number])[] = [
  [1, 0],
  [0, 1],
  [1, 1],
  [2, 0],
  [2, 1],
  [3, 0],
  [1, 2],
  [0, 3],
];

function handTold(all: readonly Axes[], { panel, bad, supports }: DeckGeometry): Axes {
  const lines = [
    ringsOf(bad).flatMap(edgesOf),
    ringsOf(panel).flatMap(edgesOf),
    supports.map(({ from, to }) => [from, to] as const),
  ].filter((edges) => edges.length > 0);
  return leaningMost(
    all,
    lines.flatMap((edges) => POWERS.map((powers) => (axes: Axes) => momentOf(edges, powers, axes))),
  );
}

/**
 * Moment of lines, and of their absolute values for scale: the integral of x^i y^j along every line, by Simpson's rule, which
 * is exact up to the third power.
 * Source: [ABRAMOWITZ-STEGUN-1964] 25.4.5
 * Worked: libs/extent/src/openings/own-frame.spec.ts
 */
function momentOf(
  edges: readonly (readonly [Point, Point])[],
  [powerX, powerY]: readonly [number, number],
  axes: Axes,
): Moment {
  let [value, size] = [0, 0];
  for (const [from, to] of edges) {
    const [a, b] = [toAxes(from, axes), toAxes(to, axes)];
    const at = ([x, y]: Point): number => x ** powerX * y ** powerY;
    const [atA, atM, atB] = [at(a), at(middleOf(a, b)), at(b)];
    const sixth = lengthOf(a, b) / 6;
    value += sixth * (atA + 4 * atM + atB);
    size += sixth * (Math.abs(atA) + 4 * Math.abs(atM) + Math.abs(atB));
  }
  return { value, size };
}

function toAxes([x, y]: Point, { origin, along, across }: Axes): Point {
  const [dx, dy] = [x - origin[0], y - origin[1]];
  return [dx * along[0] + dy * along[1], dx * across[0] + dy * across[1]];
}

const fromAxes = ([x, y]: Point, { origin, along, across }: Axes): Point => [
  origin[0] + x * along[0] + y * across[0],
  origin[1] + x * along[1] + y * across[1],
];

/** The kernel of clipping counts in these. */
const keyOf = ([x, y]: Point): string => `${Math.round(x * 1000)} ${Math.round(y * 1000)}`;

/**
 * The panel with the corners it was given: those of a region are rounded to micrometres along the axes of the record, which is
 * another rounding for a deck that is turned, and enough to break a tie the other way.
 */
export function asDrawn(panel: Region, { outline, holes = [] }: PanelShape): Region {
  const given = new Map([outline, ...holes].flat().map((corner) => [keyOf(corner), corner]));
  return mapped(panel, (corner) => given.get(keyOf(corner)) ?? corner, false);
}

/** Finer than a pencil, coarser than the rounding that reading a turned deck leaves. */
const INTO_MM = 0.01;

/** As fine as regions are clipped. */
const BACK_MM = 0.001;

/** A region in the frame, its corners on hundredths of a millimetre, so that a turned deck has the very same ones. */
export const regionInto = (region: Region, frame: OwnFrame): Region =>
  union(mapped(region, (point) => onGrid(frame.into(point), INTO_MM), frame.isMirrored));

/** A shape as it was drawn, straight into the frame. */
export const drawnInto = ({ outer, holes }: Polygon, frame: OwnFrame): Region =>
  regionOf(
    ringInto(outer, frame),
    holes.map((hole) => ringInto(hole, frame)),
  );

const ringInto = (ring: Ring, frame: OwnFrame): Ring =>
  ring.map((point) => onGrid(frame.into(point), INTO_MM));

export const regionBack = (region: Region, frame: OwnFrame): Region =>
  mapped(region, (point) => pointBack(point, frame), frame.isMirrored);

const pointBack = (point: Point, frame: OwnFrame): Point => onGrid(frame.back(point), BACK_MM);

export const supportsInto = (supports: readonly SupportShape[], frame: OwnFrame): readonly SupportShape[] =>
  supports.map(({ kind, from, to }) => ({
    kind,
    from: onGrid(frame.into(from), INTO_MM),
    to: onGrid(frame.into(to), INTO_MM),
  }));

/** Square to the frame's x within this share a direction points along its y. */
const SQUARE_SHARE = 1e-6;

/** Direction of a region's long axis, rad, towards the end that is farther along in the frame. */
export function longAxisIn(region: Region, frame: OwnFrame): number {
  const angle = principalAxisRad(region);
  const [x0, y0] = frame.into([0, 0]);
  const [x1, y1] = frame.into([Math.cos(angle), Math.sin(angle)]);
  const isForward = Math.abs(x1 - x0) > SQUARE_SHARE ? x1 > x0 : y1 > y0;
  return isForward ? angle : angle + Math.PI;
}

const onGrid = ([x, y]: Point, stepMm: number): Point => {
  const perMm = Math.round(1 / stepMm);
  return [Math.round(x * perMm) / perMm + 0, Math.round(y * perMm) / perMm + 0];
};

/** A mirrored ring runs the other way and is turned round. */
const mapped = (region: Region, change: (point: Point) => Point, isMirrored: boolean): Region =>
  region.map(({ outer, holes }) => ({
    outer: ringMapped(outer, change, isMirrored),
    holes: holes.map((hole) => ringMapped(hole, change, isMirrored)),
  }));

function ringMapped(ring: Ring, change: (point: Point) => Point, isMirrored: boolean): Ring {
  const points = ring.map(change);
  return fromLeast(isMirrored ? points.reverse() : points);
}
