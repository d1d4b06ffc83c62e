import type { DrawingRequest } from '../drawing-request.js';
import { fixed, shown, upTo, type Reader } from '../reader.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import { hatched } from '../sheet/hatch.js';
import { boxMark, line, shape, sizes, text, type Mark } from '../sheet/marks.js';
import { rectangle, type Box, type Point } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { shortened, textWidthMm } from '../sheet/text-size.js';

export interface GanttTask {
  readonly title: string;
  /** Working days from the start of the work; a task may begin and end within a day. */
  readonly startDay: number;
  readonly endDay: number;
  /** Until when the result has to be left alone. */
  readonly waitEndDay: number;
  readonly isCritical: boolean;
  readonly isHoldPoint: boolean;
}

export interface GanttInput {
  readonly tasks: readonly GanttTask[];
}

const LEAST_PITCH_MM = 3.7;
const MOST_PITCH_MM = 6.5;
const HEAD_MM = 9;

/** How many tasks one sheet of this height can carry; more go on further sheets. */
export const tasksThatFit = (areaHeightMm: number): number => Math.max(1, Math.floor((areaHeightMm - HEAD_MM) / LEAST_PITCH_MM));

/** How high the bars of so many tasks stand at the closest. */
export const ganttHeightMm = (tasks: number): number => tasks * LEAST_PITCH_MM + HEAD_MM;

/** Tasks as bars over the days, the critical ones dark, waits hatched, the hold point a diamond. */
export function gantt(input: GanttInput, request: DrawingRequest): readonly Drawing[] {
  const sheet = opened(input, request, []);
  const perSheet = tasksThatFit(sheet.area.height - 4);
  const lastDay = Math.max(1, ...input.tasks.map(({ endDay, waitEndDay }) => Math.max(endDay, waitEndDay)));
  const count = Math.max(1, Math.ceil(input.tasks.length / perSheet));
  return Array.from({ length: count }, (_, index) => {
    const tasks = input.tasks.slice(index * perSheet, (index + 1) * perSheet);
    const notes = count === 1 ? [] : [request.reader.words.gantt.sheetNote(String(index * perSheet + 1), String(index * perSheet + tasks.length))];
    const own = opened(input, request, notes);
    return closeSheet({ ...own, request: { ...own.request, name: count === 1 ? 'gantt' : `gantt-${index + 1}` } }, chart(tasks, lastDay, own), undefined);
  });
}

function opened(input: GanttInput, request: DrawingRequest, notes: readonly string[]): OpenSheet {
  const { reader } = request;
  const said = reader.words.gantt;
  const lastDay = Math.max(0, ...input.tasks.map(({ endDay }) => endDay));
  return openSheet({
    name: 'gantt', title: said.title, ...request, notes, isToScale: false, legend: legendOf(input, reader),
    description: said.describe(said.tasks(input.tasks.length), upTo(reader, lastDay, 1)),
  });
}

function chart(tasks: readonly GanttTask[], lastDay: number, sheet: OpenSheet): readonly Mark[] {
  const { area, request: { reader } } = sheet;
  const pitch = Math.min(MOST_PITCH_MM, (area.height - HEAD_MM) / Math.max(1, tasks.length));
  const size = pitch < 4.5 ? sizes.fine : sizes.body;
  const widest = Math.max(20, ...tasks.map(({ title }) => textWidthMm(shown(reader, title), size, 'regular') + 2));
  const column = Math.min(widest, area.width * 0.42);
  const plot = { x: area.x + column + 1, y: area.y + HEAD_MM, width: area.width - column - 5, height: tasks.length * pitch };
  const across = (day: number): number => plot.x + (day / lastDay) * plot.width;
  return [
    ...dayGrid(plot, lastDay, across, sheet),
    ...tasks.flatMap((task, index) => {
      const y = plot.y + index * pitch;
      const name = shortened(shown(reader, task.title), column - 1, size, task.isHoldPoint ? 'bold' : 'regular');
      return [
        text([area.x, y + pitch / 2 + size * 0.34], name, { sizeMm: size, weight: task.isHoldPoint ? 'bold' : 'regular' }),
        ...bar(task, { x: 0, y: y + pitch * 0.2, width: 0, height: pitch * 0.6 }, across),
      ];
    }),
  ];
}

function dayGrid(plot: Box, lastDay: number, across: (day: number) => number, { request: { reader } }: OpenSheet): readonly Mark[] {
  const step = [1, 2, 5, 10, 20, 50, 100, 200].find((days) => (days / lastDay) * plot.width >= 9) ?? 500;
  const days = Array.from({ length: Math.floor(lastDay / step) + 1 }, (_, index) => index * step);
  return [
    text([plot.x, plot.y - 5.6], reader.words.gantt.day, { sizeMm: sizes.fine, weight: 'bold' }),
    ...days.flatMap((day) => [
      line('hatch', [across(day), plot.y - 1], [across(day), plot.y + plot.height]),
      text([across(day), plot.y - 1.8], fixed(reader, day, 0), { sizeMm: sizes.fine, anchor: 'middle' }),
    ]),
    line('fine', [plot.x, plot.y - 1], [plot.x + plot.width, plot.y - 1]),
  ];
}

function bar(task: GanttTask, row: Box, across: (day: number) => number): readonly Mark[] {
  const [from, to, waitTo] = [across(task.startDay), across(task.endDay), across(Math.max(task.endDay, task.waitEndDay))];
  if (task.isHoldPoint) return diamond([(from + to) / 2, row.y + row.height / 2], row.height * 0.75);
  const work = { ...row, x: from, width: Math.max(0.6, to - from) };
  const wait = { ...row, x: work.x + work.width, width: Math.max(0, waitTo - work.x - work.width) };
  return [
    boxMark(work, 'fine', task.isCritical ? 'ink' : 'light'),
    ...(wait.width < 0.3 ? [] : [...hatched([rectangle(wait)], 'diagonal'), boxMark(wait, 'fine', 'none')]),
  ];
}

const diamond = ([x, y]: Point, reach: number): readonly Mark[] =>
  [shape([[[x, y - reach], [x + reach, y], [x, y + reach], [x - reach, y]]], 'visible', 'paper'), shape([[[x, y - reach / 2], [x + reach / 2, y], [x, y + reach / 2], [x - reach / 2, y]]], undefined, 'ink')];

function legendOf({ tasks }: GanttInput, reader: Reader): readonly LegendEntry[] {
  const said = reader.words.gantt;
  return [
    { sample: (box) => [boxMark(box, 'fine', 'light')], meaning: said.work },
    { sample: (box) => [boxMark(box, 'fine', 'ink')], meaning: said.critical },
    { sample: (box) => [...hatched([rectangle(box)], 'diagonal'), boxMark(box, 'fine', 'none')], meaning: said.wait },
    ...(tasks.some(({ isHoldPoint }) => isHoldPoint)
      ? [{ sample: (box: Box) => diamond([box.x + box.width / 2, box.y + box.height / 2], 2), meaning: said.hold }] : []),
  ];
}
