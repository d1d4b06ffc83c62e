import { boxOf, type Box } from './ring.js';
import type { SheetJob } from './sheet-job.js';
import type { Packing, PlacedPiece } from './sheets.js';

/** A stretch of the skyline: from `x`, `width` long, filled up to `y`. */
interface Step {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

interface Nest {
  readonly shape: number;
  readonly box: Box;
  readonly x: number;
  readonly y: number;
  readonly top: number;
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
  // Half the kerf round a piece may lie outside the room, so the ground begins that much outside.
  const { padding } = job;
  let skyline: readonly Step[] = [
    { x: room.minX - padding, y: room.minY - padding, width: room.maxX - room.minX + 2 * padding },
  ];
  const placed: PlacedPiece[] = [];
  for (const piece of order) {
    const nest = lowestNest(
      skyline,
      job.set.choicesOf[piece].map((shape) => ({
        shape,
        box: boxOf(job.set.table.shapes[shape].padded.outer),
      })),
      room.maxY + padding,
    );
    if (nest === undefined) return undefined;
    const { shape, box, x, y } = nest;
    placed.push({ piece, sheet: 0, shape, x: x - box.minX, y: y - box.minY });
    skyline = raised(skyline, { x, y: y + box.maxY - box.minY, width: box.maxX - box.minX });
  }
  return { sheets: [kind], placed, cost: stock.cost, area };
}

/** A piece in one of its turns, with the box round it and half the kerf. */
interface Boxed {
  readonly shape: number;
  readonly box: Box;
}

function lowestNest(skyline: readonly Step[], choices: readonly Boxed[], top: number): Nest | undefined {
  const right = skyline[skyline.length - 1].x + skyline[skyline.length - 1].width;
  const nests = choices.flatMap(({ shape, box }) => {
    const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
    return skyline.flatMap(({ x }, index): readonly Nest[] => {
      if (x + width > right) return [];
      const y = floorUnder(skyline, index, width);
      return y + height > top ? [] : [{ shape, box, x, y, top: y + height }];
    });
  });
  if (nests.length === 0) return undefined;
  return nests.reduce((best, nest) =>
    nest.top < best.top || (nest.top === best.top && nest.x < best.x) ? nest : best,
  );
}

/** Highest ground below a box that starts at this step. */
function floorUnder(skyline: readonly Step[], index: number, width: number): number {
  const end = skyline[index].x + width;
  let floor = skyline[index].y;
  for (let next = index + 1; next < skyline.length && skyline[next].x < end; next += 1)
    floor = Math.max(floor, skyline[next].y);
  return floor;
}

/** The skyline with a new box on it; steps under the box are cut back. */
function raised(skyline: readonly Step[], box: Step): readonly Step[] {
  const end = box.x + box.width;
  const left = skyline
    .filter(({ x }) => x < box.x)
    .map((step) => ({ ...step, width: Math.min(step.width, box.x - step.x) }));
  const right = skyline
    .filter((step) => step.x + step.width > end)
    .map((step) => (step.x >= end ? step : { x: end, y: step.y, width: step.x + step.width - end }));
  return [...left, box, ...right];
}
