import { dense, paragraph, task, type Block, type ReportDocument, type Section } from './document.js';
import { documentOf } from './estimate-report.js';
import {
  CARDS_A_SHEET,
  openingPlanFigure,
  piecePlanFigure,
  plyPlanFigure,
  potFigures,
  sectionFigure,
} from './figures.js';
import { hardwareBlocks } from './method-section.js';
import { cornerTable, fittingTable } from './opening-sections.js';
import { dayPlanTasks } from './pack/day-plan.js';
import { goodsTasks, logBlocks } from './pack/goods.js';
import { cautionsAt, cautionsInFront, type CautionSheet } from './pack/step-cautions.js';
import { isTooLarge, shapedTemplates, templatesInPack, type Template } from './pack/templates.js';
import { settingOut } from '../deck/setting-out.js';
import { panelOf } from './inputs.js';
import { openedOf, type OpenedRequest, type ReportRequest } from './request.js';
import {
  cureBlocks,
  gateTable,
  pieceTable,
  plyTable,
  pressureBlocks,
  stackTable,
  weatherBlocks,
} from './work-sections.js';

/** What goes out on deck: one task a sheet, large, each with the cautions of its step and the hold point in its place. */
export function jobPackOf(request: ReportRequest): ReportDocument {
  const opened = openedOf(request);
  const templates = shapedTemplates(request);
  const sheets: readonly Sheet[] = [
    [undefined, dayPlanTasks(request)],
    ['mark-out', markOutTasks(request)],
    [undefined, opened === undefined ? [] : sectionTasks(opened)],
    ['pressing', pressingTasks(request)],
    ['fittings', fittingTasks(request)],
    ['pieces', opened === undefined ? [] : pieceTasks(opened, templates)],
    ['plies', opened === undefined ? [] : plyTasks(opened)],
    ['pots', potTasks(request)],
    ['gates', [gateTask(request)]],
    [undefined, goodsTasks(request)],
  ];
  const { jobPack } = request.reader.words;
  return documentOf(request, 'job-pack', jobPack.kind, [
    frontTask(request, sheets),
    ...withCautions(sheets, request),
    ...templatesInPack(templates, request),
  ]);
}

/** The sheets of one task, and the name by which cautions find it. */
type Sheet = readonly [CautionSheet | undefined, readonly Section[]];

/** Cautions stand on the last sheet of their task: there is room below its table. */
function withCautions(sheets: readonly Sheet[], request: ReportRequest): readonly Section[] {
  const present = presentIn(sheets);
  return sheets.flatMap(([name, sections]) => {
    if (name === undefined || sections.length === 0) return sections;
    const last = sections[sections.length - 1];
    return [
      ...sections.slice(0, -1),
      { ...last, blocks: [...last.blocks, ...cautionsAt(name, present, request)] },
    ];
  });
}

const presentIn = (sheets: readonly Sheet[]): ReadonlySet<CautionSheet> =>
  new Set(sheets.flatMap(([name, sections]) => (name === undefined || sections.length === 0 ? [] : [name])));

/** What is in the pack in one line, and the gravest dangers. */
function frontTask(request: ReportRequest, sheets: readonly Sheet[]): Section {
  const { jobPack, cautions } = request.reader.words;
  const titles = sheets.flatMap(([, [first]]) => (first === undefined ? [] : [first.title]));
  const callouts = cautionsInFront(request);
  return task('safety', jobPack.safety, [
    paragraph(jobPack.coverLead(titles.join(', '))),
    ...(request.medium === 'screen' ? [paragraph(jobPack.templatesOnPaper)] : []),
    ...(callouts.length === 0 ? [] : [paragraph(cautions.lead)]),
    ...callouts,
    ...cautionsAt('front', presentIn(sheets), request),
  ]);
}

/** The corners stand with the plan where they all find room, else each opening has a sheet of its own. */
const markOutTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack } = request.reader.words;
  const { openings } = request.estimate.scope;
  const { way } = settingOut(panelOf(request).outer);
  const corners = ({ label }: { readonly label: string }): readonly Block[] => [
    dense(paragraph(jobPack.markOutLead[way](label))),
    ...cornerTable(request, label).map((block) =>
      block.kind === 'table' || block.kind === 'paragraph' ? dense(block) : block,
    ),
  ];
  if (openings.length === 0) return [];
  const count = openings.reduce((sum, { sawLine }) => sum + sawLine.length, 0);
  if (openings.length === 1 || count <= MOST_CORNERS_WITH_PLAN)
    return [
      task('mark-out', jobPack.markOut, [
        openingPlanFigure(request, PLAN_WITH_CORNERS_MM),
        ...openings.flatMap(corners),
      ]),
    ];
  return [
    task('mark-out', jobPack.markOut, [openingPlanFigure(request)]),
    ...openings.map((opening, index) =>
      task(`mark-out-${index + 1}`, `${jobPack.markOut} ${opening.label}`, corners(opening)),
    ),
  ];
};

const MOST_CORNERS_WITH_PLAN = 10;
const PLAN_WITH_CORNERS_MM = 142;

const sectionTasks = (request: OpenedRequest): readonly Section[] => [
  task('section', request.reader.words.jobPack.section, [sectionFigure(request), stackTable(request)]),
];

const fittingTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack } = request.reader.words;
  const { scope, hardware } = request.estimate;
  return scope.fittings.length === 0
    ? []
    : [
        task('fitting-list', jobPack.fittings, [
          paragraph(jobPack.fittingsLead),
          fittingTable(request),
          ...hardwareBlocks(request, hardware).map((block) =>
            block.kind === 'table' ? dense(block) : block,
          ),
        ]),
      ];
};

const pressingTasks = (request: ReportRequest): readonly Section[] => {
  const blocks = pressureBlocks(request);
  return blocks.length === 0 ? [] : [task('pressing', request.reader.words.jobPack.pressing, blocks)];
};

const pieceTasks = (request: OpenedRequest, templates: readonly Template[]): readonly Section[] => {
  const {
    estimate,
    reader: {
      words: { jobPack },
    },
  } = request;
  const setOut = new Set(templates.filter(isTooLarge).map(({ piece }) => piece.label));
  return estimate.scope.openings
    .filter(({ label }) => estimate.core.pieces.some(({ opening }) => opening === label))
    .map(({ label: opening }, index) => {
      const large = estimate.core.pieces.filter(
        (piece) => piece.opening === opening && setOut.has(piece.label),
      );
      return task(`pieces-${index + 1}`, jobPack.pieces(opening), [
        paragraph(jobPack.piecesLead),
        piecePlanFigure(request, opening),
        dense(pieceTable(request, opening)),
        ...(large.length === 0
          ? []
          : [paragraph(jobPack.setOut(large.map(({ label }) => label).join(', ')))]),
      ]);
    });
};

/** The table shares the first plan's sheet. */
const plyTasks = (request: OpenedRequest): readonly Section[] => {
  const {
    estimate,
    reader: {
      words: { jobPack },
    },
  } = request;
  if (estimate.laminate.plies.length === 0) return [];
  return estimate.scope.openings.map(({ label }, index) =>
    task(`plies-${index + 1}`, jobPack.plies(label), [
      ...(index === 0 ? [plyTable(request)] : []),
      plyPlanFigure(request, label),
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
