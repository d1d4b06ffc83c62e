import type { Point } from '#lib/geometry';
import type { NestPiece } from './request.js';
import { regionFrom } from './no-fit.js';
import { anticlockwise, boxOf, regionShifted, tidied, type Region, type Ring } from './ring.js';

/** Largest dimension in grid steps, so that cross products of doubled coordinates stay exact. */
const mostSteps = 1.6e7;

/** Steps to the millimetre: a thousand, or as many powers of ten more as the largest dimension leaves exact. */
export function stepsPerMm(largestMm: number): number {
  return [100_000, 10_000].find((steps) => largestMm * steps <= mostSteps) ?? 1000;
}

export const ringOnGrid = (points: readonly Point[], steps: number): Ring =>
  tidied(
    anticlockwise(
      Float64Array.from(points.flatMap(([x, y]) => [Math.round(x * steps), Math.round(y * steps)])),
    ),
  );

/** A piece on the grid, moved so that its box starts at the origin, and by how much it was moved. */
export interface GridShape {
  readonly region: Region;
  readonly moved: readonly [number, number];
}

export function shapeOnGrid(
  { outline, holes = [] }: Pick<NestPiece, 'outline' | 'holes'>,
  steps: number,
): GridShape {
  const region = regionFrom(
    ringOnGrid(outline, steps),
    holes.map((hole) => ringOnGrid(hole, steps)),
  );
  const { minX, minY } = boxOf(region.outer);
  return { region: regionShifted(region, -minX, -minY), moved: [-minX, -minY] };
}

/** Turns to try: those allowed, or for any turn the quarter turns and those that lay a long edge along an axis. */
export function turnsToTry({ turnsDeg }: Pick<NestPiece, 'turnsDeg'>, region: Region): readonly number[] {
  const turns = turnsDeg.length > 0 ? turnsDeg : [0, 90, 180, 270, ...edgeTurns(region.outer)];
  return [...new Set(turns.map((turn) => ((turn % 360) + 360) % 360))];
}

/** Each of the three longest sloping edges laid level, in four quarter turns. */
function edgeTurns(ring: Ring): readonly number[] {
  const edges = Array.from({ length: ring.length / 2 }, (_, i) => {
    const j = (i + 1) % (ring.length / 2);
    return [ring[2 * j] - ring[2 * i], ring[2 * j + 1] - ring[2 * i + 1]] as const;
  });
  const sloping = edges
    .filter(([dx, dy]) => dx !== 0 && dy !== 0)
    .sort((p, q) => Math.hypot(...q) - Math.hypot(...p));
  return sloping.slice(0, 3).flatMap(([dx, dy]) => {
    const level = Math.round((-Math.atan2(dy, dx) * 180 * 1000) / Math.PI) / 1000;
    return [0, 90, 180, 270].map((quarter) => level + quarter);
  });
}

export const mmOf = (
  ring: Ring,
  steps: number,
  [dx, dy]: readonly [number, number] = [0, 0],
): readonly Point[] =>
  Array.from(
    { length: ring.length / 2 },
    (_, i) => [(ring[2 * i] + dx) / steps, (ring[2 * i + 1] + dy) / steps] as const,
  );
