import type { DrawingRequest } from '../drawing-request.js';
import { fixed, shown, upTo, type Reader } from '../reader.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import { hatched } from '../sheet/hatch.js';
import { boxMark, line, shape, sizes, text, type Mark } from '../sheet/marks.js';
import { rectangle, type Box, type Point } from '../sheet/shapes.js';
import type { SheetFormat } from '../sheet/formats.js';
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
  /** ISO date of day 0; with it the scale shows dates instead of counting days. */
  readonly startDate?: string;
}

interface Rows {
  readonly leastPitchMm: number;
  readonly mostPitchMm: number;
  /** Names above their bars, for a screen too narrow to set both side by side. */
  readonly areStacked: boolean;
}

const rowsOn = ({ kind }: SheetFormat): Rows =>
  kind === 'phone'
    ? { leastPitchMm: 7.2, mostPitchMm: 8, areStacked: true }
    : { leastPitchMm: 3.7, mostPitchMm: 6.5, areStacked: false };

const HEAD_MM = 9;

/** How many tasks one sheet of this height can carry; more go on further sheets. */
export const tasksThatFit = (areaHeightMm: number, format: SheetFormat): number =>
  Math.max(1, Math.floor((areaHeightMm - HEAD_MM) / rowsOn(format).leastPitchMm));

/** How high the bars of so many tasks stand at the closest. */
export const ganttHeightMm = (tasks: number, format: SheetFormat): number =>
  tasks * rowsOn(format).leastPitchMm + HEAD_MM;

/** Tasks as bars over the days, the critical ones dark, waits hatched, the hold point a diamond. */
export function gantt(input: GanttInput, request: DrawingRequest): readonly Drawing[] {
  const sheet = opened(input, request, []);
  const perSheet = tasksThatFit(sheet.area.height - 4, request.format);
  const lastDay = Math.max(1, ...input.tasks.map(({ endDay, waitEndDay }) => Math.max(endDay, waitEndDay)));
  const count = Math.max(1, Math.ceil(input.tasks.length / perSheet));
  return Array.from({ length: count }, (_, index) => {
    const tasks = input.tasks.slice(index * perSheet, (index + 1) * perSheet);
    const notes =
      count === 1
        ? []
        : [
            request.reader.words.gantt.sheetNote(
              String(index * perSheet + 1),
              String(index * perSheet + tasks.length),
            ),
          ];
    const own = opened(input, request, notes);
    return closeSheet(
      { ...own, request: { ...own.request, name: count === 1 ? 'gantt' : `gantt-${index + 1}` } },
      chart({ ...input, tasks }, lastDay, own),
      undefined,
    );
  });
}

function opened(input: GanttInput, request: DrawingRequest, notes: readonly string[]): OpenSheet {
  const { reader } = request;
  const said = reader.words.gantt;
  const lastDay = Math.max(0, ...input.tasks.map(({ endDay }) => endDay));
  return openSheet({
    name: 'gantt',
    title: said.title,
    ...request,
    notes,
    isToScale: false,
    legend: legendOf(input, reader),
    description: said.describe(said.tasks(input.tasks.length), upTo(reader, lastDay, 1)),
  });
}

function chart(input: GanttInput, lastDay: number, sheet: OpenSheet): readonly Mark[] {
  const {
    area,
    request: { format },
  } = sheet;
  const { mostPitchMm, areStacked } = rowsOn(format);
  const pitch = Math.min(mostPitchMm, (area.height - HEAD_MM) / Math.max(1, input.tasks.length));
  const size = pitch < 4.5 ? sizes.fine : sizes.body;
  const column = areStacked ? 0 : nameColumn(input.tasks, size, sheet);
  const plot = {
    x: area.x + column + 1,
    y: area.y + HEAD_MM,
    width: area.width - column - 5,
    height: input.tasks.length * pitch,
  };
  const across = (day: number): number => plot.x + (day / lastDay) * plot.width;
  return [
    ...dayGrid(plot, lastDay, { input, across, sheet }),
    ...input.tasks.flatMap((task, index) => {
      const y = plot.y + index * pitch;
      return areStacked
        ? [
            ...nameOf(
              task,
              { x: area.x, y: y + pitch * 0.42, width: area.width - 1, size, isBacked: true },
              sheet,
            ),
            ...bar(task, { x: 0, y: y + pitch * 0.52, width: 0, height: pitch * 0.36 }, across),
          ]
        : [
            ...nameOf(
              task,
              { x: area.x, y: y + pitch / 2 + size * 0.34, width: column - 1, size, isBacked: false },
              sheet,
            ),
            ...bar(task, { x: 0, y: y + pitch * 0.2, width: 0, height: pitch * 0.6 }, across),
          ];
    }),
  ];
}

/** As wide as the longest name, as long as the bars keep more than half. */
function nameColumn(
  tasks: readonly GanttTask[],
  size: number,
  { area, request: { reader } }: OpenSheet,
): number {
  const widest = Math.max(
    20,
    ...tasks.map(({ title }) => textWidthMm(shown(reader, title), size, 'regular') + 2),
  );
  return Math.min(widest, area.width * 0.42);
}

interface NamePlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
  readonly isBacked: boolean;
}

function nameOf(
  { title, isHoldPoint }: GanttTask,
  { x, y, width, size, isBacked }: NamePlace,
  { request: { reader } }: OpenSheet,
): readonly Mark[] {
  const weight = isHoldPoint ? 'bold' : 'regular';
  return [
    text([x, y], shortened(shown(reader, title), width, size, weight), {
      sizeMm: size,
      weight,
      backed: isBacked,
    }),
  ];
}

interface Scale {
  readonly input: GanttInput;
  readonly across: (day: number) => number;
  readonly sheet: OpenSheet;
}

function dayGrid(
  plot: Box,
  lastDay: number,
  {
    input: { startDate },
    across,
    sheet: {
      request: { reader },
    },
  }: Scale,
): readonly Mark[] {
  const said = reader.words.gantt;
  const room = startDate === undefined ? 9 : 14;
  const step =
    [1, 2, 5, 7, 10, 14, 20, 28, 50, 100, 200].find((days) => (days / lastDay) * plot.width >= room) ?? 500;
  const days = Array.from({ length: Math.floor(lastDay / step) + 1 }, (_, index) => index * step);
  const labelOf = (day: number): string =>
    startDate === undefined ? fixed(reader, day, 0) : shortDate(reader, startDate, day);
  return [
    text([plot.x, plot.y - 5.6], startDate === undefined ? said.day : said.date, {
      sizeMm: sizes.fine,
      weight: 'bold',
    }),
    ...days.flatMap((day) => [
      line('hatch', [across(day), plot.y - 1], [across(day), plot.y + plot.height]),
      text([across(day), plot.y - 1.8], labelOf(day), {
        sizeMm: sizes.fine,
        anchor: day === 0 ? 'start' : 'middle',
      }),
    ]),
    line('fine', [plot.x, plot.y - 1], [plot.x + plot.width, plot.y - 1]),
  ];
}

const dateFormats = new Map<string, Intl.DateTimeFormat>();

/** Day and month so many days after the start, as the reader writes them. */
function shortDate({ locale }: Reader, startDate: string, day: number): string {
  const known =
    dateFormats.get(locale) ??
    new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', timeZone: 'UTC' });
  dateFormats.set(locale, known);
  const date = new Date(`${startDate}T00:00:00Z`);
  date.setUTCDate(date.getUTCDate() + day);
  return known.format(date);
}

function bar(task: GanttTask, row: Box, across: (day: number) => number): readonly Mark[] {
  const [from, to, waitTo] = [
    across(task.startDay),
    across(task.endDay),
    across(Math.max(task.endDay, task.waitEndDay)),
  ];
  if (task.isHoldPoint) return diamond([(from + to) / 2, row.y + row.height / 2], row.height * 0.75);
  const work = { ...row, x: from, width: Math.max(0.6, to - from) };
  const wait = { ...row, x: work.x + work.width, width: Math.max(0, waitTo - work.x - work.width) };
  return [
    boxMark(work, 'fine', task.isCritical ? 'ink' : 'light'),
    ...(wait.width < 0.3 ? [] : [...hatched([rectangle(wait)], 'diagonal'), boxMark(wait, 'fine', 'none')]),
  ];
}

const diamond = ([x, y]: Point, reach: number): readonly Mark[] => [
  shape(
    [
      [
        [x, y - reach],
        [x + reach, y],
        [x, y + reach],
        [x - reach, y],
      ],
    ],
    'visible',
    'paper',
  ),
  shape(
    [
      [
        [x, y - reach / 2],
        [x + reach / 2, y],
        [x, y + reach / 2],
        [x - reach / 2, y],
      ],
    ],
    undefined,
    'ink',
  ),
];

function legendOf({ tasks }: GanttInput, reader: Reader): readonly LegendEntry[] {
  const said = reader.words.gantt;
  return [
    { sample: (box) => [boxMark(box, 'fine', 'light')], meaning: said.work },
    { sample: (box) => [boxMark(box, 'fine', 'ink')], meaning: said.critical },
    {
      sample: (box) => [...hatched([rectangle(box)], 'diagonal'), boxMark(box, 'fine', 'none')],
      meaning: said.wait,
    },
    ...(tasks.some(({ isHoldPoint }) => isHoldPoint)
      ? [
          {
            sample: (box: Box) => diamond([box.x + box.width / 2, box.y + box.height / 2], 2),
            meaning: said.hold,
          },
        ]
      : []),
  ];
}
