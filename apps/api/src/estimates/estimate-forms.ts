import { Injectable } from '@nestjs/common';
import type { Request, Response } from 'express';
import type { Caller } from '../access/roles.js';
import { ublQuotation, type ChangeOrder } from '#lib/costing';
import { pricedDocumentOf } from '#lib/estimate';
import { CSV_TYPE, HTML_TYPE, PDF_TYPE, XML_TYPE } from '../http/media.js';
import { answer, notFound } from '../http/problems.js';
import type { PageKind, ReportSubject } from '../report/render.js';
import { ReportService } from '../report/report.service.js';
import { changeOrderOf } from './comparison.js';
import type { ChangeOrderQueryDto, DrawingQueryDto, FormQueryDto } from './dto/estimates.dto.js';
import { EstimatesService } from './estimates.service.js';
import type { DrawingList } from './stored-estimate.js';
import { changeOrderSubject, readerOf, subjectOf, type Lineage } from './subject.js';

export interface FormWanted {
  readonly caller: Caller;
  readonly id: string;
  readonly type: string;
  readonly query: FormQueryDto;
}

export interface DrawingWanted {
  readonly caller: Caller;
  readonly id: string;
  readonly name: string;
  readonly type: string;
  readonly query: DrawingQueryDto;
}

/** Estimates as documents and drawings. What is no longer wanted (the caller has gone) is no longer laid out. */
@Injectable()
export class EstimateForms {
  constructor(private readonly estimates: EstimatesService, private readonly reports: ReportService) {}

  async send({ caller, id, type, query }: FormWanted, request: Request, response: Response): Promise<void> {
    const lineage = await this.estimates.lineage(caller, id);
    const subject = subjectOf(lineage, readerOf(request, query.paper, lineage.row.input.locale));
    const document = query.document ?? 'report';
    switch (type) {
      case XML_TYPE: attach(response, `quotation-${id}.xml`, XML_TYPE).send(quotation(lineage, query)); return;
      case CSV_TYPE: attach(response, `estimate-${id}-lines.csv`, CSV_TYPE).send(this.reports.csv(subject.estimate)); return;
      case HTML_TYPE: await this.sendPage(subject, document, response); return;
      default: attach(response, `estimate-${id}-${document}.pdf`, PDF_TYPE).send(Buffer.from(await this.reports.pdf(subject, document, until(response))));
    }
  }

  /** What a revision changes, to be signed, as data. */
  async changeOrder(caller: Caller, id: string): Promise<ChangeOrder> {
    return answer(changeOrderOf(await this.estimates.revised(caller, id)));
  }

  /** The same as PDF or as a page. */
  async sendChangeOrder({ caller, id, type, query }: Omit<FormWanted, 'query'> & { readonly query: ChangeOrderQueryDto }, request: Request, response: Response): Promise<void> {
    const order = await this.changeOrder(caller, id);
    const lineage = await this.estimates.lineage(caller, id);
    const subject = changeOrderSubject(lineage, readerOf(request, query.paper, lineage.row.input.locale), order);
    if (type === HTML_TYPE) await this.sendPage(subject, 'change-order', response);
    else attach(response, `change-order-${id}.pdf`, PDF_TYPE).send(Buffer.from(await this.reports.pdf(subject, 'change-order', until(response))));
  }

  async drawingList(caller: Caller, id: string, request: Request): Promise<DrawingList> {
    const names = this.reports.drawingNames(await this.subject(caller, id, request, undefined));
    return { items: names.map((name) => ({ name, href: `/v1/estimates/${id}/drawings/${name}` })) };
  }

  async sendDrawing({ caller, id, name, type, query }: DrawingWanted, request: Request, response: Response): Promise<void> {
    const subject = await this.subject(caller, id, request, query.paper);
    const options = { ...until(response), ...(query.shape === undefined ? {} : { shape: query.shape }) };
    const drawn = type === PDF_TYPE || name === 'templates'
      ? await this.reports.drawingPdf(subject, name, options)
      : await this.reports.drawing(subject, name, options);
    if (drawn === undefined) throw notFound(`A drawing ${JSON.stringify(name.slice(0, 60))} of estimate ${id}; ${this.reports.drawingNames(subject).join(', ')} exist; it`);
    if (typeof drawn === 'string') response.type('image/svg+xml').send(drawn);
    else attach(response, `${name}-${id}.pdf`, PDF_TYPE).send(Buffer.from(drawn));
  }

  private async sendPage(subject: ReportSubject, document: PageKind, response: Response): Promise<void> {
    const { html, contentSecurityPolicy } = await this.reports.html(subject, document, until(response));
    response.setHeader('Content-Security-Policy', contentSecurityPolicy);
    response.type(HTML_TYPE).send(html);
  }

  private async subject(caller: Caller, id: string, request: Request, paper: FormQueryDto['paper']): Promise<ReportSubject> {
    request.res?.vary('Accept-Language');
    const lineage = await this.estimates.lineage(caller, id);
    return subjectOf(lineage, readerOf(request, paper, lineage.row.input.locale));
  }
}

/** Quoted by the organisation on the day the estimate was made: what is stored never changes, and neither does its quotation. */
const quotation = ({ row, organisationName }: Lineage, { customer, validUntil }: FormQueryDto): string =>
  ublQuotation(pricedDocumentOf(row.result), {
    id: row.id, issueDate: row.createdAt.toISOString().slice(0, 10), seller: { name: organisationName }, note: row.result.title,
    ...(customer === undefined ? {} : { buyer: { name: customer } }), ...(validUntil === undefined ? {} : { validUntil }),
  });

function attach(response: Response, filename: string, type: string): Response {
  response.setHeader('Content-Disposition', `attachment; filename="${filename.replace(/[^A-Za-z0-9._-]/g, '-')}"`);
  return response.type(type);
}

/** Aborted when the connection closes before the answer was sent. */
function until(response: Response): { readonly signal: AbortSignal } {
  const controller = new AbortController();
  response.once('close', () => { if (!response.writableFinished) controller.abort(); });
  return { signal: controller.signal };
}
