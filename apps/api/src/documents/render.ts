import { createHash } from 'node:crypto';
import {
  annexesFor,
  changeOrderDocument,
  contentSecurityPolicy,
  drawingNames,
  english,
  htmlOf,
  jobPackOf,
  landscape,
  namedDrawing,
  phone,
  portrait,
  reportOf,
  sheetDocument,
  stylesheet,
  svgOf,
  templateDocument,
  type AnnexName,
  type Issue,
  type PaperName,
  type Purpose,
  type ReportDocument,
  type ReportRequest,
} from '#lib/drawings';
import type { DefectRecord, Estimate } from '#lib/estimate';
import { pdfPress, type PdfPress, type PdfStandard } from './typst-compiler.js';

/** How the reader wants it: the words are English so far; numbers, dates and units follow the reader. */
export interface ReaderChoice {
  /** BCP 47, for numbers and dates. */
  readonly locale: string;
  readonly units: 'si' | 'us';
  readonly paper: PaperName;
  readonly purpose: Purpose;
  /** Absent: those that go with the purpose. */
  readonly annexes?: readonly AnnexName[];
}

/** Everything a report is made of, as plain data, so that it can be handed to a worker. */
export interface ReportSubject {
  readonly estimate: Estimate;
  readonly record: DefectRecord;
  readonly issue: Issue;
  readonly reader: ReaderChoice;
}

export type SheetShape = 'landscape' | 'portrait' | 'phone';

/** Documents that are printed and shown; templates are printed only. */
export type PageKind = 'report' | 'job-pack' | 'change-order';

export type RenderTask =
  | { readonly as: 'pdf'; readonly what: PageKind | 'templates'; readonly standard: PdfStandard }
  | { readonly as: 'html'; readonly what: PageKind }
  | { readonly as: 'drawing-svg'; readonly name: string; readonly shape: SheetShape }
  | {
      readonly as: 'drawing-pdf';
      readonly name: string;
      readonly shape: SheetShape;
      readonly standard: PdfStandard;
    };

export interface RenderOrder {
  readonly subject: ReportSubject;
  readonly task: RenderTask;
}

/** Undefined when the estimate has no drawing of that name. */
export type Rendered = Uint8Array | string | undefined;

const styleHash = createHash('sha256').update(stylesheet).digest('base64');

/** The policy that the page itself states, for the header of the answer. */
export const htmlPolicyOf = ({ issue }: ReportSubject, what: PageKind): string =>
  contentSecurityPolicy(
    styleHash,
    issue.letterhead.logo !== undefined || (what === 'report' && issue.photographs.length > 0),
  );

let press: PdfPress | undefined;

/** The compiler takes a while to wake, so each press wakes one when it is first needed and keeps it. */
function openPress(): PdfPress {
  press ??= pdfPress();
  return press;
}

/** Lays out and writes one document or drawing. Runs in a press; takes and gives plain data only. */
export function run({ subject, task }: RenderOrder): Rendered {
  switch (task.as) {
    case 'pdf':
      return openPress().print(paged(subject, task.what), task.standard);
    case 'html':
      return htmlOf(screened(subject, task.what), { styleHash });
    case 'drawing-svg':
      return svg(subject, task.name, task.shape);
    case 'drawing-pdf':
      return drawnPdf(subject, task);
  }
}

const requestOf = (
  { estimate, record, issue, reader }: ReportSubject,
  medium: ReportRequest['medium'],
): ReportRequest => ({
  estimate,
  record,
  issue,
  medium,
  paper: reader.paper,
  purpose: reader.purpose,
  annexes: reader.annexes ?? annexesFor[reader.purpose],
  reader: {
    locale: reader.locale,
    units: reader.units,
    words: english,
    glyphs: medium === 'page' ? 'embedded-font' : 'any',
  },
});

function paged(subject: ReportSubject, what: PageKind | 'templates'): ReportDocument {
  const request = requestOf(subject, 'page');
  return what === 'templates' ? templateDocument(request) : pageMakers[what](request);
}

const pageMakers: Readonly<Record<PageKind, (request: ReportRequest) => ReportDocument>> = {
  'report': reportOf,
  'job-pack': jobPackOf,
  'change-order': changeOrderDocument,
};

const screened = (subject: ReportSubject, what: PageKind): ReportDocument =>
  pageMakers[what](requestOf(subject, 'screen'));

const formats = (paper: PaperName) => ({ landscape: landscape(paper), portrait: portrait(paper), phone });

function svg(subject: ReportSubject, name: string, shape: SheetShape): string | undefined {
  const drawing = namedDrawing(name, requestOf(subject, 'screen'), formats(subject.reader.paper)[shape]);
  return drawing === undefined ? undefined : svgOf(drawing);
}

function drawnPdf(
  subject: ReportSubject,
  { name, shape, standard }: Extract<RenderTask, { as: 'drawing-pdf' }>,
): Uint8Array | undefined {
  const request = requestOf(subject, 'page');
  const drawing = namedDrawing(name, request, formats(subject.reader.paper)[shape]);
  return drawing === undefined ? undefined : openPress().print(sheetDocument(request, drawing), standard);
}

/** Names of the drawings that this estimate has. */
export const namesOfDrawings = (subject: ReportSubject): readonly string[] =>
  drawingNames(requestOf(subject, 'screen'));
