import { areaMm2, difference, intersection, offset, regionOf, union, type Region } from '#lib/geometry';
import type { CutSheet } from '#lib/nesting';

/** Where bought core goes, in whole square millimetres: the parts add up to the sheet exactly. */
export interface SheetUse {
  /** Area of all sheets. */
  readonly sheetMm2: number;
  /** Area of the pieces on them. */
  readonly piecesMm2: number;
  /** Taken by the blade round the pieces. */
  readonly kerfMm2: number;
  /** Unused strip along the edges. */
  readonly trimMm2: number;
  /** Whole rectangles left because sheets come whole; some are worth keeping. */
  readonly roundingMm2: number;
  /** Odd bits between the pieces. */
  readonly scrapsMm2: number;
}

export function useOf(
  sheet: CutSheet,
  { kerfMm, edgeTrimMm }: { readonly kerfMm: number; readonly edgeTrimMm: number },
): SheetUse {
  const whole = regionOf(sheet.outline, sheet.holes);
  const pieces = union(...sheet.placements.map(({ outline, holes }) => regionOf(outline, holes)));
  const left = union(...sheet.offcuts.map(({ outline }) => regionOf(outline)));
  const blade = kerfMm === 0 ? [] : within(difference(offset(pieces, kerfMm, 'miter'), pieces), whole, left);
  const edge =
    edgeTrimMm === 0
      ? []
      : difference(within(difference(whole, offset(whole, -edgeTrimMm, 'miter')), whole, left), blade);
  const [sheetMm2, piecesMm2, kerfMm2, trimMm2, roundingMm2] = [whole, pieces, blade, edge, left].map(
    (region) => Math.round(areaMm2(region)),
  );
  return {
    sheetMm2,
    piecesMm2,
    kerfMm2,
    trimMm2,
    roundingMm2,
    scrapsMm2: sheetMm2 - piecesMm2 - kerfMm2 - trimMm2 - roundingMm2,
  };
}

const within = (region: Region, whole: Region, without: Region): Region =>
  difference(intersection(region, whole), without);

export const allUse = (uses: readonly SheetUse[]): SheetUse =>
  uses.reduce(
    (sum, use) => ({
      sheetMm2: sum.sheetMm2 + use.sheetMm2,
      piecesMm2: sum.piecesMm2 + use.piecesMm2,
      kerfMm2: sum.kerfMm2 + use.kerfMm2,
      trimMm2: sum.trimMm2 + use.trimMm2,
      roundingMm2: sum.roundingMm2 + use.roundingMm2,
      scrapsMm2: sum.scrapsMm2 + use.scrapsMm2,
    }),
    { sheetMm2: 0, piecesMm2: 0, kerfMm2: 0, trimMm2: 0, roundingMm2: 0, scrapsMm2: 0 },
  );
