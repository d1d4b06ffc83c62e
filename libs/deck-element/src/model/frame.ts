import { outlineOf, readingsOf, zonesOf, placeOf, ringOf, type Place } from './record.js';
import type { DefectRecord } from 'kingplank-sdk';

/** The window through which the deck is seen: which place is in its middle, and how many pixels a millimetre takes. */
export interface Frame {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly middle: Place;
  readonly pxPerMm: number;
}

const MARGIN_PX = 44;
/** What an empty sheet shows: the size of a small foredeck. */
const EMPTY: readonly Place[] = [
  [0, -700],
  [1800, 700],
];

/** The whole drawing with a margin for its dimensions. */
export function fitted(record: DefectRecord, widthPx: number, heightPx: number): Frame {
  const drawn = [
    ...outlineOf(record),
    ...zonesOf(record).flatMap(({ outline }) => ringOf(outline)),
    ...readingsOf(record).map(({ at }) => placeOf(at)),
  ];
  const places = drawn.length < 2 ? EMPTY : drawn;
  const [left, right] = endsOf(places.map(([x]) => x));
  const [top, bottom] = endsOf(places.map(([, y]) => y));
  const pxPerMm = Math.min(
    Math.max(40, widthPx - 2 * MARGIN_PX) / Math.max(1, right - left),
    Math.max(40, heightPx - 2 * MARGIN_PX) / Math.max(1, bottom - top),
  );
  return { widthPx, heightPx, middle: [(left + right) / 2, (top + bottom) / 2], pxPerMm };
}

const endsOf = (values: readonly number[]): Place => [Math.min(...values), Math.max(...values)];

export const toPx = ({ widthPx, heightPx, middle, pxPerMm }: Frame, [x, y]: Place): Place => [
  Math.round((widthPx / 2 + (x - middle[0]) * pxPerMm) * 10) / 10,
  Math.round((heightPx / 2 + (y - middle[1]) * pxPerMm) * 10) / 10,
];

export const toPlace = ({ widthPx, heightPx, middle, pxPerMm }: Frame, [x, y]: Place): Place => [
  middle[0] + (x - widthPx / 2) / pxPerMm,
  middle[1] + (y - heightPx / 2) / pxPerMm,
];

export const zoomed = (frame: Frame, by: number): Frame => ({
  ...frame,
  pxPerMm: Math.min(5, Math.max(0.02, frame.pxPerMm * by)),
});

export const shifted = (frame: Frame, byPx: Place): Frame => ({
  ...frame,
  middle: [frame.middle[0] - byPx[0] / frame.pxPerMm, frame.middle[1] - byPx[1] / frame.pxPerMm],
});
