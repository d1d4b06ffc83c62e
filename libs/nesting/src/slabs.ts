import { slackSteps } from './no-fit.js';
import type { Ring } from './ring.js';

/**
 * A forbidden region cut into slabs at the heights of its corners. In one slab the boundary is a fixed list of edges from
 * left to right, so that the blocked part of a line is read off after one binary search. The same structure with the axes
 * exchanged answers for the other direction.
 */
export interface Slabs {
  /** Heights of the corners, rising; slab `s` lies between `height[s]` and `height[s + 1]`. */
  readonly height: Float64Array;
  /** Crossings of slab `s` are `first[s]` to `first[s + 1]`, from left to right, two for each blocked stretch. */
  readonly first: Int32Array;
  /** Where a crossing stands at the bottom of its slab, and how it moves with height. */
  readonly base: Float64Array;
  readonly slope: Float64Array;
  /** Lower end and run of the edge behind each crossing, four numbers, for the exact rounding. */
  readonly edge: Float64Array;
}

/** Open stretches in which the moving piece's reference point would overlap; both ends are free. Reused, so it may grow. */
export class Stretches {
  from = new Float64Array(64);
  to = new Float64Array(64);
  /** Depth at either end that a search need not mind: some at sloping edges, none at edges across the line. */
  fromSlack = new Float64Array(64);
  toSlack = new Float64Array(64);
  count = 0;

  append(from: number, to: number, fromSlack: number, toSlack: number): void {
    if (from >= to) return;
    if (this.count >= this.from.length) this.grow();
    this.from[this.count] = from;
    this.to[this.count] = to;
    this.fromSlack[this.count] = fromSlack;
    this.toSlack[this.count] = toSlack;
    this.count++;
  }

  private grow(): void {
    const size = 2 * this.from.length;
    this.from = lengthened(this.from, size);
    this.to = lengthened(this.to, size);
    this.fromSlack = lengthened(this.fromSlack, size);
    this.toSlack = lengthened(this.toSlack, size);
  }
}

export function lengthened(values: Float64Array, capacity: number): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(capacity);
  longer.set(values);
  return longer;
}

/** `axis` 0: blocked stretches along x on lines of constant y; 1: along y on lines of constant x. */
export function slabsOf(rings: readonly Ring[], axis: 0 | 1): Slabs {
  const edges = edgesOf(rings, axis);
  const height = Float64Array.from(new Set(edges.flatMap(([, y1, , y2]) => [y1, y2]))).sort();
  const crossings: number[][] = [];
  const first = new Int32Array(height.length);
  for (let s = 0; s + 1 < height.length; s++) {
    const middle = (height[s] + height[s + 1]) / 2;
    const across = edges
      .filter(([, y1, , y2]) => y1 < middle && middle < y2)
      .sort((p, q) => placeAt(p, middle) - placeAt(q, middle));
    first[s] = crossings.length;
    crossings.push(
      ...across.map((edge) => [placeAt(edge, height[s]), (edge[2] - edge[0]) / (edge[3] - edge[1]), ...edge]),
    );
  }
  if (height.length > 0) first[height.length - 1] = crossings.length;
  return {
    height,
    first,
    base: Float64Array.from(crossings, (c) => c[0]),
    slope: Float64Array.from(crossings, (c) => c[1]),
    edge: Float64Array.from(crossings.flatMap((c) => [c[2], c[3], c[4] - c[2], c[5] - c[3]])),
  };
}

type Edge = readonly [x1: number, y1: number, x2: number, y2: number];

const placeAt = ([x1, y1, x2, y2]: Edge, y: number): number =>
  y === y1 ? x1 : y === y2 ? x2 : x1 + ((y - y1) * (x2 - x1)) / (y2 - y1);

/** Edges that rise, lower end first; level edges carry no crossing. */
function edgesOf(rings: readonly Ring[], axis: 0 | 1): Edge[] {
  const edges: Edge[] = [];
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      const [x1, y1, x2, y2] = [ring[i + axis], ring[i + 1 - axis], ring[j + axis], ring[j + 1 - axis]];
      if (y1 < y2) edges.push([x1, y1, x2, y2]);
      if (y1 > y2) edges.push([x2, y2, x1, y1]);
    }
  }
  return edges;
}

/** Appends the blocked stretches on the line at `level`; their ends are grid points outside or on the region, exactly. */
export function appendBlocked(slabs: Slabs, level: number, out: Stretches): void {
  const { height } = slabs;
  let low = 0;
  let high = height.length - 1;
  if (high < 1 || level <= height[0] || level >= height[high]) return;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (height[middle] <= level) low = middle;
    else high = middle;
  }
  if (height[low] === level) appendBetween(slabs, low, out);
  else appendInside(slabs, low, level, out);
}

function appendInside(slabs: Slabs, s: number, level: number, out: Stretches): void {
  for (let c = slabs.first[s]; c + 1 < slabs.first[s + 1]; c += 2) {
    out.append(
      downAt(slabs, c, s, level),
      upAt(slabs, c + 1, s, level),
      slackAt(slabs, c),
      slackAt(slabs, c + 1),
    );
  }
}

/** On a line through a corner only what is blocked just below and just above is blocked: the rest is boundary. */
function appendBetween(slabs: Slabs, s: number, out: Stretches): void {
  const level = slabs.height[s];
  let above = slabs.first[s];
  let below = slabs.first[s - 1];
  const aboveEnd = slabs.first[s + 1];
  const belowEnd = slabs.first[s];
  while (above + 1 < aboveEnd && below + 1 < belowEnd) {
    const aboveTo = upAt(slabs, above + 1, s, level);
    const belowTo = upAt(slabs, below + 1, s - 1, level);
    const slack = Math.min(
      slackAt(slabs, above),
      slackAt(slabs, below),
      slackAt(slabs, above + 1),
      slackAt(slabs, below + 1),
    );
    out.append(
      Math.max(downAt(slabs, above, s, level), downAt(slabs, below, s - 1, level)),
      Math.min(aboveTo, belowTo),
      slack,
      slack,
    );
    if (aboveTo <= belowTo) above += 2;
    if (belowTo <= aboveTo) below += 2;
  }
}

const slackAt = ({ slope }: Slabs, crossing: number): number => (slope[crossing] === 0 ? 0 : slackSteps);

/** Largest grid place not right of the crossing. */
function downAt(slabs: Slabs, c: number, s: number, level: number): number {
  const slope = slabs.slope[c];
  if (slope === 0) return slabs.base[c];
  const place = slabs.base[c] + (level - slabs.height[s]) * slope;
  const near = Math.round(place);
  if (Math.abs(place - near) > 1e-5) return Math.floor(place);
  return pastEdge(slabs.edge, 4 * c, near, level) > 0 ? near - 1 : near;
}

/** Smallest grid place not left of the crossing. */
function upAt(slabs: Slabs, c: number, s: number, level: number): number {
  const slope = slabs.slope[c];
  if (slope === 0) return slabs.base[c];
  const place = slabs.base[c] + (level - slabs.height[s]) * slope;
  const near = Math.round(place);
  if (Math.abs(place - near) > 1e-5) return Math.ceil(place);
  return pastEdge(slabs.edge, 4 * c, near, level) < 0 ? near + 1 : near;
}

/** Positive when the place lies right of the edge: whole-number arithmetic, so the sign is exact. */
const pastEdge = (edge: Float64Array, at: number, place: number, level: number): number =>
  (place - edge[at]) * edge[at + 3] - (level - edge[at + 1]) * edge[at + 2];
