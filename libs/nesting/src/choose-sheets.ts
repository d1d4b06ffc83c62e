import { randomStream } from '#lib/kernel';
import { boxedOn, boxedOver } from './boxes.js';
import { LOOKS_PER_EDGE_PAIR } from './no-fit-table.js';
import {
  constructOn,
  fits,
  isBetter,
  isSpent,
  squeezeOn,
  tableOf,
  type Allowed,
  type Budget,
  type Packing,
} from './sheets.js';
import type { SheetJob } from './sheet-job.js';

/** At most this many sets of sheets are compared. */
const mostSets = 4000;
/** Sets of up to this many sheets are searched completely; of more, the last ones only. */
const fewSheets = 6;
const mostSeed = 2 ** 31;
/** Work of the first attempt on a set. Slices do not depend on the budget, so a longer search begins with the shorter one. */
const firstSlice = 3_000_000;
/** A clean fill hardly ever gets more of the sheets than this; fuller sets are left to the search that removes overlaps. */
const likelyFill = 0.92;
/** Pieces moved at once by the search that removes overlaps. */
const mostMoving = 160;

/** Number of the piece kind for each single piece, largest first. */
export function piecesBySize(job: SheetJob): readonly number[] {
  const all = job.pieces.flatMap(({ index, count }) => Array.from({ length: count }, () => index));
  return all.sort((p, q) => job.pieces[q].area - job.pieces[p].area || p - q);
}

/**
 * By bounding boxes first, on one sheet or several; then the outlines are searched, but only for money that is still to be won
 * and only where the work allows to begin. The answer is never dearer than the boxes.
 */
export function choose(job: SheetJob, seed: number, budget: Budget): Packing | undefined {
  const onOne = inBoxes(job);
  if (onOne !== undefined) return onOne;
  const boxed = boxedBest(job);
  if (boxed !== undefined && (!isWithinWork(job, budget) || !isMoneyToBeWon(job, boxed))) return boxed;
  const early = boxed === undefined ? undefined : quicklyCheaper(job, boxed, seed, budget);
  if (early !== undefined && !isMoneyToBeWon(job, early)) return early;
  const first = better(early, quickest(job, early === undefined ? untilPlaced(budget) : within(budget)));
  if (first === undefined) return undefined;
  const tidy = improvedByOrder(job, first, seed, budget);
  return improvedBySets(job, tidy, seed, budget);
}

/** Of the work, what is tried on cheaper sheets before the same sheets are filled in other orders. */
const EARLY_SHARE = 0.25;

/** The cheaper sets of sheets straight away: where the first of them holds the pieces nothing else need be looked at. */
function quicklyCheaper(job: SheetJob, boxed: Packing, seed: number, budget: Budget): Packing {
  const part = { ...budget, workLimit: budget.used + EARLY_SHARE * (budget.workLimit - budget.used) };
  const found = improvedBySets(job, boxed, seed, part);
  budget.used = part.used;
  return found;
}

const better = (one: Packing | undefined, other: Packing | undefined): Packing | undefined =>
  one === undefined || (other !== undefined && isBetter(other, one)) ? other : one;

/** Some set of sheets that is large enough costs less. */
const isMoneyToBeWon = (job: SheetJob, packing: Packing): boolean =>
  betterSets(job, packing, scopeOf(job, packing)).some(({ cost }) => cost < packing.cost);

/** The least that a search does is to look at the largest piece in all its turns beside the most winding shape. */
function isWithinWork({ set }: SheetJob, { workLimit }: Budget): boolean {
  const edgesOf = (shape: number): number => set.table.shapes[shape].outline.outer.length;
  const inAllTurns = set.choicesOf.map((shapes) => shapes.reduce((sum, shape) => sum + edgesOf(shape), 0));
  const most = Math.max(...set.choicesOf.flat().map(edgesOf));
  return LOOKS_PER_EDGE_PAIR * most * Math.max(...inAllTurns) <= workLimit;
}

/** The cheapest of all orders and kinds by boxes alone; each sheet is then changed for a cheaper one that holds the same pieces. */
function boxedBest(job: SheetJob): Packing | undefined {
  const packings = ordersOf(job).flatMap((order) =>
    job.kinds.flatMap((_, kind) => {
      const packing = boxedOver(job, sheetsLedBy(job, kind, order.length), order);
      return packing === undefined ? [] : [cheapened(job, packing)];
    }),
  );
  return packings.reduce<Packing | undefined>((best, packing) => better(best, packing), undefined);
}

/** Free sheets, then one kind, then the others for when it runs out; irregular ones are left to the search. */
function sheetsLedBy(job: SheetJob, kind: number, most: number): readonly number[] {
  const isPlain = (other: number): boolean => job.kinds[other].blocks.length === 0;
  const paid = job.kinds.flatMap(({ stock }, k) => (stock.cost > 0 ? [k] : []));
  const led = [...paid.filter((k) => k === kind), ...paid.filter((k) => k !== kind)];
  const asMany = led.flatMap((k) => Array.from({ length: Math.min(most, job.kinds[k].available) }, () => k));
  return [...freeSheets(job), ...asMany].filter(isPlain);
}

function cheapened(job: SheetJob, packing: Packing): Packing {
  const { sheets } = packing;
  const left = job.kinds.map(
    ({ available }, kind) => available - sheets.filter((one) => one === kind).length,
  );
  const byCost = job.kinds
    .map((_, kind) => kind)
    .sort((p, q) => job.kinds[p].stock.cost - job.kinds[q].stock.cost);
  let now = packing;
  sheets.forEach((kind, sheet) => {
    const order = packing.placed.filter((one) => one.sheet === sheet).map(({ piece }) => piece);
    for (const other of byCost) {
      if (job.kinds[other].stock.cost >= job.kinds[kind].stock.cost) return;
      const own = left[other] > 0 ? boxedOver(job, [other], order) : undefined;
      if (own === undefined) continue;
      left[other]--;
      left[kind]++;
      now = exchanged(job, now, { sheet, kind: other, placed: own.placed });
      return;
    }
  });
  return now;
}

function exchanged(
  job: SheetJob,
  { sheets, placed }: Packing,
  change: { readonly sheet: number; readonly kind: number; readonly placed: Packing['placed'] },
): Packing {
  const kinds = sheets.map((kind, sheet) => (sheet === change.sheet ? change.kind : kind));
  return {
    sheets: kinds,
    placed: [
      ...placed.filter(({ sheet }) => sheet !== change.sheet),
      ...change.placed.map((one) => ({ ...one, sheet: change.sheet })),
    ],
    cost: kinds.reduce((sum, kind) => sum + job.kinds[kind].stock.cost, 0),
    area: kinds.reduce((sum, kind) => sum + job.kinds[kind].area, 0),
  };
}

/** Everything on one of the cheapest sheets by bounding boxes: then nothing can cost less, and no search is needed. */
function inBoxes(job: SheetJob): Packing | undefined {
  const cheapest = job.kinds
    .map((_, kind) => kind)
    .sort(
      (p, q) => job.kinds[p].stock.cost - job.kinds[q].stock.cost || job.kinds[p].area - job.kinds[q].area,
    )[0];
  return boxedOn(job, cheapest, piecesBySize(job));
}

/** Own offcuts and other free sheets come first in every set. */
function freeSheets(job: SheetJob): readonly number[] {
  return job.kinds
    .flatMap(({ stock, available, area }, kind) =>
      stock.cost === 0 && Number.isFinite(available)
        ? Array.from({ length: available }, () => ({ kind, area }))
        : [],
    )
    .sort((p, q) => p.area - q.area)
    .map(({ kind }) => kind);
}

/** Of a construction: a try that may be given up, and the first layout where there is none, which may not. */
const within = (budget: Budget): Allowed => ({ budget, mostWork: budget.workLimit });
const untilPlaced = (budget: Budget): Allowed => ({ budget, mostWork: Infinity });

function quickest(job: SheetJob, allowed: Allowed): Packing | undefined {
  const orders = ordersOf(job);
  const packings = job.kinds.flatMap((_, kind) =>
    orders.slice(0, 1).flatMap((order) => filledWith(job, kind, order, allowed) ?? []),
  );
  return packings.reduce<Packing | undefined>(
    (best, packing) => (best === undefined || isBetter(packing, best) ? packing : best),
    undefined,
  );
}

function ordersOf(job: SheetJob): readonly (readonly number[])[] {
  const byArea = piecesBySize(job);
  const sizeOf = (piece: number, of: (width: number, height: number) => number): number => {
    const { width, height } = job.set.table.shapes[job.set.choicesOf[piece][0]];
    return of(width, height);
  };
  const by = (of: (width: number, height: number) => number): readonly number[] =>
    [...byArea].sort((p, q) => sizeOf(q, of) - sizeOf(p, of) || p - q);
  return [byArea, by(Math.max), by((width) => width), by((_, height) => height)];
}

/** Free sheets, then one kind as often as it takes, then the other kinds when it runs out. */
function filledWith(
  job: SheetJob,
  kind: number,
  order: readonly number[],
  allowed: Allowed,
): Packing | undefined {
  const free = freeSheets(job);
  const area = order.reduce((sum, piece) => sum + job.pieces[piece].area, 0);
  const others = job.kinds.flatMap((other, k) => (k === kind || other.stock.cost === 0 ? [] : [k]));
  const limit = Math.min(order.length, Math.ceil((3 * area) / job.kinds[kind].area) + 2);
  const counts = [Math.min(Math.ceil(area / job.kinds[kind].area) + 1, limit), limit, order.length];
  for (const count of counts) {
    const own = Array.from(
      { length: Math.min(count, job.kinds[kind].stock.cost === 0 ? 0 : job.kinds[kind].available) },
      () => kind,
    );
    const rest = others.flatMap((k) =>
      Array.from({ length: Math.min(count, job.kinds[k].available) }, () => k),
    );
    const packing = constructOn(job, tableOf(job, [...free, ...own, ...rest]), order, allowed);
    if (packing !== undefined) return packing;
  }
  return undefined;
}

/** The same sheets filled in other orders: now and then one sheet less. */
function improvedByOrder(job: SheetJob, start: Packing, seed: number, budget: Budget): Packing {
  const random = randomStream(seed);
  const byArea = ordersOf(job)[0];
  const swaps = Array.from({ length: 6 }, () => slightlyShuffled(byArea, random));
  let best = start;
  for (const order of [...ordersOf(job).slice(1), ...swaps]) {
    if (isSpent(budget)) return best;
    const packing = constructOn(job, tableOf(job, best.sheets), order, within(budget));
    if (packing !== undefined && isBetter(packing, best)) best = packing;
  }
  return best;
}

/** Neighbours in size change places, so that large still comes before small. */
function slightlyShuffled(order: readonly number[], random: () => number): readonly number[] {
  const place = order.map((piece, k) => ({ piece, at: k + random() * Math.max(3, order.length / 4) }));
  return place.sort((p, q) => p.at - q.at).map(({ piece }) => piece);
}

/** Sets of sheets that cost less (or as much and are smaller), cleanly first, then by removing overlaps; the roomiest first. */
function improvedBySets(job: SheetJob, start: Packing, seed: number, budget: Budget): Packing {
  let best = start;
  const scope = scopeOf(job, best);
  const sets = betterSets(job, best, scope);
  for (const set of sets) {
    if (isSpent(budget)) return best;
    if (!isBetter({ ...best, ...set }, best) || set.fill > likelyFill) continue;
    const packing = tried(job, scope, set.sheets, budget);
    if (packing !== undefined && isBetter(packing, best)) best = packing;
  }
  return squeezed(job, { best, scope, sets, seed }, budget);
}

/** The part of a packing that is up for change: all of it, or its last few sheets when there are many. */
interface Scope {
  readonly kept: Packing;
  readonly order: readonly number[];
}

function scopeOf(job: SheetJob, { sheets, placed }: Packing): Scope {
  const most =
    placed.length > mostMoving || sheets.length > fewSheets ? Math.min(2, sheets.length) : sheets.length;
  const from = sheets.length - most;
  const kept = placed.filter(({ sheet }) => sheet < from);
  const moving = placed.filter(({ sheet }) => sheet >= from).map(({ piece }) => piece);
  const keptKinds = sheets.slice(0, from).map((kind) => job.kinds[kind]);
  return {
    kept: {
      sheets: sheets.slice(0, from),
      placed: kept,
      cost: keptKinds.reduce((sum, { stock }) => sum + stock.cost, 0),
      area: keptKinds.reduce((sum, { area }) => sum + area, 0),
    },
    order: moving.sort((p, q) => job.pieces[q].area - job.pieces[p].area || p - q),
  };
}

const joined = ({ kept }: Scope, part: Packing): Packing => ({
  sheets: [...kept.sheets, ...part.sheets],
  placed: [...kept.placed, ...part.placed.map((one) => ({ ...one, sheet: one.sheet + kept.sheets.length }))],
  cost: kept.cost + part.cost,
  area: kept.area + part.area,
});

function tried(job: SheetJob, scope: Scope, sheets: readonly number[], budget: Budget): Packing | undefined {
  const packing = constructOn(job, tableOf(job, sheets), scope.order, within(budget));
  return packing && joined(scope, packing);
}

interface SheetSet {
  readonly sheets: readonly number[];
  readonly cost: number;
  readonly area: number;
  /** Share of the sheets that the pieces in scope cover. */
  readonly fill: number;
}

/** Sets for the pieces in scope that are large enough and better than the best, cheapest first. */
function betterSets(job: SheetJob, best: Packing, { kept, order }: Scope): readonly SheetSet[] {
  const need = order.reduce((sum, piece) => sum + job.pieces[piece].area, 0);
  const left = job.kinds.map(
    ({ available }, kind) => available - kept.sheets.filter((sheet) => sheet === kind).length,
  );
  const found: SheetSet[] = [];
  const extend = (kind: number, set: SheetSet): void => {
    if (found.length >= mostSets || set.sheets.length > order.length) return;
    if (!isBetter({ ...best, cost: set.cost + kept.cost, area: set.area + kept.area }, best)) return;
    if (kind === job.kinds.length) {
      if (set.area >= need && canHoldEach(job, set, order)) found.push({ ...set, fill: need / set.area });
      return;
    }
    const { stock, area } = job.kinds[kind];
    const most = Math.min(left[kind], Math.ceil(need / area) + 2);
    for (let count = 0; count <= most; count++) {
      const sheets = Array.from({ length: count }, () => kind);
      extend(kind + 1, {
        sheets: [...set.sheets, ...sheets],
        cost: set.cost + count * stock.cost,
        area: set.area + count * area,
        fill: 0,
      });
    }
  };
  extend(0, { sheets: [], cost: 0, area: 0, fill: 0 });
  return found
    .map((set) => ({
      ...set,
      cost: set.cost + kept.cost,
      area: set.area + kept.area,
      sheets: freeFirst(job, set.sheets),
    }))
    .sort((p, q) => p.cost - q.cost || p.area - q.area);
}

const freeFirst = (job: SheetJob, sheets: readonly number[]): readonly number[] =>
  [...sheets].sort(
    (p, q) =>
      Number(job.kinds[p].stock.cost > 0) - Number(job.kinds[q].stock.cost > 0) ||
      job.kinds[q].area - job.kinds[p].area,
  );

function canHoldEach(job: SheetJob, { sheets }: SheetSet, order: readonly number[]): boolean {
  const { zones } = tableOf(job, [...new Set(sheets)]);
  return [...new Set(order)].every((piece) =>
    job.set.choicesOf[piece].some((shape) => zones.some((zone) => fits(job.set, zone, shape))),
  );
}

/** The rest of the budget goes to sets that a clean fill could not do, the one with most room first. */
function squeezed(
  job: SheetJob,
  {
    best: start,
    scope,
    sets,
    seed,
  }: {
    readonly best: Packing;
    readonly scope: Scope;
    readonly sets: readonly SheetSet[];
    readonly seed: number;
  },
  budget: Budget,
): Packing {
  let best = start;
  if (scope.order.length > mostMoving) return best;
  const random = randomStream(seed + 1);
  for (let slice = firstSlice; !isSpent(budget); slice *= 2) {
    const open = sets.filter((set) => isBetter({ ...best, ...set }, best)).sort((p, q) => q.area - p.area);
    if (open.length === 0) return best;
    for (const set of open) {
      if (isSpent(budget) || !isBetter({ ...best, ...set }, best)) continue;
      const order = scope.order;
      const packing = squeezeOn(
        job,
        tableOf(job, set.sheets),
        { order, seed: Math.floor(random() * mostSeed), workLimit: slice },
        budget,
      );
      if (packing !== undefined && isBetter(joined(scope, packing), best)) best = joined(scope, packing);
    }
  }
  return best;
}
