import { dxfText, type DxfMark, type DxfPoint } from './dxf-text.js';

type Corners = readonly DxfPoint[];

/** One piece as it is drawn at 1:1; any room's piece that has these fields will do. */
export interface PieceToCut {
  readonly label: string;
  readonly outline: Corners;
  readonly holes?: readonly Corners[];
  readonly bleedHoles?: Corners;
  readonly bleedDiameterMm?: number;
  readonly grainDeg?: number;
}

/** One sheet with what is cut from it. */
export interface SheetToCut {
  readonly label: string;
  readonly outline: Corners;
  readonly holes?: readonly Corners[];
  readonly placed: readonly {
    readonly piece: string;
    readonly outline: Corners;
    readonly holes?: readonly Corners[];
    readonly cutOrder: number;
  }[];
  readonly offcutsKept?: readonly Corners[];
  /** The grain lies along x. */
  readonly hasGrain?: boolean;
}

const gapMm = 50;

/** Every piece at 1:1, side by side, with its label, holes and grain, and under them how they are to be cut. */
export const piecesDxf = (pieces: readonly PieceToCut[], howToCut: string): string =>
  dxfText([...inRow(pieces, (piece) => boxOf(piece.outline), pieceMarks), lineBelow(howToCut, [0, 0])]);

/** A line of words under what stands on `at`. */
const lineBelow = (text: string, [x, y]: DxfPoint): DxfMark => ({
  kind: 'text',
  purpose: 'label',
  at: [x, y - 30],
  heightMm: 20,
  text,
});

/** Every sheet at 1:1, side by side, with its pieces, cut order and what is worth keeping. */
export const sheetsDxf = (sheets: readonly SheetToCut[]): string =>
  dxfText(inRow(sheets, (sheet) => boxOf(sheet.outline), sheetMarks));

interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

function boxOf(corners: Corners): Box {
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  return { left, bottom, width: Math.max(...xs) - left, height: Math.max(...ys) - bottom };
}

function inRow<T>(
  items: readonly T[],
  boxFor: (item: T) => Box,
  marksOf: (item: T, move: Move, box: Box) => readonly DxfMark[],
): readonly DxfMark[] {
  let x = 0;
  return items.flatMap((item) => {
    const box = boxFor(item);
    const [dx, dy] = [x - box.left, -box.bottom];
    x += box.width + gapMm;
    return marksOf(item, ([px, py]) => [px + dx, py + dy], box);
  });
}

type Move = (point: DxfPoint) => DxfPoint;

const outline = (purpose: DxfMark['purpose'], corners: Corners, move: Move): DxfMark => ({
  kind: 'outline',
  purpose,
  corners: corners.map(move),
});

function pieceMarks(
  { label, outline: edge, holes = [], bleedHoles = [], bleedDiameterMm = 4, grainDeg }: PieceToCut,
  move: Move,
  box: Box,
): readonly DxfMark[] {
  const middle: DxfPoint = [box.left + box.width / 2, box.bottom + box.height / 2];
  return [
    outline('piece edge', edge, move),
    ...holes.map((hole) => outline('hole', hole, move)),
    ...bleedHoles.map((centre): DxfMark => ({
      kind: 'circle',
      purpose: 'bleed hole',
      centre: move(centre),
      radiusMm: bleedDiameterMm / 2,
    })),
    labelMark(label, move(middle), box),
    ...(grainDeg === undefined ? [] : [grainMark(move(middle), grainDeg, box)]),
  ];
}

function sheetMarks(
  { label, outline: edge, holes = [], placed, offcutsKept = [], hasGrain = false }: SheetToCut,
  move: Move,
  box: Box,
): readonly DxfMark[] {
  return [
    outline('sheet edge', edge, move),
    ...holes.map((hole) => outline('hole', hole, move)),
    lineBelow(label, move([box.left, box.bottom])),
    ...placed.flatMap((piece) => [
      outline('piece edge', piece.outline, move),
      ...(piece.holes ?? []).map((hole) => outline('hole', hole, move)),
      labelMark(`${piece.piece} (${piece.cutOrder})`, move(middleOf(piece.outline)), boxOf(piece.outline)),
    ]),
    ...offcutsKept.map((kept) => outline('offcut kept', kept, move)),
    ...(hasGrain ? [grainMark(move([box.left + box.width / 2, box.bottom + box.height + 20]), 0, box)] : []),
  ];
}

function middleOf(corners: Corners): DxfPoint {
  const { left, bottom, width, height } = boxOf(corners);
  return [left + width / 2, bottom + height / 2];
}

const labelMark = (text: string, at: DxfPoint, box: Box): DxfMark => ({
  kind: 'text',
  purpose: 'label',
  at,
  heightMm: Math.max(3, Math.min(15, box.height / 4, box.width / (text.length + 1))),
  text,
});

/** A line along the grain through the middle, half as long as the piece is. */
function grainMark([x, y]: DxfPoint, grainDeg: number, { width, height }: Box): DxfMark {
  const half = Math.min(width, height) / 4;
  const angle = (grainDeg * Math.PI) / 180;
  const [dx, dy] = [half * Math.cos(angle), half * Math.sin(angle)];
  return { kind: 'line', purpose: 'grain', from: [x - dx, y - dy], to: [x + dx, y + dy] };
}
