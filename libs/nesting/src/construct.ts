import { Defect } from '#lib/kernel';
import { seekFree, type Field, type Probe, type Spot, type Zone } from './field.js';

/** What a piece may be and where it may go, in the order it is to be placed. */
export interface Placing {
  readonly zones: readonly Zone[];
  readonly choices: readonly (readonly number[])[];
  readonly probe: Probe;
  /** Lines tried for one piece in one turn at most; the rest are thinned out evenly. */
  readonly lineLimit: number;
  /** By zone and shape, the line on which the last one found its place: a field only gets fuller, so the next looks from there. */
  readonly reached: Map<string, number>;
}

/** Places the next piece as far left, then as far down, as it goes; answers false when no zone has room. */
export function placeNext(field: Field, placing: Placing): boolean {
  const piece = field.active;
  for (let zone = 0; zone < placing.zones.length; zone++) {
    const spot = leftmostIn(field, placing, piece, zone);
    if (spot === undefined) continue;
    field.put(piece, spot);
    field.active++;
    return true;
  }
  return false;
}

/** Of all turns the one whose right edge comes out furthest left. */
export function leftmostIn(field: Field, placing: Placing, piece: number, zone: number): Spot | undefined {
  let best: Spot | undefined;
  let reach = Infinity;
  for (const shape of placing.choices[piece]) {
    const spot = leftmostOf(field, placing, { piece, shape, zone }, reach);
    if (spot === undefined) continue;
    const right = spot.x + field.table.shapes[shape].width;
    if (right > reach || (right === reach && best !== undefined && spot.y >= best.y)) continue;
    best = spot;
    reach = right;
  }
  return best;
}

interface Trial {
  readonly piece: number;
  readonly shape: number;
  readonly zone: number;
}

function leftmostOf(field: Field, placing: Placing, trial: Trial, reach: number): Spot | undefined {
  const { low, high } = placing.zones[trial.zone];
  const { width, height } = field.table.shapes[trial.shape];
  const key = `${trial.zone}/${trial.shape}`;
  const start = placing.reached.get(key) ?? low[0];
  if (start > high[0] - width) return undefined;
  for (const x of linesFor(field, placing, trial, start)) {
    if (x + width > reach) return undefined;
    const y = freeOn(field, placing, { ...trial, axis: 1, level: x, low: low[1], high: high[1] - height });
    if (y === undefined) continue;
    placing.reached.set(key, x);
    return pushedBack(field, placing, { ...trial, x, y });
  }
  placing.reached.set(key, Infinity);
  return undefined;
}

/** Upright lines at and right of `start` on which something touches something: corners of no-fit regions. */
function linesFor(
  field: Field,
  { zones, lineLimit }: Placing,
  { piece, shape, zone }: Trial,
  start: number,
): readonly number[] {
  const limit = zones[zone].high[0] - field.table.shapes[shape].width;
  const lines = new Set([start]);
  for (let other = 0; other < field.active; other++) {
    if (other === piece || (field.zone[other] !== zone && other >= field.fixed)) continue;
    const from = field.at[0][other];
    if (field.boxHigh[0][other] + field.table.shapes[shape].width < start) continue;
    for (const x of field.table.between(field.shape[other], shape).slabs[1].height) {
      if (from + x > start && from + x <= limit) lines.add(from + x);
    }
  }
  const sorted = Float64Array.from(lines).sort();
  const step = Math.ceil(sorted.length / lineLimit);
  return step === 1
    ? Array.from(sorted)
    : Array.from(sorted).filter((_, k) => k % step === 0 || k === sorted.length - 1);
}

/** Slides left and down along free places, by jumps, until neither helps. */
function pushedBack(field: Field, placing: Placing, start: Spot & Trial): Spot {
  const { low, high } = placing.zones[start.zone];
  const { width, height } = field.table.shapes[start.shape];
  let [x, y] = [start.x, start.y];
  for (;;) {
    const left = freeOn(field, placing, { ...start, axis: 0, level: y, low: low[0], high: high[0] - width });
    const down = freeOn(field, placing, {
      ...start,
      axis: 1,
      level: left ?? x,
      low: low[1],
      high: high[1] - height,
    });
    if (left === undefined || down === undefined)
      throw new Defect('A free place was lost while a piece was pushed back');
    if (left === x && down === y) return { shape: start.shape, x, y, zone: start.zone };
    [x, y] = [left, down];
  }
}

/** The lowest free place on a line. */
function freeOn(
  field: Field,
  { probe }: Placing,
  {
    piece,
    shape,
    axis,
    level,
    low,
    high,
  }: Trial & { readonly axis: 0 | 1; readonly level: number; readonly low: number; readonly high: number },
): number | undefined {
  Object.assign(probe, { piece, shape, axis, level, low, high, wish: low });
  return seekFree(field, probe) ? probe.place : undefined;
}
