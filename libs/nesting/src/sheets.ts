import { randomStream, type RandomStream } from '#lib/kernel';
import { isClean } from './clean.js';
import { placeNext } from './construct.js';
import { Field, Probe, type Spot, type Zone } from './field.js';
import { defaultSettings, separate } from './separate.js';
import type { SheetJob, SheetKind } from './sheet-job.js';

/** Sheets side by side on one long table, one zone each; what overlaps between sheets cannot be. */
export interface Table {
  /** Numbers of sheet kinds, in the order in which they are filled. */
  readonly sheets: readonly number[];
  readonly left: readonly number[];
  readonly zones: readonly Zone[];
}

/** Where every piece lies. `sheets` holds only sheets that are cut. */
export interface Packing {
  readonly sheets: readonly number[];
  readonly placed: readonly PlacedPiece[];
  readonly cost: number;
  readonly area: number;
}

export interface PlacedPiece {
  /** Number of the piece kind. */
  readonly piece: number;
  /** Place of its sheet in `sheets`. */
  readonly sheet: number;
  readonly shape: number;
  /** Reference point on that sheet. */
  readonly x: number;
  readonly y: number;
}

export interface Budget {
  readonly workLimit: number;
  readonly shouldStop: () => boolean;
  used: number;
}

/** A construction and the work, counted from the start, after which it is given up. */
export interface Allowed {
  readonly budget: Budget;
  readonly mostWork: number;
}

export const isSpent = (budget: Budget): boolean => budget.used >= budget.workLimit || budget.shouldStop();

/** Cheaper first, then less material. */
export const isBetter = (one: Packing, other: Packing): boolean =>
  one.cost < other.cost || (one.cost === other.cost && one.area < other.area);

/** Wider than any piece or block reaches, so that nothing on one sheet touches anything on another. */
const gapBetweenSheets = 5e7;

export function tableOf(job: SheetJob, sheets: readonly number[]): Table {
  const rooms = sheets.map((kind) => job.kinds[kind].room);
  const left = rooms.map(({ minX }, k) => k * gapBetweenSheets - minX);
  const zones = rooms.map(({ minX, minY, maxX, maxY }, k): Zone => ({
    low: [left[k] + minX, minY],
    high: [left[k] + maxX, maxY],
  }));
  return { sheets, left, zones };
}

/** Pairs looked at on a field, and what the no-fit regions took that were computed for it. */
function meterOf(field: Field): () => number {
  const before = field.table.built;
  return () => field.work + field.table.built - before;
}

/** Places pieces in the given order on the sheets in theirs; nothing when they do not all go, or not within `mostWork`. */
export function constructOn(
  job: SheetJob,
  table: Table,
  order: readonly number[],
  { budget, mostWork }: Allowed,
): Packing | undefined {
  const field = fieldOf(job, table, order.length);
  const spent = meterOf(field);
  const probe = new Probe();
  const choices = choicesFor(job, field, order);
  const placing = { zones: table.zones, choices, probe, lineLimit: 300, reached: new Map<string, number>() };
  let isComplete = true;
  while (field.active < field.total && isComplete)
    isComplete = budget.used + spent() <= mostWork && placeNext(field, placing);
  budget.used += spent();
  return isComplete && isClean(field) ? packingOf(job, table, field, order) : undefined;
}

/** A field with the sheets' own blocks fixed at its start. */
function fieldOf(job: SheetJob, table: Table, count: number): Field {
  const blocks = table.sheets.flatMap((kind, k) =>
    job.kinds[kind].blocks.map((block): Spot => ({
      shape: block.shape,
      x: block.x + table.left[k],
      y: block.y,
      zone: k,
    })),
  );
  const field = new Field(job.set.table, blocks.length, blocks.length + count);
  blocks.forEach((block, k) => field.put(k, block));
  field.active = blocks.length;
  return field;
}

const choicesFor = (
  job: SheetJob,
  field: Field,
  order: readonly number[],
): readonly (readonly number[])[] => [
  ...Array.from({ length: field.fixed }, () => []),
  ...order.map((piece) => job.set.choicesOf[piece]),
];

function packingOf(job: SheetJob, table: Table, field: Field, order: readonly number[]): Packing {
  const used = [...new Set(order.map((_, k) => field.zone[field.fixed + k]))].sort((p, q) => p - q);
  const sheets = used.map((zone) => table.sheets[zone]);
  return {
    sheets,
    placed: order.map((piece, k) => {
      const spot = field.spotOf(field.fixed + k);
      return {
        piece,
        sheet: used.indexOf(spot.zone),
        shape: spot.shape,
        x: spot.x - table.left[spot.zone],
        y: spot.y,
      };
    }),
    ...costOf(sheets.map((kind) => job.kinds[kind])),
  };
}

const costOf = (kinds: readonly SheetKind[]): { readonly cost: number; readonly area: number } => ({
  cost: kinds.reduce((sum, { stock }) => sum + stock.cost, 0),
  area: kinds.reduce((sum, { area }) => sum + area, 0),
});

/**
 * Tries to lay all pieces on a set of sheets by removing overlaps: pieces start where the last packing had them as far as
 * those sheets are still there, the others anywhere.
 */
export function squeezeOn(
  job: SheetJob,
  table: Table,
  {
    order,
    seed,
    workLimit,
  }: {
    readonly order: readonly number[];
    readonly seed: number;
    readonly workLimit: number;
  },
  budget: Budget,
): Packing | undefined {
  const field = fieldOf(job, table, order.length);
  const choices = choicesFor(job, field, order);
  const random = randomStream(seed);
  const probe = new Probe();
  const spent = meterOf(field);
  const isOver = (): boolean =>
    spent() >= workLimit || spent() + budget.used >= budget.workLimit || budget.shouldStop();
  if (!scatter(field, table, { choices, random, isOver })) {
    budget.used += spent();
    return undefined;
  }
  const search = {
    zones: table.zones,
    choices,
    random,
    probe,
    isOver,
    settings: { ...defaultSettings, patience: 150, rounds: 4 },
  };
  const isFree = separate(field, search) === 0 && isClean(field);
  budget.used += spent();
  return isFree ? packingOf(job, table, field, order) : undefined;
}

/** As many as go in order of size are placed cleanly; the others lie anywhere, overlapping. False when the work ran out. */
function scatter(
  field: Field,
  table: Table,
  {
    choices,
    random,
    isOver,
  }: {
    readonly choices: readonly (readonly number[])[];
    readonly random: RandomStream;
    readonly isOver: () => boolean;
  },
): boolean {
  const placing = {
    zones: table.zones,
    choices,
    probe: new Probe(),
    lineLimit: 100,
    reached: new Map<string, number>(),
  };
  while (field.active < field.total) {
    if (isOver()) return false;
    if (!placeNext(field, placing)) placeAnywhere(field, table, choices[field.active], random);
  }
  return true;
}

function placeAnywhere(
  field: Field,
  { zones }: Table,
  choices: readonly number[],
  random: RandomStream,
): void {
  const options = zones.flatMap((zone, k) =>
    choices.filter((shape) => fits(field, zone, shape)).map((shape) => ({ zone: k, shape })),
  );
  const { zone, shape } = options[Math.floor(random() * options.length)];
  const { low, high } = zones[zone];
  const { width, height } = field.table.shapes[shape];
  const x = Math.floor(low[0] + random() * (high[0] - width - low[0]));
  const y = Math.floor(low[1] + random() * (high[1] - height - low[1]));
  field.put(field.active, { shape, x, y, zone });
  field.active++;
}

export function fits(field: Pick<Field, 'table'>, { low, high }: Zone, shape: number): boolean {
  const { width, height } = field.table.shapes[shape];
  return width <= high[0] - low[0] && height <= high[1] - low[1];
}
