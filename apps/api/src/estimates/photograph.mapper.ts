import type { Photograph as PrintedPhotograph } from '#lib/drawings';
import type { PhotographRow } from './photograph.entity.js';

type Shown = Pick<PhotographRow, 'number' | 'caption' | 'xMm' | 'yMm' | 'directionDeg'>;

/** What plan, list and print show of a photograph alike. */
export const shownOf = ({ number, caption, xMm, yMm, directionDeg }: Shown) => ({
  number,
  caption,
  ...(xMm === null || yMm === null ? {} : { at: [xMm, yMm] as const }),
  ...(directionDeg === null ? {} : { directionDeg }),
});

export const printedOf = (row: PhotographRow): PrintedPhotograph => ({
  ...shownOf(row),
  picture: {
    type: 'image/jpeg',
    base64: Buffer.from(row.picture).toString('base64'),
    widthPx: row.widthPx,
    heightPx: row.heightPx,
  },
});
