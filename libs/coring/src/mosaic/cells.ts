import {
  areaMm2,
  bounds,
  distanceToSegment,
  intersection,
  perimeterMm,
  rectangle,
  union,
  type Point,
  type Region,
} from '#lib/geometry';
import type { MosaicNumbers } from './rules.js';

/** A region to be divided into rows along x, and how large a piece may be. */
export interface CellTask {
  readonly region: Region;
  readonly largestMm2: number;
  readonly longestSideMm: number;
  /** The other layer's rows are moved by half a row and half a piece. */
  readonly isShifted: boolean;
  readonly supports: readonly (readonly [Point, Point])[];
  readonly numbers: MosaicNumbers;
}

/** Pieces are this much longer along the rows than across. */
const slenderness = 1.5;

/**
 * Bricks: rows of even height, in each row pieces of even length, every second row beginning with a half piece. Row lines and
 * joints step aside from supports that run along them. Slivers are joined to a neighbour.
 */
export function cellsOf(task: CellTask): readonly Region[] {
  const box = bounds(task.region);
  if (box === undefined) return [];
  const across = Math.min(Math.sqrt(task.largestMm2 / slenderness), task.longestSideMm);
  const rows = linesBetween({ from: box.minY, to: box.maxY, most: across, isShifted: task.isShifted }, (y) =>
    nearSupport(task, [
      [box.minX, y],
      [box.maxX, y],
    ]),
  );
  const cells = rows.slice(1).flatMap((top, k) => {
    const strip = intersection(task.region, [rectangleRegion(box.minX - 1, rows[k], box.maxX + 1, top)]);
    return strip.flatMap((part) => rowCells(task, [part], { height: top - rows[k], isOdd: k % 2 === 1 }));
  });
  return withoutSlivers(cells, task);
}

const rectangleRegion = (x1: number, y1: number, x2: number, y2: number) => ({
  outer: rectangle(x1, y1, x2, y2),
  holes: [],
});

function rowCells(
  task: CellTask,
  part: Region,
  { height, isOdd }: { readonly height: number; readonly isOdd: boolean },
): readonly Region[] {
  const box = bounds(part);
  if (box === undefined) return [];
  const most = Math.min(task.largestMm2 / height, task.longestSideMm);
  const isShifted = isOdd !== task.isShifted;
  const joints = linesBetween({ from: box.minX, to: box.maxX, most, isShifted }, (x) =>
    nearSupport(task, [
      [x, box.minY],
      [x, box.maxY],
    ]),
  );
  return joints
    .slice(1)
    .flatMap((right, k) =>
      intersection(part, [rectangleRegion(joints[k], box.minY - 1, right, box.maxY + 1)]).map((polygon) => [
        polygon,
      ]),
    );
}

interface Division {
  readonly from: number;
  readonly to: number;
  readonly most: number;
  readonly isShifted: boolean;
}

/** Lines that divide a length evenly, half a division at both ends when shifted; each steps aside where `cost` says so. */
function linesBetween(
  { from, to, most, isShifted }: Division,
  cost: (at: number) => number,
): readonly number[] {
  const length = to - from;
  const count = Math.max(1, Math.ceil(length / most - 1e-9));
  if (count === 1) return [from, to];
  const even = length / count;
  const places = isShifted
    ? Array.from({ length: count }, (_, k) => from + (k + 0.5) * even)
    : Array.from({ length: count - 1 }, (_, k) => from + (k + 1) * even);
  return [from, ...places.map((place) => steppedAside(place, even / 4, cost)), to];
}

function steppedAside(place: number, reach: number, cost: (at: number) => number): number {
  const tries = [0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1, -1].map((share) => place + share * reach);
  return tries.reduce((best, at) => (cost(at) < cost(best) ? at : best), place);
}

/** Length of a joint that runs within the clearance of a support, beyond what a plain crossing takes. */
export function nearSupport(
  { supports, numbers }: Pick<CellTask, 'supports' | 'numbers'>,
  [from, to]: readonly [Point, Point],
): number {
  const clearance = numbers.supportClearanceMm;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const count = Math.max(8, Math.ceil(length / 10));
  let near = 0;
  for (const [a, b] of supports) {
    const samples = Array.from({ length: count }, (_, k) => (k + 0.5) / count).filter(
      (t) =>
        distanceToSegment([from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])], a, b) <
        clearance,
    );
    near += Math.max(0, (samples.length / count) * length - 4 * clearance);
  }
  return near;
}

/** Narrow or tiny cells join the neighbour with which they share most edge, as long as that stays bedable. */
function withoutSlivers(cells: readonly Region[], task: CellTask): readonly Region[] {
  let current = [...cells];
  for (const sliver of cells.filter((cell) => isSliver(cell, task)).sort((a, b) => areaMm2(a) - areaMm2(b))) {
    if (!current.includes(sliver)) continue;
    const partner = bestPartner(sliver, current, task);
    if (partner === undefined) continue;
    current = [...current.filter((cell) => cell !== sliver && cell !== partner), union(sliver, partner)];
  }
  return current;
}

export function isSliver(
  cell: Region,
  { numbers, largestMm2 }: Pick<CellTask, 'numbers' | 'largestMm2'>,
): boolean {
  const box = bounds(cell);
  if (box === undefined) return true;
  const area = areaMm2(cell);
  const narrow = Math.min(box.maxX - box.minX, box.maxY - box.minY);
  return narrow < numbers.narrowestMm || area < Math.min(largestMm2 / 12, numbers.narrowestMm ** 2 * 2);
}

/** A little over the limit is less trouble than a sliver. */
const overLimit = 1.25;

function bestPartner(sliver: Region, cells: readonly Region[], { largestMm2 }: CellTask): Region | undefined {
  const joined = cells
    .filter((cell) => cell !== sliver)
    .flatMap((cell) => {
      const both = union(sliver, cell);
      const isOne = both.length === 1 && both[0].holes.length === 0;
      return isOne && areaMm2(both) <= overLimit * largestMm2
        ? [{ cell, outline: perimeterMm(both) - perimeterMm(cell) }]
        : [];
    });
  return joined.sort((a, b) => a.outline - b.outline)[0]?.cell;
}
