import { grainAsked } from './rules.js';
import { saidOr } from '#lib/asking';
import {
  areaMm2,
  difference,
  distance,
  distanceToRegion,
  intersection,
  offset,
  perimeterMm,
  ringsOf,
  rotate,
  rotatePoint,
  type Region,
} from '#lib/geometry';
import { cellsOf, type CellTask, type PieceBox } from './cells.js';
import { keeper } from './kept.js';
import { lipCells } from './lip-cells.js';
import type { MosaicRequest } from './request.js';
import type { MosaicNumbers } from './rules.js';
import { forCells, isNarrowerThan } from './solid-fill.js';

/** One layer of one opening to be divided, and how large its pieces may be where it is open above. */
export interface LayerTask {
  readonly request: MosaicRequest;
  readonly numbers: MosaicNumbers;
  /** Open from above. */
  readonly area: Region;
  readonly coreable: Region;
  readonly layer: number;
  readonly largestMm2: number;
  /** Pieces under a lip reach this far into the opening. */
  readonly insideMm: number;
}

export const MM2_PER_M2 = 1_000_000;

/**
 * Under a deep lip hand-sized pieces in a band along it; elsewhere as few as one sheet, one bed and the camber allow. Joints run
 * along the grain, or where core has none, along the deck or the longest straight edge, whichever takes fewer pieces.
 */
export function layerCells(task: LayerTask): readonly Region[] {
  const { lip, band, field } = bandAndField(task);
  const rough = forCells(task.numbers);
  const size = { largestMm2: task.largestMm2, narrowestMm: rough.narrowestMm };
  const inField = dividedAlong(task, field, size);
  if (band.length === 0) return inField;
  const underMm = depthOf(lip, task.area);
  const cellTask = taskAt(task, {
    angle: 0,
    largestMm2: task.numbers.handPieceM2 * MM2_PER_M2,
    narrowestMm: rough.leastLipPieceMm,
  });
  return [...lipCells({ opening: task.area, band, underMm, insideMm: task.insideMm }, cellTask), ...inField];
}

/** How far a region reaches away from the opening, to a few millimetres. */
const depthOf = (lip: Region, area: Region): number =>
  Math.max(...lip.flatMap(({ outer }) => outer.map((corner) => distanceToRegion(corner, area))));

/** The rounding of corners. */
const NOTHING_MM2 = 25;
/** Pieces under a lip reach this far into the opening, so that fingers can push them; the middle stays open until they are in. From memory. */
const BAND_MM = 60;
/** In the second layer the band is narrower, so that its joints do not lie over those of the first. */
const UPPER_BAND_SHARE = 0.55;

export const usualInsideMm = (layer: number): number => BAND_MM * (layer % 2 === 0 ? 1 : UPPER_BAND_SHARE);

interface BandAndField {
  readonly lip: Region;
  readonly band: Region;
  readonly field: Region;
}

const keptBands = keeper<BandAndField>();

/** Depends on no sheet and no size of piece: kept for the other divisions of the same cavity. */
const bandAndField = (task: LayerTask): BandAndField =>
  keptBands(task.coreable, JSON.stringify([task.insideMm, task.numbers]), () => bandsOf(task));

function bandsOf({ area, coreable, insideMm, numbers }: LayerTask): BandAndField {
  const lip = difference(coreable, area).filter((part) => areaMm2([part]) > NOTHING_MM2);
  if (lip.length === 0) return { lip, band: [], field: coreable };
  const rest = difference(coreable, offset(lip, insideMm, 'miter'));
  const field = rest.filter((part) => !isNarrowerThan([part], numbers.leastSlotMm));
  return { lip, band: difference(coreable, field), field };
}

interface Size {
  readonly largestMm2: number;
  readonly narrowestMm: number;
}

function dividedAlong(task: LayerTask, region: Region, size: Size): readonly Region[] {
  if (region.length === 0) return [];
  const divisions = anglesFor(task, region).map((angle) => dividedAt(task, region, { angle, ...size }));
  const edge = (cells: readonly Region[]): number => cells.reduce((sum, cell) => sum + perimeterMm(cell), 0);
  return divisions.reduce((best, other) =>
    other.length < best.length || (other.length === best.length && edge(other) < edge(best) - 1)
      ? other
      : best,
  );
}

export const hasGrain = ({ core }: Pick<MosaicRequest, 'core'>): boolean => core.allowedTurnsDeg.length > 0;

const QUARTER_RAD = Math.PI / 2;
/** Directions closer than this to a quarter turn of each other give the same joints. */
const SAME_RAD = 0.02;

function anglesFor({ request }: LayerTask, region: Region): readonly number[] {
  const grain = (saidOr(grainAsked, request.grainDeg) * Math.PI) / 180;
  if (hasGrain(request)) return [grain];
  const along = longestEdgeRad(region) % QUARTER_RAD;
  return Math.abs(along) < SAME_RAD || Math.abs(along) > QUARTER_RAD - SAME_RAD ? [0] : [0, along];
}

function longestEdgeRad(region: Region): number {
  const edges = ringsOf(region).flatMap((ring) =>
    ring.map((corner, k) => [corner, ring[(k + 1) % ring.length]] as const),
  );
  const [from, to] = edges.reduce((best, edge) =>
    distance(...edge) > distance(...best) + 1e-6 ? edge : best,
  );
  return Math.atan2(to[1] - from[1], to[0] - from[0]);
}

function dividedAt(task: LayerTask, region: Region, size: TurnedSize): readonly Region[] {
  const { angle } = size;
  const cells = cellsOf({ ...taskAt(task, size), region: angle === 0 ? region : rotate(region, -angle) });
  if (angle === 0) return cells;
  return cells.map((cell) => intersection(rotate(cell, angle), region));
}

type TurnedSize = Size & { readonly angle: number };

const taskAt = (
  { request, numbers, layer }: LayerTask,
  { angle, largestMm2, narrowestMm }: TurnedSize,
): Omit<CellTask, 'region'> => ({
  largestMm2,
  boxes: boxesOf(request, angle),
  isShifted: layer % 2 === 1,
  numbers: { ...forCells(numbers), narrowestMm },
  supports: (request.supports ?? []).map(
    ({ from, to }) => [rotatePoint(from, -angle), rotatePoint(to, -angle)] as const,
  ),
});

/**
 * Room for a piece in the frame of the grain: a sheet as it lies, and across it where the core may be turned. A piece that lies
 * askew reaches farther across the camber than its side is long: no farther than a square one may.
 */
function boxesOf(request: MosaicRequest, angle: number): readonly PieceBox[] {
  const { sheets, core } = request;
  const longestSideMm =
    (request.longestSideMm ?? Infinity) / (Math.abs(Math.cos(angle)) + Math.abs(Math.sin(angle)));
  const mayTurn = core.allowedTurnsDeg.length === 0 || core.allowedTurnsDeg.some((turn) => turn % 180 !== 0);
  const lying = sheets.map(({ lengthMm, widthMm }) => ({ alongMm: lengthMm, acrossMm: widthMm }));
  const across = lying.map(({ alongMm, acrossMm }) => ({ alongMm: acrossMm, acrossMm: alongMm }));
  return [...lying, ...(mayTurn ? across : [])].map(({ alongMm, acrossMm }) => ({
    alongMm: Math.min(alongMm, longestSideMm),
    acrossMm: Math.min(acrossMm, longestSideMm),
  }));
}
