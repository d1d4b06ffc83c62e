/** A strip of cloth: along the roll and across it. */
export interface RollStrip {
  /** Length of the cut strip. */
  readonly lengthMm: number;
  /** Width of the cut strip. */
  readonly widthMm: number;
}

/**
 * Length taken off a roll when strips lie side by side across it, the longest first, each in the first row that has room
 * for it. Never more than one after the other; a roll is cut square across between rows, as a hand cuts it.
 */
export function lengthOffRoll(strips: readonly RollStrip[], rollWidthMm: number): number {
  const rows: { readonly lengthMm: number; leftMm: number }[] = [];
  for (const { lengthMm, widthMm } of [...strips].sort((a, b) => b.lengthMm - a.lengthMm)) {
    const row = rows.find(({ leftMm }) => leftMm >= widthMm);
    if (row === undefined) rows.push({ lengthMm, leftMm: rollWidthMm - widthMm });
    else row.leftMm -= widthMm;
  }
  return rows.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
}
