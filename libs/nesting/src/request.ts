import { pointer, problem, type Outcome, type Problem } from '#lib/kernel';
import {
  areaMm2,
  difference,
  intersection,
  readOutline,
  regionOf,
  union,
  type Point,
  type Ring as Outline,
} from '#lib/geometry';

/** A piece to be cut. Outlines in mm, corners in order; the sense does not matter. */
export interface NestPiece {
  readonly id: string;
  readonly outline: readonly Point[];
  readonly holes?: readonly (readonly Point[])[];
  /** How many alike; 1 when absent. */
  readonly count?: number;
  /** Turns that keep the grain right, degrees anticlockwise; an empty list means any turn will do. */
  readonly turnsDeg: readonly number[];
}

/** A kind of sheet, or one offcut with an outline of its own. Costs are compared with each other only. */
export interface StockSheet {
  readonly id: string;
  readonly outline: readonly Point[];
  /** Bad spots and cut-outs of an offcut. */
  readonly holes?: readonly (readonly Point[])[];
  readonly cost: number;
  /** How many there are; as many as it takes when absent. */
  readonly available?: number;
}

export interface SheetRequest {
  readonly pieces: readonly NestPiece[];
  readonly stock: readonly StockSheet[];
  /** Width that the blade takes between two pieces. */
  readonly kerfMm: number;
  /** Strip along every edge of a sheet that is not used. */
  readonly edgeTrimMm: number;
  readonly seed: number;
  /** Thousands of pairs of pieces that may be looked at; the same number gives the same answer everywhere. */
  readonly workUnits: number;
}

export interface StripRequest {
  readonly pieces: readonly NestPiece[];
  /** Width of the roll. */
  readonly widthMm: number;
  readonly kerfMm: number;
  readonly edgeTrimMm: number;
  /** Longest piece of roll that can be had; no limit when absent. */
  readonly longestMm?: number;
  readonly seed: number;
  readonly workUnits: number;
}

/** More pieces than any deck needs: two pairs of sheets full of hand-sized pieces; it bounds memory and time. */
export const mostPieces = 1500;
/** Different outlines in one request. */
export const mostOutlines = 600;
export const mostCornersInAll = 20_000;
/** A longer piece would leave the range in which the overlap test is exact. */
export const longestPieceMm = 16_000;

/** Problems of everything that both kinds of request have. */
export function commonProblems(
  request: Pick<SheetRequest, 'pieces' | 'kerfMm' | 'edgeTrimMm' | 'seed' | 'workUnits'>,
): readonly Problem[] {
  return [
    ...within(request.kerfMm, '/kerfMm', 0, 50),
    ...within(request.edgeTrimMm, '/edgeTrimMm', 0, 500),
    ...within(request.workUnits, '/workUnits', 0, 1e9),
    ...within(request.seed, '/seed', 0, 4294967295),
    ...piecesProblems(request.pieces),
  ];
}

export function within(value: number, at: string, from: number, upTo: number): readonly Problem[] {
  if (typeof value !== 'number' || !Number.isFinite(value))
    return [problem('not-a-number', at, { hint: '', value: String(value) })];
  return value >= from && value <= upTo
    ? []
    : [problem('out-of-range', at, { value, range: `${from} to ${upTo}` })];
}

function piecesProblems(pieces: readonly NestPiece[]): readonly Problem[] {
  if (pieces.length === 0) return [problem('too-few', '/pieces', { count: 0, least: 1 })];
  const count = pieces.reduce((sum, piece) => sum + (piece.count ?? 1), 0);
  const corners = pieces.reduce((sum, piece) => sum + piece.outline.length, 0);
  if (count > mostPieces) return [problem('too-many', '/pieces', { count, most: mostPieces })];
  if (pieces.length > mostOutlines)
    return [problem('too-many', '/pieces', { count: pieces.length, most: mostOutlines })];
  if (corners > mostCornersInAll)
    return [problem('too-many', '/pieces', { count: corners, most: mostCornersInAll })];
  const ids = pieces.map(({ id }) => id);
  return pieces.flatMap((piece, index) => [
    ...(ids.indexOf(piece.id) < index
      ? [problem('duplicate', pointer('/pieces', index, 'id'), { value: piece.id })]
      : []),
    ...outlineProblems(piece, pointer('/pieces', index)),
    ...pieceProblems(piece, pointer('/pieces', index)),
  ]);
}

function pieceProblems({ count = 1, turnsDeg }: NestPiece, at: string): readonly Problem[] {
  const isCount = Number.isInteger(count) && count >= 1;
  return [
    ...(isCount
      ? []
      : [problem('out-of-range', `${at}/count`, { value: count, range: 'a whole number of 1 or more' })]),
    ...(turnsDeg.length > 72
      ? [problem('too-many', `${at}/turnsDeg`, { count: turnsDeg.length, most: 72 })]
      : []),
    ...turnsDeg.flatMap((turn, k) => within(turn, pointer(at, 'turnsDeg', k), -360, 360)),
  ];
}

export function outlineProblems(
  {
    outline,
    holes = [],
  }: { readonly outline: readonly Point[]; readonly holes?: readonly (readonly Point[])[] },
  at: string,
): readonly Problem[] {
  const read: readonly Outcome<Outline>[] = [
    readOutline(outline, `${at}/outline`),
    ...holes.map((hole, k) => readOutline(hole, pointer(at, 'holes', k))),
  ];
  const problems = read.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  if (problems.length > 0) return problems;
  const [outer, ...inner] = read.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  const astray = holes.flatMap((_, k) => holeProblems(outer, inner, k, pointer(at, 'holes', k)));
  if (astray.length > 0) return astray;
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const longest = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  return longest <= longestPieceMm
    ? []
    : [
        problem('out-of-range', `${at}/outline`, {
          value: longest,
          range: `at most ${longestPieceMm} mm long`,
        }),
      ];
}

/** Coarser than the clipping kernel's rounding, finer than any saw. */
const nothingMm2 = 0.5;

function holeProblems(outer: Outline, holes: readonly Outline[], k: number, at: string): readonly Problem[] {
  const hole = regionOf(holes[k]);
  const outside = areaMm2(difference(hole, regionOf(outer)));
  const others = areaMm2(intersection(hole, union(...holes.slice(0, k).map((other) => regionOf(other)))));
  if (outside > nothingMm2)
    return [problem('contradiction', at, { other: 'outline', why: 'a hole must lie inside its outline' })];
  return others > nothingMm2
    ? [problem('contradiction', at, { other: 'holes', why: 'holes must not overlap' })]
    : [];
}
