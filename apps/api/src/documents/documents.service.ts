import { fileURLToPath } from 'node:url';
import { Injectable, type OnModuleDestroy } from '@nestjs/common';
import type { Estimate } from '#lib/estimate';
import { Defect, refusal, success, type Outcome } from '#lib/kernel';
import { unavailable } from '../edge/problems.js';
import { undecodable, uploadFaults } from './logo-upload.js';
import { linesCsv } from './lines-csv.js';
import { RenderPool } from './render-pool.js';
import {
  htmlPolicyOf,
  namesOfDrawings,
  render,
  type PageKind,
  type RenderOrder,
  type Rendered,
  type ReportSubject,
  type SheetShape,
} from './render.js';
import type { PdfStandard } from './typst-compiler.js';

/** Each press holds a compiler and the fonts, about 100 MB, and up to 10 MB more with every document. */
const SIZE = { presses: 2, longestQueue: 100, documentsEach: 40, idleMs: 60_000 } as const;

export interface Cancel {
  /** Ends the work when the client has gone. */
  readonly signal?: AbortSignal;
}

/** Reports, job packs and drawings of an estimate. The layout runs in processes of its own, so that the service answers others. */
@Injectable()
export class DocumentsService implements OnModuleDestroy {
  private pool: RenderPool | undefined;

  /** The report, the job pack or a change order as tagged PDF; the same bytes for the same subject. */
  async pdf(
    subject: ReportSubject,
    what: PageKind | 'templates',
    options: Cancel & { readonly standard?: PdfStandard } = {},
  ): Promise<Uint8Array> {
    return bytes(
      await this.done({ subject, task: { as: 'pdf', what, standard: options.standard ?? 'a-2a' } }, options),
    );
  }

  /** The same content as one self-contained page, and the policy to send with it. */
  async html(
    subject: ReportSubject,
    what: PageKind,
    options: Cancel = {},
  ): Promise<{ readonly html: string; readonly contentSecurityPolicy: string }> {
    const html = await this.done({ subject, task: { as: 'html', what } }, options);
    if (typeof html !== 'string') throw new Defect('A page of HTML came back as something else');
    return { html, contentSecurityPolicy: htmlPolicyOf(subject) };
  }

  /** A letterhead logo from an upload, drawn anew as PNG, or every reason why it cannot be one. */
  async logo(uploaded: Uint8Array, options: Cancel = {}): Promise<Outcome<Uint8Array>> {
    const faults = uploadFaults(uploaded);
    if (faults.length > 0) return refusal(...faults);
    const picture = await this.done({ task: { as: 'logo', uploaded } }, options);
    return picture === undefined ? refusal(undecodable) : success(bytes(picture));
  }

  /** How many documents wait for a press. */
  get waiting(): number {
    return this.pool?.waiting ?? 0;
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
    options: Cancel & { readonly shape?: SheetShape } = {},
  ): Promise<string | undefined> {
    const svg = await this.done(
      { subject, task: { as: 'drawing-svg', name, shape: options.shape ?? 'landscape' } },
      options,
    );
    if (svg !== undefined && typeof svg !== 'string')
      throw new Defect('A drawing came back as something else than SVG');
    return svg;
  }

  /** One drawing on a sheet of its own as PDF. */
  async drawingPdf(
    subject: ReportSubject,
    name: string,
    options: Cancel & { readonly shape?: SheetShape } = {},
  ): Promise<Uint8Array | undefined> {
    const pdf = await this.done(
      { subject, task: { as: 'drawing-pdf', name, shape: options.shape ?? 'landscape', standard: 'a-2a' } },
      options,
    );
    return pdf === undefined ? undefined : bytes(pdf);
  }

  async onModuleDestroy(): Promise<void> {
    await this.pool?.destroy();
  }

  /** Sources run untranslated in tests have no file that a process could load; there the work is done in place. */
  private async done(order: RenderOrder, { signal }: Cancel): Promise<Rendered> {
    if (import.meta.url.endsWith('.ts')) return render(order);
    this.pool ??= new RenderPool(fileURLToPath(new URL('./render-process.js', import.meta.url)), SIZE);
    try {
      return await this.pool.run(order, signal);
    } catch (failure) {
      if (signal?.aborted === true)
        throw unavailable('The document was given up: nobody waits for it, or it took too long.', failure);
      throw failure;
    }
  }
}

function bytes(rendered: Rendered): Uint8Array {
  if (rendered instanceof Uint8Array) return rendered;
  throw new Defect('A PDF came back as something else');
}
