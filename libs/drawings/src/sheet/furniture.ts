import { readQuantity } from '#lib/units';
import { lengthText, shown, type Reader } from '../reader.js';
import { inset, rectangle, type Box, type Point } from './shapes.js';
import type { SheetFormat } from './formats.js';
import { boxMark, centredText, line, shape, sizes, text, type Mark } from './marks.js';
import { labelRoom, type LabelRoom } from './placing.js';
import { roundLength, type Scale } from './scale.js';
import { shortened, textWidthMm, wrapped } from './text-size.js';
import type { Drawing } from './svg.js';

export interface LegendEntry {
  /** Lines and hatches need room to show their pattern; symbols do not. */
  readonly room?: 'symbol';
  /** Draws the sample into a box 4 mm high. */
  readonly sample: (box: Box) => readonly Mark[];
  readonly meaning: string;
}

/** What the title block says beside the name of the drawing. */
export interface TitleBlock {
  readonly job: string;
  readonly reference: string;
  readonly made: string;
  readonly sheet: string;
}

export interface SheetRequest {
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly format: SheetFormat;
  readonly reader: Reader;
  readonly block: TitleBlock;
  readonly legend: readonly LegendEntry[];
  readonly notes: readonly string[];
  /** What stands for the scale when the drawing has none. */
  readonly isToScale: boolean;
}

/** A sheet with its furniture set out and the room that is left for the drawing. */
export interface OpenSheet {
  readonly request: SheetRequest;
  readonly area: Box;
  readonly room: LabelRoom;
  readonly strip: Box;
  readonly furniture: readonly Mark[];
}

export interface Orientation {
  readonly scale: Scale;
  readonly bow?: 'right' | 'up';
}

const MARGIN_MM = { sheet: 10, figure: 0.6, phone: 2 } as const;
const STRIP_MM = 9;
const BLOCK_MM = 17;
const LEGEND_LINE_MM = 5;
const NOTE_LINE_MM = 3.8;

export function openSheet(asked: SheetRequest): OpenSheet {
  const request = asked.format.kind === 'phone' ? lengthened(asked) : asked;
  const { format, reader } = request;
  const margin = MARGIN_MM[format.kind];
  const frame = inset({ x: 0, y: 0, width: format.widthMm, height: format.heightMm }, margin, margin, {
    right: margin,
    bottom: margin,
  });
  const pad = format.kind === 'sheet' ? 3 : 0;
  const inner = inset(frame, pad, pad, {
    right: pad,
    bottom: pad + (format.kind === 'sheet' ? BLOCK_MM : 0),
  });
  const notes = request.notes.flatMap((note) =>
    wrapped(shown(reader, note), inner.width, sizes.fine, 'regular'),
  );
  const legend = legendRows(request, inner.width);
  const noteHeight = notes.length * NOTE_LINE_MM;
  const legendHeight = legend.length * LEGEND_LINE_MM;
  const bottom = inner.y + inner.height;
  const stripHeight = request.isToScale ? STRIP_MM : 1;
  const strip = {
    x: inner.x,
    y: bottom - noteHeight - legendHeight - stripHeight,
    width: inner.width,
    height: stripHeight,
  };
  const area = { ...inner, height: strip.y - inner.y };
  return {
    request,
    area,
    strip,
    room: labelRoom(area),
    furniture: [
      ...(format.kind === 'sheet' ? titleBlock(request, frame) : []),
      ...legendMarks(legend, inner.x, strip.y + stripHeight),
      ...notes.map((note, index) =>
        text([inner.x, bottom - noteHeight + index * NOTE_LINE_MM + 2.8], note, { sizeMm: sizes.fine }),
      ),
    ],
  };
}

/** A phone is scrolled: legend and notes lengthen its sheet instead of taking room from the drawing. */
function lengthened(request: SheetRequest): SheetRequest {
  const { format, reader } = request;
  const width = format.widthMm - 2 * MARGIN_MM.phone;
  const lines = request.notes.flatMap((note) =>
    wrapped(shown(reader, note), width, sizes.fine, 'regular'),
  ).length;
  const addedMm = lines * NOTE_LINE_MM + legendRows(request, width).length * LEGEND_LINE_MM;
  return { ...request, format: { ...format, heightMm: format.heightMm + addedMm } };
}

/** Closes the sheet: the strip with bow arrow, scale bar and units, then the marks in order. */
export function closeSheet(
  sheet: OpenSheet,
  marks: readonly Mark[],
  orientation: Orientation | undefined,
): Drawing {
  const { name, title, description, format, reader } = sheet.request;
  const block = orientation === undefined ? [] : scaleCell(sheet, orientation.scale);
  return {
    name,
    title: shown(reader, title),
    description: shown(reader, description),
    language: reader.words.language,
    widthMm: format.widthMm,
    heightMm: format.heightMm,
    ...(orientation === undefined || !sheet.request.isToScale ? {} : { scale: orientation.scale }),
    marks: [...sheet.furniture, ...marks, ...stripMarks(sheet, orientation), ...block],
  };
}

interface SetEntry {
  readonly entry: LegendEntry;
  readonly x: number;
  readonly meaning: string;
}

const sampleMm = ({ room }: LegendEntry): number => (room === 'symbol' ? 4 : 10);

function legendRows({ legend, reader }: SheetRequest, width: number): readonly (readonly SetEntry[])[] {
  const rows: SetEntry[][] = [];
  let x = 0;
  for (const entry of legend) {
    const meaning = shortened(
      shown(reader, entry.meaning),
      width - sampleMm(entry) - 2,
      sizes.fine,
      'regular',
    );
    const long = sampleMm(entry) + 1.5 + textWidthMm(meaning, sizes.fine, 'regular');
    if (rows.length === 0 || x + long > width) {
      rows.push([]);
      x = 0;
    }
    rows[rows.length - 1].push({ entry, x, meaning });
    x += long + 5;
  }
  return rows;
}

const legendMarks = (rows: readonly (readonly SetEntry[])[], left: number, top: number): readonly Mark[] =>
  rows.flatMap((row, index) =>
    row.flatMap(({ entry, x, meaning }) => {
      const y = top + index * LEGEND_LINE_MM;
      return [
        ...entry.sample({ x: left + x, y: y + 0.4, width: sampleMm(entry), height: LEGEND_LINE_MM - 1 }),
        text([left + x + sampleMm(entry) + 1.5, y + 3.3], meaning, { sizeMm: sizes.fine }),
      ];
    }),
  );

function stripMarks(sheet: OpenSheet, orientation: Orientation | undefined): readonly Mark[] {
  const {
    strip,
    request: { reader, isToScale, format },
  } = sheet;
  const middle = strip.y + strip.height / 2;
  if (orientation === undefined) return [];
  const bow = orientation.bow === undefined ? [] : bowArrow([strip.x + 4, middle], orientation.bow, reader);
  const left = strip.x + (orientation.bow === undefined ? 1 : 18);
  const bar = isToScale
    ? scaleBar([left, middle], orientation.scale, strip.width * 0.28, reader)
    : { marks: [], endX: left };
  const says = [
    ...(isToScale && format.kind !== 'sheet'
      ? [`${reader.words.drawing.scale} ${orientation.scale.text}`]
      : []),
    reader.units === 'us' ? reader.words.drawing.inInches : reader.words.drawing.inMm,
  ].join(' · ');
  const room = strip.x + strip.width - bar.endX - 4;
  const lines = wrapped(says, room, sizes.fine, 'regular');
  return [
    ...bow,
    ...bar.marks,
    ...lines.map((said, index) =>
      text([bar.endX + 4, middle + 1 + (index - (lines.length - 1) / 2) * 3.4], said, { sizeMm: sizes.fine }),
    ),
  ];
}

/** A plain arrow towards the bow with its word. */
function bowArrow([x, y]: Point, bow: 'right' | 'up', reader: Reader): readonly Mark[] {
  const word = text([x + 4.4, y + 1], reader.words.drawing.bow, { sizeMm: sizes.fine, weight: 'bold' });
  const [tip, wingA, wingB, tail]: readonly Point[] =
    bow === 'up'
      ? [
          [x, y - 3.6],
          [x - 1.4, y - 0.4],
          [x + 1.4, y - 0.4],
          [x, y + 3.6],
        ]
      : [
          [x + 3.6, y],
          [x + 0.4, y - 1.4],
          [x + 0.4, y + 1.4],
          [x - 3.6, y],
        ];
  return [
    line('visible', tail, [(wingA[0] + wingB[0]) / 2, (wingA[1] + wingB[1]) / 2]),
    shape([[tip, wingA, wingB]], undefined, 'ink'),
    word,
  ];
}

const INCH_MM = Number(readQuantity('1 in', 'length'));
const US_BARS_MM = [0.25, 0.5, 1, 2, 6, 12, 24, 60, 120, 240, 600].map((inches) => inches * INCH_MM);

function scaleBar(
  [x, y]: Point,
  scale: Scale,
  widest: number,
  reader: Reader,
): { readonly marks: readonly Mark[]; readonly endX: number } {
  const atMost = widest / scale.factor;
  const usBar = US_BARS_MM.findLast((barMm) => barMm <= atMost) ?? US_BARS_MM[0];
  const realMm = reader.units === 'us' ? usBar : roundLength(atMost);
  const long = realMm * scale.factor;
  const label = text([x + long + 1.5, y + 2.2], lengthText(reader, realMm, realMm < 1 ? 1 : 0), {
    sizeMm: sizes.fine,
  });
  const quarters = [0, 1, 2, 3].map((index) =>
    boxMark(
      { x: x + (index * long) / 4, y: y + 0.2, width: long / 4, height: 1.4 },
      'dimension',
      index % 2 === 0 ? 'ink' : 'paper',
    ),
  );
  return {
    marks: [...quarters, text([x, y - 0.8], '0', { sizeMm: sizes.fine, anchor: 'middle' }), label],
    endX: label.at[0] + textWidthMm(label.text, sizes.fine, 'regular'),
  };
}

function titleBlock({ title, reader, block, format }: SheetRequest, frame: Box): readonly Mark[] {
  const { words } = reader;
  const width = Math.min(180, frame.width);
  const box = {
    x: frame.x + frame.width - width,
    y: frame.y + frame.height - BLOCK_MM,
    width,
    height: BLOCK_MM,
  };
  const split = box.x + width - 62;
  const mid = box.y + BLOCK_MM / 2 + 0.5;
  const cell = ([x, y]: Point, name: string, value: string, room: number): readonly Mark[] => [
    text([x + 1.5, y + 2.9], name, { sizeMm: sizes.fine }),
    text([x + 1.5, y + 6.9], shortened(shown(reader, value), room - 3, sizes.strong, 'regular'), {
      sizeMm: sizes.strong,
    }),
  ];
  return [
    boxMark(frame, 'visible', 'none'),
    shape([rectangle(box)], 'visible', 'paper'),
    line('fine', [split, box.y], [split, box.y + BLOCK_MM]),
    line('fine', [box.x, mid], [box.x + width, mid]),
    line('fine', [split + 31, box.y], [split + 31, box.y + BLOCK_MM]),
    text([box.x + 1.5, box.y + 6.4], shortened(shown(reader, title), width - 65, sizes.title, 'bold'), {
      sizeMm: sizes.title,
      weight: 'bold',
    }),
    ...cell(
      [box.x, mid],
      words.drawing.job,
      `${block.job}${block.reference === '' ? '' : ` · ${block.reference}`}`,
      width - 62,
    ),
    ...cell([split + 31, box.y], words.drawing.sheet, block.sheet, 31),
    ...cell(
      [split, mid],
      words.drawing.paper,
      `${Math.round(format.widthMm)} × ${Math.round(format.heightMm)} mm`,
      31,
    ),
    ...cell([split + 31, mid], words.drawing.made, block.made, 31),
  ];
}

function scaleCell({ request: { format, reader, isToScale } }: OpenSheet, scale: Scale): readonly Mark[] {
  if (format.kind !== 'sheet') return [];
  const right = format.widthMm - MARGIN_MM.sheet;
  const [x, y] = [right - 62, format.heightMm - MARGIN_MM.sheet - BLOCK_MM];
  return [
    text([x + 1.5, y + 2.9], reader.words.drawing.scale, { sizeMm: sizes.fine }),
    centredText([x + 15.5, y + 5.8], isToScale ? scale.text : reader.words.drawing.notToScale, {
      sizeMm: sizes.strong,
      weight: 'bold',
    }),
  ];
}
