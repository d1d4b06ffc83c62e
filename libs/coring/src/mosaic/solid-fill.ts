import {
  areaMm2,
  centroid,
  containsPoint,
  difference,
  distanceToEdge,
  interiorPoint,
  intersection,
  offset,
  union,
  type Polygon,
  type Region,
  type Ring,
} from '#lib/geometry';
import { keeper } from './kept.js';
import { openAreaOf, type OpeningToFill } from './request.js';
import type { MosaicNumbers } from './rules.js';

/** What is too narrow or too far under the lip for core, and is filled solid from skin to skin instead. */
export interface SolidFill {
  /** Opening whose part is filled solid. */
  readonly opening: string;
  /** What fills it. */
  readonly kind: SolidKind;
  /** Edge of the filled part. */
  readonly outline: Ring;
  /** What the filling leaves free. */
  readonly holes: readonly Ring[];
  /** Area that is filled. */
  readonly areaM2: number;
  /** Depth of the filling. */
  readonly depthMm: number;
  /** Volume of the filling. */
  readonly volumeL: number;
  /** Diameter of the largest circle that fits in. */
  readonly widthMm: number;
  /** As paste: more than half a litre a metre is filled in two lifts, for its heat. */
  readonly lifts: number;
  /** Whether it lies under the sound skin that stays. */
  readonly isUnderLip: boolean;
  /** Why no core piece goes there. */
  readonly because: 'narrow' | 'shallow-lip' | 'no-way-in' | 'asked';
}

export type SolidKind = 'paste' | 'solid-laminate' | 'high-density-strip';

/** One opening divided into what takes core and what is filled solid. Together they are the cavity. */
export interface CavityDivision {
  readonly cavity: Region;
  readonly coreable: Region;
  readonly solid: readonly SolidRegion[];
}

export interface SolidRegion {
  readonly polygon: Polygon;
  readonly because: SolidFill['because'];
}

const MM2_PER_CM2 = 100;
/** Crumbs below this stay with their neighbour: they are the rounding of corners. */
const CRUMB_MM2 = 200;
/** A narrow place smaller than this is the tip of a piece, not a place of its own. */
const LEAST_SLOT_MM2 = 2500;

const kept = keeper<CavityDivision>();

/**
 * Under a lip core goes only where the lip is deep; a slot takes core only where a hand can bed it. The rest is filled solid, and
 * nothing is both. Worked out once for each opening: it does not depend on how large pieces may be.
 */
export function cavityDivision(opening: OpeningToFill, numbers: MosaicNumbers): CavityDivision {
  const { lipFillMm, leastSlotMm, narrowestMm, leastPieceCm2, jointGapMm } = numbers;
  const key = [lipFillMm, leastSlotMm, narrowestMm, leastPieceCm2, jointGapMm].join();
  return kept(opening, key, () => dividedCavity(opening, numbers));
}

function dividedCavity(opening: OpeningToFill, numbers: MosaicNumbers): CavityDivision {
  const area = openAreaOf(opening);
  const cavity = union(area, opening.undercut);
  if (opening.isSolid === true)
    return {
      cavity,
      coreable: [],
      solid: cavity.map((polygon): SolidRegion => ({ polygon, because: 'asked' })),
    };
  const rough = forCells(numbers);
  const shallow = substantial(shallowLip(area, cavity, numbers));
  const open = difference(cavity, shallow);
  const slots = [
    ...narrowerThan(open, numbers.leastSlotMm).filter((slot) => areaMm2([slot]) >= LEAST_SLOT_MM2),
    ...narrowerThan(open, rough.narrowestMm).filter((slot) => areaMm2([slot]) >= CRUMB_MM2),
  ];
  const narrow = slots.length === 0 ? [] : union(...slots.map((slot) => [slot]));
  const crumbs = difference(open, narrow).filter((part) => !isBeddable([part], rough));
  const coreable = difference(difference(open, narrow), crumbs);
  const reasons = [
    ...shallow.map((polygon): SolidRegion => ({ polygon, because: 'shallow-lip' })),
    ...union(narrow, crumbs).map((polygon): SolidRegion => ({ polygon, because: 'narrow' })),
  ];
  return { cavity, coreable, solid: takenFrom(cavity, coreable, reasons) };
}

/**
 * What core was kept out of, part by part, each with the reason of the region that covers most of it: by subtraction, so that
 * nothing is counted twice or lost between the regions.
 */
export function takenFrom(
  before: Region,
  after: Region,
  reasons: readonly SolidRegion[],
): readonly SolidRegion[] {
  if (reasons.length === 0) return [];
  return difference(before, after).map((polygon) => {
    const shared = reasons.map((reason) => ({
      because: reason.because,
      area: reasons.length === 1 ? 1 : areaMm2(intersection([polygon], [reason.polygon])),
    }));
    const { because } = shared.reduce((most, one) => (one.area > most.area ? one : most));
    return { polygon, because };
  });
}

/** Undercut near to the edge of the opening, less what lies before a deeper place. */
function shallowLip(area: Region, cavity: Region, { lipFillMm }: MosaicNumbers): Region {
  const lip = difference(cavity, area);
  if (lip.length === 0) return [];
  const deep = substantial(difference(cavity, offset(area, lipFillMm, 'round', 0.5)));
  return deep.length === 0 ? lip : difference(lip, offset(deep, lipFillMm + 1, 'miter'));
}

const substantial = (region: Region): Region => region.filter((polygon) => areaMm2([polygon]) >= CRUMB_MM2);

/** The parts of a region into which no square of this side, so to speak, can be brought. */
const narrowerThan = (region: Region, widthMm: number): Region =>
  difference(region, offset(offset(region, -widthMm / 2, 'miter'), widthMm / 2 + 0.01, 'miter'));

/** A cell loses half a joint all round before it is a piece, so it must be that much larger. */
export const forCells = (numbers: MosaicNumbers): MosaicNumbers => ({
  ...numbers,
  narrowestMm: numbers.narrowestMm + numbers.jointGapMm,
  leastLipPieceMm: numbers.leastLipPieceMm + numbers.jointGapMm,
  leastPieceCm2: OVER_FOR_JOINTS * numbers.leastPieceCm2,
});

const OVER_FOR_JOINTS = 1.15;

/** Wide enough for a hand and not a crumb. */
export const isBeddable = (
  region: Region,
  { narrowestMm, leastPieceCm2 }: Pick<MosaicNumbers, 'narrowestMm' | 'leastPieceCm2'>,
): boolean => areaMm2(region) >= MM2_PER_CM2 * leastPieceCm2 && !isNarrowerThan(region, narrowestMm);

/** No circle of this diameter fits in. Nearly always one stands about the centroid, which is quicker seen than an offset is made. */
export const isNarrowerThan = (region: Region, widthMm: number): boolean =>
  !standsAtCentroid(region, widthMm / 2) && offset(region, -widthMm / 2, 'miter').length === 0;

/** Coordinates are held to a thousandth of a millimetre: a circle must clear the edge by more to be there without doubt. */
const GRID_MM = 0.01;

function standsAtCentroid(region: Region, radiusMm: number): boolean {
  const middle = centroid(region);
  return (
    middle !== undefined &&
    containsPoint(region, middle) &&
    distanceToEdge(middle, region) > radiusMm + GRID_MM
  );
}

const MM3_PER_L = 1_000_000;
const MM2_PER_M2 = 1_000_000;
const MM_PER_M = 1000;
/** Paste deeper than this a metre heats up: it goes in in lifts. */
const MOST_LITRES_PER_METRE = 0.5;

export function solidFill(
  { label, area }: Pick<OpeningToFill, 'label' | 'area'>,
  { polygon, because }: SolidRegion,
  depthMm: number,
): SolidFill {
  const size = areaMm2([polygon]);
  const widthMm = Math.round(20 * (interiorPoint([polygon])?.clearanceMm ?? 0)) / 10;
  const isUnderLip = areaMm2(intersection([polygon], [area])) < size / 2;
  return {
    opening: label,
    kind: because === 'asked' && !isUnderLip ? 'solid-laminate' : kindOf(widthMm, isUnderLip),
    outline: polygon.outer,
    holes: polygon.holes,
    areaM2: size / MM2_PER_M2,
    depthMm,
    volumeL: (size * depthMm) / MM3_PER_L,
    widthMm,
    lifts: Math.max(1, Math.ceil((widthMm * depthMm) / MM_PER_M / MOST_LITRES_PER_METRE)),
    isUnderLip,
    because,
  };
}

/** Widths up to which each fill is usual. From memory: paste below 25 mm, paste or laminate to 40, a dense strip beyond. */
const PASTE_MM = 25;
const LAMINATE_MM = 40;

/** Solid laminate is laid where it can be seen; under a lip only paste or a strip pushed into paste gets in. */
function kindOf(widthMm: number, isUnderLip: boolean): SolidKind {
  if (widthMm < PASTE_MM) return 'paste';
  if (widthMm < LAMINATE_MM) return isUnderLip ? 'paste' : 'solid-laminate';
  return 'high-density-strip';
}
