import { leastRectangle, rotatePoint, type LeastRectangle, type Point, type Region } from '#lib/geometry';
import { leaningMost, type Moment } from '../leaning.js';

/** Along the smallest rectangle round a panel, from its middle, in the hand that the deck itself tells. */
export interface DeckFrame extends LeastRectangle {
  readonly signs: Signs;
}

/** Which way x and y of the frame run along the rectangle's sides. */
type Signs = readonly [1 | -1, 1 | -1];

/** Something that stands on a deck and tells one end or side of it from the other. */
export interface Mass {
  readonly at: Point;
  readonly mass: number;
}

/**
 * The frame of a panel. Of its four hands that one is taken in which the masses, else the panel's corners, lean most to the far
 * ends, so that port and starboard of one boat are numbered alike and chance draws the same for both.
 */
export function deckFrameOf(panel: Region, masses: readonly Mass[] = []): DeckFrame {
  const corners = panel.flatMap(({ outer }) => outer);
  const rectangle = leastRectangle(corners);
  const inFrame = (all: readonly Mass[]) =>
    all.map(({ at, mass }) => ({ at: toFrame({ ...rectangle, signs: [1, 1] }, at), mass }));
  const signs = handTold([inFrame(masses), inFrame(corners.map((at) => ({ at, mass: 1 })))]);
  return { ...rectangle, signs };
}

const HANDS: readonly Signs[] = [
  [1, 1],
  [-1, 1],
  [1, -1],
  [-1, -1],
];

/** Powers of x and y whose moments are compared, one after another; what none of them tells apart is its own mirror image. */
const POWERS: readonly Point[] = [
  [1, 0],
  [0, 1],
  [1, 1],
  [2, 1],
  [1, 2],
  [3, 0],
  [0, 3],
];

const handTold = (sets: readonly (readonly Mass[])[]): Signs =>
  leaningMost(
    HANDS,
    sets.flatMap((masses) => POWERS.map((powers) => (signs: Signs) => momentOf(masses, powers, signs))),
  );

function momentOf(masses: readonly Mass[], [powerX, powerY]: Point, [signX, signY]: Signs): Moment {
  let [value, size] = [0, 0];
  for (const { at, mass } of masses) {
    const part = mass * (signX * at[0]) ** powerX * (signY * at[1]) ** powerY;
    value += part;
    size += Math.abs(part);
  }
  return { value, size };
}

export function toDeck({ angle, centre, signs }: DeckFrame, [x, y]: Point): Point {
  const [turnedX, turnedY] = rotatePoint([signs[0] * x, signs[1] * y], angle);
  return [turnedX + centre[0], turnedY + centre[1]];
}

export function toFrame({ angle, centre, signs }: DeckFrame, [x, y]: Point): Point {
  const [alongX, alongY] = rotatePoint([x - centre[0], y - centre[1]], -angle);
  return [signs[0] * alongX, signs[1] * alongY];
}
