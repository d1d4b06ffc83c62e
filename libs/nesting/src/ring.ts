/** A closed ring of grid points, x0, y0, x1, y1, …, the first not repeated. All values are whole numbers. */
export type Ring = Float64Array;

/** A piece of plane on the grid: outer ring anticlockwise, holes clockwise. */
export interface Region {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export const ringsOf = (region: Region): readonly Ring[] => [region.outer, ...region.holes];

/** Twice the signed area; positive when the ring runs anticlockwise. */
export function doubleArea(ring: Ring): number {
  let sum = 0;
  const [x0, y0] = ring;
  for (let i = 2; i + 3 < ring.length; i += 2) {
    sum += (ring[i] - x0) * (ring[i + 3] - y0) - (ring[i + 2] - x0) * (ring[i + 1] - y0);
  }
  return sum;
}

/** Area of a region in squared grid steps. */
export const areaOf = (region: Region): number =>
  ringsOf(region).reduce((sum, ring) => sum + doubleArea(ring), 0) / 2;

export function boxOf(ring: Ring): Box {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (let i = 0; i < ring.length; i += 2) {
    minX = Math.min(minX, ring[i]);
    maxX = Math.max(maxX, ring[i]);
    minY = Math.min(minY, ring[i + 1]);
    maxY = Math.max(maxY, ring[i + 1]);
  }
  return { minX, minY, maxX, maxY };
}

export function reversed(ring: Ring): Ring {
  const result = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i += 2) {
    result[i] = ring[ring.length - 2 - i];
    result[i + 1] = ring[ring.length - 1 - i];
  }
  return result;
}

export const anticlockwise = (ring: Ring): Ring => (doubleArea(ring) < 0 ? reversed(ring) : ring);

export function shifted(ring: Ring, dx: number, dy: number): Ring {
  const result = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i += 2) {
    result[i] = ring[i] + dx;
    result[i + 1] = ring[i + 1] + dy;
  }
  return result;
}

export const regionShifted = (region: Region, dx: number, dy: number): Region => ({
  outer: shifted(region.outer, dx, dy),
  holes: region.holes.map((hole) => shifted(hole, dx, dy)),
});

/** Point mirror through the origin; a half turn, so the sense of the ring stays. */
export const mirrored = (ring: Ring): Ring => ring.map((value) => (value === 0 ? 0 : -value));

/** Cosine and sine of a turn in degrees, exact for quarter turns. */
export function turnOf(degrees: number): readonly [cos: number, sin: number] {
  const whole = ((degrees % 360) + 360) % 360;
  if (whole === 0) return [1, 0];
  if (whole === 90) return [0, 1];
  if (whole === 180) return [-1, 0];
  if (whole === 270) return [0, -1];
  const radians = (whole * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}

/** Turned anticlockwise about the origin and set back on the grid; exact for quarter turns. */
export function turned(ring: Ring, degrees: number): Ring {
  const [cos, sin] = turnOf(degrees);
  const result = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i += 2) {
    result[i] = Math.round(ring[i] * cos - ring[i + 1] * sin) + 0;
    result[i + 1] = Math.round(ring[i] * sin + ring[i + 1] * cos) + 0;
  }
  return result;
}

export const regionTurned = (region: Region, degrees: number): Region => ({
  outer: turned(region.outer, degrees),
  holes: region.holes.map((hole) => turned(hole, degrees)),
});

/** Twice the signed area of the corner at vertex `i`. */
export function cornerAt(ring: Ring, i: number): number {
  const size = ring.length;
  const before = (i + size - 2) % size;
  const after = (i + 2) % size;
  return (
    (ring[i] - ring[before]) * (ring[after + 1] - ring[i + 1]) -
    (ring[i + 1] - ring[before + 1]) * (ring[after] - ring[i])
  );
}

/** Without repeated points and without points in the middle of a straight edge. */
export function tidied(ring: Ring): Ring {
  let current = ring;
  for (;;) {
    const kept: number[] = [];
    for (let i = 0; i < current.length; i += 2) {
      if (cornerAt(current, i) !== 0) kept.push(current[i], current[i + 1]);
    }
    if (kept.length === current.length || kept.length < 6)
      return Float64Array.from(kept.length < 6 ? [] : kept);
    current = Float64Array.from(kept);
  }
}

export function isConvex(ring: Ring): boolean {
  for (let i = 0; i < ring.length; i += 2) {
    if (cornerAt(ring, i) < 0) return false;
  }
  return true;
}

/** All edges along an axis, so that sums and intersections stay on the grid. */
export function isRectilinear(ring: Ring): boolean {
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    if (ring[i] !== ring[j] && ring[i + 1] !== ring[j + 1]) return false;
  }
  return true;
}
