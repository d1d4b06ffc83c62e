import { boxOf } from '../sheet/shapes.js';
import type { Outline, Place } from './place.js';

/**
 * How corners are set out on this panel, from places that a tape can be hooked to.
 *
 * `edges`: the aft and the port edge are straight and square, and meet in a corner; both tapes start there.
 * `centreline`: the deck tapers, so that a line square through its aft corner leaves it; the tape runs forward along the
 * centreline from the aft edge, and offsets go to port and starboard of it.
 * `square`: neither holds; the line is set square to the aft edge at its middle.
 */
export interface SettingOut {
  readonly way: 'edges' | 'centreline' | 'square';
  /** Where the tape is at nothing. */
  readonly zero: Place;
  /** The two ends of the aft edge: every corner is checked from both, so that no mistake of side stays unseen. */
  readonly checks: readonly [port: Place, starboard: Place];
}

/** Places closer than this are one to a tape. */
const TAPE_MM = 2;
/** Half-breadths that differ by more make no centreline. Common practice, no published source. */
const CENTRE_MM = 5;

export function settingOut(outline: Outline): SettingOut {
  const box = boxOf(outline);
  const aft = endsAt(outline, box.x);
  const forward = endsAt(outline, box.x + box.width);
  const checks = [aft.port, aft.starboard] as const;
  if (isSquare(outline, aft.port)) return { way: 'edges', zero: aft.port, checks };
  const [middleAft, middleForward] = [middleOf(aft), middleOf(forward)];
  const way = Math.abs(middleAft[1] - middleForward[1]) <= CENTRE_MM ? 'centreline' : 'square';
  return { way, zero: middleAft, checks };
}

interface Ends {
  readonly port: Place;
  readonly starboard: Place;
}

/** The outermost places of the outline on one line across the deck. */
function endsAt(outline: Outline, x: number): Ends {
  const there = outline.filter((place) => Math.abs(place[0] - x) <= TAPE_MM);
  const across = [...there].sort((a, b) => a[1] - b[1]);
  return { port: across[0], starboard: across[across.length - 1] };
}

const middleOf = ({ port, starboard }: Ends): Place => [
  (port[0] + starboard[0]) / 2,
  (port[1] + starboard[1]) / 2,
];

/** Whether an edge of the outline runs straight forward from its aft port corner, and none lies outside it. */
function isSquare(outline: Outline, corner: Place): boolean {
  const isOutermost = outline.every(([, y]) => y >= corner[1] - TAPE_MM);
  const along = outline.filter(([x, y]) => Math.abs(y - corner[1]) <= TAPE_MM && x > corner[0] + TAPE_MM);
  return isOutermost && along.length > 0;
}

/** Where a corner lies as it is set out: forward of the zero, and to which side how far. */
export interface SetCorner {
  readonly alongMm: number;
  /** Towards starboard; to port is negative. */
  readonly offsetMm: number;
  /** From the port and from the starboard end of the aft edge. */
  readonly checksMm: readonly [number, number];
}

export const setCorner = ([x, y]: Place, { zero, checks: [port, starboard] }: SettingOut): SetCorner => ({
  alongMm: x - zero[0],
  offsetMm: y - zero[1],
  checksMm: [Math.hypot(x - port[0], y - port[1]), Math.hypot(x - starboard[0], y - starboard[1])],
});
