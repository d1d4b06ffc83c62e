import { randomStream, type RandomStream } from '#lib/kernel';
import { placeNext } from './construct.js';
import { Field, Probe, restore, snapshotOf, type Snapshot, type Zone } from './field.js';
import { defaultSettings, separate, type Search, type Settings } from './separate.js';
import type { ShapeSet } from './shapes.js';

/** Pieces for one strip, in grid steps. `shapeOf[piece]` is a shape of the set. */
export interface StripJob {
  readonly set: ShapeSet;
  readonly shapeOf: readonly number[];
  /** Where outlines may lie across the strip. */
  readonly low: readonly [number, number];
  readonly top: number;
  readonly seed: number;
  /** Pairs of pieces that may be looked at. */
  readonly workLimit: number;
  readonly shouldStop: () => boolean;
  readonly settings?: Settings;
  readonly onBetter?: (length: number, work: number) => void;
}

/** A layout free of overlap: where each piece stands and how much strip it takes. */
export interface StripState {
  /** `order[k]` is the piece at place `k` of the snapshot. */
  readonly order: readonly number[];
  readonly snapshot: Snapshot;
  readonly length: number;
  readonly work: number;
}

/** Places all pieces at once, then shortens the strip for as long as the budget lasts; never longer with more work. */
export function solveStrip(job: StripJob): StripState {
  const order = largestFirst(job);
  const field = new Field(job.set.table, 0, order.length);
  const choices = order.map((piece) => job.set.choicesOf[job.shapeOf[piece]]);
  const probe = new Probe();
  field.active = 0;
  const zones = [{ low: job.low, high: [Infinity, job.top] as const }];
  while (field.active < field.total) placeNext(field, { zones, choices, probe, lineLimit: 400 });
  const best = { snapshot: snapshotOf(field), length: lengthOf(field) };
  job.onBetter?.(best.length, field.work);
  const better = shortened(field, { job, choices, probe, random: randomStream(job.seed) }, best);
  return { order, ...better, work: field.work };
}

function largestFirst({ set, shapeOf }: StripJob): readonly number[] {
  const sizeOf = (piece: number): number => {
    const { width, height } = set.table.shapes[set.choicesOf[shapeOf[piece]][0]];
    return width * height;
  };
  return shapeOf.map((_, piece) => piece).sort((p, q) => sizeOf(q) - sizeOf(p) || p - q);
}

function lengthOf(field: Field): number {
  let length = 0;
  for (let piece = 0; piece < field.active; piece++) {
    length = Math.max(length, field.at[0][piece] + field.table.shapes[field.shape[piece]].width);
  }
  return length;
}

interface Shortening {
  readonly job: StripJob;
  readonly choices: readonly (readonly number[])[];
  readonly probe: Probe;
  readonly random: RandomStream;
}

interface Best {
  readonly snapshot: Snapshot;
  readonly length: number;
}

/** Steps of the length, in shares of it: bold while they succeed, finer after failures. */
function shortened(field: Field, with_: Shortening, start: Best): Best {
  const { job } = with_;
  const settings = job.settings ?? defaultSettings;
  let best = start;
  let step = 0.02;
  const isOver = (): boolean => field.work >= job.workLimit || job.shouldStop();
  while (!isOver()) {
    restore(field, best.snapshot);
    const target = Math.floor(best.length * (1 - step));
    squeeze(field, with_, target);
    const patience = Math.min(settings.patience, Math.max(10, Math.round(0.3 / step)));
    const ok = attempt(field, with_, { target, patience }, isOver);
    if (ok) {
      best = { snapshot: snapshotOf(field), length: lengthOf(field) };
      job.onBetter?.(best.length, field.work);
      step = Math.min(step * 1.2, 0.03);
    } else {
      step = Math.max(step / 2, 0.0005);
    }
  }
  return best;
}

/** Everything right of a random line moves left by what the strip loses. */
function squeeze(field: Field, { random, job }: Shortening, target: number): void {
  const loss = lengthOf(field) - target;
  const line = job.low[0] + random() * target;
  for (let piece = 0; piece < field.total; piece++) {
    const { width } = field.table.shapes[field.shape[piece]];
    const x = field.at[0][piece];
    const moved = x + width / 2 > line ? x - loss : x;
    field.at[0][piece] = Math.max(job.low[0], Math.min(moved, target - width));
  }
}

function attempt(field: Field, { job, choices, probe, random }: Shortening, { target, patience }: { readonly target: number; readonly patience: number }, isOver: () => boolean): boolean {
  const zones: readonly Zone[] = [{ low: job.low, high: [target, job.top] }];
  const search: Search = { zones, choices, random, probe, isOver, settings: { ...(job.settings ?? defaultSettings), patience } };
  return separate(field, search);
}
