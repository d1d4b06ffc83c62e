import {
  areaMm2,
  bounds,
  difference,
  intersection,
  perimeterMm,
  rectangle,
  ringsOf,
  union,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';
import type { MosaicNumbers } from './rules.js';
import { isBeddable } from './solid-fill.js';
import { nearSupport, type Support } from './support.js';

/** A region to be divided into as few pieces as its limits allow, in the frame in which the joints run along x and y. */
export interface CellTask {
  readonly region: Region;
  readonly largestMm2: number;
  /** A piece must fit into one of these. */
  readonly boxes: readonly PieceBox[];
  /** The other layer's joints are moved aside. */
  readonly isShifted: boolean;
  readonly supports: readonly Support[];
  readonly numbers: MosaicNumbers;
}

export interface PieceBox {
  readonly alongMm: number;
  readonly acrossMm: number;
}

/** Whole where it can be; otherwise rows of pieces or columns of them, whichever takes fewer pieces and then less joint. */
export const cellsOf = (task: CellTask): readonly Region[] =>
  joinedWhereRoom(
    withoutSlivers(
      task.region
        .flatMap((polygon) => dividedWell({ ...task, region: [polygon] }))
        .flatMap((cell) => halvedToFit(cell, task, MOST_HALVINGS)),
      task,
    ),
    task,
  );

/** A row is a few times too long at most; where a sheet is smaller than any piece, cutting on would never end. */
const MOST_HALVINGS = 4;

/** Rows of equal area grow long towards the narrow end of a taper: what is still too long for sheet or camber is cut across. */
function halvedToFit(cell: Region, task: Pick<CellTask, 'boxes'>, left: number): readonly Region[] {
  const box = bounds(cell);
  if (left === 0 || box === undefined || fitsBox(cell, task)) return [cell];
  const isLong = box.maxX - box.minX >= box.maxY - box.minY;
  const half = isLong
    ? rectangle(box.minX - 1, box.minY - 1, (box.minX + box.maxX) / 2, box.maxY + 1)
    : rectangle(box.minX - 1, box.minY - 1, box.maxX + 1, (box.minY + box.maxY) / 2);
  const mask = [{ outer: half, holes: [] }];
  return [...intersection(cell, mask), ...difference(cell, mask)].flatMap((part) =>
    halvedToFit([part], task, left - 1),
  );
}

const MORE_ROWS = 2;
/** Rows beyond the fewest that a sheet allows. */
const MOST_TRIES = 8;

function dividedWell(task: CellTask): readonly Region[] {
  if (isWithinLimits(task.region, task)) return [task.region];
  const upright = turned(task);
  const divisions = [
    ...inFewestRows(task),
    ...inFewestRows(upright).map((cells) => cells.map((cell) => swapped(cell))),
  ];
  const better = (one: readonly Region[], other: readonly Region[]): boolean =>
    one.length < other.length || (one.length === other.length && edgeOf(one) < edgeOf(other) - 1);
  return divisions.reduce((best, other) => (better(other, best) ? other : best));
}

const edgeOf = (cells: readonly Region[]): number => cells.reduce((sum, cell) => sum + perimeterMm(cell), 0);

/** The fewest rows in which every piece keeps the limits, and a few more rows than that: they may give fewer pieces. */
function inFewestRows(task: CellTask): readonly (readonly Region[])[] {
  const found: (readonly Region[])[] = [];
  const box = bounds(task.region);
  if (box === undefined) return [];
  const highest = Math.max(...task.boxes.map(({ acrossMm }) => acrossMm));
  const least = Math.ceil((box.maxY - box.minY) / highest - 1e-9);
  const most = least + MOST_TRIES;
  for (let rows = least; rows <= most && found.length <= MORE_ROWS; rows++) {
    const cells = rows === most ? inRows(task, rows, () => true) : inRows(task, rows, keepsLimits(task));
    if (cells === undefined) continue;
    found.push(cells);
    if (found.length > 1 && cells.length > found[0].length) break;
  }
  return found;
}

type Admits = (cell: Region) => boolean;

const keepsLimits =
  (task: Pick<CellTask, 'largestMm2' | 'boxes'>): Admits =>
  (cell) =>
    isWithinLimits(cell, task);

const swapped = (region: Region): Region =>
  region.map(({ outer, holes }) => ({ outer: swappedRing(outer), holes: holes.map(swappedRing) }));
const swappedRing = (ring: readonly Point[]): readonly Point[] =>
  ring.map(([x, y]): Point => [y, x]).reverse();

const turned = (task: CellTask): CellTask => ({
  ...task,
  region: swapped(task.region),
  boxes: task.boxes.map(({ alongMm, acrossMm }) => ({ alongMm: acrossMm, acrossMm: alongMm })),
  supports: task.supports.map(
    ([from, to]) =>
      [
        [from[1], from[0]],
        [to[1], to[0]],
      ] as const,
  ),
});

/** Where joints stepped aside a piece may be a little over its limit of area. */
const OVER_LIMIT = 1.1;

function isWithinLimits(cell: Region, task: Pick<CellTask, 'largestMm2' | 'boxes'>): boolean {
  return areaMm2(cell) <= OVER_LIMIT * task.largestMm2 && fitsBox(cell, task);
}

export function fitsBox(cell: Region, { boxes }: Pick<CellTask, 'boxes'>): boolean {
  const box = bounds(cell);
  if (box === undefined) return true;
  const [along, across] = [box.maxX - box.minX, box.maxY - box.minY];
  return boxes.some(({ alongMm, acrossMm }) => along <= alongMm && across <= acrossMm);
}

/** Nothing as soon as a cell is not admitted: the other rows need not be cut then. */
function inRows(task: CellTask, rows: number, admits: Admits): readonly Region[] | undefined {
  const box = bounds(task.region);
  if (box === undefined) return [];
  const lines = linesBetween(
    swapped(task.region),
    { count: rows, isShifted: task.isShifted, numbers: task.numbers },
    (y) => nearSupport(task, [box.minX, y], [box.maxX, y]),
  );
  const found: Region[] = [];
  for (let row = 0; row < rows; row++) {
    const strip = intersection(task.region, [
      { outer: rectangle(box.minX - 1, lines[row], box.maxX + 1, lines[row + 1]), holes: [] },
    ]);
    for (const part of strip) {
      const cells = inColumns({ ...task, region: [part], isShifted: (row % 2 === 1) !== task.isShifted });
      if (!cells.every(admits)) return undefined;
      found.push(...cells);
    }
  }
  return found;
}

/** Pieces of one row, of equal area; more of them until each fits. */
function inColumns(task: CellTask): readonly Region[] {
  const box = bounds(task.region);
  if (box === undefined) return [];
  const longest = Math.max(...task.boxes.map(({ alongMm }) => alongMm));
  const least = Math.max(
    1,
    Math.ceil(areaMm2(task.region) / task.largestMm2 - OVER_LIMIT + 1),
    Math.ceil((box.maxX - box.minX) / longest - 1e-9),
  );
  for (let count = least; ; count++) {
    const lines = linesBetween(
      task.region,
      { count, isShifted: task.isShifted && count > 1, numbers: task.numbers },
      (x) => nearSupport(task, [x, box.minY], [x, box.maxY]),
    );
    const admits = count >= least + MORE_COLUMNS ? () => true : keepsLimits(task);
    const cells = betweenLines(task.region, lines, admits);
    if (cells !== undefined) return cells;
  }
}

const MORE_COLUMNS = 2;

function betweenLines(
  region: Region,
  lines: readonly number[],
  admits: Admits,
): readonly Region[] | undefined {
  const box = bounds(region);
  const found: Region[] = [];
  for (let column = 1; box !== undefined && column < lines.length; column++) {
    const cells = intersection(region, [
      { outer: rectangle(lines[column - 1], box.minY - 1, lines[column], box.maxY + 1), holes: [] },
    ]).map((polygon): Region => [polygon]);
    if (!cells.every(admits)) return undefined;
    found.push(...cells);
  }
  return found;
}

interface Division {
  readonly count: number;
  readonly isShifted: boolean;
  readonly numbers: MosaicNumbers;
}

/** Lines across x that part a region into pieces of equal area; each steps aside where `cost` says so. */
function linesBetween(
  region: Region,
  { count, isShifted, numbers }: Division,
  cost: (at: number) => number,
): readonly number[] {
  const box = bounds(region);
  if (box === undefined) return [0, 0];
  const whole = areaMm2(region);
  const even = (box.maxX - box.minX) / count;
  const aside = isShifted ? Math.min(numbers.staggerMm, even / 2) : 0;
  const places = Array.from(
    { length: count - 1 },
    (_, k) => placeOf(region, (whole * (k + 1)) / count, box) - aside,
  );
  return [box.minX, ...places.map((place) => steppedAside(place, even / 8, cost)), box.maxX];
}

/** To a fraction of a millimetre on any deck. */
const HALVINGS = 16;

/** Where a line across x leaves so much area on its near side. */
function placeOf(
  region: Region,
  wantedMm2: number,
  { minX, maxX }: { readonly minX: number; readonly maxX: number },
): number {
  const edges = edgesAcross(ringsOf(region));
  let [low, high] = [minX, maxX];
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (areaUpTo(edges, middle) < wantedMm2) low = middle;
    else high = middle;
  }
  return Math.round((low + high) / 2);
}

/** x at both ends and the way in y of each edge, one after another: read for every halving. */
function edgesAcross(rings: readonly Ring[]): Float64Array {
  const edges = new Float64Array(3 * rings.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const ring of rings) {
    for (let k = 0; k < ring.length; k++) {
      const to = ring[k + 1 < ring.length ? k + 1 : 0];
      edges[at++] = ring[k][0];
      edges[at++] = to[0];
      edges[at++] = to[1] - ring[k][1];
    }
  }
  return edges;
}

/** Area of the part of a region on the near side of a line across x: the integral of the lesser of x and the line over y. */
function areaUpTo(edges: Float64Array, line: number): number {
  let sum = 0;
  for (let at = 0; at < edges.length; at += 3)
    sum += edges[at + 2] * meanBelow(edges[at], edges[at + 1], line);
  return sum;
}

function meanBelow(a: number, b: number, line: number): number {
  const low = Math.min(a, b);
  const high = Math.max(a, b);
  if (high <= line) return (a + b) / 2;
  if (low >= line) return line;
  const share = (line - low) / (high - low);
  return (share * (low + line)) / 2 + (1 - share) * line;
}

const TRIES = [0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1, -1];

function steppedAside(place: number, reach: number, cost: (at: number) => number): number {
  let best = { at: place, cost: cost(place) };
  if (best.cost === 0) return place;
  for (const share of TRIES.slice(1)) {
    const at = place + share * reach;
    const here = cost(at);
    if (here < best.cost) best = { at, cost: here };
  }
  return best.at;
}

/** A little over the limit is less trouble than a sliver, and a good deal over it less than a place without core. */
const OVER_FOR_SLIVERS = [1.25, 1.6];

/** Narrow or tiny cells join the neighbour with which they share most edge, as long as that stays bedable. */
export function withoutSlivers(cells: readonly Region[], task: CellTask): readonly Region[] {
  let current = [...cells];
  const slivers = cells.filter((cell) => !isBeddable(cell, task.numbers));
  for (const over of OVER_FOR_SLIVERS) {
    for (const sliver of [...slivers].sort((a, b) => areaMm2(a) - areaMm2(b))) {
      const partner = current.includes(sliver) ? bestPartner(sliver, current, task, over) : undefined;
      if (partner === undefined) continue;
      current = [...current.filter((cell) => cell !== sliver && cell !== partner), union(sliver, partner)];
    }
  }
  return current;
}

/** With more cells than this the limits leave nothing to join. */
const MOST_JOINED = 200;

/** No joint that could be left out: two pieces that keep the limits together are one. */
function joinedWhereRoom(cells: readonly Region[], task: CellTask): readonly Region[] {
  if (cells.length < 2 || cells.length > MOST_JOINED) return cells;
  for (const cell of [...cells].sort((a, b) => areaMm2(a) - areaMm2(b))) {
    const partner = bestPartner(cell, cells, task, 1);
    if (partner === undefined) continue;
    const others = cells.filter((other) => other !== cell && other !== partner);
    return joinedWhereRoom([...others, union(cell, partner)], task);
  }
  return cells;
}

function bestPartner(
  sliver: Region,
  cells: readonly Region[],
  task: CellTask,
  over: number,
): Region | undefined {
  const joined = cells
    .filter((cell) => cell !== sliver && mayJoin(cell, sliver, task))
    .filter((cell) => areaMm2(cell) + areaMm2(sliver) <= over * task.largestMm2)
    .flatMap((cell) => {
      const both = union(sliver, cell);
      const isOne = both.length === 1 && both[0].holes.length === cell[0].holes.length;
      return isOne && fitsBox(both, task) ? [{ cell, outline: perimeterMm(both) - perimeterMm(cell) }] : [];
    });
  return joined.sort((a, b) => a.outline - b.outline)[0]?.cell;
}

/** They touch, and the box round both is within the limits: asked before anything is drawn. */
function mayJoin(one: Region, other: Region, { boxes }: Pick<CellTask, 'boxes'>): boolean {
  const [a, b] = [bounds(one), bounds(other)];
  if (a === undefined || b === undefined) return false;
  const isApart = a.minX > b.maxX + 1 || b.minX > a.maxX + 1 || a.minY > b.maxY + 1 || b.minY > a.maxY + 1;
  const along = Math.max(a.maxX, b.maxX) - Math.min(a.minX, b.minX);
  const across = Math.max(a.maxY, b.maxY) - Math.min(a.minY, b.minY);
  return !isApart && boxes.some(({ alongMm, acrossMm }) => along <= alongMm && across <= acrossMm);
}
