import type { CoreSection } from '#lib/estimate';
import { upTo } from '../reader.js';
import { svgOf, type Drawing } from '../sheet/svg.js';
import { templateTiles } from '../job/template.js';
import {
  list,
  numeric,
  paragraph,
  row,
  table,
  task,
  wide,
  type Block,
  type ReportDocument,
  type Section,
  type Ticks,
} from './document.js';
import { cautionCallouts } from './cost-sections.js';
import { documentOf } from './estimate-report.js';
import {
  batchFigures,
  CARDS_A_SHEET,
  ganttFigures,
  openingPlanFigure,
  piecePlanFigure,
  plyPlanFigure,
  sectionFigure,
} from './figures.js';
import { hardwareBlocks } from './method-section.js';
import { cornerTable, fittingTable } from './opening-sections.js';
import { openedOf, type OpenedRequest, type ReportRequest } from './request.js';
import {
  cureBlocks,
  gateTable,
  isBoard,
  pieceTable,
  plyTable,
  pressureBlocks,
  stackTable,
  weatherBlocks,
} from './work-sections.js';

/** What goes out on deck: one task a page, large, with the hold point in its place. */
export function jobPackOf(request: ReportRequest): ReportDocument {
  const opened = openedOf(request);
  const templates = shapedTemplates(request);
  const tasks = [
    ...safetyTasks(request),
    ...planTasks(request),
    ...markOutTasks(request),
    ...(opened === undefined ? [] : sectionTasks(opened)),
    ...fittingTasks(request),
    ...pressingTasks(request),
    ...(opened === undefined ? [] : [...pieceTasks(opened, templates), ...plyTasks(opened)]),
    ...batchTasks(request),
    gateTask(request),
    ...pickTasks(request),
    checkListTask(request),
    ...templatesInPack(templates, request),
  ];
  const { jobPack } = request.reader.words;
  return documentOf(request, 'job-pack', jobPack.kind, [coverTask(request, tasks), ...tasks]);
}

function coverTask(request: ReportRequest, tasks: readonly Section[]): Section {
  const { jobPack } = request.reader.words;
  const titles = tasks.filter(({ layout }) => layout === 'task').map(({ title }) => title);
  const hasTemplates = tasks.some(({ layout }) => layout === 'template');
  const elsewhere = request.medium === 'screen' ? [paragraph(jobPack.templatesOnPaper)] : [];
  return task('cover', jobPack.cover, [
    paragraph(jobPack.coverLead),
    list([...titles, ...(hasTemplates ? [jobPack.templates] : [])]),
    ...elsewhere,
  ]);
}

/** The gravest in front, the others named; each with its reason stands in the report. */
const safetyTasks = (request: ReportRequest): readonly Section[] => {
  const callouts = cautionCallouts(request);
  if (callouts.length === 0) return [];
  const { jobPack, cautions } = request.reader.words;
  const others = callouts.slice(MOST_IN_FRONT);
  return [
    task('safety', jobPack.safety, [
      paragraph(cautions.lead),
      ...callouts.slice(0, MOST_IN_FRONT).map((callout) => ({ ...callout, small: '' })),
      ...(others.length === 0 ? [] : [paragraph(jobPack.fullCautions), list(others.map(({ text }) => text))]),
    ]),
  ];
};

/** More than a crew reads before it begins is read by nobody. */
const MOST_IN_FRONT = 10;

const planTasks = (request: ReportRequest): readonly Section[] =>
  request.estimate.process.calendar.tasks.length === 0
    ? []
    : [task('plan', request.reader.words.jobPack.plan, ganttFigures(request))];

/** One opening is marked out from one sheet; of several each has its corners on a sheet of its own. */
const markOutTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack } = request.reader.words;
  const { openings } = request.estimate.scope;
  const corners = ({ label }: { readonly label: string }): readonly Block[] => [
    paragraph(jobPack.markOutLead(label)),
    ...cornerTable(request, label),
  ];
  if (openings.length === 0) return [];
  const [only, ...more] = openings;
  if (more.length === 0)
    return [task('mark-out', jobPack.markOut, [openingPlanFigure(request), ...corners(only)])];
  return [
    task('mark-out', jobPack.markOut, [openingPlanFigure(request)]),
    ...openings.map((opening, index) =>
      task(`mark-out-${index + 1}`, `${jobPack.markOut} ${opening.label}`, corners(opening)),
    ),
  ];
};

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
          ...hardwareBlocks(request, hardware),
        ]),
      ];
};

const pressingTasks = (request: ReportRequest): readonly Section[] => {
  const blocks = pressureBlocks(request);
  return blocks.length === 0 ? [] : [task('pressing', request.reader.words.jobPack.pressing, blocks)];
};

/** Goods only, by supplier: what is ticked off before the deck is opened. */
const pickTasks = (request: ReportRequest): readonly Section[] => {
  const { estimate, reader } = request;
  const { jobPack, columns } = reader.words;
  const picked = estimate.lines.flatMap(({ packs }) => packs);
  if (picked.length === 0) return [];
  const suppliers = [...new Set(picked.map(({ supplier }) => supplier))].sort();
  return [
    task('pick-list', jobPack.pick, [
      paragraph(jobPack.pickLead),
      ...suppliers.map((supplier) =>
        table(
          supplier,
          [wide(columns.what, 4), numeric(columns.quantity)],
          picked
            .filter((pack) => pack.supplier === supplier)
            .map(({ name, count }) => row(name, upTo(reader, count, 0))),
        ),
      ),
    ]),
  ];
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
        pieceTable(request, opening),
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

const batchTasks = (request: ReportRequest): readonly Section[] => {
  const figures = batchFigures(request);
  const { batches } = request.estimate.process;
  return Array.from({ length: Math.ceil(batches.length / CARDS_A_SHEET) }, (_, sheet) => {
    const own = batches.slice(sheet * CARDS_A_SHEET, (sheet + 1) * CARDS_A_SHEET);
    const [from, to] = [own[0].number, own[own.length - 1].number];
    return task(
      `batches-${from}`,
      request.reader.words.jobPack.batches(String(from), String(to)),
      figures.slice(sheet * CARDS_A_SHEET, (sheet + 1) * CARDS_A_SHEET),
    );
  });
};

const gateTask = (request: ReportRequest): Section => {
  const { jobPack } = request.reader.words;
  return task('gates', jobPack.gates, [
    paragraph(jobPack.gatesLead),
    gateTable(request),
    ...weatherBlocks(request),
    ...cureBlocks(request),
  ]);
};

/** Every task in order with a box to tick; the hold point cannot be overlooked. */
function checkListTask({
  estimate: {
    process: { calendar },
  },
  reader: {
    words: { jobPack, signature },
  },
}: ReportRequest): Section {
  const items = calendar.tasks.map(({ title, isHoldPoint }) => ({
    text: isHoldPoint ? `${title}. ${jobPack.holdPoint}` : title,
    isHold: isHoldPoint,
  }));
  const ticks: Ticks = { kind: 'ticks', items };
  return task('check-list', jobPack.checkList, [
    ticks,
    { kind: 'signature', fields: [jobPack.signedBy, signature.signature] },
  ]);
}

type Piece = CoreSection['pieces'][number];

/** A piece with its sheets at full size. */
interface Template {
  readonly piece: Piece;
  readonly tiles: readonly Drawing[];
}

const templateOf = (piece: Piece, { paper, reader }: ReportRequest): Template => ({
  piece,
  tiles: templateTiles(piece, paper, { reader, block: { job: '', reference: '', made: '', sheet: '' } }),
});

/** Templates of the pieces with a curve or an odd angle; a board is cut by its length and width. */
const shapedTemplates = (request: ReportRequest): readonly Template[] =>
  (request.estimate.core?.pieces ?? [])
    .filter(({ outline }) => !isBoard(outline))
    .map((piece) => templateOf(piece, request));

/** More sheets than this are not glued together true. */
const MOST_TILES = 4;

const isTooLarge = ({ tiles }: Template): boolean => tiles.length > MOST_TILES;

/** Full size is for paper; a screen shows the plans and says where the templates are. */
const templatesInPack = (templates: readonly Template[], request: ReportRequest): readonly Section[] =>
  request.medium === 'screen'
    ? []
    : templates
        .filter((template) => !isTooLarge(template))
        .flatMap((template) => tilePages(template, request));

/** Pieces at 1:1 over as many pages as they take. */
export const templatePages = (request: ReportRequest, pieces: readonly Piece[]): readonly Section[] =>
  pieces.flatMap((piece) => tilePages(templateOf(piece, request), request));

const tilePages = ({ piece, tiles }: Template, request: ReportRequest): readonly Section[] =>
  tiles.map((tile, index) => ({
    id: tile.name,
    level: 1,
    layout: 'template',
    title: request.reader.words.jobPack.template(piece.label, String(index + 1), String(tiles.length)),
    blocks: [
      {
        kind: 'figure',
        name: tile.name,
        caption: '',
        alt: tile.description,
        svg: svgOf(tile),
        widthMm: tile.widthMm,
        heightMm: tile.heightMm,
      },
    ],
  }));
