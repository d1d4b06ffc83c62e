import { basisAt, legendreBasis, SINE_WAVES, type BasisAt, type LegendreBasis } from './legendre.js';
import {
  noFields,
  type PlateEdge,
  type PlateFields,
  type PlateStiffness,
  type Rectangle,
  type Spot,
} from './plate.js';
import { factorOf, solveWith, type Factor } from './symmetric-solver.js';

export type ClampedEdges = Readonly<Record<PlateEdge, boolean>>;

/** Normal rotation of the simply supported plate along an edge, as amplitudes of sine waves. */
export type EdgeRotation = (edge: PlateEdge, waves: number) => Float64Array;

/** What clamping the edges adds to the simply supported plate: smooth, so that polynomials serve it well. */
export interface EdgeFixity {
  readonly correctionFor: (rotation: EdgeRotation) => Correction;
}

export interface Correction {
  readonly at: (spot: Spot) => PlateFields;
  /** The same without the highest degree, to judge how well the polynomials have settled. */
  readonly coarserAt: (spot: Spot) => PlateFields;
}

/** Edges alike in pairs split the work into four parts, of which a central load needs one: room for a higher degree. */
const DEGREE_WHEN_ALIKE = 14;
const DEGREE_OTHERWISE = 12;

type Parity = 0 | 1;
const parities: readonly Parity[] = [0, 1];

/** One of four families of functions that do not couple inside the plate: even or odd across each middle line. */
interface Family {
  readonly evenX: Parity;
  readonly evenY: Parity;
  readonly index: FamilyIndex;
  /** Answers to a unit moment shape on each pair of edges, by side and degree. */
  readonly answers: ReadonlyMap<string, EdgeAnswer>;
}

interface EdgeAnswer {
  readonly places: readonly number[];
  readonly values: readonly number[];
  readonly answer: Float64Array;
}

/**
 * Clamps edges of a plate by making the normal rotation of polynomials cancel that of the simply supported plate,
 * with the least energy. The edge moments are the multipliers.
 *
 * Valid:  edges that do not sink; first-order shear theory; small deflections.
 * Source: [TIMOSHENKO-PLATES-1959] superposition of edge moments on a simply supported plate, here by Ritz.
 * Worked: test/reference/cases/panel-plates.ts
 */
export function edgeFixity(stiffness: PlateStiffness, size: Rectangle, edges: ClampedEdges): EdgeFixity {
  const alikeX = edges.xStart === edges.xEnd;
  const alikeY = edges.yStart === edges.yEnd;
  const basis = legendreBasis(alikeX && alikeY ? DEGREE_WHEN_ALIKE : DEGREE_OTHERWISE);
  const model: Model = { stiffness, size, basis, edges, alikeX, alikeY, places: new Map() };
  const groups = groupsOf(alikeX, alikeY).map((members) => lazyGroup(model, members));
  const correctionFor = (rotation: EdgeRotation): Correction => {
    const shares = edgeShares(model, rotation);
    const parts = groups.flatMap((group) => group(shares));
    const at = (degree: number) => (spot: Spot) => fieldsFrom(model, parts, degree, spot);
    return { at: at(basis.degree), coarserAt: at(basis.degree - 2) };
  };
  return { correctionFor };
}

interface Model {
  readonly stiffness: PlateStiffness;
  readonly size: Rectangle;
  readonly basis: LegendreBasis;
  readonly edges: ClampedEdges;
  readonly alikeX: boolean;
  readonly alikeY: boolean;
  /** What the polynomials are at each place that was asked for: spots lie in rows and columns. */
  readonly places: Map<number, BasisAt>;
}

type Member = readonly [Parity, Parity];

/** Families that the edges tie together: unlike edges on a side tie even to odd across it. */
function groupsOf(alikeX: boolean, alikeY: boolean): readonly (readonly Member[])[] {
  const across: readonly (readonly Parity[])[] = alikeX ? [[0], [1]] : [parities];
  const along: readonly (readonly Parity[])[] = alikeY ? [[0], [1]] : [parities];
  return across.flatMap((xs) => along.map((ys) => xs.flatMap((x) => ys.map((y): Member => [x, y]))));
}

interface Part {
  readonly family: Family;
  readonly coefficients: Float64Array;
}

type EdgeShares = Readonly<Record<PlateEdge, Float64Array>>;

/** Builds its matrices only when a load first asks something of this group. */
function lazyGroup(model: Model, members: readonly Member[]): (shares: EdgeShares) => readonly Part[] {
  const rows = rowsOf(model, members);
  let ready: { readonly families: readonly Family[]; readonly coupling: Factor } | undefined;
  return (shares) => {
    const wanted = Float64Array.from(rows, (row) => row.wanted(shares));
    if (isNothing(wanted, shares)) return [];
    if (ready === undefined) {
      const families = members.map(([evenX, evenY]) => familyOf(model, evenX, evenY));
      ready = { families, coupling: factorOf(couplingOf(families, rows), rows.length) };
    }
    const moments = solveWith(ready.coupling, wanted);
    return ready.families.map((family) => ({ family, coefficients: coefficientsOf(family, rows, moments) }));
  };
}

const NOTHING = 1e-13;

function isNothing(wanted: Float64Array, shares: EdgeShares): boolean {
  const largest = Math.max(...plateEdges.map((edge) => sizeOf(shares[edge])));
  return sizeOf(wanted) <= NOTHING * largest;
}

const sizeOf = (values: Float64Array): number =>
  values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

const plateEdges = ['xStart', 'xEnd', 'yStart', 'yEnd'] as const;

/** Share of each bubble in the rotation of each clamped edge. */
function edgeShares({ basis, edges }: Model, rotation: EdgeRotation): EdgeShares {
  const sharesOf = (edge: PlateEdge): Float64Array => {
    const shares = new Float64Array(basis.degree + 1);
    if (!edges[edge]) return shares;
    rotation(edge, SINE_WAVES).forEach((amplitude, before) => {
      const row = basis.sineShares[before];
      for (let degree = 2; degree <= basis.degree; degree += 1) shares[degree] += amplitude * row[degree];
    });
    return shares;
  };
  return {
    xStart: sharesOf('xStart'),
    xEnd: sharesOf('xEnd'),
    yStart: sharesOf('yStart'),
    yEnd: sharesOf('yEnd'),
  };
}

/** One condition: this much of this bubble in the rotation of an edge, or of a pair of like edges taken together. */
interface EdgeRow {
  readonly side: 'x' | 'y';
  readonly degree: number;
  /** Sign with which a family of this parity across the plate shows at the edge. */
  readonly signFor: (parity: Parity) => number;
  readonly wanted: (shares: EdgeShares) => number;
}

function rowsOf({ basis, edges, alikeX, alikeY }: Model, members: readonly Member[]): readonly EdgeRow[] {
  const xs = new Set(members.map(([x]) => x));
  const ys = new Set(members.map(([, y]) => y));
  const degreesIn = (allowed: ReadonlySet<number>): readonly number[] =>
    range(2, basis.degree).filter((degree) => allowed.has(degree % 2));
  const forX = sideRows(
    {
      side: 'x',
      start: 'xStart',
      end: 'xEnd',
      degrees: degreesIn(ys),
      parity: alikeX ? members[0][0] : undefined,
    },
    edges,
  );
  const forY = sideRows(
    {
      side: 'y',
      start: 'yStart',
      end: 'yEnd',
      degrees: degreesIn(xs),
      parity: alikeY ? members[0][1] : undefined,
    },
    edges,
  );
  return [...forX, ...forY];
}

interface Side {
  readonly side: 'x' | 'y';
  readonly start: PlateEdge;
  readonly end: PlateEdge;
  readonly degrees: readonly number[];
  /** Set when both edges of the side are alike, so that one row speaks for both. */
  readonly parity: Parity | undefined;
}

/** Rotations have the opposite parity of the deflection. */
const startSign = (parity: Parity): number => (parity === 0 ? -1 : 1);

function sideRows({ side, start, end, degrees, parity }: Side, edges: ClampedEdges): readonly EdgeRow[] {
  if (parity !== undefined) {
    return !edges[end]
      ? []
      : degrees.map((degree) => ({
          side,
          degree,
          signFor: () => 1,
          wanted: (shares) => (shares[end][degree] + startSign(parity) * shares[start][degree]) / 2,
        }));
  }
  const rowFor = (edge: PlateEdge, signFor: EdgeRow['signFor']): readonly EdgeRow[] =>
    !edges[edge]
      ? []
      : degrees.map((degree) => ({
          side,
          degree,
          signFor,
          wanted: (shares) => shares[edge][degree],
        }));
  return [...rowFor(start, startSign), ...rowFor(end, () => 1)];
}

/** Where each unknown stands: deflection first, then the rotations about y and about x. */
interface FamilyIndex {
  readonly bubblesX: readonly number[];
  readonly bubblesY: readonly number[];
  readonly slopesX: readonly number[];
  readonly slopesY: readonly number[];
  readonly startX: number;
  readonly startY: number;
  readonly size: number;
  readonly w: (i: number, j: number) => number;
  readonly slopeX: (i: number, j: number) => number;
  readonly slopeY: (i: number, j: number) => number;
}

function indexOf(degree: number, evenX: Parity, evenY: Parity): FamilyIndex {
  const bubbles = (parity: Parity): readonly number[] => range(2, degree).filter((i) => i % 2 === parity);
  const slopes = (parity: Parity): readonly number[] => range(0, degree).filter((i) => i % 2 !== parity);
  const [bubblesX, bubblesY, slopesX, slopesY] = [
    bubbles(evenX),
    bubbles(evenY),
    slopes(evenX),
    slopes(evenY),
  ];
  const startX = bubblesX.length * bubblesY.length;
  const startY = startX + slopesX.length * bubblesY.length;
  const place =
    (rows: readonly number[], columns: readonly number[], start: number) =>
    (i: number, j: number): number =>
      start + ((i - rows[0]) / 2) * columns.length + (j - columns[0]) / 2;
  return {
    bubblesX,
    bubblesY,
    slopesX,
    slopesY,
    startX,
    startY,
    size: startY + bubblesX.length * slopesY.length,
    w: place(bubblesX, bubblesY, 0),
    slopeX: place(slopesX, bubblesY, startX),
    slopeY: place(bubblesX, slopesY, startY),
  };
}

const range = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_, at) => from + at);

function familyOf(model: Model, evenX: Parity, evenY: Parity): Family {
  const index = indexOf(model.basis.degree, evenX, evenY);
  const matrix = new Float64Array(index.size * index.size);
  const add: Adder = (row, column, value) => {
    matrix[row * index.size + column] += value;
  };
  addDeflection(model, index, add);
  addSlopeX(model, index, add);
  addSlopeY(model, index, add);
  return { evenX, evenY, index, answers: answersOf(model, index, factorOf(matrix, index.size)) };
}

type Adder = (row: number, column: number, value: number) => void;

/** Bubbles overlap only with themselves and their neighbours of the same parity. */
const neighbours = (list: readonly number[], i: number): readonly number[] =>
  [i - 2, i, i + 2].filter((k) => k >= list[0] && k <= list[list.length - 1]);

const scales = ({ size }: Model): { readonly kx: number; readonly ky: number } => ({
  kx: 2 / size.lengthXMm,
  ky: 2 / size.widthYMm,
});

/** Shear energy of the deflection alone, over a quarter of the area (the common factor drops out). */
function addDeflection(model: Model, { bubblesX, bubblesY, w }: FamilyIndex, add: Adder): void {
  const { sx, sy } = model.stiffness;
  const { kx, ky } = scales(model);
  const mass = model.basis.bubbleMass;
  for (const i of bubblesX) {
    for (const j of bubblesY) {
      for (const l of neighbours(bubblesY, j)) add(w(i, j), w(i, l), sx * kx * kx * mass[j][l]);
      for (const k of neighbours(bubblesX, i)) add(w(i, j), w(k, j), sy * ky * ky * mass[i][k]);
    }
  }
}

function addSlopeX(model: Model, index: FamilyIndex, add: Adder): void {
  const { d11, d66, sx } = model.stiffness;
  const { kx, ky } = scales(model);
  const { bubbleMass: mass, legendreStiffness: bend } = model.basis;
  const { slopesX, bubblesX, bubblesY, slopeX, w } = index;
  const bends = (i: number, j: number, l: number): void => {
    for (const k of slopesX) add(slopeX(i, j), slopeX(k, l), d11 * kx * kx * bend[i][k] * mass[j][l]);
  };
  const shears = (i: number, j: number, l: number): void => {
    add(slopeX(i, j), slopeX(i, l), sx * mass[j][l]);
    if (bubblesX.includes(i + 1)) add(slopeX(i, j), w(i + 1, l), -sx * kx * mass[j][l]);
  };
  for (const [i, j] of pairs(slopesX, bubblesY)) {
    add(slopeX(i, j), slopeX(i, j), d66 * ky * ky);
    for (const l of neighbours(bubblesY, j)) {
      bends(i, j, l);
      shears(i, j, l);
    }
  }
}

const pairs = (first: readonly number[], second: readonly number[]): readonly (readonly [number, number])[] =>
  first.flatMap((i) => second.map((j) => [i, j] as const));

function addSlopeY(model: Model, index: FamilyIndex, add: Adder): void {
  const { d12, d22, d66, sy } = model.stiffness;
  const { kx, ky } = scales(model);
  const { bubbleMass: mass, legendreStiffness: bend } = model.basis;
  const { slopesY, bubblesX, bubblesY, slopeX, slopeY, w } = index;
  const bends = (i: number, j: number, k: number): void => {
    for (const l of slopesY) add(slopeY(i, j), slopeY(k, l), d22 * ky * ky * bend[j][l] * mass[i][k]);
  };
  const shears = (i: number, j: number, k: number): void => {
    add(slopeY(i, j), slopeY(k, j), sy * mass[i][k]);
    if (bubblesY.includes(j + 1)) add(slopeY(i, j), w(k, j + 1), -sy * ky * mass[i][k]);
  };
  for (const [i, j] of pairs(bubblesX, slopesY)) {
    add(slopeY(i, j), slopeY(i, j), d66 * kx * kx);
    if (bubblesY.includes(j + 1)) add(slopeY(i, j), slopeX(i - 1, j + 1), (d12 + d66) * kx * ky);
    for (const k of neighbours(bubblesX, i)) {
      bends(i, j, k);
      shears(i, j, k);
    }
  }
}

const answerKey = (side: 'x' | 'y', degree: number): string => `${side}${degree}`;

/** For each bubble along a pair of edges: the rotation at the far edge, and the plate's answer to a moment of that shape. */
function answersOf({ basis }: Model, index: FamilyIndex, factor: Factor): ReadonlyMap<string, EdgeAnswer> {
  const { legendre } = basisAt(basis.degree, 1);
  const answer = (places: readonly number[], across: readonly number[]): EdgeAnswer => {
    const values = across.map((i) => legendre[i]);
    const load = new Float64Array(index.size);
    places.forEach((place, at) => {
      load[place] = values[at];
    });
    return { places, values, answer: solveWith(factor, load) };
  };
  return new Map([
    ...index.bubblesY.map(
      (j) =>
        [
          answerKey('x', j),
          answer(
            index.slopesX.map((i) => index.slopeX(i, j)),
            index.slopesX,
          ),
        ] as const,
    ),
    ...index.bubblesX.map(
      (i) =>
        [
          answerKey('y', i),
          answer(
            index.slopesY.map((j) => index.slopeY(i, j)),
            index.slopesY,
          ),
        ] as const,
    ),
  ]);
}

const signIn = (family: Family, row: EdgeRow): number =>
  row.signFor(row.side === 'x' ? family.evenX : family.evenY);

function couplingOf(families: readonly Family[], rows: readonly EdgeRow[]): Float64Array {
  const count = rows.length;
  const matrix = new Float64Array(count * count);
  for (const family of families) {
    const met = rows.flatMap((row, at) => {
      const answer = family.answers.get(answerKey(row.side, row.degree));
      return answer === undefined ? [] : [{ at, answer, sign: signIn(family, row) }];
    });
    for (const a of met) {
      for (const b of met)
        matrix[a.at * count + b.at] += a.sign * b.sign * rotationWhere(a.answer, b.answer.answer);
    }
  }
  return matrix;
}

/** Rotation of one shape where the other acts. */
const rotationWhere = ({ places, values }: EdgeAnswer, answer: Float64Array): number =>
  places.reduce((sum, place, at) => sum + values[at] * answer[place], 0);

function coefficientsOf(family: Family, rows: readonly EdgeRow[], moments: Float64Array): Float64Array {
  const sum = new Float64Array(family.index.size);
  rows.forEach((row, at) => {
    const answer = family.answers.get(answerKey(row.side, row.degree));
    if (answer === undefined) return;
    const scale = -signIn(family, row) * moments[at];
    for (let i = 0; i < sum.length; i += 1) sum[i] += scale * answer.answer[i];
  });
  return sum;
}

interface Raw {
  w: number;
  wx: number;
  wy: number;
  sx: number;
  sxx: number;
  sxy: number;
  sy: number;
  syx: number;
  syy: number;
}

function fieldsFrom(model: Model, parts: readonly Part[], degree: number, spot: Spot): PlateFields {
  const along = placeAt(model, (2 * spot.xMm) / model.size.lengthXMm - 1);
  const across = placeAt(model, (2 * spot.yMm) / model.size.widthYMm - 1);
  const raw: Raw = { w: 0, wx: 0, wy: 0, sx: 0, sxx: 0, sxy: 0, sy: 0, syx: 0, syy: 0 };
  for (const part of parts) addPart(raw, part, { along, across, degree });
  return fieldsOfRaw(raw, model.stiffness, model.size);
}

function placeAt({ basis, places }: Model, at: number): BasisAt {
  const known = places.get(at) ?? basisAt(basis.degree, at);
  places.set(at, known);
  return known;
}

interface Place {
  readonly along: BasisAt;
  readonly across: BasisAt;
  readonly degree: number;
}

function addPart(
  raw: Raw,
  { family: { index }, coefficients: c }: Part,
  { along, across, degree }: Place,
): void {
  const kept = (list: readonly number[]): readonly number[] => list.filter((i) => i <= degree);
  const [bubblesY, slopesY] = [kept(index.bubblesY), kept(index.slopesY)];
  for (const i of kept(index.bubblesX)) {
    for (const j of bubblesY) {
      const value = c[index.w(i, j)];
      raw.w += value * along.bubble[i] * across.bubble[j];
      raw.wx += value * along.legendre[i - 1] * across.bubble[j];
      raw.wy += value * along.bubble[i] * across.legendre[j - 1];
    }
    for (const j of slopesY) {
      const value = c[index.slopeY(i, j)];
      raw.sy += value * along.bubble[i] * across.legendre[j];
      raw.syx += value * along.legendre[i - 1] * across.legendre[j];
      raw.syy += value * along.bubble[i] * across.legendreSlope[j];
    }
  }
  for (const i of kept(index.slopesX)) {
    for (const j of bubblesY) {
      const value = c[index.slopeX(i, j)];
      raw.sx += value * along.legendre[i] * across.bubble[j];
      raw.sxx += value * along.legendreSlope[i] * across.bubble[j];
      raw.sxy += value * along.legendre[i] * across.legendre[j - 1];
    }
  }
}

function fieldsOfRaw(raw: Raw, { d11, d12, d22, d66, sx, sy }: PlateStiffness, size: Rectangle): PlateFields {
  const kx = 2 / size.lengthXMm;
  const ky = 2 / size.widthYMm;
  return {
    ...noFields,
    w: raw.w,
    mx: -(d11 * kx * raw.sxx + d12 * ky * raw.syy),
    my: -(d12 * kx * raw.sxx + d22 * ky * raw.syy),
    mxy: -d66 * (ky * raw.sxy + kx * raw.syx),
    qx: sx * (kx * raw.wx - raw.sx),
    qy: sy * (ky * raw.wy - raw.sy),
    slopeX: raw.sx,
    slopeY: raw.sy,
  };
}
