import type { DrawingRequest } from '../drawing-request.js';
import { fixed, shown, upTo, type Reader } from '../reader.js';
import { closeSheet, openSheet, type OpenSheet } from '../sheet/furniture.js';
import { boxMark, centredText, circle, line, text, type Mark } from '../sheet/marks.js';
import type { Drawing } from '../sheet/svg.js';
import { shortened, wrapped } from '../sheet/text-size.js';

export interface BatchCardInput {
  readonly number: number;
  readonly title: string;
  readonly resinName: string;
  readonly hardenerName: string;
  readonly resinG: number;
  readonly hardenerG: number;
  readonly fillerG: number;
  readonly fillerName?: string;
  readonly mixedMl: number;
  readonly covers: readonly string[];
  readonly useWithinMin: number;
  readonly limitedBy: string;
  readonly pumps?: string;
}

/** One mix on one card, readable at arm's length: what to weigh in which order, what it is for, how long it lasts. */
export function batchCard(input: BatchCardInput, request: DrawingRequest): Drawing {
  const { reader } = request;
  const said = reader.words.batch;
  const number = String(input.number);
  const sheet = openSheet({
    name: `batch-${number}`, title: said.title(number), ...request, legend: [], notes: [], isToScale: false,
    description: said.describe(number, input.title),
  });
  return closeSheet(sheet, cardMarks(input, sheet), undefined);
}

interface Pen {
  readonly left: number;
  readonly right: number;
  /** Everything on the card grows with its width. */
  readonly unit: number;
}

function cardMarks(input: BatchCardInput, sheet: OpenSheet): readonly Mark[] {
  const { area, request: { reader } } = sheet;
  const said = reader.words.batch;
  const pen: Pen = { left: area.x, right: area.x + area.width, unit: Math.min(area.width / 100, area.height / 118) };
  const { unit } = pen;
  const head = [
    text([pen.left, area.y + 8 * unit], said.title(String(input.number)), { sizeMm: 9 * unit, weight: 'bold' }),
    ...wrapped(shown(reader, input.title), area.width * 0.58, 4 * unit, 'regular').slice(0, 2).map((row, index) =>
      text([pen.right, area.y + (3.5 + index * 4.6) * unit], row, { sizeMm: 4 * unit, anchor: 'end' })),
    line('visible', [pen.left, area.y + 11 * unit], [pen.right, area.y + 11 * unit]),
  ];
  const weighed = weighings(input, reader).flatMap((row, index) => weighingRow(row, index, area.y + (13 + index * 13) * unit, pen));
  const below = area.y + 54 * unit;
  return [...head, ...weighed, ...lowerHalf(input, below, pen, reader)];
}

interface Weighing {
  readonly name: string;
  readonly massText: string;
}

const weighings = (input: BatchCardInput, reader: Reader): readonly Weighing[] => [
  { name: input.resinName, massText: `${upTo(reader, input.resinG, 1)} g` },
  { name: input.hardenerName, massText: `${upTo(reader, input.hardenerG, 1)} g` },
  ...(input.fillerG > 0 ? [{ name: input.fillerName ?? reader.words.batch.filler, massText: `${upTo(reader, input.fillerG, 1)} g` }] : []),
].map(({ name, massText }) => ({ name: shown(reader, name), massText }));

function weighingRow({ name, massText }: Weighing, index: number, y: number, { left, right, unit }: Pen): readonly Mark[] {
  const middle = y + 6 * unit;
  const room = right - left - 52 * unit;
  const rows = wrapped(name, room, 4 * unit, 'regular');
  const shownRows = rows.length > 2 ? [rows[0], shortened(rows.slice(1).join(' '), room, 4 * unit, 'regular')] : rows;
  return [
    circle([left + 5 * unit, middle], 4 * unit, 'visible', 'none'),
    centredText([left + 5 * unit, middle], String(index + 1), { sizeMm: 5.5 * unit, weight: 'bold' }),
    ...shownRows.map((row, at) => centredText([left + 12 * unit, middle + (at - (shownRows.length - 1) / 2) * 4.8 * unit], row, { sizeMm: 4 * unit, anchor: 'start' })),
    centredText([right, middle], massText, { sizeMm: 8 * unit, weight: 'bold', anchor: 'end' }),
    line('fine', [left, y + 12.4 * unit], [right, y + 12.4 * unit]),
  ];
}

function lowerHalf(input: BatchCardInput, top: number, { left, right, unit }: Pen, reader: Reader): readonly Mark[] {
  const said = reader.words.batch;
  const width = right - left;
  const mixed = `${said.mixed}: ${fixed(reader, input.mixedMl, 0)} ml${input.pumps === undefined ? '' : ` · ${said.pumps}: ${shown(reader, input.pumps)}`}`;
  const facts = [
    ...wrapped(mixed, width, 3.6 * unit, 'regular').slice(0, 2),
    ...wrapped(said.mix, width, 3.6 * unit, 'regular').slice(0, 2),
    ...wrapped(`${said.for}: ${shown(reader, input.covers.join(', '))}`, width, 3.6 * unit, 'bold').slice(0, 3),
  ];
  const box = { x: left, y: top + 28 * unit, width, height: 20 * unit };
  return [
    ...facts.map((row, index) => text([left, top + (3.6 + index * 4.6) * unit], row, { sizeMm: 3.6 * unit, weight: row.startsWith(`${said.for}:`) ? 'bold' : 'regular' })),
    boxMark(box, 'visible', 'none'),
    text([left + 2 * unit, box.y + 5 * unit], said.useWithin, { sizeMm: 3.6 * unit }),
    text([left + 2 * unit, box.y + 14 * unit], said.minutes(fixed(reader, input.useWithinMin, 0)), { sizeMm: 9 * unit, weight: 'bold' }),
    text([left + 48 * unit, box.y + 8 * unit], `${said.startedAt} ________________`, { sizeMm: 3.6 * unit }),
    text([left + 48 * unit, box.y + 16 * unit], `${said.useBy} ________________`, { sizeMm: 3.6 * unit }),
    ...wrapped(`${said.limitedBy}: ${shown(reader, input.limitedBy)}`, width, 3 * unit, 'regular').slice(0, 2).map((row, index) =>
      text([left, box.y + box.height + (4.6 + index * 3.9) * unit], row, { sizeMm: 3 * unit })),
  ];
}
