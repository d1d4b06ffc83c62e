import { fullSizeView } from '../deck/deck-view.js';
import { inside } from '../deck/panel-marks.js';
import type { Outline, Place } from '../deck/place.js';
import type { DrawingRequest } from '../drawing-request.js';
import { shown, type Reader } from '../reader.js';
import { arrowHead } from '../sheet/dimension.js';
import { figure, papers, type PaperName } from '../sheet/formats.js';
import { boxMark, centredText, circle, line, sizes, text, type Mark } from '../sheet/marks.js';
import { boxOf, contains, grown, type Box, type Point } from '../sheet/shapes.js';
import { clippedRing, clippedShape } from '../sheet/clip.js';
import { shortened } from '../sheet/text-size.js';
import type { Drawing } from '../sheet/svg.js';

export interface TemplatePiece {
  readonly label: string;
  readonly outline: Outline;
  readonly holes: readonly Outline[];
  readonly grainDeg?: number;
  readonly bleedHoles: readonly Place[];
}

/** Paper kept free by office printers, and the room that a page takes above the drawing for its heading. */
export const PAGE_MARGIN_MM = 12;
export const PAGE_HEAD_MM = 14;
const BLEED_MM = 5;
const EDGE_MM = 0.5;
const FOOT_MM = 16;
export const CHECK_LINE_MM = 100;

interface Tiling {
  readonly window: Box;
  readonly columns: number;
  readonly rows: number;
  readonly origin: Place;
}

/** Size of the full-size drawing that goes on one page. */
export const templateSize = (paper: PaperName): { readonly widthMm: number; readonly heightMm: number } => ({
  widthMm: papers[paper].widthMm - 2 * PAGE_MARGIN_MM,
  heightMm: papers[paper].heightMm - 2 * PAGE_MARGIN_MM - PAGE_HEAD_MM,
});

/**
 * A piece at 1:1 over as many pages as it takes, turned by a quarter where that saves pages; an arrow shows the bow.
 * Neighbouring tiles share the lines through their crosses and print a little beyond them; every page carries the
 * 100 mm check line. Tiles that the outline does not touch are left out.
 */
export function templateTiles(
  piece: TemplatePiece,
  paper: PaperName,
  request: Omit<DrawingRequest, 'format'>,
): readonly Drawing[] {
  const { reader } = request;
  const said = reader.words.template;
  const size = templateSize(paper);
  const lies = [false, true]
    .map((isTurned) => laidOut(piece, isTurned, size))
    .reduce((best, other) => (other.wanted.length < best.wanted.length ? other : best));
  const label = shown(reader, piece.label);
  return lies.wanted.map((cell, index) => {
    const [tile, tiles] = [String(index + 1), String(lies.wanted.length)];
    return {
      name: `template-${slug(piece.label)}-${tile}`,
      title: said.tile(label, tile, tiles),
      description: said.describe(label, tile, tiles),
      language: reader.words.language,
      ...figure(size.widthMm, size.heightMm),
      marks: tileMarks({ ...lies, cell, reader, tile, tiles }),
    };
  });
}

interface LaidPiece {
  /** Turned already, where it lies turned. */
  readonly piece: TemplatePiece;
  readonly isTurned: boolean;
  readonly tiling: Tiling;
  readonly wanted: readonly Cell[];
}

function laidOut(
  piece: TemplatePiece,
  isTurned: boolean,
  size: { readonly widthMm: number; readonly heightMm: number },
): LaidPiece {
  const turned = ([x, y]: Place): Place => (isTurned ? [y, -x] : [x, y]);
  const outline = piece.outline.map(turned);
  const tiling = tilingOf(outline, size);
  const cells = Array.from({ length: tiling.columns * tiling.rows }, (_, index) => ({
    column: index % tiling.columns,
    row: Math.floor(index / tiling.columns),
  }));
  const grain = piece.grainDeg === undefined ? {} : { grainDeg: piece.grainDeg - (isTurned ? 90 : 0) };
  return {
    piece: {
      ...piece,
      ...grain,
      outline,
      holes: piece.holes.map((hole) => hole.map(turned)),
      bleedHoles: piece.bleedHoles.map(turned),
    },
    isTurned,
    tiling,
    wanted: cells.filter((cell) => isTouched(outline, cell, tiling)),
  };
}

/** Identifiers inside an SVG take letters, digits and hyphens only. */
export const slug = (label: string): string =>
  label
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '') || 'piece';

interface Cell {
  readonly column: number;
  readonly row: number;
}

function tilingOf(
  outline: Outline,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
): Tiling {
  const bounds = boxOf(outline);
  const fitsOnePage =
    bounds.width <= widthMm - 2 * EDGE_MM && bounds.height <= heightMm - 2 * EDGE_MM - FOOT_MM;
  const bleed = fitsOnePage ? EDGE_MM : BLEED_MM;
  const window = { x: bleed, y: bleed, width: widthMm - 2 * bleed, height: heightMm - 2 * bleed - FOOT_MM };
  const columns = Math.max(1, Math.ceil(bounds.width / window.width - 1e-9));
  const rows = Math.max(1, Math.ceil(bounds.height / window.height - 1e-9));
  const origin: Place = [
    bounds.x - (columns * window.width - bounds.width) / 2,
    bounds.y - (rows * window.height - bounds.height) / 2,
  ];
  return { window, columns, rows, origin };
}

const cellOrigin = ({ column, row }: Cell, { window, origin }: Tiling): Place => [
  origin[0] + column * window.width,
  origin[1] + row * window.height,
];

const isTouched = (outline: Outline, cell: Cell, tiling: Tiling): boolean => {
  const [x, y] = cellOrigin(cell, tiling);
  return clippedRing(outline, { x, y, width: tiling.window.width, height: tiling.window.height }).length > 0;
};

interface Tile extends LaidPiece {
  readonly cell: Cell;
  readonly reader: Reader;
  readonly tile: string;
  readonly tiles: string;
}

function tileMarks(page: Tile): readonly Mark[] {
  const { piece, cell, tiling, reader, tiles } = page;
  const { window } = tiling;
  const view = fullSizeView(cellOrigin(cell, tiling), window);
  const bleed = grown(window, BLEED_MM - 0.5);
  const outline = [piece.outline, ...piece.holes].flatMap((ring) =>
    clippedRing(view.ring(ring), bleed).map((part) => line('visible', ...part)),
  );
  const holes = holesOf(page).flatMap((hole): readonly Mark[] => [
    circle(hole, 2, 'fine', 'none'),
    line('fine', [hole[0] - 3, hole[1]], [hole[0] + 3, hole[1]]),
    line('fine', [hole[0], hole[1] - 3], [hole[0], hole[1] + 3]),
  ]);
  const here = clippedShape(view.ring(piece.outline), window);
  const centre = clearOf(holesOf(page), inside([here]), here);
  const isHere = boxOf(here).width > 30 && boxOf(here).height > 40;
  const grain = piece.grainDeg;
  return [
    ...outline,
    ...holes,
    ...(isHere
      ? [
          centredText(centre, shortened(shown(reader, piece.label), boxOf(here).width * 0.7, 10, 'bold'), {
            sizeMm: 10,
            weight: 'bold',
            backed: true,
          }),
        ]
      : []),
    ...(isHere && grain !== undefined ? grainMarks(centre, grain, reader) : []),
    ...(tiles === '1' ? [] : crosses(window)),
    ...foot(page),
  ];
}

/** Bleed holes that this tile shows whole. */
function holesOf({ piece, cell, tiling }: Tile): readonly Point[] {
  const view = fullSizeView(cellOrigin(cell, tiling), tiling.window);
  return piece.bleedHoles
    .map(view.at)
    .filter(([x, y]) => contains(tiling.window, { x: x - 2, y: y - 2, width: 4, height: 4 }));
}

const shifts = [0, -24, 24, -40, 40, -56, 56];

/** The label moves up or down where a hole is in its way, as long as it stays within the piece's own box. */
function clearOf(holes: readonly Point[], [x, y]: Point, ring: readonly Point[]): Point {
  const room = boxOf(ring);
  const isClear = (shift: number): boolean =>
    y + shift - 8 > room.y &&
    y + shift + 20 < room.y + room.height &&
    holes.every(
      ([holeX, holeY]) => Math.abs(holeX - x) > 26 || holeY < y + shift - 9 || holeY > y + shift + 18,
    );
  return [x, y + (shifts.find(isClear) ?? 0)];
}

function grainMarks([x, y]: Point, grainDeg: number, reader: Reader): readonly Mark[] {
  const turn = (grainDeg * Math.PI) / 180;
  const [dx, dy] = [Math.cos(turn) * 14, Math.sin(turn) * 14];
  const below = y + 12 + Math.abs(dy);
  return [
    line('fine', [x - dx, below - dy], [x + dx, below + dy]),
    arrowHead([x + dx, below + dy], [x, below]),
    arrowHead([x - dx, below - dy], [x, below]),
    text([x + 17, below + 1], reader.words.template.grain, { sizeMm: sizes.body }),
  ];
}

/** Registration crosses at the corners of the tile; neighbours have theirs at the same places of the deck. */
const crosses = ({ x, y, width, height }: Box): readonly Mark[] =>
  [
    [x, y],
    [x + width, y],
    [x, y + height],
    [x + width, y + height],
  ].flatMap(([atX, atY]): readonly Mark[] => [
    line('fine', [atX - 4, atY], [atX + 4, atY]),
    line('fine', [atX, atY - 4], [atX, atY + 4]),
    circle([atX, atY], 1.6, 'fine', 'none'),
  ]);

function foot({ piece, cell, tiling, reader, tile, tiles, isTurned }: Tile): readonly Mark[] {
  const { window } = tiling;
  const said = reader.words.template;
  const y = window.y + window.height + window.y + 9;
  const [from, to] = [window.x, window.x + CHECK_LINE_MM];
  const ticks = Array.from({ length: 11 }, (_, index) =>
    line('fine', [from + index * 10, y], [from + index * 10, y - (index % 5 === 0 ? 2.4 : 1.4)]),
  );
  const keyX = window.x + window.width - 22;
  const title = shortened(
    said.tile(shown(reader, piece.label), tile, tiles),
    keyX - to - 6,
    sizes.strong,
    'bold',
  );
  const check = reader.units === 'us' ? `${said.check} ${said.checkInches}` : said.check;
  return [
    line('visible', [from, y], [to, y]),
    ...ticks,
    text([from, y + 4], `${check}. ${said.cut}`, { sizeMm: sizes.fine }),
    text([to + 4, y - 0.4], title, { sizeMm: sizes.strong, weight: 'bold' }),
    ...(tiles === '1' ? [] : [text([from, y - 5], said.overlap, { sizeMm: sizes.fine })]),
    ...bowMark([to + 8, y - 5.6], isTurned, reader),
    ...keyMap(cell, tiling, { x: keyX, y: y - 7, width: 22, height: 11 }),
  ];
}

function bowMark([x, y]: Point, isTurned: boolean, reader: Reader): readonly Mark[] {
  const [from, to]: readonly Point[] = isTurned
    ? [
        [x, y + 2.2],
        [x, y - 2.2],
      ]
    : [
        [x - 4, y],
        [x + 4, y],
      ];
  return [
    line('fine', from, to),
    arrowHead(to, from),
    text([x + 6, y + 1], reader.words.drawing.bow, { sizeMm: sizes.fine, weight: 'bold' }),
  ];
}

/** Where this tile sits among the others. */
function keyMap(cell: Cell, { columns, rows }: Tiling, room: Box): readonly Mark[] {
  const side = Math.min(room.width / columns, room.height / rows);
  return Array.from({ length: columns * rows }, (_, index) => {
    const [column, row] = [index % columns, Math.floor(index / columns)];
    const isThis = column === cell.column && row === cell.row;
    return boxMark(
      {
        x: room.x + room.width - (columns - column) * side,
        y: room.y + row * side,
        width: side,
        height: side,
      },
      'fine',
      isThis ? 'ink' : 'paper',
    );
  });
}
