import { areaMm2, bounds, intersection, rectangle, regionOf, rotate, type Region } from '#lib/geometry';
import { Defect } from '#lib/kernel';

export interface RollRequest {
  readonly rollWidthsMm: readonly number[];
  /** Direction of the roll from the x axis. */
  readonly directionDeg: number;
  /** Width by which neighbouring strips of one ply lie over each other. */
  readonly overlapMm: number;
  /** Extra length at both ends of a strip together. */
  readonly endAllowanceMm: number;
  /** Seams of the ply below, across the roll direction, which these should keep away from. */
  readonly seamsBelowMm: readonly number[];
}

export interface RollPiece {
  /** Length of the piece along the roll. */
  readonly lengthMm: number;
  /** Width of the piece across the roll. */
  readonly widthMm: number;
  /** What it takes of the width of the roll. */
  readonly usedWidthMm: number;
  /** Edge of the piece on deck. */
  readonly outline: Region;
}

export interface RollCut {
  readonly rollWidthMm: number;
  readonly rollLengthMm: number;
  readonly pieces: readonly RollPiece[];
  /** Middle of each overlap, measured across the roll direction. */
  readonly seamsMm: readonly number[];
  readonly overlapAreaMm2: number;
}

/** Strips of one roll width that cover an outline, by the roll that needs fewest seams, then least glass. */
export function cutFromRoll(outline: Region, request: RollRequest): RollCut {
  const turned = rotate(outline, -radians(request.directionDeg));
  const cuts = request.rollWidthsMm.map((width) => bestShift(turned, width, request));
  const best = cuts.reduce((kept, cut) => (isLess(cut, kept) ? cut : kept));
  return {
    ...best,
    pieces: best.pieces.map((piece) => ({
      ...piece,
      outline: rotate(piece.outline, radians(request.directionDeg)),
    })),
  };
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

const isLess = (a: RollCut, b: RollCut): boolean =>
  a.seamsMm.length < b.seamsMm.length ||
  (a.seamsMm.length === b.seamsMm.length && a.rollLengthMm * a.rollWidthMm < b.rollLengthMm * b.rollWidthMm);

const SHIFTS = [0, 0.25, 0.5, 0.75, 1];

/** The strips reach further than the outline is wide; the spare width is put where the seams keep farthest from those below. */
function bestShift(turned: Region, rollWidthMm: number, request: RollRequest): RollCut {
  const box = bounds(turned);
  if (box === undefined) throw new Defect('A ply without area');
  const height = box.maxY - box.minY;
  const overlap = Math.min(request.overlapMm, rollWidthMm / 2);
  const count = height <= rollWidthMm ? 1 : Math.ceil((height - overlap) / (rollWidthMm - overlap));
  const pitch = rollWidthMm - overlap;
  const spare = count === 1 ? 0 : count * pitch + overlap - height;
  const starts = (count === 1 ? [0] : SHIFTS).map((share) => box.minY - share * spare);
  const start = starts.reduce((kept, next) =>
    clearance(next, { count, pitch, overlap }, request) > clearance(kept, { count, pitch, overlap }, request)
      ? next
      : kept,
  );
  return stripsFrom(turned, start, {
    count,
    pitch,
    overlap,
    rollWidthMm,
    endAllowanceMm: request.endAllowanceMm,
  });
}

interface Strips {
  readonly count: number;
  readonly pitch: number;
  readonly overlap: number;
}

const seamsFrom = (start: number, { count, pitch, overlap }: Strips): readonly number[] =>
  Array.from({ length: count - 1 }, (_, i) => start + (i + 1) * pitch + overlap / 2);

function clearance(start: number, strips: Strips, { seamsBelowMm }: RollRequest): number {
  const gaps = seamsFrom(start, strips).flatMap((seam) =>
    seamsBelowMm.map((below) => Math.abs(seam - below)),
  );
  return gaps.length === 0 ? 0 : Math.min(...gaps);
}

function stripsFrom(
  turned: Region,
  start: number,
  {
    rollWidthMm,
    endAllowanceMm,
    ...strips
  }: Strips & { readonly rollWidthMm: number; readonly endAllowanceMm: number },
): RollCut {
  const pieces = Array.from({ length: strips.count }, (_, i) =>
    band(turned, start + i * strips.pitch, rollWidthMm),
  ).flatMap((outline) => pieceOf(outline, rollWidthMm, endAllowanceMm));
  const overlaps = Array.from({ length: strips.count - 1 }, (_, i) =>
    areaMm2(band(turned, start + (i + 1) * strips.pitch, strips.overlap)),
  );
  return {
    rollWidthMm,
    pieces,
    seamsMm: seamsFrom(start, strips),
    rollLengthMm: pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0),
    overlapAreaMm2: overlaps.reduce((sum, area) => sum + area, 0),
  };
}

function band(region: Region, fromMm: number, widthMm: number): Region {
  const box = bounds(region);
  if (box === undefined || widthMm <= 0) return [];
  return intersection(region, regionOf(rectangle(box.minX - 1, fromMm, box.maxX + 1, fromMm + widthMm)));
}

/** Parts of a strip far apart are cut one by one when that is shorter than one length over both. */
function pieceOf(outline: Region, widthMm: number, endAllowanceMm: number): readonly RollPiece[] {
  const parts = outline.map((polygon) => ({ polygon, lengthMm: lengthOf([polygon]) + endAllowanceMm }));
  if (parts.length === 0) return [];
  const apart = parts.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
  const together = lengthOf(outline) + endAllowanceMm;
  const piece = (lengthMm: number, shape: Region): RollPiece => ({
    lengthMm,
    widthMm,
    usedWidthMm: Math.min(widthMm, acrossOf(shape)),
    outline: shape,
  });
  if (together <= apart) return [piece(together, outline)];
  return parts.map(({ polygon, lengthMm }) => piece(lengthMm, [polygon]));
}

function lengthOf(region: Region): number {
  const box = bounds(region);
  return box === undefined ? 0 : box.maxX - box.minX;
}

function acrossOf(region: Region): number {
  const box = bounds(region);
  return box === undefined ? 0 : box.maxY - box.minY;
}
