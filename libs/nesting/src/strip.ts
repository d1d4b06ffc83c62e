import { randomStream } from '#lib/kernel';
import { placeNext } from './construct.js';
import { Field, Probe, snapshotOf, type Snapshot } from './field.js';
import { lengthOf, shortened } from './shorten.js';
import type { StripJob } from './strip-job.js';

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
  const placing = { zones, choices, probe, lineLimit: 400, reached: new Map<string, number>() };
  while (field.active < field.total) placeNext(field, placing);
  const best = { snapshot: snapshotOf(field), length: lengthOf(field) };
  job.onBetter?.(best.length, field.work);
  const isOver = (): boolean => field.work >= job.workLimit || job.shouldStop();
  const better = shortened({ job, field, choices, probe, random: randomStream(job.seed), isOver }, best);
  return { order, ...better, work: field.work };
}

function largestFirst({ set, shapeOf }: StripJob): readonly number[] {
  const sizeOf = (piece: number): number => {
    const { width, height } = set.table.shapes[set.choicesOf[shapeOf[piece]][0]];
    return width * height;
  };
  return shapeOf.map((_, piece) => piece).sort((p, q) => sizeOf(q) - sizeOf(p) || p - q);
}
