import type { Point } from '#lib/geometry';
import type { MosaicNumbers } from './rules.js';

/** A line that the deck rests on. */
export type Support = readonly [Point, Point];

interface Supports {
  readonly supports: readonly Support[];
  readonly numbers: Pick<MosaicNumbers, 'supportClearanceMm'>;
}

const SAMPLE_MM = 10;
const LEAST_SAMPLES = 8;

/** Length of a joint that runs within the clearance of a support, beyond what a plain crossing takes. */
export function nearSupport({ supports, numbers }: Supports, [ax, ay]: Point, [bx, by]: Point): number {
  const clearance = numbers.supportClearanceMm;
  const length = Math.hypot(bx - ax, by - ay);
  const count = Math.max(LEAST_SAMPLES, Math.ceil(length / SAMPLE_MM));
  let near = 0;
  for (const [[px, py], [qx, qy]] of supports) {
    const isApart =
      Math.min(ax, bx) - clearance > Math.max(px, qx) ||
      Math.max(ax, bx) + clearance < Math.min(px, qx) ||
      Math.min(ay, by) - clearance > Math.max(py, qy) ||
      Math.max(ay, by) + clearance < Math.min(py, qy);
    if (isApart) continue;
    let samples = 0;
    for (let k = 0; k < count; k++) {
      const share = (k + 0.5) / count;
      const [x, y] = [ax + share * (bx - ax), ay + share * (by - ay)];
      if (squaredAway(x, y, [px, py, qx, qy]) < clearance * clearance) samples++;
    }
    near += Math.max(0, (samples / count) * length - 4 * clearance);
  }
  return near;
}

function squaredAway(
  x: number,
  y: number,
  [px, py, qx, qy]: readonly [number, number, number, number],
): number {
  const [dx, dy] = [qx - px, qy - py];
  const squared = dx * dx + dy * dy;
  const along = squared === 0 ? 0 : Math.max(0, Math.min(1, ((x - px) * dx + (y - py) * dy) / squared));
  const [offX, offY] = [x - px - along * dx, y - py - along * dy];
  return offX * offX + offY * offY;
}
