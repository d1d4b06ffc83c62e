import type { RollStrip } from '#lib/laminate';

/** A board as it is sold. */
export interface Board {
  readonly lengthMm: number;
  readonly widthMm: number;
}

/** What a saw takes. Common practice, no published source. */
const SAW_MM = 3;

/**
 * Boards from which rectangles are sawn: rows right across, the deepest first, each piece in the first row and each row on the
 * first board with room. Never fewer than are needed; nothing where a piece fits no board.
 */
export function boardsFor(pieces: readonly RollStrip[], board: Board): number | undefined {
  const laid = pieces
    .map(({ lengthMm, widthMm }) => ({
      longMm: Math.max(lengthMm, widthMm),
      deepMm: Math.min(lengthMm, widthMm),
    }))
    .sort((a, b) => b.deepMm - a.deepMm);
  const rows: { readonly deepMm: number; leftMm: number }[] = [];
  for (const { longMm, deepMm } of laid) {
    if (longMm > board.lengthMm || deepMm > board.widthMm) return undefined;
    const row = rows.find(({ leftMm }) => leftMm >= longMm + SAW_MM);
    if (row === undefined) rows.push({ deepMm, leftMm: board.lengthMm - longMm });
    else row.leftMm -= longMm + SAW_MM;
  }
  const boards: number[] = [];
  for (const { deepMm } of rows) {
    const index = boards.findIndex((leftMm) => leftMm >= deepMm + SAW_MM);
    if (index < 0) boards.push(board.widthMm - deepMm);
    else boards[index] -= deepMm + SAW_MM;
  }
  return boards.length;
}

/** Layers of stock boards that fill a height without standing proud: a millimetre left is paste, another layer another bond. */
export function layersFor(heightMm: number, stockMm: readonly number[]): readonly number[] {
  const choices = [[], ...stockMm.flatMap((one) => [[one], ...stockMm.flatMap((two) => [[one, two]])])];
  const cost = (layers: readonly number[]): number => {
    const leftMm = heightMm - layers.reduce((sum, layer) => sum + layer, 0);
    return leftMm < 0 ? Number.POSITIVE_INFINITY : leftMm + BOND_COST_MM * layers.length;
  };
  return choices.reduce<readonly number[]>((best, next) => (cost(next) < cost(best) ? next : best), []);
}

/** One more bond line is worth this much paste. From memory. */
const BOND_COST_MM = 1.5;
