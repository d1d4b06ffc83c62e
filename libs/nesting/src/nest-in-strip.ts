import { faultsIn, saidOr } from '#lib/asking';
import { Defect, pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import type { Point } from '#lib/geometry';
import { interiorsMeet } from './exact.js';
import { mmOf, shapeOnGrid, stepsPerMm, turnsToTry, type GridShape } from './on-grid.js';
import { offerFor } from './offer.js';
import { rollQuestions, pieceQuestions } from './questions.js';
import { commonProblems, type StripRequest } from './request.js';
import { areaOf, regionShifted, turned } from './ring.js';
import { shapeSetOf, type ShapeSet } from './shapes.js';
import type { Placement } from './sheet-layout.js';
import { solveStrip, type StripState } from './strip.js';

/** Pieces laid on a length of roll; x runs along the roll, y across it. */
export interface StripLayout {
  /** Length to cut off the roll. */
  readonly lengthMm: number;
  /** Width of the roll. */
  readonly widthMm: number;
  /** Where each piece lies on the roll. */
  readonly placements: readonly Placement[];
  /** Area of the pieces on the roll. */
  readonly pieceAreaM2: number;
  /** Area of roll used. */
  readonly stripAreaM2: number;
  /** Share of the roll that becomes pieces. */
  readonly utilisation: number;
  /** No layout is shorter: the area of the pieces over the width, or the longest piece that must lie along. */
  readonly leastLengthMm: number;
  /** Thousands of pairs looked at. */
  readonly workUnits: number;
  /** Step of the grid that pieces were moved on. */
  readonly gridStepMm: number;
}

/**
 * Lays pieces on a roll of fixed width so that the least length is used. Same request, same layout; more work never makes
 * it longer. `shouldStop` may end the search early with the best layout so far.
 */
export function nestInStrip(
  request: StripRequest,
  shouldStop: () => boolean = () => false,
): Outcome<StripLayout> {
  const problems = [
    ...commonProblems(request),
    ...faultsIn({ widthMm: request.widthMm }, { widthMm: rollQuestions.widthMm }),
  ];
  if (problems.length > 0) return refusal(...problems);
  const job = stripJobOf(request);
  const impossible = tooWide(request, job);
  if (impossible.length > 0) return refusal(...impossible);
  const layout = layoutOf(request, job, solved(request, job, shouldStop));
  const { longestMm } = request;
  return longestMm === undefined || layout.lengthMm <= longestMm
    ? success(layout)
    : refusal(
        problem('out-of-range', '/longestMm', {
          value: longestMm,
          range: `${Math.ceil(layout.lengthMm)} mm or more for these pieces, or fewer pieces`,
        }),
      );
}

interface StripGrid {
  readonly steps: number;
  readonly padding: number;
  readonly trim: number;
  readonly shapes: readonly GridShape[];
  readonly set: ShapeSet;
  /** Piece kind of each single piece. */
  readonly shapeOf: readonly number[];
}

function stripJobOf({ pieces, kerfMm, edgeTrimMm }: StripRequest): StripGrid {
  const spans = pieces.flatMap(({ outline }) =>
    [0, 1].map(
      (axis) =>
        Math.max(...outline.map((point) => point[axis])) - Math.min(...outline.map((point) => point[axis])),
    ),
  );
  const steps = stepsPerMm(Math.max(...spans));
  const padding = Math.ceil((kerfMm * steps) / 2);
  const shapes = pieces.map((piece) => shapeOnGrid(piece, steps));
  const set = shapeSetOf(
    shapes.map(({ region }, k) => ({ region, turnsDeg: turnsToTry(pieces[k], region) })),
    [],
    padding,
  );
  const shapeOf = pieces.flatMap(({ count }, k) =>
    Array.from({ length: saidOr(pieceQuestions.count, count) }, () => k),
  );
  return { steps, padding, trim: Math.ceil(edgeTrimMm * steps), shapes, set, shapeOf };
}

/** Turns in which a piece is wider than the roll are not tried; a piece without any other is named. */
function tooWide({ pieces, widthMm }: StripRequest, { steps, trim, set }: StripGrid): readonly Problem[] {
  const room = Math.floor(widthMm * steps) - 2 * trim;
  return pieces.flatMap(({ id }, k) => {
    const sizes = set.choicesOf[k]
      .map((shape) => set.table.shapes[shape])
      .sort((p, q) => p.height - q.height);
    const [{ width, height }] = sizes;
    if (height <= room) return [];
    const inMm = (value: number): number => Math.round((value / steps) * 10) / 10;
    const offer = offerFor({ width: width / steps, height: height / steps }, [
      { width: Infinity, height: room / steps },
    ]);
    return [
      problem('too-large-for-stock', pointer('/pieces', k), {
        piece: id,
        size: `${inMm(height)} mm across`,
        room: `${Math.max(0, inMm(room))} mm across`,
        offer,
      }),
    ];
  });
}

function solved(request: StripRequest, grid: StripGrid, shouldStop: () => boolean): StripState {
  const top = Math.floor(request.widthMm * grid.steps) - grid.trim;
  const fitting = grid.set.choicesOf.map((choices) =>
    choices.filter((shape) => grid.set.table.shapes[shape].height <= top - grid.trim),
  );
  return solveStrip({
    set: { ...grid.set, choicesOf: fitting },
    shapeOf: grid.shapeOf,
    low: [grid.trim, grid.trim],
    top,
    seed: request.seed,
    workLimit: 1000 * request.workUnits,
    shouldStop,
  });
}

function layoutOf(request: StripRequest, grid: StripGrid, state: StripState): StripLayout {
  assertClean(grid, state);
  const { steps, trim, shapes } = grid;
  const area = grid.shapeOf.reduce((sum, kind) => sum + areaOf(shapes[kind].region), 0);
  const lengthMm = (state.length + trim) / steps;
  const pieceAreaM2 = area / (steps * steps) / squareMm;
  const stripAreaM2 = (lengthMm * request.widthMm) / squareMm;
  const roomMm = request.widthMm - 2 * request.edgeTrimMm;
  const longest = request.pieces.map(
    (_, k) => Math.min(...grid.set.choicesOf[k].map((shape) => grid.set.table.shapes[shape].width)) / steps,
  );
  return {
    lengthMm,
    widthMm: request.widthMm,
    placements: placementsOf(request, grid, state),
    pieceAreaM2,
    stripAreaM2,
    utilisation: pieceAreaM2 / stripAreaM2,
    leastLengthMm: Math.max((pieceAreaM2 * squareMm) / roomMm, ...longest) + 2 * request.edgeTrimMm,
    workUnits: Math.ceil(state.work / 1000),
    gridStepMm: 1 / steps,
  };
}

const squareMm = 1e6;

function placementsOf(
  { pieces }: StripRequest,
  { steps, set, shapes, shapeOf }: StripGrid,
  { order, snapshot }: StripState,
): readonly Placement[] {
  const spots = order
    .map((piece, k) => ({
      piece,
      kind: shapeOf[piece],
      shape: snapshot.shape[k],
      x: snapshot.x[k],
      y: snapshot.y[k],
    }))
    .sort((p, q) => p.x - q.x || p.y - q.y);
  return spots.map(({ piece, kind, shape, x, y }, k): Placement => {
    const { turnDeg, shiftX, shiftY } = set.turnings[shape];
    const start = turned(Float64Array.of(...shapes[kind].moved), turnDeg);
    const { outline } = set.table.shapes[shape];
    return {
      pieceId: pieces[kind].id,
      copy: shapeOf.slice(0, piece + 1).filter((other) => other === kind).length,
      turnDeg,
      moveMm: [(x + shiftX + start[0]) / steps, (y + shiftY + start[1]) / steps] satisfies Point,
      outline: mmOf(outline.outer, steps, [x, y]),
      holes: outline.holes.map((hole) => mmOf(hole, steps, [x, y])),
      cutOrder: k + 1,
    };
  });
}

/** The promise of this room, kept by whole-number arithmetic. */
function assertClean({ set, trim }: StripGrid, { snapshot, length }: StripState): void {
  const padded = Array.from(snapshot.shape, (shape, k) =>
    regionShifted(set.table.shapes[shape].padded, snapshot.x[k], snapshot.y[k]),
  );
  padded.forEach((region, k) => {
    const sticksOut =
      snapshot.x[k] < trim || snapshot.x[k] + set.table.shapes[snapshot.shape[k]].width > length;
    if (sticksOut || padded.slice(0, k).some((other) => interiorsMeet(other, region)))
      throw new Defect(`Piece ${k} overlaps or sticks out of the strip`);
  });
}
