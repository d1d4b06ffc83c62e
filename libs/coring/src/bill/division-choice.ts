import { andThen, mapValue, type Outcome } from '#lib/kernel';
import type { Mosaic } from '../mosaic/cut-mosaic.js';
import type { SheetOnSale } from './questions.js';
import { MM2_PER_M2 } from '../mosaic/layer-cells.js';

/** One way to divide the core, with what its sheets cost and its hours. */
export interface DivisionOption {
  /** Pieces that this division has. */
  readonly pieces: number;
  /** What the sheets for this division cost. */
  readonly sheetCost: number;
  /** To cut, fit and bed, and to mend hollows. */
  readonly hours: number;
}

/** The division that was taken, the others looked at, and the reason in words. */
export interface DivisionByCost {
  /** Divisions that were compared. */
  readonly options: readonly DivisionOption[];
  /** Place of the cheapest in `options`. */
  readonly chosen: number;
  /** Why it was chosen. */
  readonly words: string;
}

export interface DividedMosaic {
  readonly mosaic: Mosaic;
  readonly byCost: DivisionByCost;
}

/** How a caller cuts and lays out one way of dividing. */
export interface Divider {
  /** Cuts pieces that come out of one of these sheets, none larger than the share of the usual largest. */
  readonly cut: (sheets: readonly SheetOnSale[], share: number) => Outcome<Mosaic>;
  /** Cost of the sheets of a first layout. */
  readonly costOf: (mosaic: Mosaic) => Outcome<number>;
}

/** What pieces of this area come to at the least, out of sheets of one size. */
const leastCost = ({ netAreaM2 }: Mosaic, { lengthMm, widthMm, cost }: SheetOnSale): number =>
  Math.ceil(netAreaM2 / ((lengthMm * widthMm) / MM2_PER_M2) - ABOUT_THE_SAME) * cost;

/** Another division has a little more or less of joints: a share of a sheet. */
const ABOUT_THE_SAME = 0.02;

/** Half-size pieces waste less of a small sheet. */
const SMALLER = 0.5;

/**
 * Large pieces save hours and may ask for dearer sheets. Where the cheapest could cost less, pieces that come out of the
 * cheapest sheet are looked at too, in full size and in half; the lowest sum of sheets and hours is taken, or of sheets alone
 * where nobody said what an hour costs.
 */
export function dividedByCost(
  sheets: readonly SheetOnSale[],
  hourCost: number | undefined,
  divider: Divider,
): Outcome<DividedMosaic> {
  const cheapest = [...sheets].sort((a, b) => a.cost - b.cost)[0];
  return andThen(tried(divider, sheets, 1), (first) => {
    if (first.option.sheetCost <= leastCost(first.mosaic, cheapest))
      return { ok: true, value: taken([first], hourCost) };
    return andThen(tried(divider, [cheapest], 1), (second) =>
      mapValue(tried(divider, [cheapest], SMALLER), (third) => taken([first, second, third], hourCost)),
    );
  });
}

interface Tried {
  readonly mosaic: Mosaic;
  readonly option: DivisionOption;
}

const tried = ({ cut, costOf }: Divider, sheets: readonly SheetOnSale[], share: number): Outcome<Tried> =>
  andThen(cut(sheets, share), (mosaic) =>
    mapValue(costOf(mosaic), (sheetCost) => ({
      mosaic,
      option: { pieces: mosaic.pieces.length, sheetCost, hours: mosaic.division.hours },
    })),
  );

function taken(all: readonly Tried[], hourCost: number | undefined): DividedMosaic {
  const better = ({ option: one }: Tried, { option: other }: Tried): boolean => {
    if (hourCost !== undefined)
      return one.sheetCost + one.hours * hourCost < other.sheetCost + other.hours * hourCost - 1e-9;
    return one.sheetCost < other.sheetCost || (one.sheetCost === other.sheetCost && one.hours < other.hours);
  };
  const best = all.reduce((one, other) => (better(other, one) ? other : one));
  const options = all.map(({ option }) => option);
  const chosen = all.indexOf(best);
  return { mosaic: best.mosaic, byCost: { options, chosen, words: wordsOf(best, all[0]) } };
}

function wordsOf({ mosaic, option }: Tried, { option: largest }: Tried): string {
  const { words } = mosaic.division;
  if (option.sheetCost === largest.sheetCost) return words;
  const more = option.pieces - largest.pieces;
  const count = more > 0 ? `${more} more ${more === 1 ? 'piece' : 'pieces'}` : 'pieces of another shape';
  return `${words}; ${count} than the fewest, because ${more === 1 ? 'it comes' : 'they come'} out of cheaper sheets`;
}
