import type { Place } from './record.js';

/** Where somebody stood on the deck, and which way the picture looks: 0 towards the bow, 90 to starboard. */
export interface Spot {
  readonly at: Place;
  readonly directionDeg?: number;
}

/** A photograph as this device keeps it until it is sent. */
export interface Photograph {
  readonly key: string;
  /** Milliseconds since 1970, on the clock of the device; orders the album. */
  readonly takenAtMs: number;
  readonly caption: string;
  readonly picture: Blob;
  readonly spot?: Spot;
  /** The number under which it was first tried; it stays while nobody else has it. */
  readonly number?: number;
  /** Why the service did not take it. */
  readonly refused?: string;
}

/** What the service has of a photograph. */
export interface Filed {
  readonly number: number;
  readonly caption: string;
  readonly at?: readonly number[];
  readonly directionDeg?: number;
}

/** As many as an estimate takes. */
export const MOST_PHOTOGRAPHS = 24;

/** Whole degrees from one place to another, clockwise from the bow as the deck is seen from above. */
export function directionDeg([x1, y1]: Place, [x2, y2]: Place): number {
  const degrees = Math.round((Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI);
  return (degrees + 360) % 360;
}

/** The first touch is where one stands, the second what one looks at; a third begins anew. */
export const spotAfter = (spot: Spot | undefined, touch: Place): Spot =>
  spot === undefined || spot.directionDeg !== undefined
    ? { at: touch }
    : { at: spot.at, directionDeg: directionDeg(spot.at, touch) };

/** The number it was tried under while that is free, otherwise the one behind all that are taken. */
export function numberFor({ number }: Photograph, filed: readonly Filed[]): number {
  const taken = filed.map((one) => one.number);
  return number !== undefined && !taken.includes(number) ? number : Math.max(0, ...taken) + 1;
}

/** Whether the service has it already: its answer was lost on the way. */
export const isFiled = (photograph: Photograph, filed: readonly Filed[]): boolean =>
  filed.some(
    (one) =>
      one.number === photograph.number &&
      one.caption === photograph.caption &&
      String(one.at) === String(photograph.spot?.at) &&
      one.directionDeg === photograph.spot?.directionDeg,
  );
