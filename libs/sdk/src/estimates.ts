import { Pages, type Page } from './pages.js';
import { awaited, awaitedBytes } from './operations.js';
import { json, path, text } from './resource.js';
import type { CallOptions, ClientOptions } from './transport.js';
import type { AnswerOf, BodyOf, QueryOf } from './types.js';

export type DefectRecord = BodyOf<'/v1/estimates', 'post'>;
export type StoredEstimate = AnswerOf<'/v1/estimates', 'post'>;
export type EstimatePage = AnswerOf<'/v1/estimates', 'get'>;
export type EstimateListed = EstimatePage['items'][number];
export type Why = AnswerOf<'/v1/estimates/{id}/lines/{code}/why', 'get'>;
export type Revisions = AnswerOf<'/v1/estimates/{id}/revisions', 'get'>;
export type Comparison = AnswerOf<'/v1/estimates/{id}/comparison', 'get'>;
export type ChangeOrder = AnswerOf<'/v1/estimates/{id}/change-order', 'get'>;
export type Drawings = AnswerOf<'/v1/estimates/{id}/drawings', 'get'>;
export type EstimateCalendar = AnswerOf<'/v1/estimates/{id}/calendar', 'get'>;
type CalendarQuery = QueryOf<'/v1/estimates/{id}/calendar', 'get'>;
type ReportQuery = QueryOf<'/v1/estimates/{id}', 'get'>;
type DrawingQuery = QueryOf<'/v1/estimates/{id}/drawings/{name}', 'get'>;

/** The main job: a defect record in, a stored estimate out. */
export class Estimates {
  readonly #client: ClientOptions;

  constructor(client: ClientOptions) {
    this.#client = client;
  }

  create(record: DefectRecord, options?: CallOptions): Promise<StoredEstimate> {
    return json(this.#client, { method: 'POST', path: '/v1/estimates', body: record }, options);
  }

  get(id: string, options?: CallOptions): Promise<StoredEstimate> {
    return json(this.#client, { method: 'GET', path: path('v1', 'estimates', id) }, options);
  }

  /** `for await (const estimate of client.estimates.list()) …` */
  list(
    query: Omit<QueryOf<'/v1/estimates', 'get'>, 'cursor'> = {},
    options?: CallOptions,
  ): Pages<EstimateListed> {
    return new Pages((cursor) =>
      json<Page<EstimateListed>>(
        this.#client,
        { method: 'GET', path: '/v1/estimates', query: { ...query, cursor } },
        options,
      ),
    );
  }

  /** Where a line's amount comes from, down to what was entered, looked up or assumed. */
  why(id: string, lineCode: string, options?: CallOptions): Promise<Why> {
    return json(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id, 'lines', lineCode, 'why') },
      options,
    );
  }

  revise(
    id: string,
    revision: BodyOf<'/v1/estimates/{id}/revisions', 'post'>,
    options?: CallOptions,
  ): Promise<StoredEstimate> {
    return json(
      this.#client,
      { method: 'POST', path: path('v1', 'estimates', id, 'revisions'), body: revision },
      options,
    );
  }

  revisions(id: string, options?: CallOptions): Promise<Revisions> {
    return json(this.#client, { method: 'GET', path: path('v1', 'estimates', id, 'revisions') }, options);
  }

  /** What changed between two revisions, line by line. */
  compare(
    id: string,
    query: QueryOf<'/v1/estimates/{id}/comparison', 'get'>,
    options?: CallOptions,
  ): Promise<Comparison> {
    return json(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id, 'comparison'), query },
      options,
    );
  }

  /** The same as CSV. */
  comparisonCsv(
    id: string,
    query: QueryOf<'/v1/estimates/{id}/comparison', 'get'> = {},
    options?: CallOptions,
  ): Promise<string> {
    return text(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id, 'comparison'), query, accept: 'text/csv' },
      options,
    );
  }

  /** What a revision adds and takes away, with the sums to agree. */
  changeOrder(id: string, options?: CallOptions): Promise<ChangeOrder> {
    return json(this.#client, { method: 'GET', path: path('v1', 'estimates', id, 'change-order') }, options);
  }

  /** The change order to print and sign. */
  changeOrderPdf(
    id: string,
    query: QueryOf<'/v1/estimates/{id}/change-order', 'get'> = {},
    options?: CallOptions,
  ): Promise<Uint8Array> {
    return awaitedBytes(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id, 'change-order'), query, accept: 'application/pdf' },
      options,
    );
  }

  /** The calendar with its weather; with `on` what that day holds. */
  calendar(
    id: string,
    query: Pick<CalendarQuery, 'on'> = {},
    options?: CallOptions,
  ): Promise<EstimateCalendar> {
    return json(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id, 'calendar'), query },
      options,
    );
  }

  /** The milestones, or every task as well, as iCalendar text (RFC 5545). */
  iCalendar(id: string, query: Pick<CalendarQuery, 'events'> = {}, options?: CallOptions): Promise<string> {
    return text(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id, 'calendar'), query, accept: 'text/calendar' },
      options,
    );
  }

  /** The cheapest whole packs for an estimate; with `together`, for several in one order. */
  basket(
    id: string,
    choices: BodyOf<'/v1/estimates/{id}/basket', 'post'> = {},
    options?: CallOptions,
  ): Promise<AnswerOf<'/v1/estimates/{id}/basket', 'post'>> {
    return json(
      this.#client,
      { method: 'POST', path: path('v1', 'estimates', id, 'basket'), body: choices },
      options,
    );
  }

  drawings(id: string, options?: CallOptions): Promise<Drawings> {
    return json(this.#client, { method: 'GET', path: path('v1', 'estimates', id, 'drawings') }, options);
  }

  /** A drawing as SVG text. */
  drawing(id: string, name: string, query: DrawingQuery = {}, options?: CallOptions): Promise<string> {
    return text(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id, 'drawings', name), query, accept: 'image/svg+xml' },
      options,
    );
  }

  /** The core pieces, or the sheets with what is cut from them, at 1:1 as a DXF file for a cutting machine. */
  cutFile(id: string, name: 'piece-plan' | 'sheet-layout', options?: CallOptions): Promise<string> {
    return text(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id, 'drawings', name), accept: 'image/vnd.dxf' },
      options,
    );
  }

  /** The report or the job pack as PDF, waited for when it is a long one. */
  pdf(id: string, query: ReportQuery = {}, options?: CallOptions): Promise<Uint8Array> {
    return awaitedBytes(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id), query, accept: 'application/pdf' },
      options,
    );
  }

  /** The report or the job pack as a self-contained page, waited for when it is a long one. */
  async html(id: string, query: ReportQuery = {}, options?: CallOptions): Promise<string> {
    const response = await awaited(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id), query, accept: 'text/html' },
      options,
    );
    return response.text();
  }

  /** Every core piece at full size, to print and to cut by. */
  templates(id: string, query: DrawingQuery = {}, options?: CallOptions): Promise<Uint8Array> {
    return awaitedBytes(
      this.#client,
      {
        method: 'GET',
        path: path('v1', 'estimates', id, 'drawings', 'templates'),
        query,
        accept: 'application/pdf',
      },
      options,
    );
  }

  /** The estimate as a UBL 2.1 Quotation (ISO/IEC 19845). */
  quotation(
    id: string,
    query: Pick<ReportQuery, 'customer' | 'validUntil'> = {},
    options?: CallOptions,
  ): Promise<string> {
    return text(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id), query, accept: 'application/xml' },
      options,
    );
  }

  /** The priced lines as CSV (RFC 4180). */
  csv(id: string, options?: CallOptions): Promise<string> {
    return text(
      this.#client,
      { method: 'GET', path: path('v1', 'estimates', id), accept: 'text/csv' },
      options,
    );
  }
}
