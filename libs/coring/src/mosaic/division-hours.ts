/**
 * What a division costs in hours: cutting, fitting and bedding take so much for each piece and for each metre of its edge; under a
 * large sheet air is shut in now and then, and a hollow has to be drilled and filled.
 *
 * All of it FROM-MEMORY, set so that pieces of 0.45 m2 take about what is usual for patterning, cutting, fitting and bedding
 * (about 0.8 h/m2) and pieces of half a square foot about four times that.
 */
export const DIVISION_HOURS = {
  perPieceH: 0.05,
  perEdgeMetreH: 0.12,
  /** To find, drill and fill a hollow. */
  perHollowH: 0.75,
  /** Area at which two pieces in three shut in air: sheet without kerfs, bled through holes; scored sheet bleeds through its kerfs. */
  hollowAreaM2: { plain: 1.2, scored: 2.5 },
} as const;

export interface DivisionHours {
  readonly workH: number;
  /** Expected hours for hollows. */
  readonly airH: number;
}

export interface SizedPiece {
  readonly areaM2: number;
  readonly edgeM: number;
}

export function divisionHours(pieces: readonly SizedPiece[], form: 'plain' | 'scored'): DivisionHours {
  const { perPieceH, perEdgeMetreH, perHollowH, hollowAreaM2 } = DIVISION_HOURS;
  const chance = (areaM2: number): number => 1 - Math.exp(-((areaM2 / hollowAreaM2[form]) ** 2));
  return {
    workH: pieces.reduce((sum, { edgeM }) => sum + perPieceH + perEdgeMetreH * edgeM, 0),
    airH: pieces.reduce((sum, { areaM2 }) => sum + perHollowH * chance(areaM2), 0),
  };
}
