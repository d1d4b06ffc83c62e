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
  const height = heightsOf(edges);
  const first = new Int32Array(height.length);
  const order = new Int32Array(edges.length / 4);
  const places = new Float64Array(order.length);
  const crossed: number[] = [];
  const bottoms: number[] = [];
  for (let s = 0; s + 1 < height.length; s++) {
    first[s] = crossed.length;
    const count = sortedAcross(edges, (height[s] + height[s + 1]) / 2, { order, places });
    for (let k = 0; k < count; k++) {
      crossed.push(order[k]);
      bottoms.push(placeAt(edges, order[k], height[s]));
    }
  }
  if (height.length > 0) first[height.length - 1] = crossed.length;
  return { height, first, ...crossingsOf(edges, crossed, bottoms) };
}

/** Four numbers for each edge that rises: its lower end and its upper. */
type Edges = Float64Array;

function heightsOf(edges: Edges): Float64Array {
  const heights = new Float64Array(edges.length / 2);
  for (let k = 0; k < heights.length; k++) heights[k] = edges[2 * k + 1];
  heights.sort();
  let count = 0;
  for (let k = 0; k < heights.length; k++)
    if (k === 0 || heights[k] !== heights[k - 1]) heights[count++] = heights[k];
  return heights.slice(0, count);
}

/** Puts the edges that cross a line from left to right; their number. */
function sortedAcross(
  edges: Edges,
  line: number,
  { order, places }: { readonly order: Int32Array; readonly places: Float64Array },
): number {
  let count = 0;
  for (let edge = 0; edge < order.length; edge++) {
    if (edges[4 * edge + 1] >= line || edges[4 * edge + 3] <= line) continue;
    const place = placeAt(edges, edge, line);
    let at = count++;
    for (; at > 0 && places[at - 1] > place; at--) [places[at], order[at]] = [places[at - 1], order[at - 1]];
    [places[at], order[at]] = [place, edge];
  }
  return count;
}

function crossingsOf(
  edges: Edges,
  crossed: readonly number[],
  bottoms: readonly number[],
): Pick<Slabs, 'base' | 'slope' | 'edge'> {
  const slope = new Float64Array(crossed.length);
  const edge = new Float64Array(4 * crossed.length);
  for (let c = 0; c < crossed.length; c++) {
    const [x1, y1, x2, y2] = edges.subarray(4 * crossed[c], 4 * crossed[c] + 4);
    slope[c] = (x2 - x1) / (y2 - y1);
    edge.set([x1, y1, x2 - x1, y2 - y1], 4 * c);
  }
  return { base: Float64Array.from(bottoms), slope, edge };
}

function placeAt(edges: Edges, edge: number, y: number): number {
  const at = 4 * edge;
  const [x1, y1, x2, y2] = [edges[at], edges[at + 1], edges[at + 2], edges[at + 3]];
  return y === y1 ? x1 : y === y2 ? x2 : x1 + ((y - y1) * (x2 - x1)) / (y2 - y1);
}

/** Edges that rise, lower end first; level edges carry no crossing. */
function edgesOf(rings: readonly Ring[], axis: 0 | 1): Edges {
  const edges: number[] = [];
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      const [x1, y1, x2, y2] = [ring[i + axis], ring[i + 1 - axis], ring[j + axis], ring[j + 1 - axis]];
      if (y1 < y2) edges.push(x1, y1, x2, y2);
      if (y1 > y2) edges.push(x2, y2, x1, y1);
    }
  }
  return Float64Array.from(edges);
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
