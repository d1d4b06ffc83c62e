import type { SheetJob } from './sheet-job.js';
import type { Packing, PlacedPiece } from './sheets.js';

/** A stretch of the skyline: from `x`, `width` long, filled up to `y`. */
interface Step {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

interface Nest {
  readonly index: number;
  readonly x: number;
  readonly y: number;
  readonly shape: number;
}

/**
 * All pieces by their bounding boxes on one sheet of a kind, each where its top comes lowest (skyline, lowest then leftmost).
 *
 * No outline is looked at, so it is quick and free of overlap by construction; a job that fits this way on the cheapest sheet
 * needs no search, because no layout costs less. Nothing when it does not fit, or when the sheet is no plain rectangle.
 */
export function boxedOn(job: SheetJob, kind: number, order: readonly number[]): Packing | undefined {
  const { room, blocks, stock, area } = job.kinds[kind];
  if (blocks.length > 0) return undefined;
  const gap = 2 * job.padding;
  let skyline: readonly Step[] = [{ x: room.minX, y: room.minY, width: room.maxX - room.minX + gap }];
  const placed: PlacedPiece[] = [];
  for (const piece of order) {
    const nest = lowestNest(job, skyline, { choices: job.set.choicesOf[piece], top: room.maxY, gap });
    if (nest === undefined) return undefined;
    const { width, height } = job.set.table.shapes[nest.shape];
    placed.push({ piece, sheet: 0, shape: nest.shape, x: nest.x, y: nest.y });
    skyline = raised(skyline, { x: nest.x, y: nest.y + height + gap, width: width + gap });
  }
  return { sheets: [kind], placed, cost: stock.cost, area };
}

interface Wanted {
  readonly choices: readonly number[];
  readonly top: number;
  readonly gap: number;
}

function lowestNest({ set }: SheetJob, skyline: readonly Step[], { choices, top, gap }: Wanted): Nest | undefined {
  const right = skyline[skyline.length - 1].x + skyline[skyline.length - 1].width;
  const nests = choices.flatMap((shape) => {
    const { width, height } = set.table.shapes[shape];
    return skyline.flatMap(({ x }, index) => {
      if (x + width + gap > right) return [];
      const y = floorUnder(skyline, index, width + gap);
      return y + height > top ? [] : [{ index, x, y, shape, top: y + height }];
    });
  });
  if (nests.length === 0) return undefined;
  return nests.reduce((best, nest) => (nest.top < best.top || (nest.top === best.top && nest.x < best.x) ? nest : best));
}

/** Highest ground below a box that starts at this step. */
function floorUnder(skyline: readonly Step[], index: number, width: number): number {
  const end = skyline[index].x + width;
  let floor = skyline[index].y;
  for (let next = index + 1; next < skyline.length && skyline[next].x < end; next += 1) floor = Math.max(floor, skyline[next].y);
  return floor;
}

/** The skyline with a new box on it; steps under the box are cut back. */
function raised(skyline: readonly Step[], box: Step): readonly Step[] {
  const end = box.x + box.width;
  const left = skyline.filter(({ x }) => x < box.x).map((step) => ({ ...step, width: Math.min(step.width, box.x - step.x) }));
  const right = skyline.filter((step) => step.x + step.width > end)
    .map((step) => (step.x >= end ? step : { x: end, y: step.y, width: step.x + step.width - end }));
  return [...left, box, ...right];
}
