import { pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import {
  areaMm2,
  bounds,
  centroid,
  containsPoint,
  difference,
  distanceToEdge,
  interiorPoint,
  intersection,
  offset,
  rectangle,
  rotate,
  rotatePoint,
  simplifyRing,
  union,
  type Point,
  type Polygon,
  type Region,
  type Ring,
} from '#lib/geometry';
import { assumptionsOf, type Figure } from '#lib/provenance';
import { cellsOf, nearSupport, type CellTask } from './cells.js';
import type { MosaicRequest, OpeningToFill } from './request.js';
import { mosaicFigures, mosaicNumbers, ruleRanges, type MosaicNumbers } from './rules.js';
import { entryFor, type Entry } from './slide.js';

/** One labelled piece of new core, in deck coordinates. */
export interface CorePiece {
  /** The opening's letter and the bedding order in it. */
  readonly label: string;
  readonly opening: string;
  /** 1 lies on the inner skin. */
  readonly layer: number;
  /** Over all openings. */
  readonly beddingOrder: number;
  readonly outline: Ring;
  readonly holes: readonly Ring[];
  readonly areaM2: number;
  readonly thicknessMm: number;
  readonly form: 'plain' | 'scored';
  readonly grainDeg: number;
  readonly bleedHoles: readonly Point[];
  readonly bleedDiameterMm?: number;
  readonly isUnderLip: boolean;
  /** How it gets in; absent when no straight path was found, and the plan says so. */
  readonly entry?: Entry;
}

export interface Mosaic {
  readonly pieces: readonly CorePiece[];
  readonly netAreaM2: number;
  /** Opening and undercut, without the gaps at joints. */
  readonly regionAreaM2: number;
  readonly jointLengthM: number;
  /** Length of joint that runs along a support in spite of everything. */
  readonly jointOnSupportM: number;
  readonly findings: readonly MosaicFinding[];
  readonly assumptions: readonly Figure[];
}

export interface MosaicFinding {
  readonly code: 'cannot-be-slid-in' | 'joint-on-support' | 'sliver';
  readonly piece?: string;
  readonly words: string;
}

const mm2PerM2 = 1e6;

/** Divides what is to be cored into pieces that a person can bed, labelled in the order in which they go in. */
export function cutMosaic(request: MosaicRequest): Outcome<Mosaic> {
  const problems = mosaicProblems(request);
  if (problems.length > 0) return refusal(...problems);
  const openings = request.openings.map((opening) => ({
    ...opening,
    undercut: worthCoring(opening.undercut),
  }));
  return success(mosaicOf({ ...request, openings }, mosaicNumbers(request.rules)));
}

/** An undercut narrower than this is filled with bedding, not with core. */
const narrowestUndercutMm = 8;

const worthCoring = (undercut: Region): Region =>
  intersection(undercut, offset(offset(undercut, -narrowestUndercutMm / 2), narrowestUndercutMm, 'miter'));

function mosaicProblems({ openings, layers, rules = {} }: MosaicRequest): readonly Problem[] {
  const labels = openings.map(({ label }) => label);
  return [
    ...(openings.length === 0 ? [problem('too-few', '/openings', { count: 0, least: 1 })] : []),
    ...(layers.length === 0 ? [problem('too-few', '/layers', { count: 0, least: 1 })] : []),
    ...labels.flatMap((label, k) =>
      labels.indexOf(label) < k
        ? [problem('duplicate', pointer('/openings', k, 'label'), { value: label })]
        : [],
    ),
    ...openings.flatMap(({ area }, k) =>
      areaMm2([area]) > 1 ? [] : [problem('outline-without-area', pointer('/openings', k, 'area'))],
    ),
    ...Object.entries(rules).flatMap(([key, value]) => ruleProblems(key, value)),
  ];
}

function ruleProblems(key: string, value: unknown): readonly Problem[] {
  const range = Object.entries(ruleRanges).find(([name]) => name === key)?.[1];
  const at = `/rules/${key}`;
  if (range === undefined) return [problem('unknown-field', at)];
  if (typeof value !== 'number' || !Number.isFinite(value))
    return [problem('not-a-number', at, { hint: '', value: String(value) })];
  return value >= range[0] && value <= range[1]
    ? []
    : [problem('out-of-range', at, { value, range: `${range[0]} to ${range[1]}` })];
}

interface Cut {
  readonly opening: OpeningToFill;
  readonly layer: number;
  readonly cell: Region;
  readonly piece: Polygon;
  readonly entry?: Entry;
}

function mosaicOf(request: MosaicRequest, numbers: MosaicNumbers): Mosaic {
  const cuts = request.layers.flatMap((_, layer) =>
    request.openings.flatMap((opening) => bedded(request, opening, layer, numbers)),
  );
  const pieces = cuts.map((cut, k) =>
    pieceOf(request, cut, { order: k + 1, within: orderWithin(cuts, k), numbers }),
  );
  const onSupport = cuts.reduce((sum, { cell }) => sum + edgeOnSupport(request, cell, numbers), 0) / 2;
  const layerArea = request.openings.reduce(
    (sum, { area, undercut }) => sum + areaMm2(union([area], undercut)),
    0,
  );
  return {
    pieces,
    netAreaM2: pieces.reduce((sum, { areaM2 }) => sum + areaM2, 0),
    regionAreaM2: (layerArea * request.layers.length) / mm2PerM2,
    jointLengthM: jointLength(cuts) / 1000,
    jointOnSupportM: onSupport / 1000,
    findings: findingsOf(pieces, onSupport),
    assumptions: mosaicFigures(request.rules).flatMap((figure) => assumptionsOf(figure)),
  };
}

const orderWithin = (cuts: readonly Cut[], at: number): number =>
  cuts.slice(0, at + 1).filter(({ opening }) => opening.label === cuts[at].opening.label).length;

function findingsOf(pieces: readonly CorePiece[], onSupportMm: number): readonly MosaicFinding[] {
  const stuck = pieces
    .filter(({ entry }) => entry === undefined)
    .map(({ label }): MosaicFinding => ({
      code: 'cannot-be-slid-in',
      piece: label,
      words: `${label} has no straight way in under the lip; enlarge the opening there or bed it in smaller parts`,
    }));
  return onSupportMm < 1
    ? stuck
    : [
        ...stuck,
        {
          code: 'joint-on-support',
          words: `${Math.round(onSupportMm)} mm of joint run along a support; glue a doubling piece there or move the opening`,
        },
      ];
}

/** The pieces of one layer of one opening in bedding order: under the lip first, then the field from one end to the other. */
function bedded(
  request: MosaicRequest,
  opening: OpeningToFill,
  layer: number,
  numbers: MosaicNumbers,
): readonly Cut[] {
  const cavity = union([opening.area], opening.undercut);
  const cells = cellsFor(request, opening, { layer, numbers });
  const waiting = cells.flatMap((cell) =>
    shrunk(cell, numbers.jointGapMm).map((piece) => ({ opening, layer, cell, piece })),
  );
  return inOrder(waiting, { opening: [opening.area], cavity, gapMm: numbers.jointGapMm });
}

/** Where a lip is, hand-sized pieces in a band along it, which go in first; elsewhere as large as the material, the form and the camber allow. */
function cellsFor(
  request: MosaicRequest,
  opening: OpeningToFill,
  { layer, numbers }: { readonly layer: number; readonly numbers: MosaicNumbers },
): readonly Region[] {
  const cavity = union([opening.area], opening.undercut);
  const isLarge = request.isFlat && request.layers[layer].form === 'scored';
  const hand = numbers.handPieceM2 * mm2PerM2;
  const field = isLarge ? Math.max(hand, request.core.largestPieceM2.value * mm2PerM2) : hand;
  const task = {
    longestSideMm: request.longestSideMm ?? Infinity,
    isShifted: layer % 2 === 1,
    numbers,
    supports: turnedSupports(request),
  };
  if (opening.undercut.length === 0)
    return turnedCells(request, { ...task, region: cavity, largestMm2: field });
  const band = intersection(
    cavity,
    offset(opening.undercut, bandOf(opening) * (layer % 2 === 0 ? 1 : upperBandShare), 'miter'),
  );
  const rest = difference(cavity, band);
  return [
    ...sidesOf(band, rest).flatMap((side) =>
      turnedCells(request, { ...task, region: side, largestMm2: hand }),
    ),
    ...turnedCells(request, { ...task, region: rest, largestMm2: field }),
  ];
}

/** A band round the field taken apart at the field's own corners, so that no piece of it reaches round the field. */
function sidesOf(band: Region, rest: Region): readonly Region[] {
  const [inner, outer] = [bounds(rest), bounds(band)];
  if (inner === undefined || outer === undefined) return band.map((part) => [part]);
  const lines = [outer.minY - 1, inner.minY, inner.maxY, outer.maxY + 1];
  return lines
    .slice(1)
    .flatMap((top, k) =>
      top <= lines[k]
        ? []
        : intersection(band, [
            { outer: rectangle(outer.minX - 1, lines[k], outer.maxX + 1, top), holes: [] },
          ]).map((part) => [part]),
    );
}

/** Pieces under a lip reach this far into the opening, so that fingers can push them; the middle stays open until they are in. */
const bandMm = 60;
/** In the second layer the band is narrower, so that its joints do not lie over those of the first. */
const upperBandShare = 0.55;

function bandOf({ area }: OpeningToFill): number {
  const box = bounds([area]);
  return box === undefined ? bandMm : Math.min(bandMm, (box.maxX - box.minX) / 4, (box.maxY - box.minY) / 4);
}

const grainRad = ({ grainDeg = 0 }: MosaicRequest): number => (grainDeg * Math.PI) / 180;

const turnedSupports = (request: MosaicRequest): CellTask['supports'] =>
  (request.supports ?? []).map(
    ({ from, to }) => [rotatePoint(from, -grainRad(request)), rotatePoint(to, -grainRad(request))] as const,
  );

/** Rows run along the grain. */
function turnedCells(request: MosaicRequest, task: CellTask): readonly Region[] {
  const angle = grainRad(request);
  if (angle === 0) return cellsOf(task);
  return cellsOf({ ...task, region: rotate(task.region, -angle) }).map((cell) =>
    intersection(rotate(cell, angle), rotate(rotate(task.region, -angle), angle)),
  );
}

/** Arcs of many short chords become a few: a fraction of the gap is finer than any saw. */
const shrunk = (cell: Region, gapMm: number): readonly Polygon[] =>
  offset(cell, -gapMm / 2, 'miter')
    .filter((polygon) => areaMm2([polygon]) > 100)
    .map(({ outer, holes }) => ({
      outer: simplifyRing(outer, gapMm / 6),
      holes: holes.map((hole) => simplifyRing(hole, gapMm / 6)),
    }));

interface Site {
  readonly opening: Region;
  readonly cavity: Region;
  readonly gapMm: number;
}

/** Pieces that must be slid come first, in the first order of several in which each finds its way in; then the field. */
function inOrder(waiting: readonly Omit<Cut, 'entry'>[], site: Site): readonly Cut[] {
  const isUnder = (cut: Omit<Cut, 'entry'>): boolean => areaMm2(difference([cut.piece], site.opening)) > 1;
  const under = waiting
    .filter(isUnder)
    .flatMap((cut) => halvesOf(cut, { opening: site.opening, free: site.cavity }))
    .map(withoutEntry);
  const field = waiting.filter((cut) => !isUnder(cut)).sort(fromOneEnd);
  return [
    ...bestOrder(under, site),
    ...field.map((cut) => ({ ...cut, entry: { way: 'drops' as const, path: [[0, 0] as const] } })),
  ];
}

/** A way into the empty cavity is no way in once other pieces lie there. */
const withoutEntry = ({ opening, layer, cell, piece }: Cut): Omit<Cut, 'entry'> => ({
  opening,
  layer,
  cell,
  piece,
});

/** Corners under two lips are hardest to reach, so they are tried first; then what lies farthest out, then the largest. */
function bestOrder(under: readonly Omit<Cut, 'entry'>[], site: Site): readonly Cut[] {
  const middle = interiorPoint(site.opening)?.at ?? [0, 0];
  const reach = ([polygon]: Region): number => {
    const [x, y] = centroid([polygon]) ?? [0, 0];
    return Math.hypot(x - middle[0], y - middle[1]);
  };
  const keys: readonly ((piece: Region) => number)[] = [
    (piece) => areaMm2(difference(piece, site.opening)),
    reach,
    areaMm2,
  ];
  let fewest: readonly Cut[] | undefined;
  for (const key of keys) {
    const order = slidIn(
      [...under].sort((a, b) => key([b.piece]) - key([a.piece])),
      site,
    );
    const stuck = (cuts: readonly Cut[]): number => cuts.filter(({ entry }) => entry === undefined).length;
    if (stuck(order) === 0) return order;
    if (fewest === undefined || stuck(order) < stuck(fewest)) fewest = order;
  }
  return fewest ?? [];
}

function fromOneEnd(a: Omit<Cut, 'entry'>, b: Omit<Cut, 'entry'>): number {
  const [one, other] = [bounds([a.piece]), bounds([b.piece])];
  if (one === undefined || other === undefined) return 0;
  return Math.round(one.minX - other.minX) || one.minY - other.minY;
}

function slidIn(under: readonly Omit<Cut, 'entry'>[], { opening, cavity }: Site): readonly Cut[] {
  const done: Cut[] = [];
  let left = [...under];
  let free = cavity;
  while (left.length > 0) {
    const next = left
      .map((cut) => ({ cut, entry: entryFor([cut.piece], opening, free) }))
      .find(({ entry }) => entry !== undefined);
    if (next === undefined) {
      const halves = halvesOf(left[0], { opening, free });
      done.push(...halves);
      left = left.slice(1);
      free = difference(
        free,
        halves.map(({ piece }) => piece),
      );
      continue;
    }
    done.push({ ...next.cut, ...(next.entry === undefined ? {} : { entry: next.entry }) });
    left = left.filter((cut) => cut !== next.cut);
    free = difference(free, [next.cut.piece]);
  }
  return done;
}

/** A piece that does not go in whole is cut across, three times at most; what still does not go in is named. */
function halvesOf(
  cut: Omit<Cut, 'entry'>,
  { opening, free }: { readonly opening: Region; readonly free: Region },
  depth = 3,
): readonly Cut[] {
  const entry = entryFor([cut.piece], opening, free);
  if (entry !== undefined) return [{ ...cut, entry }];
  const box = bounds([cut.piece]);
  if (depth === 0 || box === undefined) return [cut];
  const isLong = box.maxX - box.minX >= box.maxY - box.minY;
  const middle = isLong ? (box.minX + box.maxX) / 2 : (box.minY + box.maxY) / 2;
  const half: Ring = isLong
    ? [
        [box.minX - 1, box.minY - 1],
        [middle, box.minY - 1],
        [middle, box.maxY + 1],
        [box.minX - 1, box.maxY + 1],
      ]
    : [
        [box.minX - 1, box.minY - 1],
        [box.maxX + 1, box.minY - 1],
        [box.maxX + 1, middle],
        [box.minX - 1, middle],
      ];
  const mask = [{ outer: half, holes: [] }];
  const parts = [intersection([cut.piece], mask), difference([cut.piece], mask)]
    .flat()
    .filter((piece) => areaMm2([piece]) > 100);
  return parts.reduce<readonly Cut[]>((done, piece) => {
    const stillFree = difference(
      free,
      done.map((one) => one.piece),
    );
    return [...done, ...halvesOf({ ...cut, piece, cell: [piece] }, { opening, free: stillFree }, depth - 1)];
  }, []);
}

interface Labelling {
  readonly order: number;
  readonly within: number;
  readonly numbers: MosaicNumbers;
}

function pieceOf(request: MosaicRequest, cut: Cut, { order, within, numbers }: Labelling): CorePiece {
  const { thicknessMm, form } = request.layers[cut.layer];
  const bleedHoles =
    request.core.needsBleedHoles && form === 'plain' ? bleedHolesIn([cut.piece], numbers) : [];
  return {
    label: `${cut.opening.label}${within}`,
    opening: cut.opening.label,
    layer: cut.layer + 1,
    beddingOrder: order,
    outline: cut.piece.outer,
    holes: cut.piece.holes,
    areaM2: areaMm2([cut.piece]) / mm2PerM2,
    thicknessMm,
    form,
    grainDeg: request.grainDeg ?? 0,
    bleedHoles,
    ...(bleedHoles.length === 0 ? {} : { bleedDiameterMm: numbers.bleedDiameterMm }),
    isUnderLip: areaMm2(difference([cut.piece], [cut.opening.area])) > 1,
    ...(cut.entry === undefined ? {} : { entry: cut.entry }),
  };
}

/** On a square grid centred on the piece, clear of its edge; at least one where the piece is not a mere strip. */
function bleedHolesIn(piece: Region, { bleedSpacingMm, bleedDiameterMm }: MosaicNumbers): readonly Point[] {
  const box = bounds(piece);
  if (box === undefined) return [];
  const places = (low: number, high: number): readonly number[] => {
    const count = Math.max(1, Math.floor((high - low) / bleedSpacingMm));
    return Array.from({ length: count }, (_, k) => (low + high) / 2 + (k - (count - 1) / 2) * bleedSpacingMm);
  };
  const edge = 3 * bleedDiameterMm;
  const grid = places(box.minX, box.maxX)
    .flatMap((x) => places(box.minY, box.maxY).map((y): Point => [rounded(x), rounded(y)]))
    .filter((at) => containsPoint(piece, at) && distanceToEdge(at, piece) >= edge);
  if (grid.length > 0) return grid;
  const inner = interiorPoint(piece);
  return inner !== undefined && inner.clearanceMm >= edge
    ? [[rounded(inner.at[0]), rounded(inner.at[1])]]
    : [];
}

const rounded = (value: number): number => Math.round(value * 10) / 10;

/** Straight edges of cells that run along a support. */
const edgeOnSupport = (request: MosaicRequest, cell: Region, numbers: MosaicNumbers): number => {
  const supports = (request.supports ?? []).map(({ from, to }) => [from, to] as const);
  return cell.reduce(
    (sum, { outer }) =>
      sum +
      outer.reduce(
        (length, corner, k) =>
          length + nearSupport({ supports, numbers }, [corner, outer[(k + 1) % outer.length]]),
        0,
      ),
    0,
  );
};

/** Each joint is an edge of two cells; edges along the cavity's own rim are none. */
function jointLength(cuts: readonly Cut[]): number {
  const length = (region: Region): number =>
    region.reduce(
      (sum, { outer, holes }) =>
        sum +
        [outer, ...holes].reduce(
          (all, ring) =>
            all +
            ring.reduce(
              (part, [x, y], k) =>
                part + Math.hypot(ring[(k + 1) % ring.length][0] - x, ring[(k + 1) % ring.length][1] - y),
              0,
            ),
          0,
        ),
      0,
    );
  const groups = new Map<string, Cut[]>();
  for (const cut of cuts)
    groups.set(`${cut.opening.label}/${cut.layer}`, [
      ...(groups.get(`${cut.opening.label}/${cut.layer}`) ?? []),
      cut,
    ]);
  return [...groups.values()].reduce((sum, group) => {
    const cells = group.map(({ cell }) => cell);
    return (
      sum + Math.max(0, cells.reduce((all, cell) => all + length(cell), 0) - length(union(...cells))) / 2
    );
  }, 0);
}
