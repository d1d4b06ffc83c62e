import {
  dense,
  paragraph,
  task,
  untitled,
  type Block,
  type FigureBlock,
  type ReportDocument,
  type Section,
} from './document.js';
import { documentOf, printedFor } from './estimate-report.js';
import {
  CARDS_A_SHEET,
  fittingFigures,
  piecePlanFigure,
  plyPlanFigure,
  potFigures,
  sectionFigure,
  slotFigures,
} from './figures.js';
import type { PaperName } from '../sheet/formats.js';
import { hardwareBlocks } from './method-section.js';
import { fittingTable } from './opening-sections.js';
import { dayPlanTasks } from './pack/day-plan.js';
import { goodsTasks, logBlocks } from './pack/goods.js';
import { markOutTasks } from './pack/mark-out.js';
import { pressingTasks } from './pack/pressing.js';
import { measuredTask, sharingSheets, sheetCount, type MeasuredTask } from './pack/shared-sheets.js';
import { cautionsAt, cautionsInFront, type CautionSheet } from './pack/step-cautions.js';
import { isTooLarge, shapedTemplates, templatesInPack, type Template } from './pack/templates.js';
import { openedOf, type OpenedRequest, type ReportRequest } from './request.js';
import { word } from './said.js';
import { cureBlocks, gateTable, pieceTable, plyTable, weatherBlocks } from './work-sections.js';

/** What goes out on deck: one task a sheet, large, each with the cautions of its step and the hold point in its place. */
export function jobPackOf(request: ReportRequest): ReportDocument {
  const templates = shapedTemplates(request);
  const sheets = sheetsOf(request, templates);
  const present = presentIn(sheets);
  const printed = printedFor(request);
  const measured: Measuring = (section) => measuredTask(section, printed(section), request.paper);
  const tasks = sheets.map((sheet) => withCautions(sheet, present, request).map(measured));
  const logs = LOG_LINES.map((lines) => [measured(logTask(request, lines))]);
  const front = measured(frontTask(request, [...tasks, logs[0]], present));
  const orders = logs.flatMap((log) => ordersOf(tasks, log));
  return documentOf(request, 'job-pack', request.reader.words.jobPack.kind, [
    ...sharingSheets([front, ...shortest(orders, front, request.paper)], request.paper),
    ...templatesInPack(templates, request),
  ]);
}

/** The sheets of one task, and the name by which cautions find it. */
type Sheet = readonly [CautionSheet | undefined, readonly Section[]];

/** In the order of the work; the section, which is looked at throughout, comes last. */
function sheetsOf(request: ReportRequest, templates: readonly Template[]): readonly Sheet[] {
  const opened = openedOf(request);
  return [
    [undefined, dayPlanTasks(request)],
    [undefined, goodsTasks(request)],
    ['mark-out', markOutTasks(request)],
    ['pressing', pressingTasks(request)],
    ['fittings', fittingTasks(request)],
    ['pieces', opened === undefined ? [] : pieceTasks(opened, templates)],
    ['plies', opened === undefined ? [] : plyTasks(opened)],
    ['pots', potTasks(request)],
    ['gates', [gateTask(request)]],
    [undefined, sectionTasks(request)],
  ];
}

type Tasks = readonly MeasuredTask[];
type Measuring = (section: Section) => MeasuredTask;

/** The section and the log stand where they find room on a sheet: the section beside pieces and plies, the log anywhere. */
function ordersOf(tasks: readonly Tasks[], log: Tasks): readonly (readonly Tasks[])[] {
  const [section] = tasks.slice(-1);
  const work = tasks.slice(0, -1);
  return SECTION_AT.flatMap((at) => {
    const withSection = [...work.slice(0, at), section, ...work.slice(at)];
    return withSection.map((_, place) => {
      const end = withSection.length - place;
      return [...withSection.slice(0, end), log, ...withSection.slice(end)];
    });
  });
}

/** As many lines to write on as cost no sheet. */
const LOG_LINES = [10, 8, 6] as const;

/** Before the pieces, or behind the plies. */
const SECTION_AT = [5, 7] as const;

function shortest(orders: readonly (readonly Tasks[])[], front: MeasuredTask, paper: PaperName): Tasks {
  const [first, ...others] = orders.map((order) => order.flat());
  const countOf = (tasks: Tasks): number => sheetCount([front, ...tasks], paper);
  return others.reduce((best, other) => (countOf(other) < countOf(best) ? other : best), first);
}

/** Cautions stand on the last sheet of their task, below its table; pictures that end it may go on to a sheet of their own. */
const withCautions = (
  [name, sections]: Sheet,
  present: ReadonlySet<CautionSheet>,
  request: ReportRequest,
): readonly Section[] =>
  sections.map((section, index) =>
    name === undefined || index < sections.length - 1
      ? section
      : { ...section, blocks: beforePictures(section.blocks, cautionsAt(name, present, request)) },
  );

function beforePictures(blocks: readonly Block[], added: readonly Block[]): readonly Block[] {
  const end = blocks.findLastIndex(({ kind }) => kind !== 'figure') + 1;
  return [...blocks.slice(0, end), ...added, ...blocks.slice(end)];
}

const presentIn = (sheets: readonly Sheet[]): ReadonlySet<CautionSheet> =>
  new Set(sheets.flatMap(([name, sections]) => (name === undefined || sections.length === 0 ? [] : [name])));

/** What is in the pack in one line, and the gravest dangers. */
function frontTask(
  request: ReportRequest,
  tasks: readonly Tasks[],
  present: ReadonlySet<CautionSheet>,
): Section {
  const { jobPack, cautions } = request.reader.words;
  const titles = tasks.flatMap(([first]) => (first === undefined ? [] : [taskName(first.section, request)]));
  const callouts = cautionsInFront(request);
  return task('safety', jobPack.safety, [
    dense(paragraph(jobPack.coverLead(titles.join(', ')))),
    ...(request.medium === 'screen' ? [paragraph(jobPack.templatesOnPaper)] : []),
    ...(callouts.length === 0 ? [] : [dense(paragraph(cautions.lead))]),
    ...callouts,
    ...cautionsAt('front', present, request),
  ]);
}

/** Several sheets of one task are named once. */
function taskName({ id, title }: Section, { reader }: ReportRequest): string {
  const { taskNames } = reader.words.jobPack;
  const [task] = id.split(/-\d+$/);
  return Object.hasOwn(taskNames, task) ? word(taskNames, task) : title;
}

/** Through the cut of an opening, and through each slot at an edge. */
function sectionTasks(request: ReportRequest): readonly Section[] {
  const { section, slots } = request.reader.words.jobPack;
  const opened = openedOf(request);
  const through = slotFigures(request);
  return [
    ...(opened === undefined ? [] : [task('section', section, [untitled(sectionFigure(opened))])]),
    ...(through.length === 0 ? [] : [task('slot-section', slots, through)]),
  ];
}

const fittingTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack } = request.reader.words;
  const { scope, hardware } = request.estimate;
  return scope.fittings.length === 0
    ? []
    : [
        task('fitting-list', jobPack.fittings, [
          dense(paragraph(jobPack.fittingsLead)),
          dense(fittingTable(request)),
          ...hardwareBlocks(request, hardware).map((block) =>
            block.kind === 'table' || block.kind === 'list' ? dense(block) : block,
          ),
          ...fittingFigures(request),
        ]),
      ];
};

/** Each opening has a sheet with its own plan, unless one plan of all of them is drawn as large. */
function plannedTogether(
  labels: readonly string[],
  figureOf: (label: string | undefined) => FigureBlock,
): readonly (readonly string[])[] {
  if (labels.length < 2) return labels.map((label) => [label]);
  const together = figureOf(undefined).scaleFactor ?? 0;
  return labels.some((label) => (figureOf(label).scaleFactor ?? 0) > together)
    ? labels.map((label) => [label])
    : [labels];
}

const pieceTasks = (request: OpenedRequest, templates: readonly Template[]): readonly Section[] => {
  const {
    estimate: { scope, core },
    reader: {
      words: { jobPack },
    },
  } = request;
  const setOut = new Set(templates.filter(isTooLarge).map(({ piece }) => piece.label));
  const labels = scope.openings
    .map(({ label }) => label)
    .filter((label) => core.pieces.some(({ opening }) => opening === label));
  const planOf = (label: string | undefined): FigureBlock => piecePlanFigure(request, label);
  return plannedTogether(labels, planOf).map((shown, index) => {
    const large = core.pieces.filter(({ opening, label }) => shown.includes(opening) && setOut.has(label));
    return task(`pieces-${index + 1}`, jobPack.pieces(shown.join(', '), shown.length === 1), [
      paragraph(jobPack.piecesLead),
      untitled(planOf(onlyOne(shown))),
      dense(pieceTable(request, shown)),
      ...(large.length === 0
        ? []
        : [dense(paragraph(jobPack.setOut(large.map(({ label }) => label).join(', '))))]),
    ]);
  });
};

const onlyOne = (labels: readonly string[]): string | undefined =>
  labels.length === 1 ? labels[0] : undefined;

/** The table shares the first plan's sheet. */
const plyTasks = (request: OpenedRequest): readonly Section[] => {
  const {
    estimate,
    reader: {
      words: { jobPack },
    },
  } = request;
  if (estimate.laminate.plies.length === 0) return [];
  const planOf = (label: string | undefined): FigureBlock => plyPlanFigure(request, label);
  return plannedTogether(
    estimate.scope.openings.map(({ label }) => label),
    planOf,
  ).map((shown, index) =>
    task(`plies-${index + 1}`, jobPack.plies(shown.join(', '), shown.length === 1), [
      ...(index === 0 ? [dense(plyTable(request))] : []),
      untitled(planOf(onlyOne(shown))),
    ]),
  );
};

const potTasks = (request: ReportRequest): readonly Section[] => {
  const cards = potFigures(request);
  const sheets = Math.ceil(cards.length / CARDS_A_SHEET);
  return Array.from({ length: sheets }, (_, sheet) =>
    task(`pots-${sheet + 1}`, request.reader.words.jobPack.pots(String(sheet + 1), String(sheets)), [
      { kind: 'cards', figures: cards.slice(sheet * CARDS_A_SHEET, (sheet + 1) * CARDS_A_SHEET) },
    ]),
  );
};

const gateTask = (request: ReportRequest): Section => {
  const { jobPack } = request.reader.words;
  return task('gates', jobPack.gates, [
    dense(paragraph(jobPack.gatesLead)),
    dense(gateTable(request)),
    ...[...weatherBlocks(request), ...cureBlocks(request)].map(small),
  ]);
};

const small = (block: Block): Block =>
  block.kind === 'table' || block.kind === 'paragraph' || block.kind === 'list' ? dense(block) : block;

const logTask = (request: ReportRequest, lines: number): Section =>
  task('log', request.reader.words.jobPack.log.title, logBlocks(request, lines));
