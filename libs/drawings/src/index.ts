export { defectMap, conditionText, type DefectMapInput } from './deck/defect-map.js';
export {
  openingPlan,
  listedCorners,
  type OpeningPlanInput,
  type PlannedOpening,
} from './deck/opening-plan.js';
export type { Fitting, Panel } from './deck/panel-marks.js';
export { piecePlan, type PiecePlanInput, type PlannedPiece } from './deck/piece-plan.js';
export { plyPlan, type PlannedPly, type PlyPlanInput } from './deck/ply-plan.js';
export { sheetLayout, type LaidSheet, type SheetLayoutInput } from './deck/sheet-layout.js';
export type { DrawingRequest } from './drawing-request.js';
export { cutFile, cutFileNames } from './dxf/estimate-cut-files.js';
export { jointSection, type SectionInput } from './joint/section.js';
export { defaultReader, type Reader } from './reader.js';
export {
  figure,
  landscape,
  papers,
  phone,
  portrait,
  type PaperName,
  type SheetFormat,
} from './sheet/formats.js';
export { lineElements } from './sheet/line-types.js';
export { standardScales } from './sheet/scale.js';
export { snugFigure } from './sheet/snug.js';
export type { TitleBlock } from './sheet/furniture.js';
export { textBox, textMarks, type Mark, type TextMark } from './sheet/marks.js';
export { svgOf, type Drawing } from './sheet/svg.js';
export { printable, textWidthMm } from './sheet/text-size.js';
export { english, type Words } from './words/english.js';
export { batchCard, type BatchCardInput } from './job/batch-card.js';
export { gantt, type GanttInput, type GanttTask } from './job/gantt.js';
export { CHECK_LINE_MM, templateSize, templateTiles, type TemplatePiece } from './job/template.js';
export type {
  Block,
  Callout,
  Column,
  Facts,
  FigureBlock,
  Letterhead,
  List,
  Logo,
  Paragraph,
  PhotographBlock,
  ReportDocument,
  Row,
  Section,
  SignatureBlock,
  Table,
} from './report/document.js';
export { isSaidByHeading } from './report/document.js';
export { changeOrderDocument } from './report/change-order.js';
export { PAGE_SIDE_MM } from './report/figures.js';
export { reportOf } from './report/estimate-report.js';
export { contentSecurityPolicy, htmlOf, noteColumn } from './report/html.js';
export { drawingNames, namedDrawing, sheetDocument, templateDocument } from './report/drawings.js';
export { jobPackOf } from './report/job-pack.js';
export { annexesFor } from './report/annexes.js';
export {
  annexNames,
  purposes,
  type AnnexName,
  type Change,
  type Issue,
  type Photograph,
  type Purpose,
  type ReportRequest,
  type Revision,
} from './report/request.js';
export { stylesheet } from './report/stylesheet.js';
