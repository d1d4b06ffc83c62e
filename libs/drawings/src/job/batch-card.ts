import type { DrawingRequest } from '../drawing-request.js';
import { fixed, shown, upTo, type Reader } from '../reader.js';
import { closeSheet, openSheet, type OpenSheet } from '../sheet/furniture.js';
import { boxMark, centredText, circle, line, text, type Mark } from '../sheet/marks.js';
import type { Drawing } from '../sheet/svg.js';
import { shortened, textWidthMm, wrapped } from '../sheet/text-size.js';

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

/** How high a card is in its own units: its head, what is weighed, and what stands below. */
function cardUnits({ weigh, alike }: BatchCardInput): number {
  const weighed = HEAD_UNITS + weigh.length * ROW_UNITS;
  return alike === undefined ? weighed + FOOT_UNITS : weighed + ALIKE_UNITS + potRows(alike) * POT_UNITS;
}

const HEAD_UNITS = 15;
const FOOT_UNITS = 52;
const ALIKE_UNITS = 18;

/** How high a card of this width has to be. */
export const cardHeightMm = (input: BatchCardInput, widthMm: number): number =>
  Math.ceil((cardUnits(input) * widthMm) / 100) + 3;

/** Height of one row of the weighing, in the same units. */
const ROW_UNITS = 19;

/** The largest type in which the numbers of a card's pots fit beside what they are for. */
function headText(
  said: string,
  widthMm: number,
  unit: number,
): { readonly text: string; readonly sizeMm: number } {
  const size = [7.6, 6.4, 5.4, 4.6].find((each) => textWidthMm(said, each * unit, 'bold') <= widthMm);
  const sizeMm = (size ?? 4.6) * unit;
  return { text: shortened(said, widthMm, sizeMm, 'bold'), sizeMm };
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
    unit: Math.min(area.width / 100, area.height / cardUnits(input)),
  };
  const { unit } = pen;
  const title = headText(said.title(numbersOf(input)), area.width * 0.56, unit);
  const head = [
    text([pen.left, area.y + 8 * unit], title.text, { sizeMm: title.sizeMm, weight: 'bold' }),
    ...wrapped(shown(reader, input.title), area.width * 0.42, 4 * unit, 'regular')
      .slice(0, 2)
      .map((row, index) =>
        text([pen.right, area.y + (3.5 + index * 4.6) * unit], row, { sizeMm: 4 * unit, anchor: 'end' }),
      ),
    line('visible', [pen.left, area.y + 11 * unit], [pen.right, area.y + 11 * unit]),
  ];
  const weighed = input.weigh.flatMap((part, index) =>
    weighingRow(part, { index, y: area.y + (13 + index * ROW_UNITS) * unit }, pen, reader),
  );
  const below = area.y + (HEAD_UNITS + input.weigh.length * ROW_UNITS) * unit;
  const rest = input.alike === undefined ? lowerHalf : alikeHalf;
  return [...head, ...weighed, ...rest(input, below, pen, reader)];
}

/** Type of the names of what is weighed. */
const NAME_UNITS = 3.7;

function weighingRow(
  { what, name, addG, scaleShowsG, volumeMl }: WeighingInput,
  place: { readonly index: number; readonly y: number },
  { left, right, unit }: Pen,
  reader: Reader,
): readonly Mark[] {
  const { index, y } = place;
  const middle = y + 6.8 * unit;
  const room = right - left - 58 * unit;
  const rows = wrapped(shown(reader, name), room, NAME_UNITS * unit, 'regular');
  const shownRows =
    rows.length > 3
      ? [...rows.slice(0, 2), shortened(rows.slice(2).join(' '), room, NAME_UNITS * unit, 'regular')]
      : rows;
  const said = reader.words.batch;
  const by = (what === 'filler' ? said.loosePart : said.part)(
    fixed(reader, volumeMl, 0),
    upTo(reader, scaleShowsG, 1),
  );
  return [
    circle([left + 5 * unit, middle], 4.6 * unit, 'visible', 'none'),
    centredText([left + 5 * unit, middle], String(index + 1), { sizeMm: 6.2 * unit, weight: 'bold' }),
    ...shownRows.map((row, at) =>
      centredText([left + 12 * unit, middle + (at - (shownRows.length - 1) / 2) * 4.4 * unit], row, {
        sizeMm: NAME_UNITS * unit,
        anchor: 'start',
      }),
    ),
    centredText([right, y + 6.2 * unit], `${upTo(reader, addG, 1)} g`, {
      sizeMm: 9.4 * unit,
      weight: 'bold',
      anchor: 'end',
    }),
    text([right, y + 16.6 * unit], by, { sizeMm: 4.2 * unit, anchor: 'end' }),
    line('fine', [left, y + 18.2 * unit], [right, y + 18.2 * unit]),
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
    wrapped(words, width, 4.2 * unit, weight)
      .slice(0, most)
      .map((row) => ({ row, weight }));
  const facts = [
    ...written(mixed, 'regular', 1),
    ...written(said.mix, 'regular', 1),
    ...written(`${said.for}: ${shown(reader, input.covers.join(', '))}`, 'bold', 2),
  ];
  const box = { x: left, y: top + 24 * unit, width, height: 20 * unit };
  return [
    ...facts.map(({ row, weight }, index) =>
      text([left, top + (4.2 + index * 5.5) * unit], row, { sizeMm: 4.2 * unit, weight }),
    ),
    boxMark(box, 'visible', 'none'),
    text([left + 2 * unit, box.y + 5.5 * unit], said.useWithin, { sizeMm: 4.2 * unit }),
    text([left + 2 * unit, box.y + 16 * unit], said.minutes(fixed(reader, input.useWithinMin, 0)), {
      sizeMm: 10.5 * unit,
      weight: 'bold',
    }),
    text([left + 50 * unit, box.y + 7.5 * unit], `${said.startedAt} _____________`, {
      sizeMm: 4.2 * unit,
    }),
    text([left + 50 * unit, box.y + 16.5 * unit], `${said.useBy} _______________`, { sizeMm: 4.2 * unit }),
    ...wrapped(`${said.limitedBy}: ${shown(reader, input.limitedBy)}`, width, 3.4 * unit, 'regular')
      .slice(0, 1)
      .map((row, index) =>
        text([left, box.y + box.height + (4.8 + index * 3.9) * unit], row, { sizeMm: 3.4 * unit }),
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
  const facts = [mixedText(input, reader), said.mix].flatMap((words) =>
    wrapped(words, (right - left) * 0.66, 3.7 * unit, 'regular').slice(0, 2),
  );
  return [
    ...facts.map((fact, index) =>
      text([left, top + (3.7 + index * 4.4) * unit], fact, { sizeMm: 3.7 * unit }),
    ),
    text([right, top + 3.7 * unit], said.useWithin, { sizeMm: 3.7 * unit, anchor: 'end' }),
    text([right, top + 13 * unit], said.minutes(fixed(reader, input.useWithinMin, 0)), {
      sizeMm: 9 * unit,
      weight: 'bold',
      anchor: 'end',
    }),
    ...potLines(input, top + Math.max(15.5, facts.length * 4.4 + 2) * unit, { left, right, unit }, reader),
  ];
}

/** A line for each pot, in one column as long as they are few. */
function potLines(
  input: BatchCardInput,
  top: number,
  { left, right, unit }: Pen,
  reader: Reader,
): readonly Mark[] {
  const pots = input.alike ?? [];
  const isFew = pots.length <= FEW_POTS;
  const rows = potRows(pots);
  const width = isFew ? right - left : (right - left - 4 * unit) / 2;
  return pots.flatMap((pot, index) => {
    const from = left + Math.floor(index / rows) * (width + 4 * unit);
    const column = { left: from, right: from + width, unit };
    return potLine(
      potSaid(pot, input, reader),
      top + ((index % rows) * POT_UNITS + 4) * unit,
      column,
      reader,
    );
  });
}

const potRows = ({ length }: readonly Pot[]): number => (length <= FEW_POTS ? length : Math.ceil(length / 2));

const FEW_POTS = 4;
const POT_UNITS = 6.4;

/** What a pot is for, without the step that stands above them all. */
function potSaid({ number, covers }: Pot, { title }: BatchCardInput, reader: Reader): string {
  const what = covers
    .map((cover) => (cover === title ? '' : cover.replace(`${title}, `, '')))
    .filter((cover) => cover !== '');
  return `${number}  ${shown(reader, what.join(', '))}`;
}

const potLine = (
  said: string,
  y: number,
  { left, right, unit }: Pen,
  { words: { batch } }: Reader,
): readonly Mark[] => {
  const widthMm = right - left;
  const isBroad = widthMm > 60 * unit;
  const sizeMm = (isBroad ? 3.5 : 3.3) * unit;
  return [
    text([left, y], shortened(said, widthMm * (isBroad ? 0.42 : 0.57), sizeMm, 'bold'), {
      sizeMm,
      weight: 'bold',
    }),
    ...(isBroad
      ? [
          text([left + widthMm * 0.44, y], `${batch.startedAt} _____`, { sizeMm }),
          text([right, y], `${batch.useBy} _____`, { sizeMm, anchor: 'end' }),
        ]
      : [text([right, y], `${batch.useBy} ____`, { sizeMm, anchor: 'end' })]),
    line('fine', [left, y + 1.2 * unit], [right, y + 1.2 * unit]),
  ];
};
