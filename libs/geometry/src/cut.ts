import { difference, intersection, regionOf } from './clip.js';
import { bounds } from './measure.js';
import { distance, type Point, type Region } from './point.js';

/** The two sides of a cut; nothing is lost between them. */
export interface CutRegion {
  /** On the side that the line's direction, turned from x towards y by a quarter, points to. */
  readonly left: Region;
  readonly right: Region;
}

/** Cuts a region along the endless line through two places. */
export function cutByLine(region: Region, from: Point, to: Point): CutRegion {
  const box = bounds(region);
  const length = distance(from, to);
  if (box === undefined || length === 0) return { left: region, right: [] };
  const centre: Point = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  const reach = Math.hypot(box.maxX - box.minX, box.maxY - box.minY) + 1;
  const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const near = (centre[0] - from[0]) * along[0] + (centre[1] - from[1]) * along[1];
  const awayMm = Math.abs((centre[0] - from[0]) * along[1] - (centre[1] - from[1]) * along[0]);
  const foot: Point = [from[0] + near * along[0], from[1] + near * along[1]];
  const half = regionOf(halfPlane(foot, along, reach + awayMm));
  return { left: intersection(region, half), right: difference(region, half) };
}

const halfPlane = ([x, y]: Point, [dx, dy]: Point, reach: number): readonly Point[] => [
  [x - dx * reach, y - dy * reach],
  [x + dx * reach, y + dy * reach],
  [x + (dx - dy) * reach, y + (dy + dx) * reach],
  [x - (dx + dy) * reach, y + (dx - dy) * reach],
];
