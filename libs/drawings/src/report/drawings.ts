import { defectMap } from '../deck/defect-map.js';
import { openingPlan } from '../deck/opening-plan.js';
import { piecePlan } from '../deck/piece-plan.js';
import { plyPlan } from '../deck/ply-plan.js';
import { pressPlan } from '../deck/press-plan.js';
import { sheetLayout } from '../deck/sheet-layout.js';
import type { DrawingRequest } from '../drawing-request.js';
import { fittingSection } from '../joint/fitting-section.js';
import { jointSection } from '../joint/section.js';
import { slotSection } from '../joint/slot-section.js';
import { chartHeightMm, utilisationChart } from '../joint/utilisation-chart.js';
import type { SheetFormat } from '../sheet/formats.js';
import { svgOf, type Drawing } from '../sheet/svg.js';
import { batchCard } from '../job/batch-card.js';
import { gantt, ganttHeightMm } from '../job/gantt.js';
import type { ReportDocument, Section } from './document.js';
import { documentOf } from './estimate-report.js';
import {
  batchInput,
  checkBars,
  defectMapInput,
  fittingSectionInputs,
  ganttInput,
  openingPlanInput,
  piecePlanInput,
  plyPlanInput,
  pressPlanInput,
  sectionInput,
  sheetLayoutInputs,
  slotSectionInputs,
} from './inputs.js';
import { templatePages } from './pack/templates.js';
import { openedOf, type OpenedRequest, type ReportRequest } from './request.js';
import { shortDateText } from './said.js';

/** What a name stands for: the sheets that are drawn when it is asked for. */
interface NamedDrawing {
  readonly name: string;
  readonly draw: (request: DrawingRequest) => Drawing;
}

/** Every drawing that this estimate has, by stable names, in the order of the sheets. */
function drawingsOf(request: ReportRequest): readonly NamedDrawing[] {
  const { estimate } = request;
  const opened = openedOf(request);
  const bars = checkBars(request);
  return [
    { name: 'defect-map', draw: (drawing) => defectMap(defectMapInput(request), drawing) },
    ...(opened === undefined ? [] : openedDrawings(opened)),
    ...fittingSectionInputs(request).map((input, index) => ({
      name: numbered('fitting-section', index),
      draw: (drawing: DrawingRequest) => fittingSection(input, drawing),
    })),
    ...slotSectionInputs(request).map((input, index) => ({
      name: numbered('slot-section', index),
      draw: (drawing: DrawingRequest) => slotSection(input, drawing),
    })),
    ...(bars.length === 0
      ? []
      : [
          {
            name: 'panel-checks',
            draw: (drawing: DrawingRequest) =>
              utilisationChart(bars, highEnough(drawing, chartHeightMm(bars.length))),
          },
        ]),
    {
      name: 'calendar',
      draw: (drawing) =>
        gantt(
          ganttInput(request),
          highEnough(drawing, ganttHeightMm(estimate.process.calendar.tasks.length, drawing.format)),
        )[0],
    },
    ...estimate.process.batches.map((batch) => ({
      name: `batch-${batch.number}`,
      draw: (drawing: DrawingRequest) => batchCard(batchInput(request, batch), drawing),
    })),
  ];
}

/** Drawings of a cut: a deck that stays closed has none of them. */
function openedDrawings(request: OpenedRequest): readonly NamedDrawing[] {
  const { core, laminate } = request.estimate;
  return [
    { name: 'opening-plan', draw: (drawing) => openingPlan(openingPlanInput(request), drawing) },
    ...(core.pieces.length === 0
      ? []
      : [
          {
            name: 'piece-plan',
            draw: (drawing: DrawingRequest) => piecePlan(piecePlanInput(request, undefined), drawing),
          },
        ]),
    ...(core.sheets.length === 0
      ? []
      : sheetLayoutInputs(request).map((input, index) => ({
          name: numbered('sheet-layout', index),
          draw: (drawing: DrawingRequest) => sheetLayout(input, drawing),
        }))),
    ...(laminate.plies.length === 0
      ? []
      : [
          {
            name: 'ply-plan',
            draw: (drawing: DrawingRequest) => plyPlan(plyPlanInput(request, undefined), drawing),
          },
        ]),
    ...pressDrawing(request),
    { name: 'section', draw: (drawing) => jointSection(sectionInput(request), drawing) },
  ];
}

function pressDrawing(request: OpenedRequest): readonly NamedDrawing[] {
  const input = pressPlanInput(request);
  return input === undefined ? [] : [{ name: 'press-plan', draw: (drawing) => pressPlan(input, drawing) }];
}

/** What frame, legend and title block take of a sheet besides the drawing. */
const AROUND_MM = 62;

/** Lists are not cut: a sheet for a list is as long as the list needs. */
const highEnough = (drawing: DrawingRequest, listMm: number): DrawingRequest => ({
  ...drawing,
  format: { ...drawing.format, heightMm: Math.max(drawing.format.heightMm, listMm + AROUND_MM) },
});

const numbered = (name: string, index: number): string => (index === 0 ? name : `${name}-${index + 1}`);

/** Names that `namedDrawing` answers to for this estimate. */
export const drawingNames = (request: ReportRequest): readonly string[] =>
  drawingsOf(request).map(({ name }) => name);

/** A drawing as a sheet of its own with a title block; undefined when the estimate has none of that name. */
export function namedDrawing(name: string, request: ReportRequest, format: SheetFormat): Drawing | undefined {
  const all = drawingsOf(request);
  const index = all.findIndex((one) => one.name === name);
  if (index < 0) return undefined;
  const { estimate, issue, reader } = request;
  const block = {
    job: estimate.title,
    reference: estimate.reference ?? issue.id,
    made: shortDateText(reader, issue.madeAt),
    sheet: `${index + 1} / ${all.length}`,
  };
  return all[index].draw({ format, reader, block });
}

/** One drawing, or all the templates at full size, as a document to print. */
export function sheetDocument(request: ReportRequest, drawing: Drawing): ReportDocument {
  const section: Section = {
    id: drawing.name,
    level: 1,
    title: drawing.title,
    layout: 'sheet',
    blocks: [
      {
        kind: 'figure',
        name: drawing.name,
        caption: '',
        alt: drawing.description,
        svg: svgOf(drawing),
        widthMm: drawing.widthMm,
        heightMm: drawing.heightMm,
      },
    ],
  };
  return documentOf(request, 'sheets', drawing.title, [section]);
}

/** Every core piece at 1:1 over as many pages as it takes. */
export const templateDocument = (request: ReportRequest): ReportDocument =>
  documentOf(
    request,
    'sheets',
    request.reader.words.jobPack.templates,
    templatePages(request, request.estimate.core?.pieces ?? []),
  );
