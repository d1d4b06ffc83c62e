import { Injectable } from '@nestjs/common';
import type { Request, Response } from 'express';
import type { Estimate } from '#lib/estimate';
import type { Caller } from '../access/roles.js';
import { attached, sendContent, type Content } from '../edge/content.js';
import { checkedAs } from '../edge/dto.pipe.js';
import { HTML_TYPE, PDF_TYPE } from '../edge/media.js';
import { OperationWorker } from '../operations/operation-worker.js';
import { sendAccepted } from '../operations/operations.controller.js';
import { OperationsService } from '../operations/operations.service.js';
import { prefersAsync } from '../operations/prefer.js';
import type { PageKind, ReportSubject } from '../documents/render.js';
import { DocumentsService } from '../documents/documents.service.js';
import type { Customer } from '../workbench/job.js';
import { DocumentTaskDto } from './dto/document-task.dto.js';
import { EstimatesService } from './estimates.service.js';
import { subjectOf, type Lineage } from './subject.js';

/** Names the tasks among all operations; tasks of an older release may still lie there. */
const KIND = 'estimate-document';

/** Beyond these a document takes seconds rather than a moment; a press is not held for it while a caller waits. */
export const PROMPT_UP_TO = { lines: 500, zones: 24 } as const;
/** With more documents waiting for a press, a new one is better fetched later than waited for. */
const LONGEST_WAIT = 20;

export interface DocumentWanted {
  readonly caller: Caller;
  readonly lineage: Lineage;
  readonly task: DocumentTaskDto;
}

/** Report, job pack and templates of an estimate: at once, or as an operation. */
@Injectable()
export class EstimateDocuments {
  constructor(
    private readonly estimates: EstimatesService,
    private readonly reports: DocumentsService,
    private readonly operations: OperationsService,
    worker: OperationWorker,
  ) {
    worker.handle(KIND, (organisationId, task, signal) =>
      this.printedLater(organisationId, checkedAs(DocumentTaskDto, task), signal),
    );
  }

  async send({ caller, lineage, task }: DocumentWanted, request: Request, response: Response): Promise<void> {
    response.vary('Prefer');
    const isPreferred = prefersAsync(request);
    if (isPreferred || isLong(lineage.row.result) || this.reports.waiting >= LONGEST_WAIT) {
      sendAccepted(response, await this.operations.accept(caller, KIND, task), isPreferred);
      return;
    }
    sendContent(await this.printed(lineage, task, caller), request);
  }

  private async printedLater(
    organisationId: string,
    task: DocumentTaskDto,
    signal: AbortSignal,
  ): Promise<Content> {
    return this.printed(await this.estimates.lineage({ organisationId }, task.estimateId), task, {
      organisationId,
      signal,
    });
  }

  private async printed(
    lineage: Lineage,
    { estimateId, document, mediaType, reader }: DocumentTaskDto,
    customer: Customer,
  ): Promise<Content> {
    return this.pageOrPdf(
      {
        subject: subjectOf(
          document === 'report' ? await this.estimates.withPictures(lineage) : lineage,
          reader,
        ),
        document,
        isPage: mediaType === HTML_TYPE,
        filename: `estimate-${estimateId}-${document}.pdf`,
      },
      customer,
    );
  }

  /** Templates are at full size and so for paper alone. */
  async pageOrPdf({ subject, document, isPage, filename }: Setting, customer: Customer): Promise<Content> {
    if (!isPage || document === 'templates')
      return {
        mediaType: PDF_TYPE,
        headers: attached(filename),
        content: await this.reports.pdf(subject, document, customer),
      };
    const { html, contentSecurityPolicy } = await this.reports.html(subject, document, customer);
    return {
      mediaType: HTML_TYPE,
      headers: { 'Content-Security-Policy': contentSecurityPolicy },
      content: Buffer.from(html),
    };
  }
}

interface Setting {
  readonly subject: ReportSubject;
  readonly document: PageKind | 'templates';
  readonly isPage: boolean;
  /** What the PDF is saved under. */
  readonly filename: string;
}

export const isLong = ({
  lines,
  scope: { zones },
}: Pick<Estimate, 'lines'> & { readonly scope: { readonly zones: readonly unknown[] } }): boolean =>
  lines.length > PROMPT_UP_TO.lines || zones.length > PROMPT_UP_TO.zones;
