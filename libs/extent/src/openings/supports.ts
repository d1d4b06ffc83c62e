import {
  areaMm2,
  boundsOfPoints,
  cutByLine,
  difference,
  distance,
  edgesOf,
  intersection,
  rectangle,
  regionOf,
  ringsOf,
  rotatePoint,
  segmentWithin,
  union,
  type Point,
  type Region,
} from '#lib/geometry';
import { shapeOf, type CutShape } from './cut-shape.js';
import { cornersOf, spend } from './design-work.js';
import type { DeckUnderCut, Ground } from './ground.js';
import { reachUnder } from './reach.js';
import type { SupportShape } from './request.js';
import { withSawableEdges } from './saw-edges.js';

/** Edges within this angle of a support run along it; others cross it. */
const ALONG_RAD = Math.PI / 9;

/** Shorter runs are a corner beside the support, not a joint over it. */
const SHORT_RUN_MM = 60;

/** A straight piece of cut that lies along a support, too near. */
export interface CutAlongSupport {
  readonly support: SupportShape;
  readonly lengthMm: number;
  readonly awayMm: number;
}

/** Past it on one side, on the other, on both, and short of it on either. */
const WAYS_CLEAR = 5;

/** Moves each side that runs along a support past it or short of it, whichever costs less labour and leaves the bad core in reach. */
export function clearOfSupports(shape: CutShape, bad: Region, ground: Ground): CutShape {
  return ground.supports.reduce((current, support) => {
    if (cutAlong(current, support, ground) === undefined) return current;
    spend(ground.work, WAYS_CLEAR * (cornersOf(current.sharp) + cornersOf(ground.permitted)));
    const moved = [
      ...extended(current, support, ground, bad),
      ...trimmed(current, support, ground, bad),
    ].filter((candidate) => cutAlong(candidate, support, ground) === undefined);
    return (
      moved.reduce<CutShape | undefined>(
        (best, next) => (best === undefined || next.hours < best.hours ? next : best),
        undefined,
      ) ?? current
    );
  }, shape);
}

export const cutsAlongSupports = (shape: CutShape, deck: DeckUnderCut): readonly CutAlongSupport[] =>
  deck.supports.flatMap((support) => {
    const found = cutAlong(shape, support, deck);
    return found === undefined ? [] : [found];
  });

/** Where a support passes under the opening. */
export const supportsUnder = (
  shape: CutShape,
  { supports }: DeckUnderCut,
): readonly { readonly support: SupportShape; readonly at: Point }[] =>
  supports.flatMap((support) =>
    segmentWithin(shape.region, support.from, support.to)
      .slice(0, 1)
      .map(([a]) => ({ support, at: a })),
  );

function cutAlong(
  shape: CutShape,
  support: SupportShape,
  { rules }: Pick<Ground, 'rules'>,
): CutAlongSupport | undefined {
  const frame = frameOf(support);
  const runs = ringsOf(shape.sharp)
    .flatMap(edgesOf)
    .map(([a, b]) =>
      runBeside(frame(a), frame(b), distance(support.from, support.to), rules.supportClearanceMm),
    );
  const found = runs.filter(({ lengthMm }) => lengthMm > SHORT_RUN_MM);
  if (found.length === 0) return undefined;
  return {
    support,
    lengthMm: found.reduce((sum, { lengthMm }) => sum + lengthMm, 0),
    awayMm: Math.min(...found.map(({ awayMm }) => awayMm)),
  };
}

/** The support lies along x from 0; how much of a-b lies beside it within the clearance. */
function runBeside(
  a: Point,
  b: Point,
  supportMm: number,
  clearanceMm: number,
): { readonly lengthMm: number; readonly awayMm: number } {
  const none = { lengthMm: 0, awayMm: Number.MAX_VALUE };
  const slope = Math.atan2(Math.abs(b[1] - a[1]), Math.abs(b[0] - a[0]));
  if (slope > ALONG_RAD) return none;
  const [left, right] = a[0] < b[0] ? [a, b] : [b, a];
  const [from, to] = [Math.max(left[0], 0), Math.min(right[0], supportMm)];
  if (to <= from) return none;
  const yAt = (x: number): number =>
    right[0] === left[0] ? left[1] : left[1] + ((x - left[0]) * (right[1] - left[1])) / (right[0] - left[0]);
  const [y0, y1] = [yAt(from), yAt(to)];
  const nearest = y0 * y1 <= 0 ? 0 : Math.min(Math.abs(y0), Math.abs(y1));
  return nearest < clearanceMm - 0.5 ? { lengthMm: to - from, awayMm: nearest } : none;
}

const frameOf = ({ from, to }: SupportShape): ((point: Point) => Point) => {
  const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
  return ([x, y]) => rotatePoint([x - from[0], y - from[1]], -angle);
};

const fromFrame = ({ from, to }: SupportShape): ((point: Point) => Point) => {
  const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
  return (point) => {
    const [x, y] = rotatePoint(point, angle);
    return [x + from[0], y + from[1]];
  };
};

/** The opening carried past the support on each side that does not already lie clear of it. */
function extended(shape: CutShape, support: SupportShape, ground: Ground, bad: Region): readonly CutShape[] {
  const box = boundsOfPoints(shape.sharp.flatMap(({ outer }) => outer).map(frameOf(support)));
  if (box === undefined) return [];
  const reach = ground.rules.supportClearanceMm;
  const [minY, maxY] = [Math.min(box.minY, -reach), Math.max(box.maxY, reach)];
  const past = [
    [minY, box.maxY],
    [box.minY, maxY],
    [minY, maxY],
  ].map(([low, high]) => regionOf(rectangle(box.minX, low, box.maxX, high).map(fromFrame(support))));
  return past.flatMap((cover) => {
    const sharp = withSawableEdges(intersection(union(shape.sharp, cover), ground.permitted), {
      seeds: bad,
      ground,
    });
    return sharp.length === 1 && areaMm2(difference(sharp, shape.sharp)) > 1
      ? [shapeOf(shape.form, sharp, ground.rules)]
      : [];
  });
}

/** The opening stopped short of the support, where what is left outside can be reamed out under the skin. */
function trimmed(shape: CutShape, support: SupportShape, ground: Ground, bad: Region): readonly CutShape[] {
  const { supportClearanceMm, undercutReachMm } = ground.rules;
  const back = fromFrame(support);
  const sides = [
    [-supportClearanceMm, 'right'],
    [supportClearanceMm, 'left'],
  ] as const;
  return sides.flatMap(([y, keep]) => {
    const sharp = withSawableEdges(cutByLine(shape.sharp, back([0, y]), back([1000, y]))[keep], {
      seeds: bad,
      ground,
    });
    if (sharp.length !== 1) return [];
    const trimmedShape = shapeOf(shape.form, sharp, ground.rules);
    const left = difference(intersection(bad, shape.region), trimmedShape.region);
    return reachUnder(left, trimmedShape.region) <= undercutReachMm ? [trimmedShape] : [];
  });
}
