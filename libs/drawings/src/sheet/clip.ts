import type { Box, Point, Ring } from './shapes.js';

/** The parts of a closed outline that lie in a box, as open lines. */
export function clippedRing(ring: readonly Point[], box: Box): readonly (readonly Point[])[] {
  const parts: Point[][] = [];
  ring.forEach((from, index) => {
    const cut = clippedSegment(from, ring[(index + 1) % ring.length], box);
    if (cut === undefined) return;
    const last = parts[parts.length - 1];
    const joins =
      last !== undefined &&
      Math.hypot(last[last.length - 1][0] - cut[0][0], last[last.length - 1][1] - cut[0][1]) < 1e-9;
    if (joins) last.push(cut[1]);
    else parts.push([...cut]);
  });
  return parts;
}

/** The part of a straight line that lies in a box: one piece or none. */
export const clippedLine = (a: Point, b: Point, box: Box): readonly (readonly [Point, Point])[] => {
  const cut = clippedSegment(a, b, box);
  return cut === undefined ? [] : [cut];
};

function clippedSegment(a: Point, b: Point, box: Box): readonly [Point, Point] | undefined {
  let [from, to] = [0, 1];
  const sides: readonly (readonly [number, number])[] = [
    [a[0] - b[0], a[0] - box.x],
    [b[0] - a[0], box.x + box.width - a[0]],
    [a[1] - b[1], a[1] - box.y],
    [b[1] - a[1], box.y + box.height - a[1]],
  ];
  for (const [run, room] of sides) {
    if (run === 0 && room < 0) return undefined;
    if (run < 0) from = Math.max(from, room / run);
    if (run > 0) to = Math.min(to, room / run);
  }
  const along = (share: number): Point => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  return from < to ? [along(from), along(to)] : undefined;
}

/** The part of a closed outline that lies in a box, as one closed outline (Sutherland and Hodgman's way, side by side). */
export function clippedShape(ring: Ring, box: Box): Ring {
  const sides: readonly ((point: Point) => number)[] = [
    ([x]) => x - box.x,
    ([x]) => box.x + box.width - x,
    ([, y]) => y - box.y,
    ([, y]) => box.y + box.height - y,
  ];
  return sides.reduce<Ring>(
    (kept, depth) =>
      kept.flatMap((point, index): readonly Point[] => {
        const before = kept[(index + kept.length - 1) % kept.length];
        const [now, then] = [depth(point), depth(before)];
        const share = then / (then - now);
        const crossing: Point = [
          before[0] + (point[0] - before[0]) * share,
          before[1] + (point[1] - before[1]) * share,
        ];
        if (now >= 0) return then >= 0 ? [point] : [crossing, point];
        return then >= 0 ? [crossing] : [];
      }),
    ring,
  );
}
