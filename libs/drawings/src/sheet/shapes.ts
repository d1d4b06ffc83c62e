/** A point on the sheet in mm from its upper left corner, y downwards. */
export type Point = readonly [x: number, y: number];
export type Ring = readonly Point[];

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const boxOf = (points: readonly Point[]): Box => {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return points.length === 0
    ? { x: 0, y: 0, width: 0, height: 0 }
    : { x: left, y: top, width: right - left, height: bottom - top };
};

export const overlaps = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

export const contains = (outer: Box, inner: Box): boolean =>
  inner.x >= outer.x &&
  inner.y >= outer.y &&
  inner.x + inner.width <= outer.x + outer.width &&
  inner.y + inner.height <= outer.y + outer.height;

export const grown = (box: Box, byMm: number): Box => ({
  x: box.x - byMm,
  y: box.y - byMm,
  width: box.width + 2 * byMm,
  height: box.height + 2 * byMm,
});

export const inset = (
  box: Box,
  left: number,
  top: number,
  rest: { readonly right: number; readonly bottom: number },
): Box => ({
  x: box.x + left,
  y: box.y + top,
  width: box.width - left - rest.right,
  height: box.height - top - rest.bottom,
});

export const rectangle = ({ x, y, width, height }: Box): Ring => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

export const signedArea = (ring: Ring): number =>
  ring.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length];
    return sum + x * nextY - nextX * y;
  }, 0) / 2;

/** True when the segment a-b passes through the box. */
export function crossesBox(a: Point, b: Point, box: Box): boolean {
  let [from, to] = [0, 1];
  const sides: readonly (readonly [number, number])[] = [
    [a[0] - b[0], a[0] - box.x],
    [b[0] - a[0], box.x + box.width - a[0]],
    [a[1] - b[1], a[1] - box.y],
    [b[1] - a[1], box.y + box.height - a[1]],
  ];
  for (const [run, room] of sides) {
    if (run === 0 && room < 0) return false;
    if (run < 0) from = Math.max(from, room / run);
    if (run > 0) to = Math.min(to, room / run);
  }
  return from < to;
}
