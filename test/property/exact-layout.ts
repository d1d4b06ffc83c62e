/**
 * An independent judge of layouts: whole numbers without limit, fractions where lines meet, no code of the solver.
 * Coordinates are read from their decimal text, so what is judged is exactly what is printed.
 */
export type Place = readonly [number, number];

interface Whole {
  readonly x: bigint;
  readonly y: bigint;
}

type Corners = readonly Whole[];

export interface Shape {
  readonly outline: readonly Place[];
  readonly holes: readonly (readonly Place[])[];
}

const decimals = 7;

/** Millimetres as whole ten-millionths. */
export const whole = (mm: number): bigint => BigInt(mm.toFixed(decimals).replace('.', ''));

const corners = (ring: readonly Place[]): Corners => ring.map(([x, y]) => ({ x: whole(x), y: whole(y) }));
const ringsOf = ({ outline, holes }: Shape): readonly Corners[] => [outline, ...holes].map(corners);

type Segment = readonly [Whole, Whole];
const segmentsOf = (rings: readonly Corners[]): readonly Segment[] =>
  rings.flatMap((ring) => ring.map((corner, k): Segment => [corner, ring[(k + 1) % ring.length]]));

const side = ([a, b]: Segment, p: Whole): bigint => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
const sign = (value: bigint): number => (value > 0n ? 1 : value < 0n ? -1 : 0);

/** Whether the two shapes share an inner point; sharing edges and corners is allowed. */
export function overlap(one: Shape, other: Shape): boolean {
  const [a, b] = [ringsOf(one), ringsOf(other)];
  const [p, q] = [segmentsOf(a), segmentsOf(b)];
  return passesInside(p, b, q) || passesInside(q, a, p) || isSameRegion(a, b);
}

/** Some stretch of these segments, cut wherever they meet the region's boundary, runs strictly inside it. */
function passesInside(
  segments: readonly Segment[],
  region: readonly Corners[],
  boundary: readonly Segment[],
): boolean {
  return segments.some((segment) =>
    middlesOf(segment, boundary).some((middle) => whereIs(middle, region) === 'inside'),
  );
}

/** A fraction along a segment. */
interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}

interface Middle {
  readonly x: bigint;
  readonly y: bigint;
  /** Common denominator of both. */
  readonly scale: bigint;
}

function middlesOf(segment: Segment, boundary: readonly Segment[]): readonly Middle[] {
  const cuts = [
    { over: 0n, under: 1n },
    ...boundary.flatMap((edge) => meetings(segment, edge)),
    { over: 1n, under: 1n },
  ].sort((p, q) => sign(p.over * q.under - q.over * p.under));
  const [a, b] = segment;
  return cuts.slice(1).flatMap((cut, k) => {
    const before = cuts[k];
    const over = before.over * cut.under + cut.over * before.under;
    const under = 2n * before.under * cut.under;
    if (before.over * cut.under === cut.over * before.under) return [];
    return [{ x: a.x * under + (b.x - a.x) * over, y: a.y * under + (b.y - a.y) * over, scale: under }];
  });
}

function meetings(segment: Segment, edge: Segment): readonly Fraction[] {
  const [a, b] = segment;
  const [c, d] = edge;
  const under = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
  if (under !== 0n) {
    const over = (c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x);
    return within(under > 0n ? { over, under } : { over: -over, under: -under });
  }
  if (side(segment, c) !== 0n) return [];
  const length = (b.x - a.x) ** 2n + (b.y - a.y) ** 2n;
  return [c, d].flatMap((p) =>
    within({ over: (p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y), under: length }),
  );
}

const within = (cut: Fraction): readonly Fraction[] => (cut.over > 0n && cut.over < cut.under ? [cut] : []);

/** Ray casting with exact sides; shapes with holes by the even-odd rule. */
function whereIs({ x, y, scale }: Middle, region: readonly Corners[]): 'inside' | 'outside' | 'edge' {
  let isInside = false;
  for (const [a, b] of segmentsOf(region)) {
    const [ax, ay, bx, by] = [a.x * scale, a.y * scale, b.x * scale, b.y * scale];
    const turn = (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    const isLevel = (ay <= y && y <= by) || (by <= y && y <= ay);
    const isAbreast = (ax <= x && x <= bx) || (bx <= x && x <= ax);
    if (turn === 0n && isLevel && isAbreast) return 'edge';
    if (ay > y !== by > y && (by > ay ? turn > 0n : turn < 0n)) isInside = !isInside;
  }
  return isInside ? 'inside' : 'outside';
}

/** Neither boundary passes inside the other region: they overlap only when they are one and the same. */
function isSameRegion(a: readonly Corners[], b: readonly Corners[]): boolean {
  const areEdges = (from: readonly Corners[], to: readonly Corners[]): boolean =>
    segmentsOf(from).every((segment) =>
      middlesOf(segment, segmentsOf(to)).every((middle) => whereIs(middle, to) === 'edge'),
    );
  return areEdges(a, b) && areEdges(b, a);
}

/** Nowhere nearer than `gapMm`, by squared distances as whole numbers. */
export function areApart(one: Shape, other: Shape, gapMm: number): boolean {
  if (gapMm === 0) return !overlap(one, other);
  const gap = whole(gapMm) ** 2n;
  const [p, q] = [segmentsOf(ringsOf(one)), segmentsOf(ringsOf(other))];
  const isFar = p.every((s) =>
    q.every((t) => isFarFrom(s, t[0], gap) && isFarFrom(t, s[0], gap) && !doCross(s, t)),
  );
  return isFar && !overlap(one, other);
}

const doCross = (s: Segment, t: Segment): boolean =>
  sign(side(s, t[0])) * sign(side(s, t[1])) < 0 && sign(side(t, s[0])) * sign(side(t, s[1])) < 0;

function isFarFrom([a, b]: Segment, p: Whole, gap: bigint): boolean {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = dx * dx + dy * dy;
  const along = (p.x - a.x) * dx + (p.y - a.y) * dy;
  if (along <= 0n) return (p.x - a.x) ** 2n + (p.y - a.y) ** 2n >= gap;
  if (along >= length) return (p.x - b.x) ** 2n + (p.y - b.y) ** 2n >= gap;
  return side([a, b], p) ** 2n >= gap * length;
}

/** The shape lies in the sheet, at least `gapMm` from all its edges. */
export function liesWithin(shape: Shape, sheet: Shape, gapMm: number): boolean {
  const edges = segmentsOf(ringsOf(sheet));
  const sides = segmentsOf(ringsOf(shape));
  const isInside = sides.every((segment) =>
    middlesOf(segment, edges).every((middle) => whereIs(middle, ringsOf(sheet)) !== 'outside'),
  );
  if (!isInside) return false;
  const gap = whole(gapMm) ** 2n;
  const areHolesEmpty = sheet.holes.every((hole) => !overlap({ outline: hole, holes: [] }, shape));
  return (
    areHolesEmpty &&
    (gapMm === 0 ||
      sides.every((s) => edges.every((t) => isFarFrom(s, t[0], gap) && isFarFrom(t, s[0], gap))))
  );
}
