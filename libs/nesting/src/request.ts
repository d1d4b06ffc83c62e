import { faultsIn, saidOr } from '#lib/asking';
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
import { cuttingQuestions, longestPieceMm, mostOutlines, mostPieces, pieceQuestions } from './questions.js';

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

export const mostCornersInAll = 20_000;

/** Problems of everything that both kinds of request have. */
export const commonProblems = ({
  pieces,
  kerfMm,
  edgeTrimMm,
  seed,
  workUnits,
}: Pick<SheetRequest, 'pieces' | 'kerfMm' | 'edgeTrimMm' | 'seed' | 'workUnits'>): readonly Problem[] => [
  ...faultsIn({ kerfMm, edgeTrimMm, seed, workUnits }, commonQuestions),
  ...piecesProblems(pieces),
];

const { kerfMm, edgeTrimMm, seed, workUnits } = cuttingQuestions;
const commonQuestions = { kerfMm, edgeTrimMm, seed, workUnits };

const turnQuestions = { count: pieceQuestions.count, turnsDeg: pieceQuestions.turnsDeg };

function piecesProblems(pieces: readonly NestPiece[]): readonly Problem[] {
  if (pieces.length === 0) return [problem('too-few', '/pieces', { count: 0, least: 1 })];
  const count = pieces.reduce((sum, piece) => sum + saidOr(pieceQuestions.count, piece.count), 0);
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
    ...faultsIn({ count: piece.count, turnsDeg: piece.turnsDeg }, turnQuestions, pointer('/pieces', index)),
  ]);
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
