import { Injectable } from '@nestjs/common';
import type { Request, Response } from 'express';
import { ublQuotation, type ChangeOrder } from '#lib/costing';
import { cutFile, cutFileNames } from '#lib/drawings';
import { pricedDocumentOf } from '#lib/estimate';
import type { Caller } from '../access/roles.js';
import { attached, sendContent } from '../edge/content.js';
import { CSV_TYPE, DXF_TYPE, HTML_TYPE, PDF_TYPE, SVG_TYPE, XML_TYPE } from '../edge/media.js';
import { answer, HttpProblem } from '../edge/problems.js';
import type { ReportSubject } from '../documents/render.js';
import { DocumentsService } from '../documents/documents.service.js';
import { changeOrderOf } from './comparison.js';
import type { DocumentTaskDto } from './dto/document-task.dto.js';
import type { ChangeOrderQueryDto, DrawingQueryDto, FormQueryDto } from './dto/estimates.dto.js';
import { engineVersion } from '../settings/engine-version.js';
import { EstimateDocuments } from './estimate-documents.js';
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
  constructor(
    private readonly estimates: EstimatesService,
    private readonly reports: DocumentsService,
    private readonly documents: EstimateDocuments,
  ) {}

  async send({ caller, id, type, query }: FormWanted, request: Request, response: Response): Promise<void> {
    response.vary('Accept-Language');
    const lineage = await this.estimates.lineage(caller, id);
    switch (type) {
      case XML_TYPE:
        sendContent(
          {
            mediaType: XML_TYPE,
            headers: attached(`quotation-${id}.xml`),
            content: Buffer.from(quotation(lineage, query)),
          },
          request,
        );
        return;
      case CSV_TYPE:
        sendContent(
          {
            mediaType: CSV_TYPE,
            headers: attached(`estimate-${id}-lines.csv`),
            content: Buffer.from(this.reports.csv(lineage.row.result)),
          },
          request,
        );
        return;
      default:
        await this.documents.send(
          {
            caller,
            lineage,
            task: taskOf(lineage, {
              document: query.document ?? 'report',
              mediaType: type === HTML_TYPE ? HTML_TYPE : PDF_TYPE,
              reader: readerOf(request, query, lineage.row.input.locale),
            }),
          },
          request,
          response,
        );
    }
  }

  /** What a revision changes, to be signed, as data. */
  async changeOrder(caller: Caller, id: string): Promise<ChangeOrder> {
    return answer(changeOrderOf(await this.estimates.revised(caller, id)));
  }

  /** The same as PDF or as a page. */
  async sendChangeOrder(
    { caller, id, type, query }: Omit<FormWanted, 'query'> & { readonly query: ChangeOrderQueryDto },
    request: Request,
    response: Response,
  ): Promise<void> {
    response.vary('Accept-Language');
    const order = await this.changeOrder(caller, id);
    const lineage = await this.estimates.lineage(caller, id);
    const subject = changeOrderSubject(lineage, readerOf(request, query, lineage.row.input.locale), order);
    sendContent(
      await this.documents.pageOrPdf(
        { subject, document: 'change-order', isPage: type === HTML_TYPE, filename: `change-order-${id}.pdf` },
        caller,
      ),
      request,
    );
  }

  async drawingList(caller: Caller, id: string, request: Request): Promise<DrawingList> {
    const lineage = await this.estimates.lineage(caller, id);
    const names = this.reports.drawingNames(
      subjectOf(lineage, readerOf(request, {}, lineage.row.input.locale)),
    );
    return { items: names.map((name) => ({ name, href: `/v1/estimates/${id}/drawings/${name}` })) };
  }

  async sendDrawing(
    { caller, id, name, type, query }: DrawingWanted,
    request: Request,
    response: Response,
  ): Promise<void> {
    response.vary('Accept-Language');
    const lineage = await this.estimates.lineage(caller, id);
    if (type === DXF_TYPE) {
      sendContent(
        {
          mediaType: DXF_TYPE,
          headers: attached(`${name}-${id}.dxf`),
          content: Buffer.from(cutFileOf(lineage, name)),
        },
        request,
      );
      return;
    }
    const reader = readerOf(request, query, lineage.row.input.locale);
    if (name === 'templates') {
      await this.documents.send(
        { caller, lineage, task: taskOf(lineage, { document: 'templates', mediaType: PDF_TYPE, reader }) },
        request,
        response,
      );
      return;
    }
    const subject = subjectOf(lineage, reader);
    const options = {
      ...caller,
      ...(query.shape === undefined ? {} : { shape: query.shape }),
    };
    const drawn =
      type === PDF_TYPE
        ? await this.reports.drawingPdf(subject, name, options)
        : await this.reports.drawing(subject, name, options);
    if (drawn === undefined) throw this.unknownDrawing(id, name, subject);
    if (typeof drawn === 'string')
      sendContent({ mediaType: SVG_TYPE, headers: {}, content: Buffer.from(drawn) }, request);
    else
      sendContent({ mediaType: PDF_TYPE, headers: attached(`${name}-${id}.pdf`), content: drawn }, request);
  }

  private unknownDrawing(id: string, name: string, subject: ReportSubject): HttpProblem {
    const known = this.reports.drawingNames(subject).join(', ');
    return new HttpProblem('not-found', {
      detail: `There is no drawing ${JSON.stringify(name.slice(0, 60))} of estimate ${id}; there are ${known}.`,
    });
  }
}

/** @throws {HttpProblem} not-found */
function cutFileOf({ row }: Lineage, name: string): string {
  const file = cutFile(name, row.result);
  if (file === undefined)
    throw new HttpProblem('not-found', {
      detail: `There is no DXF file ${JSON.stringify(name.slice(0, 60))} of estimate ${row.id}; there can be ${cutFileNames.join(', ')}.`,
    });
  return file;
}

const taskOf = (
  { row, issuerVersion, photographsVersion }: Lineage,
  wanted: Pick<DocumentTaskDto, 'document' | 'mediaType' | 'reader'>,
): DocumentTaskDto => ({
  estimateId: row.id,
  ...wanted,
  madeWith: [engineVersion, issuerVersion, photographsVersion].join('; '),
});

/** Quoted by the organisation on the day the estimate was made: what is stored never changes, and neither does its quotation. */
const quotation = ({ row, letterhead }: Lineage, { customer, validUntil }: FormQueryDto): string =>
  ublQuotation(pricedDocumentOf(row.result), {
    id: row.id,
    issueDate: row.createdAt.toISOString().slice(0, 10),
    seller: { name: letterhead.name },
    note: row.result.title,
    ...(customer === undefined ? {} : { buyer: { name: customer } }),
    ...(validUntil === undefined ? {} : { validUntil }),
  });
