import { isClean } from './clean.js';
import { restore, snapshotOf, type Field, type Snapshot, type Zone } from './field.js';
import { defaultSettings, separate, type Search } from './separate.js';
import type { Shortening } from './strip-job.js';
import { swapLarge } from './swap-large.js';

/** A layout free of overlap. */
export interface Shorter {
  readonly snapshot: Snapshot;
  readonly length: number;
}

/** Step of the length, as a share of it: the first, the largest, the first after a change, the smallest. */
const steps = { first: 0.03, most: 0.03, again: 0.005, least: 0.001 } as const;

/**
 * Shortens for as long as the budget lasts: down by steps until even the smallest fail; then by turns a bold step in which
 * large pieces change places, and a change of places with room to spare, and down again from there. A layout that comes out
 * hardly longer than the best is gone on from too, since few ways lead straight down. What is done does not depend on the
 * budget, so more work only goes further along the same way, and the best is kept.
 *
 * Source: [GARDEYN-2025] two phases, swaps of large pieces between attempts on one length; [DUECK-1993] record-to-record travel
 */
export function shortened(context: Shortening, start: Shorter): Shorter {
  const least = leastLength(context);
  let best = descended(context, start, steps.first);
  let current = best;
  context.job.onBetter?.(best.length, context.field.work);
  for (let isBold = true; !context.isOver() && best.length > least; isBold = !isBold) {
    const changed = isBold ? explored(context, current) : loosened(context, current);
    if (changed === undefined) continue;
    const found = descended(context, changed, steps.again);
    if (found.length < best.length) context.job.onBetter?.(found.length, context.field.work);
    best = found.length < best.length ? found : best;
    current = found.length <= best.length * (1 + detour) ? found : best;
  }
  return best;
}

/** How much longer than the best a layout may be, as a share of it, and still be gone on from. */
const detour = 0.005;

export function lengthOf(field: Field): number {
  let length = 0;
  for (let piece = 0; piece < field.active; piece++) {
    length = Math.max(length, field.at[0][piece] + field.table.shapes[field.shape[piece]].width);
  }
  return length;
}

/** The piece that is longest in its shortest turn; nothing is shorter. */
const leastLength = ({ field, job, choices }: Shortening): number =>
  job.low[0] +
  Math.max(...choices.map((shapes) => Math.min(...shapes.map((shape) => field.table.shapes[shape].width))));

/** Failures at the smallest step that end a descent. */
const mostFailures = 2;

/** Steps as bold as the last one's gain, finer ones after failures. */
function descended(context: Shortening, start: Shorter, firstStep: number): Shorter {
  const least = leastLength(context);
  let best = start;
  let step = firstStep;
  for (let failures = 0; failures < mostFailures && best.length > least && !context.isOver();) {
    const better = shorterBy(context, best, step);
    failures = better === undefined ? failures + Number(step === steps.least) : 0;
    step =
      better === undefined
        ? Math.max(step / 2, steps.least)
        : Math.max(steps.least, Math.min((1 - better.length / best.length) * 1.3, steps.most));
    best = better ?? best;
  }
  return best;
}

/**
 * How long attempts go on without progress, and how often each begins afresh: at each step down, at a bold step, where part
 * of a step is given back, and for a hair. Short ones: one that has not closed after fifty passes seldom does, and for the
 * same work another one begins elsewhere.
 */
const efforts = {
  down: { patience: 40, rounds: 1 },
  bold: { patience: 50, rounds: 1 },
  back: { patience: 25, rounds: 1 },
  hair: { patience: 20, rounds: 1 },
} as const;

type Effort = Pick<Search['settings'], 'patience' | 'rounds'>;

function shorterBy(context: Shortening, best: Shorter, step: number): Shorter | undefined {
  restore(context.field, best.snapshot);
  const target = squeezedTo(context, best, step);
  return (
    attempt(context, best, target, efforts.down).better ?? onTheWayBack(context, best, target, efforts.back)
  );
}

/** Bold steps as shares of the length: small ones suit many pieces, large ones few, so each size is as likely as its double. */
const boldSteps = { least: 0.001, most: 0.008 } as const;

const boldStep = ({ random }: Shortening): number =>
  boldSteps.least * (boldSteps.most / boldSteps.least) ** random();

/** Bold steps from the best layout and from what they gain, until one fails altogether; nothing when the first does. */
function explored(context: Shortening, start: Shorter): Shorter | undefined {
  restore(context.field, start.snapshot);
  for (let best = start; ;) {
    const target = squeezedTo(context, best, boldStep(context));
    const better = withSwaps(context, best, target) ?? onTheWayBack(context, best, target, efforts.back);
    if (better === undefined) return best === start ? undefined : best;
    best = better;
  }
}

/** Room that a change of places is given, as a share of the length, and how many pairs change places at most. */
const spare = 0.015;
const mostSwaps = 3;

/** The best layout with some large pieces exchanged, free of overlap again on a somewhat longer strip. */
function loosened(context: Shortening, best: Shorter): Shorter | undefined {
  const { field, random } = context;
  restore(field, best.snapshot);
  const target = Math.floor(best.length * (1 + spare));
  squeeze(context, target);
  for (let swaps = 1 + Math.floor(random() * mostSwaps); swaps > 0; swaps--) swapLarge(context, target);
  return attempt(context, { ...best, length: Infinity }, target, efforts.down).better;
}

/** Attempts at one bold step. */
const mostTries = 12;

interface Try {
  readonly left: number;
  readonly snapshot: Snapshot;
}

/** Attempts at one length, each from one of the better ones before with large pieces exchanged; leaves the field at the best of them. */
function withSwaps(context: Shortening, best: Shorter, target: number): Shorter | undefined {
  const { field, random } = context;
  let tries: readonly Try[] = [];
  while (tries.length < mostTries) {
    const { left, better } = attempt(context, best, target, efforts.bold);
    if (better !== undefined) return better;
    if (context.isOver()) return undefined;
    tries = [...tries, { left, snapshot: snapshotOf(field) }].sort((p, q) => p.left - q.left);
    restore(field, tries[Math.floor(tries.length * random() ** 2)].snapshot);
    if (tries.length < mostTries) swapLarge(context, target);
  }
  restore(field, tries[0].snapshot);
  return undefined;
}

/** What did not go into a length is given back half of what was taken away, this many times. */
const halvings = 4;

function onTheWayBack(context: Shortening, best: Shorter, from: number, effort: Effort): Shorter | undefined {
  for (let room = from, k = 0; k < halvings && !context.isOver(); k++) {
    room = Math.floor((room + best.length) / 2);
    squeeze(context, room);
    const { better } = attempt(context, best, room, effort);
    if (better !== undefined) return better;
  }
  return undefined;
}

/** The shorter length to aim at; everything has moved together accordingly. */
function squeezedTo(context: Shortening, best: Shorter, step: number): number {
  const target = Math.max(Math.floor(best.length * (1 - step)), leastLength(context));
  squeeze(context, target);
  return target;
}

/** Everything right of a random line moves left by what the strip loses, or right by what it gains. */
function squeeze({ field, random, job }: Shortening, target: number): void {
  const loss = lengthOf(field) - target;
  const line = job.low[0] + random() * target;
  for (let piece = 0; piece < field.total; piece++) {
    const { width } = field.table.shapes[field.shape[piece]];
    const x = field.at[0][piece];
    const moved = x + width / 2 > line ? x - loss : x;
    field.moveTo(piece, Math.max(job.low[0], Math.min(moved, target - width)), field.at[1][piece]);
  }
}

/** How much overlap an attempt left, and the layout when there is none and it is shorter than the best. */
interface Attempt {
  readonly left: number;
  readonly better?: Shorter;
}

/** Overlaps that are left over but no deeper than this are rounding; a hair more strip lets them go. */
const hair = 5000;
const mostHairs = 4;

function attempt(context: Shortening, best: Shorter, target: number, effort: Effort): Attempt {
  const { field } = context;
  let left = parted(context, target, effort);
  for (let wider = 1; left > 0 && left < hair && wider <= mostHairs && !context.isOver(); wider++) {
    left = parted(context, target + (wider * hair) / 2, efforts.hair);
  }
  if (left > 0 || lengthOf(field) >= best.length || !isClean(field)) return { left };
  return { left, better: { snapshot: snapshotOf(field), length: lengthOf(field) } };
}

/** Weights that grow fast shake a layout, slow ones settle it; which is wanted differs, so attempts differ. */
const gains = [0.3, 0.5, 0.8, 1.2] as const;

function parted(
  { field, job, choices, probe, random, isOver }: Shortening,
  target: number,
  effort: Effort,
): number {
  const zones: readonly Zone[] = [{ low: job.low, high: [target, job.top] }];
  return separate(field, {
    zones,
    choices,
    random,
    probe,
    isOver,
    settings: { ...defaultSettings, ...effort, gain: gains[Math.floor(random() * gains.length)] },
  });
}
