import {
  areaMm2,
  boundsOfPoints,
  cutByLine,
  distanceToSegment,
  rotatePoint,
  segmentWithin,
  type Point,
  type Region,
} from '#lib/geometry';
import { m2FromMm2, mm2 } from '#lib/units';
import type { DeckUnderCut } from './ground.js';
import type { FittingOnDeck } from './request.js';

/** The skin of one opening, cut into pieces that can be bedded before the resin gels. */
export interface SkinPieces {
  readonly pieces: readonly Region[];
  /** Cuts across the lifted skin, beside the cut round it. */
  readonly splits: readonly (readonly [Point, Point])[];
  readonly largest: { readonly areaMm2: number; readonly lengthMm: number };
}

/** A split line keeps this far from fittings: a joint there would lie between two clamped bases. */
const FITTING_CLEARANCE_MM = 100;

const MOST_PIECES = 60;

/** Splits across the long axis (rad; the pieces are counted along it), in equal lengths where supports and fittings allow. */
export function skinPieces(
  region: Region,
  axis: number,
  fittings: readonly FittingOnDeck[],
  deck: DeckUnderCut,
): SkinPieces {
  const { bondableAreaM2, bondableLengthMm } = deck.rules;
  const whole = sizeAlong(region, axis);
  const byLength = bondableLengthMm === undefined ? 1 : Math.ceil(whole.lengthMm / bondableLengthMm - 1e-9);
  const byArea =
    bondableAreaM2 === undefined ? 1 : Math.ceil(m2FromMm2(mm2(whole.areaMm2)) / bondableAreaM2 - 1e-9);
  const count = Math.min(MOST_PIECES, Math.max(byLength, byArea));
  if (count === 1) return { pieces: [region], splits: [], largest: whole };
  const places = splitPlaces(whole, count, splitCost(axis, fittings, deck));
  const pieces = places.reduce<readonly Region[]>(
    (parts, at) => parts.flatMap((part) => halves(part, axis, at)),
    [region],
  );
  const splits = places.flatMap((at) => segmentWithin(region, ...acrossAt(axis, at, whole)));
  const sizes = pieces.map((piece) => sizeAlong(piece, axis));
  return {
    pieces,
    splits,
    largest: {
      areaMm2: Math.max(...sizes.map((size) => size.areaMm2)),
      lengthMm: Math.max(...sizes.map(({ lengthMm }) => lengthMm)),
    },
  };
}

interface Size {
  readonly areaMm2: number;
  readonly lengthMm: number;
  readonly from: number;
  readonly low: number;
  readonly high: number;
}

function sizeAlong(region: Region, axis: number): Size {
  const box = boundsOfPoints(
    region.flatMap(({ outer }) => outer).map((corner) => rotatePoint(corner, -axis)),
  );
  if (box === undefined) return { areaMm2: 0, lengthMm: 0, from: 0, low: 0, high: 0 };
  return {
    areaMm2: areaMm2(region),
    lengthMm: box.maxX - box.minX,
    from: box.minX,
    low: box.minY,
    high: box.maxY,
  };
}

/** Equal steps, each moved by up to a fifth of a piece to the nearest place that is clear of supports and fittings. */
function splitPlaces(
  { from, lengthMm }: Size,
  count: number,
  costAt: (at: number) => number,
): readonly number[] {
  const step = lengthMm / count;
  const moves = Array.from(
    { length: 21 },
    (_, index) => ((index % 2 === 0 ? 1 : -1) * Math.ceil(index / 2) * step) / 50,
  );
  return Array.from({ length: count - 1 }, (_, index) => {
    const even = from + step * (index + 1);
    return moves
      .map((move) => even + move)
      .reduce((best, at) => (costAt(at) < costAt(best) ? at : best), even);
  });
}

/** How much a split at `at` comes too near to supports that run along it and to fittings; 0 is clear. */
function splitCost(
  axis: number,
  fittings: readonly FittingOnDeck[],
  { supports, rules }: DeckUnderCut,
): (at: number) => number {
  const turned = (point: Point): Point => rotatePoint(point, -axis);
  const across = supports
    .map(({ from, to }) => [turned(from), turned(to)] as const)
    .filter(([a, b]) => Math.abs(b[0] - a[0]) < Math.abs(b[1] - a[1]));
  const bases = fittings.map(({ at, baseMm = 0 }) => ({
    x: turned(at)[0],
    clearMm: FITTING_CLEARANCE_MM + baseMm / 2,
  }));
  return (at) => {
    const bySupport = across.map(([a, b]) =>
      Math.max(0, rules.supportClearanceMm - distanceToSegment([at, (a[1] + b[1]) / 2], a, b)),
    );
    const byFitting = bases.map(({ x, clearMm }) => Math.max(0, clearMm - Math.abs(x - at)));
    return [...bySupport, ...byFitting].reduce((sum, part) => sum + part, 0);
  };
}

function acrossAt(axis: number, at: number, { low, high }: Size): readonly [Point, Point] {
  return [rotatePoint([at, low - 1], axis), rotatePoint([at, high + 1], axis)];
}

function halves(part: Region, axis: number, at: number): readonly Region[] {
  const { left, right } = cutByLine(part, rotatePoint([at, 0], axis), rotatePoint([at, 1000], axis));
  return [left, right].filter((piece) => areaMm2(piece) > 1);
}
