import { randomStream, type RandomStream } from '#lib/kernel';
import { isClean } from './clean.js';
import { placeNext } from './construct.js';
import { Field, Probe, restore, snapshotOf, type Snapshot, type Zone } from './field.js';
import { defaultSettings, separate, type Search } from './separate.js';
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

/** Step of the length, as a share of it: the first, the largest, the smallest, and one now and then that shakes everything up. */
const steps = { first: 0.02, most: 0.03, least: 0.001, shake: 0.015 } as const;
/** Failures at the smallest step before everything is shaken up. */
const failuresBeforeShake = 2;

/** Bold steps while they succeed, finer ones after failures; after several failures a bold one with much patience. */
function shortened(field: Field, context: Shortening, start: Best): Best {
  const { job } = context;
  let best = start;
  let step: number = steps.first;
  let failures = 0;
  const isOver = (): boolean => field.work >= job.workLimit || job.shouldStop();
  const least = leastLength(field, context);
  while (!isOver() && best.length > least) {
    const isShake = failures >= failuresBeforeShake;
    const better = shorterBy(field, context, { best, step: isShake ? steps.shake * (0.5 + context.random()) : step, patience: isShake ? 400 : 100 }, isOver);
    failures = better === undefined && !isShake ? failures + Number(step === steps.least) : 0;
    step = better === undefined ? Math.max(step / 2, steps.least) : Math.max(steps.least, Math.min((1 - better.length / best.length) * 1.3, steps.most));
    if (better === undefined) continue;
    best = better;
    job.onBetter?.(best.length, field.work);
  }
  return best;
}

/** The piece that is longest in its shortest turn; nothing is shorter. */
const leastLength = (field: Field, { job, choices }: Shortening): number =>
  job.low[0] + Math.max(...choices.map((shapes) => Math.min(...shapes.map((shape) => field.table.shapes[shape].width))));

/** Overlaps that are left over but no deeper than this are rounding; a hair more strip lets them go. */
const hair = 5000;
/** What did not go into the target length is given back half of what was taken away, this many times. */
const halvings = 4;

function shorterBy(
  field: Field, context: Shortening, { best, step, patience }: { readonly best: Best; readonly step: number; readonly patience: number }, isOver: () => boolean,
): Best | undefined {
  restore(field, best.snapshot);
  const target = Math.max(Math.floor(best.length * (1 - step)), leastLength(field, context));
  squeeze(field, context, target);
  let left = attempt(field, context, { target, patience }, isOver);
  for (let wider = 1; left > 0 && left < hair && wider <= 4 && !isOver(); wider++) {
    left = attempt(field, context, { target: target + (wider * hair) / 2, patience: 20 }, isOver);
  }
  for (let room = target, k = 0; left > 0 && k < halvings && !isOver(); k++) {
    room = Math.floor((room + best.length) / 2);
    squeeze(field, context, room);
    left = attempt(field, context, { target: room, patience: patience / 2 }, isOver);
  }
  return left === 0 && lengthOf(field) < best.length && isClean(field) ? { snapshot: snapshotOf(field), length: lengthOf(field) } : undefined;
}

/** Everything right of a random line moves left by what the strip loses, or right by what it gains. */
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

/** Weights that grow fast shake a layout, slow ones settle it; which is wanted differs, so attempts differ. */
const gains = [0.3, 0.5, 0.8, 1.2] as const;

function attempt(
  field: Field, { job, choices, probe, random }: Shortening, { target, patience }: { readonly target: number; readonly patience: number }, isOver: () => boolean,
): number {
  const zones: readonly Zone[] = [{ low: job.low, high: [target, job.top] }];
  const search: Search = { zones, choices, random, probe, isOver, settings: { ...defaultSettings, patience, gain: gains[Math.floor(random() * gains.length)] } };
  return separate(field, search);
}
