import { pieceQuestions } from './questions.js';
import { saidOr } from '#lib/asking';
import { paddedBy, type Shape, shapeSetOf, type ShapeSet } from './shapes.js';
import { grown, regionFrom } from './no-fit.js';
import { shapeOnGrid, stepsPerMm, turnsToTry, type GridShape } from './on-grid.js';
import type { SheetRequest, StockSheet } from './request.js';
import { areaOf, boxOf, regionShifted, reversed, type Box, type Region, type Ring } from './ring.js';

/** A kind of sheet on the grid. Outlines of pieces must lie in `room`, clear of the blocks. */
export interface SheetKind {
  readonly stock: StockSheet;
  readonly region: Region;
  readonly moved: readonly [number, number];
  readonly area: number;
  readonly room: Box;
  /** Turned-shape numbers of what stands in the way: the outside of an irregular sheet, its holes. */
  readonly blocks: readonly { readonly shape: number; readonly x: number; readonly y: number }[];
  readonly available: number;
}

export interface PieceKind {
  readonly index: number;
  readonly id: string;
  readonly grid: GridShape;
  readonly area: number;
  readonly count: number;
}

/** The request on the grid, with every shape that can meet another. */
export interface SheetJob {
  readonly request: SheetRequest;
  readonly steps: number;
  readonly pieces: readonly PieceKind[];
  readonly kinds: readonly SheetKind[];
  readonly set: ShapeSet;
  /** Half the kerf, rounded up. */
  readonly padding: number;
}

export function sheetJobOf(request: SheetRequest): SheetJob {
  const steps = stepsPerMm(largestMm(request));
  const padding = Math.ceil((request.kerfMm * steps) / 2);
  const trim = Math.ceil(request.edgeTrimMm * steps);
  const pieces = request.pieces.map((piece, index): PieceKind => {
    const grid = shapeOnGrid(piece, steps);
    return {
      index,
      id: piece.id,
      grid,
      area: areaOf(grid.region),
      count: saidOr(pieceQuestions.count, piece.count),
    };
  });
  const shapes = pieces.map(({ grid, index }): Shape => ({
    region: grid.region,
    turnsDeg: turnsToTry(request.pieces[index], grid.region),
  }));
  const reach = Math.max(...shapes.map(({ region }) => reachOf(region)));
  const sheets = request.stock.map((stock) => ({ stock, ...shapeOnGrid(stock, steps) }));
  const blocks = sheets.map(({ region }) => blocksOf(region, { padding, trim, reach }));
  const blockShapes = blocks.flat().map((region): Shape => ({ region, turnsDeg: [0] }));
  const set = shapeSetOf(shapes, blockShapes, padding);
  let next = shapes.length;
  const kinds = sheets.map(({ stock, region, moved }, k): SheetKind => ({
    stock,
    region,
    moved,
    area: areaOf(region),
    room: roomOf(region, trim, padding),
    blocks: blocks[k].map((block) => ({
      shape: set.choicesOf[next++][0],
      x: boxOf(block.outer).minX,
      y: boxOf(block.outer).minY,
    })),
    available: stock.available ?? Infinity,
  }));
  return { request, steps, pieces, kinds, set, padding };
}

function largestMm({ pieces, stock }: SheetRequest): number {
  const spans = [...pieces, ...stock].flatMap(({ outline }) =>
    [0, 1].map((axis) => {
      const values = outline.map((point) => point[axis]);
      return Math.max(...values) - Math.min(...values);
    }),
  );
  return Math.max(...spans);
}

function reachOf(region: Region): number {
  const { maxX, maxY } = boxOf(region.outer);
  return Math.ceil(Math.hypot(maxX, maxY));
}

const isWholeRectangle = (region: Region): boolean =>
  region.outer.length === 8 &&
  region.holes.length === 0 &&
  areaOf(region) === boxOf(region.outer).maxX * boxOf(region.outer).maxY;

/** At an irregular edge at least half a kerf is left, so that the blade stays on the sheet. */
const trimOf = (region: Region, trim: number, padding: number): number =>
  isWholeRectangle(region) ? trim : Math.max(trim, padding);

function roomOf(region: Region, trim: number, padding: number): Box {
  const { minX, minY, maxX, maxY } = boxOf(region.outer);
  const edge = trimOf(region, trim, padding);
  return { minX: minX + edge, minY: minY + edge, maxX: maxX - edge, maxY: maxY - edge };
}

/**
 * What stands in the way on a sheet, seen by padded pieces: they may come within trim less padding of the edge, so that the
 * piece itself keeps the trim.
 */
function blocksOf(
  region: Region,
  { padding, trim, reach }: { readonly padding: number; readonly trim: number; readonly reach: number },
): readonly Region[] {
  if (isWholeRectangle(region)) return [];
  const edge = trimOf(region, trim, padding) - padding;
  const isBox =
    region.outer.length === 8 &&
    areaOf({ outer: region.outer, holes: [] }) === boxOf(region.outer).maxX * boxOf(region.outer).maxY;
  const holes = region.holes.map((hole) => paddedBy(regionFrom(reversed(hole), []), edge));
  return isBox ? holes : [...framesOf(region.outer, edge, reach), ...holes];
}

/** Everything outside an outline drawn in by `edge`, as a frame wide enough that no piece gets out of it sideways. */
function framesOf(outer: Ring, edge: number, reach: number): readonly Region[] {
  const { minX, minY, maxX, maxY } = boxOf(outer);
  const wide = Float64Array.of(
    minX - reach,
    minY - reach,
    maxX + reach,
    minY - reach,
    maxX + reach,
    maxY + reach,
    minX - reach,
    maxY + reach,
  );
  const solid = { outer: wide, holes: [reversed(outer)] };
  if (edge === 0) return [solid];
  const rings = grown([wide, reversed(outer)], edge + 1);
  const byArea = [...rings].sort(
    (p, q) => Math.abs(areaOf({ outer: q, holes: [] })) - Math.abs(areaOf({ outer: p, holes: [] })),
  );
  return [regionShifted({ outer: byArea[0], holes: byArea.slice(1) }, 0, 0)];
}
