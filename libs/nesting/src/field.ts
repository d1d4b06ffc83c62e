import type { NoFit, NoFitTable } from './no-fit-table.js';
import { appendBlocked, lengthened, Stretches } from './slabs.js';

/** A rectangle in which the true outlines must lie: a strip, or a sheet inside its trimmed edge. */
export interface Zone {
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
}

/**
 * Everything that moves in a search: where each piece is and in which turn, and how much each pair matters.
 * Mutable on purpose: millions of positions are tried each second. Pieces below `fixed` are parts of a sheet's edge and stay.
 */
export class Field {
  readonly at: readonly [Float64Array, Float64Array];
  /** Box of each piece with its padding: pieces whose boxes are apart need no closer look. */
  readonly boxLow: readonly [Float64Array, Float64Array];
  readonly boxHigh: readonly [Float64Array, Float64Array];
  /** Index of the turned shape. */
  readonly shape: Int32Array;
  readonly zone: Int32Array;
  readonly weight: Float64Array;
  /** Pieces from here on are not placed yet. */
  active: number;
  /** Pairs looked at so far. */
  work = 0;

  constructor(
    readonly table: NoFitTable,
    readonly fixed: number,
    readonly total: number,
  ) {
    this.at = [new Float64Array(total), new Float64Array(total)];
    this.boxLow = [new Float64Array(total), new Float64Array(total)];
    this.boxHigh = [new Float64Array(total), new Float64Array(total)];
    this.shape = new Int32Array(total);
    this.zone = new Int32Array(total);
    this.weight = new Float64Array(total * total).fill(1);
    this.active = total;
  }

  put(piece: number, { shape, x, y, zone }: Spot): void {
    this.shape[piece] = shape;
    this.zone[piece] = zone;
    this.moveTo(piece, x, y);
  }

  moveTo(piece: number, x: number, y: number): void {
    const { minX, minY, maxX, maxY } = this.table.shapes[this.shape[piece]].box;
    this.at[0][piece] = x;
    this.at[1][piece] = y;
    this.boxLow[0][piece] = x + minX;
    this.boxLow[1][piece] = y + minY;
    this.boxHigh[0][piece] = x + maxX;
    this.boxHigh[1][piece] = y + maxY;
  }

  spotOf(piece: number): Spot {
    return { shape: this.shape[piece], x: this.at[0][piece], y: this.at[1][piece], zone: this.zone[piece] };
  }
}

/** Where a piece is: its turned shape, its reference point, its zone. */
export interface Spot {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
  readonly zone: number;
}

/** Positions as plain values, to be kept while the field moves on. */
export interface Snapshot {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly shape: Int32Array;
  readonly zone: Int32Array;
}

export const snapshotOf = (field: Field): Snapshot => ({
  x: field.at[0].slice(),
  y: field.at[1].slice(),
  shape: field.shape.slice(),
  zone: field.zone.slice(),
});

export function restore(field: Field, { x, y, shape, zone }: Snapshot): void {
  field.shape.set(shape);
  field.zone.set(zone);
  for (let piece = 0; piece < field.total; piece++) field.moveTo(piece, x[piece], y[piece]);
}

/** A line along which one piece is tried, and the best place found on it. */
export class Probe {
  piece = 0;
  shape = 0;
  axis: 0 | 1 = 0;
  level = 0;
  low = 0;
  high = 0;
  /** Of several free places, the nearest to this one is taken. */
  wish = 0;
  /** Only places that touch something are taken. */
  isSnug = true;
  /** Dearer places need not be found. */
  ceiling = Infinity;
  place = 0;
  cost = Infinity;
  readonly stretches = new Stretches();
  weight = new Float64Array(64);
  cap = new Float64Array(64);
  order = new Int32Array(64);
}

/**
 * The place on a line where a piece costs least: sum over the pieces it would overlap of weight times depth, depth being the
 * way out along the line, or straight across it where that is shorter. The cost is concave inside each blocked stretch,
 * so it is least at an end of a stretch or of the line, and only those are tried.
 *
 * Source: [UMETANI-2009] and [EGEBLAD-2007], search along a line with a directional depth
 */
export function seekOnLine(field: Field, probe: Probe): void {
  probe.cost = probe.ceiling;
  if (probe.low > probe.high) return;
  gather(field, probe);
  sortByStart(probe);
  if (!takeFreePlace(probe)) takeCheapestEnd(probe);
}

/** Only a free place will do: answers whether there is one, nearest to the wish. */
export function seekFree(field: Field, probe: Probe): boolean {
  gather(field, probe);
  if (probe.low > probe.high) return false;
  sortByStart(probe);
  return takeFreePlace(probe);
}

function gather(field: Field, probe: Probe): void {
  const { axis, level, piece } = probe;
  const { box } = field.table.shapes[probe.shape];
  const [acrossLow, acrossHigh] =
    axis === 0 ? [level + box.minY, level + box.maxY] : [level + box.minX, level + box.maxX];
  const [alongLow, alongHigh] =
    axis === 0
      ? [probe.low + box.minX, probe.high + box.maxX]
      : [probe.low + box.minY, probe.high + box.maxY];
  const [low, high, lowAlong, highAlong] = [
    field.boxLow[1 - axis],
    field.boxHigh[1 - axis],
    field.boxLow[axis],
    field.boxHigh[axis],
  ];
  const { active } = field;
  probe.stretches.count = 0;
  field.work += active;
  for (let other = 0; other < active; other++) {
    if (
      low[other] >= acrossHigh ||
      high[other] <= acrossLow ||
      lowAlong[other] >= alongHigh ||
      highAlong[other] <= alongLow
    )
      continue;
    if (other !== piece) gatherPair(field, probe, other);
  }
}

function gatherPair(field: Field, probe: Probe, other: number): void {
  const { axis, stretches } = probe;
  const noFit = field.table.between(field.shape[other], probe.shape);
  const level = probe.level - field.at[1 - axis][other];
  const before = stretches.count;
  appendBlocked(noFit.slabs[axis], level, stretches);
  if (stretches.count > probe.weight.length) growProbe(probe, stretches.from.length);
  const shift = field.at[axis][other];
  const weight = field.weight[probe.piece * field.total + other];
  const cap = Math.min(level - noFit.low[1 - axis], noFit.high[1 - axis] - level);
  for (let k = before; k < stretches.count; k++) {
    stretches.from[k] += shift;
    stretches.to[k] += shift;
    probe.weight[k] = weight;
    probe.cap[k] = cap;
  }
}

function growProbe(probe: Probe, capacity: number): void {
  probe.weight = lengthened(probe.weight, capacity);
  probe.cap = lengthened(probe.cap, capacity);
  probe.order = new Int32Array(capacity);
}

function sortByStart({ stretches: { from, count }, order }: Probe): void {
  for (let k = 0; k < count; k++) {
    let slot = k;
    const start = from[k];
    while (slot > 0 && from[order[slot - 1]] > start) {
      order[slot] = order[slot - 1];
      slot--;
    }
    order[slot] = k;
  }
}

/** Walks the gaps between blocked stretches; a gap may be a single place. */
function takeFreePlace(probe: Probe): boolean {
  const {
    stretches: { from, to, count },
    order,
    low,
    high,
    wish,
    isSnug,
  } = probe;
  let free = low;
  let nearest = Infinity;
  for (let k = 0; k <= count && free <= high; k++) {
    const end = k < count ? Math.min(from[order[k]], high) : high;
    if (end >= free) {
      const snug = Math.abs(free - wish) <= Math.abs(end - wish) ? free : end;
      const place = isSnug ? snug : Math.max(free, Math.min(wish, end));
      if (Math.abs(place - wish) < nearest) {
        nearest = Math.abs(place - wish);
        probe.place = place;
      }
    }
    if (k < count) free = Math.max(free, to[order[k]]);
  }
  if (nearest === Infinity) return false;
  probe.cost = 0;
  return true;
}

/** Stretches that end before a place can be passed over for all later ones: `passed` of them, in order of their starts. */
function takeCheapestEnd(probe: Probe): void {
  const {
    stretches: { from, to, count },
    order,
    low,
    high,
  } = probe;
  tryPlace(probe, low, 0);
  let passed = 0;
  for (let k = 0; k < count; k++) {
    const one = order[k];
    while (passed < k && to[order[passed]] <= from[one]) passed++;
    if (from[one] > low && from[one] < high) tryPlace(probe, from[one], passed);
    if (to[one] > low && to[one] < high) tryPlace(probe, to[one], passed);
  }
  tryPlace(probe, high, passed);
}

function tryPlace(probe: Probe, place: number, passed: number): void {
  const {
    stretches: { from, to, fromSlack, toSlack, count },
    order,
    weight,
    cap,
  } = probe;
  let cost = 0;
  for (let k = passed; k < count && cost < probe.cost; k++) {
    const one = order[k];
    if (from[one] >= place) break;
    if (to[one] <= place) continue;
    const depth = Math.min(place - from[one] - fromSlack[one], to[one] - place - toSlack[one], cap[one]);
    if (depth > 0) cost += weight[one] * depth;
  }
  if (cost >= probe.cost) return;
  probe.cost = cost;
  probe.place = place;
}

const scratch = new Stretches();

/** How far the moving piece at (dx, dy) from the fixed one must move along an axis to be free of it; 0 when it is free, exactly. */
export function depthAt(noFit: NoFit, dx: number, dy: number): number {
  if (dx <= noFit.low[0] || dx >= noFit.high[0] || dy <= noFit.low[1] || dy >= noFit.high[1]) return 0;
  const level = wayOut(noFit, 0, dx, dy);
  return level === 0 ? 0 : Math.min(level, wayOut(noFit, 1, dy, dx));
}

function wayOut(noFit: NoFit, axis: 0 | 1, place: number, level: number): number {
  scratch.count = 0;
  appendBlocked(noFit.slabs[axis], level, scratch);
  for (let k = 0; k < scratch.count; k++) {
    const { from, to, fromSlack, toSlack } = scratch;
    if (from[k] < place && place < to[k])
      return Math.max(0, Math.min(place - from[k] - fromSlack[k], to[k] - place - toSlack[k]));
  }
  return 0;
}

export function pairDepth(field: Field, one: number, other: number): number {
  const {
    boxLow: [lowX, lowY],
    boxHigh: [highX, highY],
  } = field;
  if (
    lowX[one] >= highX[other] ||
    lowX[other] >= highX[one] ||
    lowY[one] >= highY[other] ||
    lowY[other] >= highY[one]
  )
    return 0;
  const noFit = field.table.between(field.shape[one], field.shape[other]);
  return depthAt(noFit, field.at[0][other] - field.at[0][one], field.at[1][other] - field.at[1][one]);
}

/** Weighted depth of a piece at a place over all others, given up once it reaches `ceiling`. */
export function costAt(field: Field, piece: number, { shape, x, y }: Spot, ceiling: number): number {
  const {
    active,
    total,
    weight,
    at: [xs, ys],
    boxLow: [lowX, lowY],
    boxHigh: [highX, highY],
  } = field;
  const { box } = field.table.shapes[shape];
  const [left, right, bottom, top] = [x + box.minX, x + box.maxX, y + box.minY, y + box.maxY];
  let cost = 0;
  field.work += active;
  for (let other = 0; other < active && cost < ceiling; other++) {
    if (
      lowX[other] >= right ||
      highX[other] <= left ||
      lowY[other] >= top ||
      highY[other] <= bottom ||
      other === piece
    )
      continue;
    const depth = depthAt(field.table.between(field.shape[other], shape), x - xs[other], y - ys[other]);
    if (depth > 0) cost += depth * weight[piece * total + other];
  }
  return cost;
}
