import { Defect } from '#lib/kernel';
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

/** A sheet that is being filled. */
interface OpenSheet {
  readonly kind: number;
  skyline: readonly Step[];
  readonly top: number;
}

/**
 * All pieces by their bounding boxes on one sheet of a kind, each where its top comes lowest (skyline, lowest then leftmost).
 *
 * No outline is looked at, so it is quick and free of overlap by construction; a job that fits this way on the cheapest sheet
 * needs no search, because no layout costs less. Nothing when it does not fit, or when the sheet is no plain rectangle.
 */
export const boxedOn = (job: SheetJob, kind: number, order: readonly number[]): Packing | undefined =>
  boxedOver(job, [kind], order);

/**
 * All pieces by their bounding boxes on sheets in the order in which they may be opened: each piece on the first sheet that has
 * room for it. Nothing when the sheets do not hold them, or when one of them is no plain rectangle.
 */
export function boxedOver(
  job: SheetJob,
  kinds: readonly number[],
  order: readonly number[],
): Packing | undefined {
  if (kinds.some((kind) => job.kinds[kind].blocks.length > 0)) return undefined;
  const open: OpenSheet[] = [];
  const placed: PlacedPiece[] = [];
  for (const piece of order) {
    const choices = boxesOf(job, piece);
    let at = open.findIndex((sheet) => nestOn(sheet, choices) !== undefined);
    for (; at < 0 && open.length < kinds.length;) {
      open.push(opened(job, kinds[open.length]));
      if (nestOn(open[open.length - 1], choices) !== undefined) at = open.length - 1;
    }
    if (at < 0) return undefined;
    placed.push(laid(open[at], { piece, sheet: at, choices }));
  }
  return withoutEmpty(job, open, placed);
}

function opened({ kinds, padding }: SheetJob, kind: number): OpenSheet {
  const { room } = kinds[kind];
  // Half the kerf round a piece may lie outside the room, so the ground begins that much outside.
  return {
    kind,
    skyline: [{ x: room.minX - padding, y: room.minY - padding, width: room.maxX - room.minX + 2 * padding }],
    top: room.maxY + padding,
  };
}

const boxesOf = (job: SheetJob, piece: number): readonly Boxed[] =>
  job.set.choicesOf[piece].map((shape) => ({
    shape,
    box: boxOf(job.set.table.shapes[shape].padded.outer),
  }));

const nestOn = ({ skyline, top }: OpenSheet, choices: readonly Boxed[]): Nest | undefined =>
  lowestNest(skyline, choices, top);

interface Laying {
  readonly piece: number;
  readonly sheet: number;
  readonly choices: readonly Boxed[];
}

function laid(sheet: OpenSheet, { piece, sheet: at, choices }: Laying): PlacedPiece {
  const nest = nestOn(sheet, choices);
  if (nest === undefined) throw new Defect(`No room for piece ${piece} on a sheet that had room`);
  const { shape, box, x, y } = nest;
  sheet.skyline = raised(sheet.skyline, { x, y: y + box.maxY - box.minY, width: box.maxX - box.minX });
  return { piece, sheet: at, shape, x: x - box.minX, y: y - box.minY };
}

/** A sheet too small for every piece that was left is opened in vain and not cut. */
function withoutEmpty(job: SheetJob, open: readonly OpenSheet[], placed: readonly PlacedPiece[]): Packing {
  const used = [...new Set(placed.map(({ sheet }) => sheet))].sort((p, q) => p - q);
  const sheets = used.map((sheet) => open[sheet].kind);
  return {
    sheets,
    placed: placed.map((one) => ({ ...one, sheet: used.indexOf(one.sheet) })),
    cost: sheets.reduce((sum, kind) => sum + job.kinds[kind].stock.cost, 0),
    area: sheets.reduce((sum, kind) => sum + job.kinds[kind].area, 0),
  };
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
