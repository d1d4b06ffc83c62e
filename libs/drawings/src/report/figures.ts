import type { DrawingRequest } from '../drawing-request.js';
import { figure, papers, phone, type SheetFormat } from '../sheet/formats.js';
import { snugFigure } from '../sheet/snug.js';
import { svgOf, type Drawing } from '../sheet/svg.js';
import { batchCard, cardHeightMm } from '../job/batch-card.js';
import { gantt, ganttHeightMm } from '../job/gantt.js';
import { potRuns } from '../job/pot-runs.js';
import { chartHeightMm, utilisationChart } from '../joint/utilisation-chart.js';
import { fittingSection } from '../joint/fitting-section.js';
import { jointSection } from '../joint/section.js';
import { slotSection } from '../joint/slot-section.js';
import { defectMap } from '../deck/defect-map.js';
import { openingPlan } from '../deck/opening-plan.js';
import { piecePlan } from '../deck/piece-plan.js';
import { plyPlan } from '../deck/ply-plan.js';
import { pressPlan } from '../deck/press-plan.js';
import { sheetLayout } from '../deck/sheet-layout.js';
import type { FigureBlock } from './document.js';
import {
  checkBars,
  defectMapInput,
  fittingSectionInputs,
  ganttInput,
  openingPlanInput,
  piecePlanInput,
  plyPlanInput,
  pressPlanInput,
  potRunInput,
  sectionInput,
  sheetLayoutInputs,
  slotSectionInputs,
} from './inputs.js';
import type { OpenedRequest, ReportRequest } from './request.js';

/** Side margins of a report page in mm. */
export const PAGE_SIDE_MM = 17;

export const figureWidthMm = ({ paper }: ReportRequest): number => papers[paper].widthMm - 2 * PAGE_SIDE_MM;

type Make = (request: DrawingRequest) => Drawing;

/** A drawing as a figure of the page's width, no higher than it has to be; on screens with a narrow twin. */
export function figureOf(request: ReportRequest, make: Make, tallestMm: number): FigureBlock {
  const drawn = (format: SheetFormat): Drawing =>
    make({ format, reader: request.reader, block: { job: '', reference: '', made: '', sheet: '' } });
  return figureBlock(request, snugFigure(drawn, figureWidthMm(request), tallestMm), () =>
    snugFigure((format) => drawn({ ...format, kind: 'phone' }), phone.widthMm, phone.heightMm),
  );
}

/** A drawing as a figure of a fixed height. */
export function fixedFigure(request: ReportRequest, make: Make, heightMm: number): FigureBlock {
  const drawn = (format: SheetFormat): Drawing =>
    make({ format, reader: request.reader, block: { job: '', reference: '', made: '', sheet: '' } });
  return figureBlock(request, drawn(figure(figureWidthMm(request), heightMm)), () =>
    drawn({ ...phone, heightMm: Math.max(60, Math.min(phone.heightMm, heightMm)) }),
  );
}

/** Drawings of one name may stand several times on a page of HTML, so that each gets identifiers of its own. */
export function figureBlock(
  { medium }: ReportRequest,
  drawing: Drawing,
  narrow: (() => Drawing) | undefined,
): FigureBlock {
  const small = medium === 'screen' && narrow !== undefined ? narrow() : undefined;
  return {
    kind: 'figure',
    name: drawing.name,
    caption: drawing.title,
    alt: drawing.description,
    svg: svgOf(drawing),
    widthMm: drawing.widthMm,
    heightMm: drawing.heightMm,
    ...(drawing.scale === undefined ? {} : { scaleFactor: drawing.scale.factor }),
    ...(small === undefined ? {} : { narrowSvg: svgOf({ ...small, name: `${small.name}-narrow` }) }),
  };
}

/** Higher than this and a figure seldom finds room below what it belongs to, and leaves half a page empty. */
const MOST_HEIGHT_MM = 150;

export const defectMapFigure = (request: ReportRequest): FigureBlock =>
  figureOf(request, (drawing) => defectMap(defectMapInput(request), drawing), MOST_HEIGHT_MM);

/** Low enough that the pages that are read first hold it with everything else. */
const BODY_FIGURE_MM = { fewFindings: 118, manyFindings: 70 } as const;
const FEW_FINDINGS = 3;

/** The deck with what was found, the plugs that prove it and what is cut; other readings stand in the annex. */
export function damageFigure(request: ReportRequest): FigureBlock {
  const { estimate, reader } = request;
  const map = defectMapInput(request);
  const input = { ...map, readings: map.readings.filter(({ kind }) => kind === 'plug'), next: [] };
  const isShort = estimate.conclusion.findings.length <= FEW_FINDINGS;
  return {
    ...figureOf(
      request,
      (drawing) => ({ ...defectMap(input, drawing), name: 'damage' }),
      isShort ? BODY_FIGURE_MM.fewFindings : BODY_FIGURE_MM.manyFindings,
    ),
    caption: reader.words.body.deck,
  };
}

export const openingPlanFigure = (request: ReportRequest, tallestMm = MOST_HEIGHT_MM): FigureBlock =>
  figureOf(request, (drawing) => openingPlan(openingPlanInput(request), drawing), tallestMm);

/** All pieces, or those of one opening at a larger scale. */
export const piecePlanFigure = (request: OpenedRequest, opening: string | undefined): FigureBlock =>
  figureOf(
    request,
    (drawing) => named(piecePlan(piecePlanInput(request, opening), drawing), opening),
    MOST_HEIGHT_MM,
  );

/** Nothing where nothing is pressed. */
export const pressPlanFigures = (request: OpenedRequest): readonly FigureBlock[] => {
  const input = pressPlanInput(request);
  return input === undefined
    ? []
    : [figureOf(request, (drawing) => pressPlan(input, drawing), PLAN_WITH_LIST_MM[request.paper])];
};

/** What is done with a plan stands on the same sheet below it; a Letter page is the shorter one. */
export const PLAN_WITH_LIST_MM = { a4: 142, letter: 120 } as const;

export const plyPlanFigure = (request: OpenedRequest, opening: string | undefined): FigureBlock =>
  figureOf(
    request,
    (drawing) => named(plyPlan(plyPlanInput(request, opening), drawing), opening),
    MOST_HEIGHT_MM,
  );

const named = (drawing: Drawing, opening: string | undefined): Drawing =>
  opening === undefined
    ? drawing
    : { ...drawing, name: `${drawing.name}-${opening.toLowerCase().replace(/[^a-z0-9]+/g, '-')}` };

export const sheetFigures = (request: OpenedRequest): readonly FigureBlock[] =>
  sheetLayoutInputs(request).map((input, index) =>
    figureOf(
      request,
      (drawing) => {
        const laid = sheetLayout(input, drawing);
        return { ...laid, name: `${laid.name}-${index + 1}` };
      },
      MOST_HEIGHT_MM,
    ),
  );

export const sectionFigure = (request: OpenedRequest): FigureBlock =>
  fixedFigure(request, (drawing) => jointSection(sectionInput(request), drawing), 92);

/** One for each way in which fittings are bolted here. */
export const fittingFigures = (request: ReportRequest): readonly FigureBlock[] =>
  fittingSectionInputs(request).map((input, index) =>
    fixedFigure(
      request,
      (drawing) => {
        const drawn = fittingSection(input, drawing);
        return { ...drawn, name: `${drawn.name}-${index + 1}` };
      },
      FITTING_MM,
    ),
  );

/** One for each strip that is worked through a slot. */
export const slotFigures = (request: ReportRequest): readonly FigureBlock[] =>
  slotSectionInputs(request).map((input, index) =>
    fixedFigure(
      request,
      (drawing) => ({ ...slotSection(input, drawing), name: `slot-section-${index + 1}` }),
      SLOT_MM,
    ),
  );

const SLOT_MM = 92;
const FITTING_MM = 62;

export const chartFigure = (request: ReportRequest): FigureBlock => {
  const bars = checkBars(request);
  return fixedFigure(request, (drawing) => utilisationChart(bars, drawing), chartHeightMm(bars.length));
};

const TASK_ROW_MM = 5.4;
/** A list of tasks reads better on one page than on two. */
const MOST_LIST_MM = 200;

/** What the legend takes of a narrow drawing besides the bars. */
const AROUND_GANTT_MM = 30;

export function ganttFigures(request: ReportRequest): readonly FigureBlock[] {
  const { reader } = request;
  const input = ganttInput(request);
  const block = { job: '', reference: '', made: '', sheet: '' };
  const heightMm = Math.min(MOST_LIST_MM, input.tasks.length * TASK_ROW_MM + 30);
  const narrow =
    request.medium === 'screen'
      ? gantt(input, {
          format: { ...phone, heightMm: ganttHeightMm(input.tasks.length, phone) + AROUND_GANTT_MM },
          reader,
          block,
        })
      : [];
  return gantt(input, { format: figure(figureWidthMm(request), heightMm), reader, block }).map(
    (drawing, index) =>
      figureBlock(request, drawing, narrow[index] === undefined ? undefined : () => narrow[index]),
  );
}

/** A card for every run of equal pots, half a page wide. */
export const potFigures = (request: ReportRequest): readonly FigureBlock[] =>
  potRuns(request.estimate.process.batches).map((run) => {
    const input = potRunInput(request, run);
    const widthMm = (figureWidthMm(request) - CARD_GUTTER_MM) / 2;
    const block = { job: '', reference: '', made: '', sheet: '' };
    const format = figure(widthMm, cardHeightMm(input, widthMm));
    const drawn = batchCard(input, { format, reader: request.reader, block });
    return { ...figureBlock(request, drawn, undefined), caption: '' };
  });

/** Four pot cards to a sheet: what is weighed reads at arm's length, with gloves on and the card on the bench. */
export const CARDS_A_SHEET = 4;
const CARD_GUTTER_MM = 6;
