import { boundsOfPoints } from './measure.js';
import { edgesOf, rotatePoint, type Point } from './point.js';
import { convexHull } from './shape.js';

/** A rectangle at an angle; `angle` in radians is the direction of its length. */
export interface LeastRectangle {
  readonly angle: number;
  readonly centre: Point;
  readonly lengthMm: number;
  readonly widthMm: number;
}

/**
 * The rectangle of least area round the points, at whatever angle: one of its sides lies along a side of their hull.
 *
 * Source: [FREEMAN-SHAPIRA-1975]
 * Worked: libs/geometry/src/least-rectangle.spec.ts
 */
export function leastRectangle(points: readonly Point[]): LeastRectangle {
  const hull = convexHull(points);
  const rectangles = edgesOf(hull).map(([a, b]) => along(hull, Math.atan2(b[1] - a[1], b[0] - a[0])));
  return rectangles.reduce((best, other) =>
    other.lengthMm * other.widthMm < best.lengthMm * best.widthMm * (1 - 1e-9) ? other : best,
  );
}

function along(hull: readonly Point[], angle: number): LeastRectangle {
  const box = boundsOfPoints(hull.map((point) => rotatePoint(point, -angle))) ?? {
    minX: 0,
    minY: 0,
    maxX: 0,
    maxY: 0,
  };
  const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
  const centre = rotatePoint([(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2], angle);
  return width >= height
    ? { angle, centre, lengthMm: width, widthMm: height }
    : { angle: angle + Math.PI / 2, centre, lengthMm: height, widthMm: width };
}
