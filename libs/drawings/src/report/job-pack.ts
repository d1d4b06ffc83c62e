import { svgOf } from '../sheet/svg.js';
import { templateTiles } from '../work/template.js';
import { list, paragraph, task, type ReportDocument, type Section, type Ticks } from './document.js';
import { cautionCallouts } from './cost-sections.js';
import { documentOf } from './estimate-report.js';
import { batchFigures, openingPlanFigure, piecePlanFigure, plyPlanFigure } from './figures.js';
import { cornerTable, fittingTable } from './opening-sections.js';
import { openedOf, type OpenedRequest, type ReportRequest } from './request.js';
import { cureBlocks, gateTable, pieceTable, plyTable, weatherBlocks } from './work-sections.js';

/** What goes out on deck: one task a page, large, with the hold point in its place. */
export function jobPackOf(request: ReportRequest): ReportDocument {
  const opened = openedOf(request);
  const tasks = [
    ...safetyTasks(request),
    ...markOutTasks(request),
    ...fittingTasks(request),
    ...(opened === undefined ? [] : [...pieceTasks(opened), ...plyTasks(opened)]),
    ...batchTasks(request),
    gateTask(request),
    checkListTask(request),
    ...templatePages(request),
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

const safetyTasks = (request: ReportRequest): readonly Section[] => {
  const callouts = cautionCallouts(request);
  return callouts.length === 0
    ? []
    : [
        task('safety', request.reader.words.jobPack.safety, [
          paragraph(request.reader.words.cautions.lead),
          ...callouts,
        ]),
      ];
};

const markOutTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack } = request.reader.words;
  const { openings } = request.estimate.scope;
  if (openings.length === 0) return [];
  const leads = openings.map(({ label }) => paragraph(jobPack.markOutLead(label)));
  return [
    task('mark-out', jobPack.markOut, [openingPlanFigure(request)]),
    ...openings.map(({ label }, index) =>
      task(`mark-out-${index + 1}`, `${jobPack.markOut} ${label}`, [
        leads[index],
        ...cornerTable(request, label),
      ]),
    ),
  ];
};

const fittingTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack } = request.reader.words;
  return request.estimate.scope.fittings.length === 0
    ? []
    : [task('fitting-list', jobPack.fittings, [paragraph(jobPack.fittingsLead), fittingTable(request)])];
};

const pieceTasks = (request: OpenedRequest): readonly Section[] => {
  const {
    estimate,
    reader: {
      words: { jobPack },
    },
  } = request;
  return estimate.scope.openings
    .filter(({ label }) => estimate.core.pieces.some(({ opening }) => opening === label))
    .map(({ label }, index) =>
      task(`pieces-${index + 1}`, jobPack.pieces(label), [
        paragraph(jobPack.piecesLead),
        piecePlanFigure(request, label),
        pieceTable(request, label),
      ]),
    );
};

const plyTasks = (request: OpenedRequest): readonly Section[] => {
  const {
    estimate,
    reader: {
      words: { jobPack },
    },
  } = request;
  if (estimate.laminate.plies.length === 0) return [];
  return [
    task('ply-table', jobPack.plyTable, [plyTable(request)]),
    ...estimate.scope.openings.map(({ label }, index) =>
      task(`plies-${index + 1}`, jobPack.plies(label), [plyPlanFigure(request, label)]),
    ),
  ];
};

const batchTasks = (request: ReportRequest): readonly Section[] => {
  const figures = batchFigures(request);
  return request.estimate.process.batches.map(({ number, title }, index) =>
    task(`batch-${number}`, request.reader.words.jobPack.batches(String(number), title), [figures[index]]),
  );
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

/** Full size is for paper; a screen shows the plans and says where the templates are. */
export const templatePages = ({ estimate, reader, paper, medium }: ReportRequest): readonly Section[] =>
  (medium === 'screen' ? [] : (estimate.core?.pieces ?? [])).flatMap((piece) => {
    const block = { job: '', reference: '', made: '', sheet: '' };
    const tiles = templateTiles(piece, paper, { reader, block });
    return tiles.map((tile, index): Section => ({
      id: tile.name,
      level: 1,
      layout: 'template',
      title: reader.words.jobPack.template(piece.label, String(index + 1), String(tiles.length)),
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
  });
