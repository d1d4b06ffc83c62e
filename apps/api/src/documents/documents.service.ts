import { Injectable } from '@nestjs/common';
import type { Estimate } from '#lib/estimate';
import { Defect } from '#lib/kernel';
import type { Customer } from '../workbench/job.js';
import { Workbench } from '../workbench/workbench.js';
import { documentJob } from './document.job.js';
import { linesCsv } from './lines-csv.js';
import {
  htmlPolicyOf,
  namesOfDrawings,
  type PageKind,
  type RenderOrder,
  type Rendered,
  type ReportSubject,
  type SheetShape,
} from './render.js';
import type { PdfStandard } from './typst-compiler.js';

/** Reports, job packs and drawings of an estimate. The layout runs in processes of its own, so that the service answers others. */
@Injectable()
export class DocumentsService {
  constructor(private readonly workbench: Workbench) {}

  /** The report, the job pack or a change order as tagged PDF; the same bytes for the same subject. */
  async pdf(
    subject: ReportSubject,
    what: PageKind | 'templates',
    customer: Customer & { readonly standard?: PdfStandard },
  ): Promise<Uint8Array> {
    return bytes(
      await this.done(
        { subject, task: { as: 'pdf', what, standard: customer.standard ?? 'a-2a' } },
        customer,
      ),
    );
  }

  /** The same content as one self-contained page, and the policy to send with it. */
  async html(
    subject: ReportSubject,
    what: PageKind,
    customer: Customer,
  ): Promise<{ readonly html: string; readonly contentSecurityPolicy: string }> {
    const html = await this.done({ subject, task: { as: 'html', what } }, customer);
    if (typeof html !== 'string') throw new Defect('A page of HTML came back as something else');
    return { html, contentSecurityPolicy: htmlPolicyOf(subject, what) };
  }

  /** How many documents wait for a press. */
  get waiting(): number {
    return this.workbench.waitingIn('press');
  }

  /** The priced lines as CSV. */
  csv(estimate: Estimate): string {
    return linesCsv(estimate);
  }

  /** Names that `drawing` and `drawingPdf` answer to. */
  drawingNames(subject: ReportSubject): readonly string[] {
    return namesOfDrawings(subject);
  }

  /** One drawing as SVG; undefined when the estimate has none of that name. */
  async drawing(
    subject: ReportSubject,
    name: string,
    customer: Customer & { readonly shape?: SheetShape },
  ): Promise<string | undefined> {
    const svg = await this.done(
      { subject, task: { as: 'drawing-svg', name, shape: customer.shape ?? 'landscape' } },
      customer,
    );
    if (svg !== undefined && typeof svg !== 'string')
      throw new Defect('A drawing came back as something else than SVG');
    return svg;
  }

  /** One drawing on a sheet of its own as PDF. */
  async drawingPdf(
    subject: ReportSubject,
    name: string,
    customer: Customer & { readonly shape?: SheetShape },
  ): Promise<Uint8Array | undefined> {
    const pdf = await this.done(
      { subject, task: { as: 'drawing-pdf', name, shape: customer.shape ?? 'landscape', standard: 'a-2a' } },
      customer,
    );
    return pdf === undefined ? undefined : bytes(pdf);
  }

  private done(order: RenderOrder, customer: Customer): Promise<Rendered> {
    return this.workbench.do(documentJob, order, customer);
  }
}

function bytes(rendered: Rendered): Uint8Array {
  if (rendered instanceof Uint8Array) return rendered;
  throw new Defect('A PDF came back as something else');
}
