import type { DrawingRequest } from '../drawing-request.js';
import { fixed, shown, upTo, type Reader } from '../reader.js';
import { closeSheet, openSheet, type OpenSheet } from '../sheet/furniture.js';
import { boxMark, centredText, circle, line, text, type Mark } from '../sheet/marks.js';
import type { Drawing } from '../sheet/svg.js';
import { shortened, wrapped } from '../sheet/text-size.js';

export interface BatchCardInput {
  readonly number: number;
  readonly title: string;
  /** In the order they go in; the scale is not set to nothing between them. */
  readonly weigh: readonly WeighingInput[];
  readonly mixedMl: number;
  readonly covers: readonly string[];
  readonly useWithinMin: number;
  readonly limitedBy: string;
  readonly pumps?: string;
  /** Where several pots are weighed alike: each with what it is for. */
  readonly alike?: readonly Pot[];
}

interface Pot {
  readonly number: number;
  readonly covers: readonly string[];
}

export interface WeighingInput {
  readonly what: 'resin' | 'hardener' | 'filler';
  readonly name: string;
  readonly addG: number;
  readonly scaleShowsG: number;
  /** By cup or pump; a filler's is loose. */
  readonly volumeMl: number;
}

/** One mix on one card, readable at arm's length: what to weigh in which order, what it is for, how long it lasts. */
export function batchCard(input: BatchCardInput, request: DrawingRequest): Drawing {
  const { reader } = request;
  const said = reader.words.batch;
  const number = numbersOf(input);
  const sheet = openSheet({
    name: `batch-${input.number}`,
    title: said.title(number),
    ...request,
    legend: [],
    notes: [],
    isToScale: false,
    description: said.describe(number, input.title),
  });
  return closeSheet(sheet, cardMarks(input, sheet), undefined);
}

/** `5`, `5 to 8`, or `5, 7, 9`. */
function numbersOf({ number, alike }: BatchCardInput): string {
  const numbers = alike?.map((pot) => pot.number) ?? [number];
  const last = numbers[numbers.length - 1];
  const isUnbroken = numbers.length > 2 && last - numbers[0] === numbers.length - 1;
  return isUnbroken ? `${numbers[0]}–${last}` : numbers.join(', ');
}

interface Pen {
  readonly left: number;
  readonly right: number;
  /** Everything on the card grows with its width. */
  readonly unit: number;
}

function cardMarks(input: BatchCardInput, sheet: OpenSheet): readonly Mark[] {
  const {
    area,
    request: { reader },
  } = sheet;
  const said = reader.words.batch;
  const pen: Pen = {
    left: area.x,
    right: area.x + area.width,
    unit: Math.min(area.width / 100, area.height / 118),
  };
  const { unit } = pen;
  const head = [
    text(
      [pen.left, area.y + 8 * unit],
      shortened(said.title(numbersOf(input)), area.width * 0.56, 7.6 * unit, 'bold'),
      {
        sizeMm: 7.6 * unit,
        weight: 'bold',
      },
    ),
    ...wrapped(shown(reader, input.title), area.width * 0.58, 4 * unit, 'regular')
      .slice(0, 2)
      .map((row, index) =>
        text([pen.right, area.y + (3.5 + index * 4.6) * unit], row, { sizeMm: 4 * unit, anchor: 'end' }),
      ),
    line('visible', [pen.left, area.y + 11 * unit], [pen.right, area.y + 11 * unit]),
  ];
  const weighed = input.weigh.flatMap((part, index) =>
    weighingRow(part, { index, y: area.y + (13 + index * 13) * unit }, pen, reader),
  );
  const below = area.y + (15 + input.weigh.length * 13) * unit;
  const rest = input.alike === undefined ? lowerHalf : alikeHalf;
  return [...head, ...weighed, ...rest(input, below, pen, reader)];
}

function weighingRow(
  { what, name, addG, scaleShowsG, volumeMl }: WeighingInput,
  place: { readonly index: number; readonly y: number },
  { left, right, unit }: Pen,
  reader: Reader,
): readonly Mark[] {
  const { index, y } = place;
  const middle = y + 6 * unit;
  const room = right - left - 58 * unit;
  const rows = wrapped(shown(reader, name), room, 3.3 * unit, 'regular');
  const shownRows =
    rows.length > 2 ? [rows[0], shortened(rows.slice(1).join(' '), room, 3.3 * unit, 'regular')] : rows;
  const said = reader.words.batch;
  const by = (what === 'filler' ? said.loosePart : said.part)(
    fixed(reader, volumeMl, 0),
    upTo(reader, scaleShowsG, 1),
  );
  return [
    circle([left + 5 * unit, middle], 4 * unit, 'visible', 'none'),
    centredText([left + 5 * unit, middle], String(index + 1), { sizeMm: 5.5 * unit, weight: 'bold' }),
    ...shownRows.map((row, at) =>
      centredText([left + 12 * unit, middle + (at - (shownRows.length - 1) / 2) * 4.4 * unit], row, {
        sizeMm: 3.3 * unit,
        anchor: 'start',
      }),
    ),
    centredText([right, y + 4.9 * unit], `${upTo(reader, addG, 1)} g`, {
      sizeMm: 7.6 * unit,
      weight: 'bold',
      anchor: 'end',
    }),
    text([right, y + 11.4 * unit], by, { sizeMm: 3 * unit, anchor: 'end' }),
    line('fine', [left, y + 12.4 * unit], [right, y + 12.4 * unit]),
  ];
}

function lowerHalf(
  input: BatchCardInput,
  top: number,
  { left, right, unit }: Pen,
  reader: Reader,
): readonly Mark[] {
  const said = reader.words.batch;
  const width = right - left;
  const mixed = mixedText(input, reader);
  const written = (words: string, weight: 'regular' | 'bold', most: number) =>
    wrapped(words, width, 3.6 * unit, weight)
      .slice(0, most)
      .map((row) => ({ row, weight }));
  const facts = [
    ...written(mixed, 'regular', 2),
    ...written(said.mix, 'regular', 2),
    ...written(`${said.for}: ${shown(reader, input.covers.join(', '))}`, 'bold', 3),
  ];
  const box = { x: left, y: top + 28 * unit, width, height: 20 * unit };
  return [
    ...facts.map(({ row, weight }, index) =>
      text([left, top + (3.6 + index * 4.6) * unit], row, { sizeMm: 3.6 * unit, weight }),
    ),
    boxMark(box, 'visible', 'none'),
    text([left + 2 * unit, box.y + 5 * unit], said.useWithin, { sizeMm: 3.6 * unit }),
    text([left + 2 * unit, box.y + 14 * unit], said.minutes(fixed(reader, input.useWithinMin, 0)), {
      sizeMm: 9 * unit,
      weight: 'bold',
    }),
    text([left + 48 * unit, box.y + 8 * unit], `${said.startedAt} ________________`, { sizeMm: 3.6 * unit }),
    text([left + 48 * unit, box.y + 16 * unit], `${said.useBy} ________________`, { sizeMm: 3.6 * unit }),
    ...wrapped(`${said.limitedBy}: ${shown(reader, input.limitedBy)}`, width, 3 * unit, 'regular')
      .slice(0, 2)
      .map((row, index) =>
        text([left, box.y + box.height + (4.6 + index * 3.9) * unit], row, { sizeMm: 3 * unit }),
      ),
  ];
}

const mixedText = ({ mixedMl, pumps }: BatchCardInput, reader: Reader): string => {
  const said = reader.words.batch;
  const strokes = pumps === undefined ? '' : ` · ${said.pumps}: ${shown(reader, pumps)}`;
  return `${said.mixed}: ${fixed(reader, mixedMl, 0)} ml${strokes}`;
};

/** For pots that are weighed alike: how long each lasts, and a line for each to write its times on. */
function alikeHalf(
  input: BatchCardInput,
  top: number,
  { left, right, unit }: Pen,
  reader: Reader,
): readonly Mark[] {
  const said = reader.words.batch;
  const row = (index: number): number => top + (17.4 + index * 5.6) * unit;
  const facts = [mixedText(input, reader), said.mix].flatMap((words) =>
    wrapped(words, (right - left) * 0.6, 3.2 * unit, 'regular').slice(0, 2),
  );
  return [
    ...facts.map((fact, index) => text([left, top + (3.4 + index * 4) * unit], fact, { sizeMm: 3.2 * unit })),
    text([right, top + 3.6 * unit], said.useWithin, { sizeMm: 3.2 * unit, anchor: 'end' }),
    text([right, top + 12 * unit], said.minutes(fixed(reader, input.useWithinMin, 0)), {
      sizeMm: 8 * unit,
      weight: 'bold',
      anchor: 'end',
    }),
    ...(input.alike ?? []).flatMap(({ number, covers }, index) =>
      potLine(
        `${number}  ${shown(reader, covers.join(', '))}`,
        row(index) + 4 * unit,
        { left, right, unit },
        reader,
      ),
    ),
  ];
}

const potLine = (
  said: string,
  y: number,
  { left, right, unit }: Pen,
  { words: { batch } }: Reader,
): readonly Mark[] => [
  text([left, y], shortened(said, 40 * unit, 3.2 * unit, 'bold'), { sizeMm: 3.2 * unit, weight: 'bold' }),
  text([left + 42 * unit, y], `${batch.startedAt} _______`, { sizeMm: 3.2 * unit }),
  text([right, y], `${batch.useBy} _______`, { sizeMm: 3.2 * unit, anchor: 'end' }),
  line('fine', [left, y + 1.4 * unit], [right, y + 1.4 * unit]),
];
