import type { RandomStream } from '#lib/kernel';
import {
  costAt,
  pairDepth,
  restore,
  seekOnLine,
  snapshotOf,
  type Field,
  type Probe,
  type Snapshot,
  type Spot,
  type Zone,
} from './field.js';

/** What a search may do: where pieces may lie, in which turns, and when it must end. */
export interface Search {
  readonly zones: readonly Zone[];
  /** For each piece of the field, the turned shapes it may take. */
  readonly choices: readonly (readonly number[])[];
  readonly random: RandomStream;
  readonly probe: Probe;
  /** True when the budget is used up or the caller has asked to stop. */
  readonly isOver: () => boolean;
  readonly settings: Settings;
}

/** How hard one search tries; found by trial on published strips. */
export interface Settings {
  /** Lines sampled for each move. */
  readonly lines: number;
  /** Places on them that are followed up. */
  readonly keep: number;
  /** Passes without progress after which a round ends. */
  readonly patience: number;
  /** Rounds without progress after which the search ends. */
  readonly rounds: number;
  /** How fast a pair that overlaps gains weight, and how fast one that does not loses it. */
  readonly gain: number;
  readonly decay: number;
  /** Lines followed from one place at most. */
  readonly legs: number;
}

export const defaultSettings: Settings = {
  lines: 4,
  keep: 1,
  patience: 100,
  rounds: 1,
  gain: 0.4,
  decay: 0.93,
  legs: 6,
};

/**
 * What a pair weighs at the least: as much as its smaller piece is large, against the mean. Large pieces that overlap are
 * hard to part and so are parted first; small ones find room afterwards.
 */
function leastWeights(field: Field): Float64Array {
  const sizes = Array.from(field.shape, (shape) =>
    Math.sqrt(field.table.shapes[shape].width * field.table.shapes[shape].height),
  );
  const mean = sizes.reduce((sum, size) => sum + size, 0) / sizes.length;
  return Float64Array.from(
    { length: field.total * field.total },
    (_, k) => Math.min(sizes[Math.floor(k / field.total)], sizes[k % field.total]) / mean,
  );
}

/** Depth of each pair and its sum, kept up to date as pieces move. */
class Overlaps {
  readonly depth: Float64Array;
  readonly least: Float64Array;
  constructor(private readonly field: Field) {
    this.least = leastWeights(field);
    field.weight.set(this.least);
    this.depth = new Float64Array(field.total * field.total);
    for (let piece = field.fixed; piece < field.total; piece++) this.refresh(piece);
  }

  refresh(piece: number): void {
    const {
      depth,
      field: { total },
    } = this;
    for (let other = 0; other < total; other++) {
      if (other === piece) continue;
      const value = pairDepth(this.field, other, piece);
      depth[piece * total + other] = value;
      depth[other * total + piece] = value;
    }
  }

  ofPiece(piece: number): number {
    const {
      depth,
      field: { total },
    } = this;
    let sum = 0;
    for (let k = piece * total; k < (piece + 1) * total; k++) sum += depth[k] * this.least[k];
    return sum;
  }

  sum(): number {
    let sum = 0;
    for (let k = 0; k < this.depth.length; k++) sum += this.depth[k] * this.least[k];
    return sum / 2;
  }

  /** Pairs that overlap matter more from now on, the deepest most; the others slowly matter less. */
  reweigh({ gain, decay }: Settings): void {
    const {
      depth,
      field: { weight },
    } = this;
    let deepest = 0;
    for (let k = 0; k < depth.length; k++) deepest = Math.max(deepest, depth[k]);
    for (let k = 0; k < depth.length; k++) {
      weight[k] =
        depth[k] > 0
          ? weight[k] * (1 + gain * (0.25 + (0.75 * depth[k]) / deepest))
          : Math.max(this.least[k], weight[k] * decay);
    }
  }
}

/**
 * Moves overlapping pieces, one at a time, to where they overlap least, pair weights growing where overlap persists, until
 * nothing overlaps. Answers how much overlap is left, in grid steps; the field holds the least overlapped state it met.
 *
 * Source: [EGEBLAD-2007], [UMETANI-2009] guided local search on pair weights; [GARDEYN-2025] for the schedule of rounds
 */
export function separate(field: Field, search: Search): number {
  const overlaps = new Overlaps(field);
  field.work += field.total * field.total;
  let best = { sum: overlaps.sum(), state: snapshotOf(field) };
  for (let round = 0; round < search.settings.rounds && best.sum > 0 && !search.isOver(); round++) {
    const reached = runRound(field, search, overlaps, best);
    const isProgress = reached.sum < best.sum * 0.98;
    best = reached.sum < best.sum ? reached : best;
    restore(field, best.state);
    for (let piece = field.fixed; piece < field.total; piece++) overlaps.refresh(piece);
    if (isProgress) round = -1;
  }
  return best.sum;
}

interface Reached {
  readonly sum: number;
  readonly state: Snapshot;
}

function runRound(field: Field, search: Search, overlaps: Overlaps, start: Reached): Reached {
  let best = start;
  let idle = 0;
  while (idle < search.settings.patience && best.sum > 0 && !search.isOver()) {
    moveAll(field, search, overlaps);
    const sum = overlaps.sum();
    idle = sum < best.sum * 0.98 ? 0 : idle + 1;
    if (sum < best.sum) best = { sum, state: snapshotOf(field) };
    overlaps.reweigh(search.settings);
  }
  return best;
}

function moveAll(field: Field, search: Search, overlaps: Overlaps): void {
  for (const piece of shuffled(overlapping(field, overlaps), search.random)) {
    if (search.isOver()) return;
    if (overlaps.ofPiece(piece) > 0 && relocate(field, search, piece)) overlaps.refresh(piece);
  }
}

const overlapping = (field: Field, overlaps: Overlaps): number[] =>
  Array.from({ length: field.total - field.fixed }, (_, k) => field.fixed + k).filter(
    (piece) => overlaps.ofPiece(piece) > 0,
  );

export function shuffled(list: readonly number[], random: RandomStream): number[] {
  const result = [...list];
  for (let i = result.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [result[i], result[j]] = [result[j], result[i]];
  }
  return result;
}

interface Candidate {
  readonly spot: Spot;
  readonly cost: number;
}

/** Puts the piece where it costs least among places found on sampled lines; stays when nothing is better. */
export function relocate(field: Field, search: Search, piece: number): boolean {
  const here = field.spotOf(piece);
  const cost = costAt(field, piece, here, Infinity);
  if (cost === 0) return false;
  const found = sampled(field, search, piece, { spot: here, cost });
  let best: Candidate = { spot: here, cost };
  for (const candidate of found) {
    if (best.cost === 0) break;
    const settled = settledFrom(field, search, piece, candidate);
    if (settled.cost < best.cost) best = settled;
  }
  if (best.cost >= cost) return false;
  field.put(piece, best.spot);
  return true;
}

/** The best few places on lines through the whole zone, and the piece's own place. */
function sampled(field: Field, search: Search, piece: number, here: Candidate): readonly Candidate[] {
  const found: Candidate[] = [];
  const {
    settings: { lines, keep },
    random,
  } = search;
  const choices = search.choices[piece];
  const count = Math.max(lines, 2 * choices.length) * search.zones.length;
  for (let k = 0; k < count; k++) {
    const shape = choices[k % choices.length];
    const zone = search.zones.length === 1 ? 0 : k % search.zones.length;
    const axis = random() < 0.5 ? 0 : 1;
    const level = levelFor(field, search, { piece, shape, axis, zone });
    if (level === undefined) continue;
    const ceiling = found.length < keep ? Infinity : found[found.length - 1].cost;
    const candidate = onLine(field, search, { piece, shape, axis, zone, level }, ceiling);
    if (candidate === undefined) continue;
    if (candidate.cost === 0) return [candidate];
    found.push(candidate);
    found.sort((p, q) => p.cost - q.cost);
    found.length = Math.min(found.length, keep);
  }
  return [here, ...found];
}

interface Line {
  readonly piece: number;
  readonly shape: number;
  readonly axis: 0 | 1;
  readonly zone: number;
  readonly level: number;
}

/** Half the lines are anywhere, half touch another piece's corner exactly. */
function levelFor(
  field: Field,
  search: Search,
  { piece, shape, axis, zone }: Omit<Line, 'level'>,
): number | undefined {
  const [low, high] = levelsOf(field, search, shape, { zone, axis });
  if (low > high) return undefined;
  const { random } = search;
  const anywhere = Math.floor(low + random() * (high - low + 1));
  if (random() < 0.5) return anywhere;
  const other = Math.floor(random() * field.active);
  if (other === piece) return random() < 0.5 ? low : high;
  const heights = field.table.between(field.shape[other], shape).slabs[axis].height;
  const level = field.at[1 - axis][other] + heights[Math.floor(random() * heights.length)];
  return level >= low && level <= high ? level : anywhere;
}

/** Range of the coordinate across the axis for a shape in a zone. */
function levelsOf(
  field: Field,
  search: Search,
  shape: number,
  { zone, axis }: Pick<Line, 'zone' | 'axis'>,
): readonly [number, number] {
  const { low, high } = search.zones[zone];
  const { width, height } = field.table.shapes[shape];
  return axis === 0 ? [low[1], high[1] - height] : [low[0], high[0] - width];
}

/** The cheapest place on a line when it costs less than `ceiling`. */
function onLine(field: Field, search: Search, line: Line, ceiling: number): Candidate | undefined {
  const { probe, random } = search;
  const { piece, shape, axis, zone, level } = line;
  const [low, high] = levelsOf(field, search, shape, { zone, axis: axis === 0 ? 1 : 0 });
  aim(probe, line);
  probe.low = low;
  probe.high = high;
  probe.wish = low + random() * (high - low);
  probe.ceiling = ceiling;
  seekOnLine(field, probe);
  if (probe.cost >= ceiling) return undefined;
  const spot =
    axis === 0 ? { shape, x: probe.place, y: level, zone } : { shape, x: level, y: probe.place, zone };
  const cost = probe.cost === 0 ? 0 : costAt(field, piece, spot, ceiling);
  return cost < ceiling ? { spot, cost } : undefined;
}

function aim(probe: Probe, { piece, shape, axis, level }: Line): void {
  probe.piece = piece;
  probe.shape = shape;
  probe.axis = axis;
  probe.level = level;
}

/** Gains of less than a thousandth are not followed: they would be halved for ever. */
const clearly = 0.999;

/** Follows lines in x and y in turn for as long as that makes the place clearly cheaper. */
function settledFrom(field: Field, search: Search, piece: number, start: Candidate): Candidate {
  let best = start;
  let failures = 0;
  let axis: 0 | 1 = 0;
  for (let k = 0; k < search.settings.legs && failures < 2 && best.cost > 0; k++) {
    const { shape, x, y, zone } = best.spot;
    const better = onLine(
      field,
      search,
      { piece, shape, axis, zone, level: axis === 0 ? y : x },
      best.cost * clearly,
    );
    failures = better === undefined ? failures + 1 : 0;
    best = better ?? best;
    axis = axis === 0 ? 1 : 0;
  }
  return best;
}
