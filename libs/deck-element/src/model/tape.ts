import type { Place, Ring } from './record.js';

/** One stretch of tape along the edge, and the inside angle of the corner at its end. */
export interface Side {
  readonly lengthMm: number;
  readonly angleDeg: number;
}

export interface Closed {
  readonly ring: Ring;
  /** How far the last corner falls from the first one: what the tape and the angles disagree by. */
  readonly closingErrorMm: number;
}

/**
 * An outline walked side by side: along x first, then turning by what the inside angle leaves of a straight line.
 *
 * Worked: a right triangle of 300, 400 and 500 with its right angle and atan(3/4), atan(4/3) closes.
 */
export function walked(sides: readonly Side[]): Closed {
  const corners: Place[] = [[0, 0]];
  let headingDeg = 0;
  for (const { lengthMm, angleDeg } of sides) {
    const [x, y] = corners[corners.length - 1];
    const heading = (headingDeg * Math.PI) / 180;
    corners.push([x + lengthMm * Math.cos(heading), y + lengthMm * Math.sin(heading)]);
    headingDeg += 180 - angleDeg;
  }
  const last = corners[corners.length - 1];
  const closingErrorMm = Math.hypot(last[0], last[1]);
  // The last side leads back to the first corner: a corner that is there already is not set twice.
  return { ring: corners.slice(0, -1).map(toTenths), closingErrorMm };
}

/** A corner by the tape from both ends of a base line. */
export interface TwoTapes {
  readonly fromAMm: number;
  readonly fromBMm: number;
}

export type Struck = { readonly ring: Ring } | { readonly cannotMeet: number };

/**
 * An outline struck with two tapes from A at the origin and B along x: where two circles meet, to starboard.
 *
 * x = (a² − b² + c²) / 2c, y = √(a² − x²), with c the base line.
 * Worked: base line 500, tapes 300 and 400 meet at x = 180, y = 240.
 */
export function struck(baseMm: number, corners: readonly TwoTapes[]): Struck {
  const places = corners.map(({ fromAMm, fromBMm }): Place | undefined => {
    const x = (fromAMm ** 2 - fromBMm ** 2 + baseMm ** 2) / (2 * baseMm);
    const squared = fromAMm ** 2 - x ** 2;
    return squared < 0 ? undefined : toTenths([x, Math.sqrt(squared)]);
  });
  const cannotMeet = places.indexOf(undefined);
  if (cannotMeet >= 0) return { cannotMeet };
  const met = places.filter((place) => place !== undefined);
  return { ring: [[0, 0], [baseMm, 0], ...met] };
}

const toTenths = ([x, y]: Place): Place => [Math.round(x * 10) / 10, Math.round(y * 10) / 10];
