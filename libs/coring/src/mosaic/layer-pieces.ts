import {
  areaMm2,
  bounds,
  difference,
  intersection,
  offset,
  rectangle,
  simplifyRing,
  union,
  type Polygon,
  type Region,
} from '#lib/geometry';
import { beddingOrder } from './bedding-order.js';
import { baysOf } from './bays.js';
import type { Entry } from './entry.js';
import { layerCells, type LayerTask } from './layer-cells.js';
import { isUsedUp, type Work } from './motion.js';
import { forCells, isBeddable, isNarrowerThan, type SolidRegion } from './solid-fill.js';

/** A piece where it lies and the place that it fills with its half of the joints. */
export interface Cut {
  readonly cell: Region;
  readonly piece: Polygon;
  /** Counted from 1. */
  readonly bay: number;
  /** Absent when no way in was found. */
  readonly entry?: Entry;
}

/** One layer of one opening in the order of bedding. */
export interface BeddedLayer {
  readonly cuts: readonly Cut[];
  /** What no piece could be brought to, filled solid in this layer. */
  readonly solid: readonly SolidRegion[];
  readonly isProven: boolean;
}

type Loose = Pick<Cut, 'cell' | 'piece'>;

interface Attempt {
  readonly pieces: readonly Loose[];
  readonly coreable: Region;
  /** Places given up because nothing goes in there. */
  readonly noWay: Region;
  readonly solid: readonly SolidRegion[];
}

/** What is tried in turn when a piece does not go in. The last always goes in: nothing reaches under the lip any more. */
const CHANGES: readonly Change[] = [recut, heldShorter, filled, filled, filledAll];

type Change = (task: LayerTask, attempt: Attempt, stuck: readonly number[]) => Attempt;

/**
 * Makes the cells of a layer into pieces and finds the order of bedding. A piece that cannot go in is cut across; where that does
 * not help its place under the lip is filled solid, and the rest is divided anew.
 */
export function beddedLayer(task: LayerTask, cells: readonly Region[], mostWork: number): BeddedLayer {
  let attempt = firstAttempt(task, cells);
  let isProven = true;
  for (let tries = 0; ; tries++) {
    const work: Work = { used: 0, most: mostWork };
    const { order, stuck: held, bays, entries } = ordered(task, attempt, work);
    const stuck = [...held, ...tooNarrowToSlide(task, attempt, entries)];
    if (stuck.length === 0 || tries === CHANGES.length) {
      const cuts = order.map((piece) => cutOf(attempt.pieces[piece], bays[piece], entries.get(piece)));
      return { cuts, solid: attempt.solid, isProven };
    }
    isProven &&= !isUsedUp(work);
    attempt = CHANGES[tries](task, attempt, stuck);
  }
}

/** Pieces that would go in but cannot be held while they do. */
const tooNarrowToSlide = (
  { numbers: { leastLipPieceMm } }: LayerTask,
  { pieces }: Attempt,
  entries: ReadonlyMap<number, Entry>,
): readonly number[] =>
  pieces.flatMap(({ piece }, k) =>
    entries.get(k)?.way === 'slides' && isNarrowerThan([piece], leastLipPieceMm) ? [k] : [],
  );

const cutOf = (loose: Loose, bay: number, entry: Entry | undefined): Cut => ({
  ...loose,
  bay,
  ...(entry === undefined ? {} : { entry }),
});

const firstAttempt = (task: LayerTask, cells: readonly Region[]): Attempt =>
  withPieces(task, { pieces: [], coreable: task.coreable, noWay: [], solid: [] }, cells);

const FINEST_GAP_MM = 0.2;
/** Arcs of many short chords become a few: a fraction of the gap is finer than any saw. */
const CHORD_SHARE = 6;

/** Adds the pieces of more cells; what of a cell cannot be a piece is filled solid. */
function withPieces({ numbers }: LayerTask, attempt: Attempt, cells: readonly Region[]): Attempt {
  const gapMm = Math.max(numbers.jointGapMm, FINEST_GAP_MM);
  let { coreable } = attempt;
  const pieces: Loose[] = [...attempt.pieces];
  const solid: SolidRegion[] = [...attempt.solid];
  for (const cell of cells) {
    const shrunk = offset(cell, -gapMm / 2, 'miter');
    const good = shrunk.filter((part) => isBeddable([part], numbers));
    const lost =
      good.length === shrunk.length && good.length > 0
        ? []
        : difference(cell, offset(good, gapMm / 2 + 0.01, 'miter'));
    const fill = lost.filter(
      (part) => areaMm2([part]) > 1 && (good.length === 0 || !isNarrowerThan([part], 2 * gapMm)),
    );
    coreable = fill.length === 0 ? coreable : difference(coreable, fill);
    solid.push(...fill.map((polygon): SolidRegion => ({ polygon, because: 'narrow' })));
    pieces.push(
      ...good.map((part): Loose => ({
        cell:
          good.length === 1 && fill.length === 0
            ? cell
            : intersection(cell, offset([part], gapMm / 2 + 0.01, 'miter')),
        piece: {
          outer: simplifyRing(part.outer, gapMm / CHORD_SHARE),
          holes: part.holes.map((hole) => simplifyRing(hole, gapMm / CHORD_SHARE)),
        },
      })),
    );
  }
  return { ...attempt, pieces, coreable, solid };
}

function ordered({ area, numbers }: LayerTask, { pieces, coreable }: Attempt, work: Work) {
  const regions = pieces.map(({ piece }): Region => [piece]);
  const bays = baysOf(regions, numbers);
  return { ...beddingOrder({ opening: area, coreable, pieces: regions, bayOf: bays }, work), bays };
}

/** The pieces that stick, cut across in the middle where both halves can be handled; the others as they were. */
function recut(task: LayerTask, attempt: Attempt, stuck: readonly number[]): Attempt {
  const halves = new Map(stuck.map((piece) => [piece, halvesOf(task, attempt.pieces[piece].cell)]));
  if ([...halves.values()].every((cut) => cut === undefined)) return filled(task, attempt, stuck);
  const kept = attempt.pieces.filter((_, k) => halves.get(k) === undefined);
  const cells = [...halves.values()].flatMap((cut) => cut ?? []);
  return withPieces(task, { ...attempt, pieces: kept }, cells);
}

function halvesOf({ numbers }: LayerTask, cell: Region): readonly Region[] | undefined {
  const box = bounds(cell);
  if (box === undefined) return undefined;
  const [middleX, middleY] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  const isLong = box.maxX - box.minX >= box.maxY - box.minY;
  const half = isLong
    ? rectangle(box.minX - 1, box.minY - 1, middleX, box.maxY + 1)
    : rectangle(box.minX - 1, box.minY - 1, box.maxX + 1, middleY);
  const mask = [{ outer: half, holes: [] }];
  const parts = [...intersection(cell, mask), ...difference(cell, mask)].map((part): Region => [part]);
  const rough = forCells(numbers);
  const canBeHeld = (part: Region): boolean =>
    isBeddable(part, { ...rough, narrowestMm: rough.leastLipPieceMm });
  return parts.every(canBeHeld) ? parts : undefined;
}

/** The same lip in pieces that reach less far into the opening: they need less room there, and are pushed in with a stick. */
function heldShorter(task: LayerTask, attempt: Attempt): Attempt {
  return dividedAnew({ ...task, insideMm: task.insideMm / 3 }, attempt.noWay);
}

/** The places under the lip of pieces that stick are filled; what is left is divided anew. */
function filled(task: LayerTask, attempt: Attempt, stuck: readonly number[]): Attempt {
  const places = union(...stuck.map((piece) => attempt.pieces[piece].cell));
  return dividedAnew(task, union(attempt.noWay, difference(places, task.area)));
}

function filledAll(task: LayerTask): Attempt {
  return dividedAnew(task, difference(task.coreable, task.area));
}

function dividedAnew(task: LayerTask, given: Region): Attempt {
  const left = difference(difference(task.coreable, given), task.area);
  const scraps = left.filter((part) => isNarrowerThan([part], task.numbers.lipFillMm));
  const noWay = scraps.length === 0 ? given : union(given, scraps);
  const open = difference(task.coreable, noWay);
  const bits = open.filter((part) => !isBeddable([part], forCells(task.numbers)));
  const coreable = bits.length === 0 ? open : difference(open, bits);
  return withPieces(
    task,
    {
      pieces: [],
      coreable,
      noWay,
      solid: [
        ...noWay.map((polygon): SolidRegion => ({ polygon, because: 'no-way-in' })),
        ...bits.map((polygon): SolidRegion => ({ polygon, because: 'narrow' })),
      ],
    },
    layerCells({ ...task, coreable }),
  );
}
