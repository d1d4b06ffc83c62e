import { grainAsked } from './rules.js';
import { saidOr } from '#lib/asking';
import {
  areaMm2,
  bounds,
  containsPoint,
  difference,
  distanceToEdge,
  interiorPoint,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';
import type { Entry } from './entry.js';
import { hasGrain, MM2_PER_M2 } from './layer-cells.js';
import type { Cut } from './layer-pieces.js';
import type { MosaicRequest, OpeningToFill } from './request.js';
import type { MosaicNumbers } from './rules.js';

/** One labelled piece of new core, in deck coordinates. */
export interface CorePiece {
  /** The opening's letter and the bedding order in it. */
  readonly label: string;
  /** Opening that the piece lies in. */
  readonly opening: string;
  /** Layer of the stack that the piece belongs to; 1 lies on the inner skin. */
  readonly layer: number;
  /** Place in the order of bedding over all openings, from 1. */
  readonly beddingOrder: number;
  /** What is bedded in one go; counted from 1 in each layer of an opening. */
  readonly bay: number;
  /** Edge of the piece in the deck plane. */
  readonly outline: Ring;
  /** Openings within the piece, for what stays. */
  readonly holes: readonly Ring[];
  /** Area of the piece without its holes. */
  readonly areaM2: number;
  /** Thickness of the sheet the piece is cut from. */
  readonly thicknessMm: number;
  /** Plain or scored, as the piece is cut. */
  readonly form: 'plain' | 'scored';
  /** Only for core that has a grain in its plane. */
  readonly grainDeg?: number;
  /** Where to drill holes that let air and resin out. */
  readonly bleedHoles: readonly Point[];
  /** Drill for the bleed holes; absent when there are none. */
  readonly bleedDiameterMm?: number;
  /** Whether the piece reaches under the sound skin that stays. */
  readonly isUnderLip: boolean;
  /** How it gets in; absent when no way was found, and the plan says so. */
  readonly entry?: Entry;
}

export interface PlacedCut extends Cut {
  readonly opening: OpeningToFill;
  readonly layer: number;
}

interface Labelling {
  readonly order: number;
  readonly within: number;
  readonly numbers: MosaicNumbers;
}

/** A joint's half under the lip is none. */
const UNDER_LIP_MM2 = 25;

export function pieceOf(
  request: MosaicRequest,
  cut: PlacedCut,
  { order, within, numbers }: Labelling,
): CorePiece {
  const { thicknessMm, form } = request.layers[cut.layer];
  const bleedHoles =
    request.core.needsBleedHoles && form === 'plain' ? bleedHolesIn([cut.piece], numbers) : [];
  return {
    label: `${cut.opening.label}${within}`,
    opening: cut.opening.label,
    layer: cut.layer + 1,
    beddingOrder: order,
    bay: cut.bay,
    outline: cut.piece.outer,
    holes: cut.piece.holes,
    areaM2: areaMm2([cut.piece]) / MM2_PER_M2,
    thicknessMm,
    form,
    ...(hasGrain(request) ? { grainDeg: saidOr(grainAsked, request.grainDeg) } : {}),
    bleedHoles,
    ...(bleedHoles.length === 0 ? {} : { bleedDiameterMm: numbers.bleedDiameterMm }),
    isUnderLip: areaMm2(difference([cut.piece], [cut.opening.area])) > UNDER_LIP_MM2,
    ...(cut.entry === undefined ? {} : { entry: cut.entry }),
  };
}

/** On a square grid centred on the piece, clear of its edge; at least one where the piece is not a mere strip. */
function bleedHolesIn(piece: Region, { bleedSpacingMm, bleedDiameterMm }: MosaicNumbers): readonly Point[] {
  const box = bounds(piece);
  if (box === undefined) return [];
  const places = (low: number, high: number): readonly number[] => {
    const count = Math.max(1, Math.floor((high - low) / bleedSpacingMm));
    return Array.from({ length: count }, (_, k) => (low + high) / 2 + (k - (count - 1) / 2) * bleedSpacingMm);
  };
  const edge = 3 * bleedDiameterMm;
  const grid = places(box.minX, box.maxX)
    .flatMap((x) => places(box.minY, box.maxY).map((y): Point => [rounded(x), rounded(y)]))
    .filter((at) => containsPoint(piece, at) && distanceToEdge(at, piece) >= edge);
  if (grid.length > 0) return grid;
  const inner = interiorPoint(piece);
  return inner !== undefined && inner.clearanceMm >= edge
    ? [[rounded(inner.at[0]), rounded(inner.at[1])]]
    : [];
}

const rounded = (value: number): number => Math.round(value * 10) / 10;
