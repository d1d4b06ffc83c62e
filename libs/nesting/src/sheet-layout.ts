import type { Point } from '#lib/geometry';
import { Defect } from '#lib/kernel';
import { interiorsMeet } from './exact.js';
import { mmOf } from './on-grid.js';
import { areaOf, boxOf, regionShifted, turned, type Region } from './ring.js';
import type { PlacedPiece, Packing } from './sheets.js';
import type { SheetJob, SheetKind } from './sheet-job.js';

/** One piece where it lies, in the coordinates of its sheet (mm). */
export interface Placement {
  /** Piece that is placed. */
  readonly pieceId: string;
  /** Which of the alike pieces, from 1. */
  readonly copy: number;
  /** The drawing turned anticlockwise about its origin, then moved. */
  readonly turnDeg: number;
  /** How far the turned piece is moved, [xMm, yMm]. */
  readonly moveMm: Point;
  /** Edge of the piece where it lies. */
  readonly outline: readonly Point[];
  /** Holes of the piece where they lie. */
  readonly holes: readonly (readonly Point[])[];
  /** From 1: from the left edge, each before its right-hand neighbours. */
  readonly cutOrder: number;
}

/** A rectangle that is left whole on a sheet. */
export interface Offcut {
  /** Edge of the piece worth keeping. */
  readonly outline: readonly Point[];
  /** Area of the piece worth keeping. */
  readonly areaM2: number;
}

export interface CutSheet {
  /** Which kind of stock the sheet is. */
  readonly stockId: string;
  /** Which of the alike sheets, from 1. */
  readonly number: number;
  /** Edge of the sheet. */
  readonly outline: readonly Point[];
  /** Parts of the sheet that cannot be used. */
  readonly holes: readonly (readonly Point[])[];
  /** Where each piece lies on the sheet. */
  readonly placements: readonly Placement[];
  /** Area of the sheet. */
  readonly sheetAreaM2: number;
  /** Area of the pieces cut from it. */
  readonly pieceAreaM2: number;
  /** Share of the sheet that becomes pieces. */
  readonly utilisation: number;
  /** The largest rectangle right of all pieces, and the largest above them beside it; full cuts leave them whole. */
  readonly offcuts: readonly Offcut[];
}

export interface SheetLayout {
  /** Sheets with their pieces, in the order of cutting. */
  readonly sheets: readonly CutSheet[];
  /** Price of all sheets of the layout. */
  readonly cost: number;
  /** Area of all sheets bought. */
  readonly sheetAreaM2: number;
  /** Area of all pieces laid out. */
  readonly pieceAreaM2: number;
  /** Share of the sheets that becomes pieces. */
  readonly utilisation: number;
  /** No layout can cost less: the cheapest stock per area, and the sheets that the pieces need at the least. */
  readonly leastCost: number;
  /** Thousands of pairs looked at. */
  readonly workUnits: number;
  /** Outlines are set on a grid of this step. */
  readonly gridStepMm: number;
}

const squareMm = 1e6;

/** The packing in mm, after a last exact check that nothing overlaps or sticks out. */
export function layoutOf(job: SheetJob, packing: Packing, leastCost: number, work: number): SheetLayout {
  const sheets = packing.sheets.map((_, sheet) => cutSheetOf(job, packing, sheet));
  const total = (of: (sheet: CutSheet) => number): number =>
    sheets.reduce((sum, sheet) => sum + of(sheet), 0);
  const sheetAreaM2 = total((sheet) => sheet.sheetAreaM2);
  const pieceAreaM2 = total((sheet) => sheet.pieceAreaM2);
  return {
    sheets,
    cost: packing.cost,
    sheetAreaM2,
    pieceAreaM2,
    utilisation: pieceAreaM2 / sheetAreaM2,
    leastCost,
    workUnits: Math.ceil(work / 1000),
    gridStepMm: 1 / job.steps,
  };
}

function cutSheetOf(job: SheetJob, { sheets, placed }: Packing, sheet: number): CutSheet {
  const kind = job.kinds[sheets[sheet]];
  const here = placed.filter((one) => one.sheet === sheet);
  assertClean(job, kind, here);
  const { steps } = job;
  const areaM2 = (area: number): number => area / (steps * steps) / squareMm;
  const placements = here
    .map((one) => ({ one, copy: copyOf(placed, one) }))
    .sort((p, q) => p.one.x - q.one.x || p.one.y - q.one.y)
    .map(({ one, copy }, order) => placementOf(job, kind, one, { copy, cutOrder: order + 1 }));
  const pieceArea = here.reduce((sum, { piece }) => sum + job.pieces[piece].area, 0);
  const back = [-kind.moved[0], -kind.moved[1]] as const;
  return {
    stockId: kind.stock.id,
    number: sheets.slice(0, sheet).filter((other) => other === sheets[sheet]).length + 1,
    outline: mmOf(kind.region.outer, steps, back),
    holes: kind.region.holes.map((hole) => mmOf(hole, steps, back)),
    placements,
    sheetAreaM2: areaM2(kind.area),
    pieceAreaM2: areaM2(pieceArea),
    utilisation: pieceArea / kind.area,
    offcuts: offcutsOf(job, kind, here),
  };
}

const copyOf = (placed: readonly PlacedPiece[], one: PlacedPiece): number =>
  placed.filter(({ piece }) => piece === one.piece).indexOf(one) + 1;

function placementOf(
  job: SheetJob,
  kind: SheetKind,
  one: PlacedPiece,
  { copy, cutOrder }: { readonly copy: number; readonly cutOrder: number },
): Placement {
  const { steps, set, pieces } = job;
  const { turnDeg, shiftX, shiftY } = set.turnings[one.shape];
  const { id, grid } = pieces[one.piece];
  const outline = set.table.shapes[one.shape].outline;
  const at = [one.x - kind.moved[0], one.y - kind.moved[1]] as const;
  const start = turned(Float64Array.of(grid.moved[0], grid.moved[1]), turnDeg);
  return {
    pieceId: id,
    copy,
    turnDeg,
    moveMm: [(at[0] + shiftX + start[0]) / steps, (at[1] + shiftY + start[1]) / steps],
    outline: mmOf(outline.outer, steps, at),
    holes: outline.holes.map((hole) => mmOf(hole, steps, at)),
    cutOrder,
  };
}

/** The promise of this room, kept by whole-number arithmetic: nothing overlaps, nothing sticks out. */
function assertClean(job: SheetJob, kind: SheetKind, placed: readonly PlacedPiece[]): void {
  const { shapes } = job.set.table;
  const standing = placed.map(({ shape, x, y }): { readonly padded: Region; readonly outline: Region } => ({
    padded: regionShifted(shapes[shape].padded, x, y),
    outline: regionShifted(shapes[shape].outline, x, y),
  }));
  const blocks = kind.blocks.map(({ shape, x, y }) => regionShifted(shapes[shape].outline, x, y));
  const { room } = kind;
  standing.forEach(({ padded, outline }, k) => {
    const box = boxOf(outline.outer);
    const isInRoom =
      box.minX >= room.minX && box.minY >= room.minY && box.maxX <= room.maxX && box.maxY <= room.maxY;
    const isClear =
      !blocks.some((block) => interiorsMeet(block, padded)) &&
      !standing.slice(0, k).some((other) => interiorsMeet(other.padded, padded));
    if (!isInRoom || !isClear)
      throw new Defect(`Piece ${placed[k].piece} overlaps or sticks out on a sheet of ${kind.stock.id}`);
  });
}

/** What stays whole right of the pieces and above them, the better of the two ways to cut it; rectangles only. */
function offcutsOf(job: SheetJob, kind: SheetKind, placed: readonly PlacedPiece[]): readonly Offcut[] {
  if (kind.blocks.length > 0) return [];
  const boxes = placed.map(({ shape, x, y }) => ({
    right: x + job.set.table.shapes[shape].width,
    top: y + job.set.table.shapes[shape].height,
  }));
  const kerf = 2 * job.padding;
  const { maxX, maxY } = boxOf(kind.region.outer);
  const right = Math.max(...boxes.map((box) => box.right)) + kerf;
  const top = Math.max(...boxes.map((box) => box.top)) + kerf;
  const upright = [
    [right, 0, maxX, maxY],
    [0, top, Math.min(right - kerf, maxX), maxY],
  ];
  const level = [
    [0, top, maxX, maxY],
    [right, 0, maxX, Math.min(top - kerf, maxY)],
  ];
  const largest = (cuts: readonly (readonly number[])[]): number =>
    Math.max(...cuts.map((cut) => rectangleArea(cut)));
  const cuts = largest(upright) >= largest(level) ? upright : level;
  return cuts.filter((cut) => rectangleArea(cut) > 0).map((cut) => offcutOf(job, kind, cut));
}

const rectangleArea = ([x1, y1, x2, y2]: readonly number[]): number =>
  x2 > x1 && y2 > y1 ? (x2 - x1) * (y2 - y1) : 0;

function offcutOf({ steps }: SheetJob, { moved }: SheetKind, [x1, y1, x2, y2]: readonly number[]): Offcut {
  const ring = Float64Array.of(x1, y1, x2, y1, x2, y2, x1, y2);
  return {
    outline: mmOf(ring, steps, [-moved[0], -moved[1]]),
    areaM2: areaOf({ outer: ring, holes: [] }) / (steps * steps) / squareMm,
  };
}
