import {
  dense,
  paragraph,
  task,
  type Block,
  type FigureBlock,
  type ReportDocument,
  type Section,
} from './document.js';
import { documentOf } from './estimate-report.js';
import {
  CARDS_A_SHEET,
  fittingFigures,
  piecePlanFigure,
  plyPlanFigure,
  potFigures,
  sectionFigure,
} from './figures.js';
import { hardwareBlocks } from './method-section.js';
import { fittingTable } from './opening-sections.js';
import { dayPlanTasks } from './pack/day-plan.js';
import { goodsTasks, logBlocks } from './pack/goods.js';
import { markOutTasks } from './pack/mark-out.js';
import { pressingTasks } from './pack/pressing.js';
import { sharingSheets } from './pack/shared-sheets.js';
import { cautionsAt, cautionsInFront, type CautionSheet } from './pack/step-cautions.js';
import { isTooLarge, shapedTemplates, templatesInPack, type Template } from './pack/templates.js';
import { openedOf, type OpenedRequest, type ReportRequest } from './request.js';
import { word } from './said.js';
import { cureBlocks, gateTable, pieceTable, plyTable, weatherBlocks } from './work-sections.js';

/** What goes out on deck: one task a sheet, large, each with the cautions of its step and the hold point in its place. */
export function jobPackOf(request: ReportRequest): ReportDocument {
  const opened = openedOf(request);
  const templates = shapedTemplates(request);
  const sheets: readonly Sheet[] = [
    [undefined, dayPlanTasks(request)],
    [undefined, goodsTasks(request)],
    ['mark-out', markOutTasks(request)],
    ['pressing', pressingTasks(request)],
    ['fittings', fittingTasks(request)],
    [undefined, opened === undefined ? [] : sectionTasks(opened)],
    ['pieces', opened === undefined ? [] : pieceTasks(opened, templates)],
    ['plies', opened === undefined ? [] : plyTasks(opened)],
    ['pots', potTasks(request)],
    ['gates', [gateTask(request)]],
  ];
  const { jobPack } = request.reader.words;
  return documentOf(request, 'job-pack', jobPack.kind, [
    ...sharingSheets([frontTask(request, sheets), ...withCautions(sheets, request)], request.paper),
    ...templatesInPack(templates, request),
  ]);
}

/** The sheets of one task, and the name by which cautions find it. */
type Sheet = readonly [CautionSheet | undefined, readonly Section[]];

/** Cautions stand on the last sheet of their task, below its table; pictures that end it may go on to a sheet of their own. */
function withCautions(sheets: readonly Sheet[], request: ReportRequest): readonly Section[] {
  const present = presentIn(sheets);
  return sheets.flatMap(([name, sections]) => {
    if (name === undefined || sections.length === 0) return sections;
    const last = sections[sections.length - 1];
    return [
      ...sections.slice(0, -1),
      { ...last, blocks: beforePictures(last.blocks, cautionsAt(name, present, request)) },
    ];
  });
}

function beforePictures(blocks: readonly Block[], added: readonly Block[]): readonly Block[] {
  const end = blocks.findLastIndex(({ kind }) => kind !== 'figure') + 1;
  return [...blocks.slice(0, end), ...added, ...blocks.slice(end)];
}

const presentIn = (sheets: readonly Sheet[]): ReadonlySet<CautionSheet> =>
  new Set(sheets.flatMap(([name, sections]) => (name === undefined || sections.length === 0 ? [] : [name])));

/** What is in the pack in one line, and the gravest dangers. */
function frontTask(request: ReportRequest, sheets: readonly Sheet[]): Section {
  const { jobPack, cautions } = request.reader.words;
  const titles = sheets.flatMap(([, [first]]) => (first === undefined ? [] : [taskName(first, request)]));
  const callouts = cautionsInFront(request);
  return task('safety', jobPack.safety, [
    dense(paragraph(jobPack.coverLead(titles.join(', ')))),
    ...(request.medium === 'screen' ? [paragraph(jobPack.templatesOnPaper)] : []),
    ...(callouts.length === 0 ? [] : [dense(paragraph(cautions.lead))]),
    ...callouts,
    ...cautionsAt('front', presentIn(sheets), request),
  ]);
}

/** Several sheets of one task are named once. */
function taskName({ id, title }: Section, { reader }: ReportRequest): string {
  const { taskNames } = reader.words.jobPack;
  const [task] = id.split(/-\d+$/);
  return Object.hasOwn(taskNames, task) ? word(taskNames, task) : title;
}

const sectionTasks = (request: OpenedRequest): readonly Section[] => [
  task('section', request.reader.words.jobPack.section, [sectionFigure(request)]),
];

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
      planOf(onlyOne(shown)),
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
      planOf(onlyOne(shown)),
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
    paragraph(jobPack.gatesLead),
    dense(gateTable(request)),
    ...weatherBlocks(request),
    ...cureBlocks(request),
    ...logBlocks(request),
  ]);
};
