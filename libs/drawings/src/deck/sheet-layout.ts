import type { DrawingRequest } from '../drawing-request.js';
import { lengthText, percentText, shown, type Reader } from '../reader.js';
import { arrowHead } from '../sheet/dimension.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import { hatched } from '../sheet/hatch.js';
import { boxMark, line, shape, sizes, text, type Mark } from '../sheet/marks.js';
import { standardScales, type Scale } from '../sheet/scale.js';
import { grown, rectangle, type Box, type Point, type Ring } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { shortened } from '../sheet/text-size.js';
import { blockTexts, inside, middleOf } from './panel-marks.js';
import type { Outline } from './place.js';

export interface LaidSheet {
  readonly label: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly utilisation: number;
  readonly placed: readonly {
    readonly piece: string;
    readonly outline: Outline;
    readonly cutOrder: number;
  }[];
  readonly offcutsKept: readonly Outline[];
}

export interface SheetLayoutInput {
  readonly sheets: readonly LaidSheet[];
  /** Whether the sheets have a grain, along their length. */
  readonly hasGrain: boolean;
}

const CAPTION_MM = 5;
const GUTTER_MM = 4;

/** Stock sheets side by side at one scale, with pieces, cutting order, offcuts worth keeping and waste. */
export function sheetLayout(input: SheetLayoutInput, request: DrawingRequest): Drawing {
  const { reader } = request;
  const said = reader.words.sheets;
  const used = input.sheets.reduce(
    (sum, { utilisation, lengthMm, widthMm }) => sum + utilisation * lengthMm * widthMm,
    0,
  );
  const whole = input.sheets.reduce((sum, { lengthMm, widthMm }) => sum + lengthMm * widthMm, 0);
  const sheet = openSheet({
    name: 'sheet-layout',
    title: said.title,
    ...request,
    isToScale: true,
    notes: [],
    description: said.describe(
      said.sheets(input.sheets.length),
      percentText(reader, whole === 0 ? 0 : used / whole),
    ),
    legend: legendOf(input, reader),
  });
  const { scale, boxes } = arranged(input.sheets, sheet.area);
  const marks = input.sheets.flatMap((laid, index) =>
    laidMarks({ laid, box: boxes[index], scale, hasGrain: input.hasGrain }, sheet),
  );
  return closeSheet(sheet, marks, { scale });
}

/** The largest scale at which all sheets find room in rows. */
function arranged(
  sheets: readonly LaidSheet[],
  area: Box,
): { readonly scale: Scale; readonly boxes: readonly Box[] } {
  const tries = standardScales.map((scale) => ({ scale, boxes: inRows(sheets, area, scale) }));
  const fitting = tries.find(({ boxes }) =>
    boxes.every(
      (box) => box.y + box.height <= area.y + area.height && box.x + box.width <= area.x + area.width,
    ),
  );
  return fitting ?? tries[tries.length - 1];
}

function inRows(sheets: readonly LaidSheet[], area: Box, { factor }: Scale): readonly Box[] {
  let [x, y, tallest] = [area.x, area.y, 0];
  return sheets.map(({ lengthMm, widthMm }) => {
    const [width, height] = [lengthMm * factor, widthMm * factor];
    if (x > area.x && x + width > area.x + area.width) {
      x = area.x;
      y += tallest + CAPTION_MM + GUTTER_MM;
      tallest = 0;
    }
    const box = { x, y: y + CAPTION_MM, width, height };
    x += width + GUTTER_MM;
    tallest = Math.max(tallest, height);
    return box;
  });
}

interface Laying {
  readonly laid: LaidSheet;
  readonly box: Box;
  readonly scale: Scale;
  readonly hasGrain: boolean;
}

function laidMarks({ laid, box, scale: { factor }, hasGrain }: Laying, sheet: OpenSheet): readonly Mark[] {
  const { reader } = sheet.request;
  const onSheet = (outline: Outline): Ring =>
    outline.map(([x, y]): Point => [box.x + x * factor, box.y + y * factor]);
  const size = `${lengthText(reader, laid.lengthMm)} × ${lengthText(reader, laid.widthMm)}`;
  const caption = text(
    [box.x, box.y - 1.4],
    shortened(
      reader.words.sheets.caption(shown(reader, laid.label), size, percentText(reader, laid.utilisation)),
      Math.max(box.width, 40),
      sizes.fine,
      'bold',
    ),
    { sizeMm: sizes.fine, weight: 'bold' },
  );
  blockTexts([caption], sheet);
  const pieces = laid.placed.map(({ outline }) => onSheet(outline));
  const kept = laid.offcutsKept.map(onSheet);
  for (const ring of pieces) sheet.room.avoid(ring, true);
  const grain = hasGrain ? grainArrow(box, sheet) : [];
  const labels = laid.placed.flatMap(({ piece, cutOrder }, index) =>
    sheet.room.place({
      at: inside([pieces[index]]),
      content: `${shown(reader, piece)} (${cutOrder})`,
      style: { sizeMm: sizes.fine, backed: true },
      clearMm: 0,
      leader: true,
    }),
  );
  return [
    ...hatched([rectangle(box), ...pieces, ...kept], 'sparse'),
    ...pieces.map((ring) => shape([ring], 'contour', 'paper')),
    ...kept.map((ring) => shape([ring], 'hidden', 'light')),
    boxMark(box, 'visible', 'none'),
    caption,
    ...grain,
    ...labels,
  ];
}

function grainArrow(box: Box, sheet: OpenSheet): readonly Mark[] {
  const y = box.y - 2.2;
  const [from, to]: readonly Point[] = [
    [box.x + box.width - 12, y],
    [box.x + box.width - 1, y],
  ];
  const isFree = sheet.room.claim(text([from[0], y + 1], 'grain----', { sizeMm: sizes.fine }));
  return isFree ? [line('fine', from, to), arrowHead(to, from), arrowHead(from, to)] : [];
}

function legendOf({ sheets, hasGrain }: SheetLayoutInput, reader: Reader): readonly LegendEntry[] {
  const said = reader.words.sheets;
  const hasKept = sheets.some(({ offcutsKept }) => offcutsKept.length > 0);
  return [
    { sample: (box) => [boxMark(box, 'contour', 'paper')], meaning: said.piece },
    ...(hasKept ? [{ sample: (box: Box) => [boxMark(box, 'hidden', 'light')], meaning: said.keep }] : []),
    {
      sample: (box) => [...hatched([rectangle(box)], 'sparse'), boxMark(box, 'fine', 'none')],
      meaning: said.waste,
    },
    ...(hasGrain ? [{ sample: (box: Box) => doubleArrow(grown(box, -0.5)), meaning: said.grain }] : []),
  ];
}

function doubleArrow(box: Box): readonly Mark[] {
  const [, y] = middleOf(box);
  const [from, to]: readonly Point[] = [
    [box.x, y],
    [box.x + box.width, y],
  ];
  return [line('fine', from, to), arrowHead(to, from), arrowHead(from, to)];
}
