import type { Answer } from './answer.js';
import { awaitedDownload, awaitedJson, awaitedText } from './operations.js';
import { Pages, type Page } from './pages.js';
import { download, json, nothing, reading, text, writing, type Download } from './resource.js';
import type { Settings } from './settings.js';
import type { CallOptions } from './transport.js';
import type { AnswerOf, BodyOf, QueryOf } from './types.js';

export type DefectRecord = BodyOf<'/v1/estimates', 'post'>;
export type StoredEstimate = AnswerOf<'/v1/estimates', 'post'>;
export type StoredRecord = AnswerOf<'/v1/estimates/{id}/record', 'get'>;
export type Replay = AnswerOf<'/v1/estimates/{id}/replay', 'get'>;
export type EstimatePage = AnswerOf<'/v1/estimates', 'get'>;
export type EstimateListed = EstimatePage['items'][number];
export type Why = AnswerOf<'/v1/estimates/{id}/lines/{code}/why', 'get'>;
export type Revisions = AnswerOf<'/v1/estimates/{id}/revisions', 'get'>;
export type Comparison = AnswerOf<'/v1/estimates/{id}/comparison', 'get'>;
export type ChangeOrder = AnswerOf<'/v1/estimates/{id}/change-order', 'get'>;
export type Drawings = AnswerOf<'/v1/estimates/{id}/drawings', 'get'>;
export type Photographs = AnswerOf<'/v1/estimates/{id}/photographs', 'get'>;
export type DeckPhotograph = AnswerOf<'/v1/estimates/{id}/photographs/{number}', 'put'>;
export type EstimateCalendar = AnswerOf<'/v1/estimates/{id}/calendar', 'get'>;
export type EstimateBasket = AnswerOf<'/v1/estimates/{id}/basket', 'post'>;
type BasketQuery = QueryOf<'/v1/estimates/{id}/basket', 'get'>;
type CalendarQuery = QueryOf<'/v1/estimates/{id}/calendar', 'get'>;
type ChangeOrderQuery = QueryOf<'/v1/estimates/{id}/change-order', 'get'>;
type ComparisonQuery = QueryOf<'/v1/estimates/{id}/comparison', 'get'>;
type ReportQuery = QueryOf<'/v1/estimates/{id}', 'get'>;
type PhotographQuery = QueryOf<'/v1/estimates/{id}/photographs/{number}', 'put'>;
type SetPhotograph = PhotographQuery &
  CallOptions & {
    readonly type?: 'image/png' | 'image/jpeg';
    /** Refused as a `StaleVersionError` when another photograph has the number. */
    readonly isNewOnly?: boolean;
  };
type DrawingQuery = QueryOf<'/v1/estimates/{id}/drawings/{name}', 'get'>;

/** The main job: a defect record in, a stored estimate out. */
export class Estimates {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * Makes and stores an estimate. Sent again under the same `idempotencyKey` it answers with the same estimate. One of a
   * large record is made in the service's own time and waited for, within `timeoutMs` in all.
   *
   * @example
   * const { id, estimate } = await kingplank.estimates.create(record);
   */
  create(record: DefectRecord, options?: CallOptions): Answer<StoredEstimate> {
    return awaitedJson(this.#settings, writing('POST', ['v1', 'estimates'], { body: record }), options);
  }

  /**
   * A stored estimate; it never changes.
   *
   * @example
   * const { estimate } = await kingplank.estimates.get(id);
   */
  get(id: string, options?: CallOptions): Answer<StoredEstimate> {
    return json(this.#settings, reading(['v1', 'estimates', id]), options);
  }

  /**
   * The estimates of the organisation, newest first, fetched page by page.
   *
   * @example
   * for await (const { id, total } of kingplank.estimates.list()) console.log(id, total);
   */
  list(
    query: Omit<QueryOf<'/v1/estimates', 'get'>, 'cursor'> = {},
    options?: CallOptions,
  ): Pages<EstimateListed> {
    return new Pages((cursor) =>
      json<Page<EstimateListed>>(
        this.#settings,
        reading(['v1', 'estimates'], { query: { ...query, cursor } }),
        options,
      ),
    );
  }

  /**
   * The record that an estimate was made from, as it was sent.
   *
   * @example
   * const record = await kingplank.estimates.record(id);
   */
  record(id: string, options?: CallOptions): Answer<StoredRecord> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'record']), options);
  }

  /**
   * Computes an estimate again from its record and edition, and says whether it comes out the same.
   *
   * @example
   * const replayed = await kingplank.estimates.replay(id);
   */
  replay(id: string, options?: CallOptions): Answer<Replay> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'replay']), options);
  }

  /**
   * Where a line's amount comes from, down to what was entered, looked up or assumed.
   *
   * @example
   * const why = await kingplank.estimates.why(id, 'labour-cut-skin');
   */
  why(id: string, lineCode: string, options?: CallOptions): Answer<Why> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'lines', lineCode, 'why']), options);
  }

  /**
   * Makes the estimate again after something became known; the earlier one stays.
   *
   * @example
   * const revised = await kingplank.estimates.revise(id, { reason: 'deck opened', record });
   */
  revise(
    id: string,
    revision: BodyOf<'/v1/estimates/{id}/revisions', 'post'>,
    options?: CallOptions,
  ): Answer<StoredEstimate> {
    return awaitedJson(
      this.#settings,
      writing('POST', ['v1', 'estimates', id, 'revisions'], { body: revision }),
      options,
    );
  }

  /**
   * All revisions of an estimate, the first one included.
   *
   * @example
   * const revisions = await kingplank.estimates.revisions(id);
   */
  revisions(id: string, options?: CallOptions): Answer<Revisions> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'revisions']), options);
  }

  /**
   * What changed between two revisions, line by line.
   *
   * @example
   * const comparison = await kingplank.estimates.compare(revisedId, { with: firstId });
   */
  compare(id: string, query: ComparisonQuery, options?: CallOptions): Answer<Comparison> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'comparison'], { query }), options);
  }

  /**
   * The same comparison as CSV.
   *
   * @example
   * const csv = await kingplank.estimates.comparisonCsv(revisedId);
   */
  comparisonCsv(id: string, query: ComparisonQuery = {}, options?: CallOptions): Answer<string> {
    const call = reading(['v1', 'estimates', id, 'comparison'], { query, accept: 'text/csv' });
    return text(this.#settings, call, options);
  }

  /**
   * What a revision adds and takes away, with the sums to agree.
   *
   * @example
   * const order = await kingplank.estimates.changeOrder(revisedId);
   */
  changeOrder(id: string, options?: CallOptions): Answer<ChangeOrder> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'change-order']), options);
  }

  /**
   * The change order to print and sign.
   *
   * @example
   * const { blob, name } = await kingplank.estimates.changeOrderPdf(revisedId);
   */
  changeOrderPdf(id: string, query: ChangeOrderQuery = {}, options?: CallOptions): Promise<Download> {
    const call = reading(['v1', 'estimates', id, 'change-order'], { query, accept: 'application/pdf' });
    return awaitedDownload(this.#settings, call, options);
  }

  /**
   * The change order as a self-contained page.
   *
   * @example
   * const page = await kingplank.estimates.changeOrderHtml(revisedId);
   */
  changeOrderHtml(id: string, query: ChangeOrderQuery = {}, options?: CallOptions): Promise<string> {
    const call = reading(['v1', 'estimates', id, 'change-order'], { query, accept: 'text/html' });
    return awaitedText(this.#settings, call, options);
  }

  /**
   * The calendar with its weather; with `on` what that day holds.
   *
   * @example
   * const day = await kingplank.estimates.calendar(id, { on: '2027-03-11' });
   */
  calendar(
    id: string,
    query: Pick<CalendarQuery, 'on'> = {},
    options?: CallOptions,
  ): Answer<EstimateCalendar> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'calendar'], { query }), options);
  }

  /**
   * The milestones, or every task as well, as iCalendar text (RFC 5545).
   *
   * @example
   * const ics = await kingplank.estimates.iCalendar(id, { events: 'tasks' });
   */
  iCalendar(id: string, query: Pick<CalendarQuery, 'events'> = {}, options?: CallOptions): Answer<string> {
    const call = reading(['v1', 'estimates', id, 'calendar'], { query, accept: 'text/calendar' });
    return text(this.#settings, call, options);
  }

  /**
   * The cheapest whole packs for an estimate; with `together`, for several in one order.
   *
   * @example
   * const basket = await kingplank.estimates.basket(id, { together: [otherId] });
   */
  basket(
    id: string,
    choices: BodyOf<'/v1/estimates/{id}/basket', 'post'> = {},
    options?: CallOptions,
  ): Answer<EstimateBasket> {
    return json(
      this.#settings,
      writing('POST', ['v1', 'estimates', id, 'basket'], { body: choices }),
      options,
    );
  }

  /**
   * The packs of one estimate with nothing chosen.
   *
   * @example
   * const basket = await kingplank.estimates.usualBasket(id);
   */
  usualBasket(id: string, options?: CallOptions): Answer<EstimateBasket> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'basket']), options);
  }

  /**
   * The packs to order as CSV (RFC 4180).
   *
   * @example
   * const csv = await kingplank.estimates.basketCsv(id);
   */
  basketCsv(id: string, query: BasketQuery = {}, options?: CallOptions): Answer<string> {
    const call = reading(['v1', 'estimates', id, 'basket'], { query, accept: 'text/csv' });
    return text(this.#settings, call, options);
  }

  /**
   * What to order from one supplier, as a UBL 2.1 Order (ISO/IEC 19845).
   *
   * @example
   * const order = await kingplank.estimates.order(id, { supplier: 'supplier-code' });
   */
  order(id: string, query: BasketQuery, options?: CallOptions): Answer<string> {
    const call = reading(['v1', 'estimates', id, 'basket'], { query, accept: 'application/xml' });
    return text(this.#settings, call, options);
  }

  /**
   * Chandlers that an estimate and its revisions are shared with.
   *
   * @example
   * const { items } = await kingplank.estimates.shares(id);
   */
  shares(id: string, options?: CallOptions): Answer<AnswerOf<'/v1/estimates/{id}/shares', 'get'>> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'shares']), options);
  }

  /**
   * Shares an estimate and its revisions with the key of a chandler, who sees no other.
   *
   * @example
   * await kingplank.estimates.share(id, chandlersKeyId);
   */
  share(id: string, keyId: string, options?: CallOptions): Answer<void> {
    return nothing(this.#settings, writing('PUT', ['v1', 'estimates', id, 'shares', keyId]), options);
  }

  /**
   * Takes an estimate back from a chandler.
   *
   * @example
   * await kingplank.estimates.unshare(id, chandlersKeyId);
   */
  unshare(id: string, keyId: string, options?: CallOptions): Answer<void> {
    return nothing(this.#settings, writing('DELETE', ['v1', 'estimates', id, 'shares', keyId]), options);
  }

  /**
   * Photographs of the deck, with what they show and where they were taken; without the pictures.
   *
   * @example
   * const { items } = await kingplank.estimates.photographs(id);
   */
  photographs(id: string, options?: CallOptions): Answer<Photographs> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'photographs']), options);
  }

  /**
   * Adds a photograph under its number, or puts another in its place: a JPEG or a PNG; the service judges its content and
   * keeps nothing of the file but what it shows. `at` is its place on the deck in mm, `directionDeg` which way it looks: 0
   * towards the bow, 90 to starboard. With `isNewOnly` what stands under the number already is left alone.
   *
   * @example
   * await kingplank.estimates.setPhotograph(id, 1, bytes, { caption: 'Stain at the windlass', at: '1130,0' });
   */
  setPhotograph(
    id: string,
    number: number,
    picture: Uint8Array,
    { caption, at, directionDeg, type = 'image/jpeg', isNewOnly = false, ...options }: SetPhotograph,
  ): Answer<DeckPhotograph> {
    const call = writing('PUT', ['v1', 'estimates', id, 'photographs', String(number)], {
      query: { caption, at, directionDeg },
      body: picture,
      contentType: type,
    });
    const headers = isNewOnly ? { 'if-none-match': '*', ...options.headers } : options.headers;
    return json(this.#settings, call, { ...options, ...(headers === undefined ? {} : { headers }) });
  }

  /**
   * A photograph as it is printed, as JPEG.
   *
   * @example
   * const { blob } = await kingplank.estimates.photograph(id, 1);
   */
  photograph(id: string, number: number, options?: CallOptions): Answer<Download> {
    const call = reading(['v1', 'estimates', id, 'photographs', String(number)], { accept: 'image/jpeg' });
    return download(this.#settings, call, options);
  }

  /**
   * Takes a photograph away for good.
   *
   * @example
   * await kingplank.estimates.removePhotograph(id, 1);
   */
  removePhotograph(id: string, number: number, options?: CallOptions): Answer<void> {
    const call = writing('DELETE', ['v1', 'estimates', id, 'photographs', String(number)]);
    return nothing(this.#settings, call, options);
  }

  /**
   * Erases what an estimate and its revisions say of people: client, instructing party, surveyor, vessel and the reference
   * of the insurer. Figures and sums stay; photographs are taken away one by one.
   *
   * @example
   * await kingplank.estimates.eraseParties(id);
   */
  eraseParties(id: string, options?: CallOptions): Answer<void> {
    return nothing(this.#settings, writing('DELETE', ['v1', 'estimates', id, 'parties']), options);
  }

  /**
   * Which drawings an estimate has, and in which forms.
   *
   * @example
   * const { items } = await kingplank.estimates.drawings(id);
   */
  drawings(id: string, options?: CallOptions): Answer<Drawings> {
    return json(this.#settings, reading(['v1', 'estimates', id, 'drawings']), options);
  }

  /**
   * A drawing as SVG text.
   *
   * @example
   * const svg = await kingplank.estimates.drawing(id, 'defect-map');
   */
  drawing(id: string, name: string, query: DrawingQuery = {}, options?: CallOptions): Answer<string> {
    const call = reading(['v1', 'estimates', id, 'drawings', name], { query, accept: 'image/svg+xml' });
    return text(this.#settings, call, options);
  }

  /**
   * A drawing as PDF, at its scale.
   *
   * @example
   * const { blob } = await kingplank.estimates.drawingPdf(id, 'opening-plan');
   */
  drawingPdf(id: string, name: string, query: DrawingQuery = {}, options?: CallOptions): Promise<Download> {
    const call = reading(['v1', 'estimates', id, 'drawings', name], { query, accept: 'application/pdf' });
    return awaitedDownload(this.#settings, call, options);
  }

  /**
   * The core pieces, or the sheets with what is cut from them, at 1:1 as a DXF file for a cutting machine.
   *
   * @example
   * const dxf = await kingplank.estimates.cutFile(id, 'sheet-layout');
   */
  cutFile(id: string, name: 'piece-plan' | 'sheet-layout', options?: CallOptions): Answer<string> {
    const call = reading(['v1', 'estimates', id, 'drawings', name], { accept: 'image/vnd.dxf' });
    return text(this.#settings, call, options);
  }

  /**
   * Every core piece at full size, to print and to cut by.
   *
   * @example
   * const { blob } = await kingplank.estimates.templates(id);
   */
  templates(id: string, query: DrawingQuery = {}, options?: CallOptions): Promise<Download> {
    return this.drawingPdf(id, 'templates', query, options);
  }

  /**
   * The report or the job pack as PDF, waited for when it is a long one.
   *
   * @example
   * const { blob, name } = await kingplank.estimates.pdf(id, { document: 'job-pack' });
   */
  pdf(id: string, query: ReportQuery = {}, options?: CallOptions): Promise<Download> {
    const call = reading(['v1', 'estimates', id], { query, accept: 'application/pdf' });
    return awaitedDownload(this.#settings, call, options);
  }

  /**
   * The report or the job pack as a self-contained page, waited for when it is a long one.
   *
   * @example
   * const page = await kingplank.estimates.html(id);
   */
  html(id: string, query: ReportQuery = {}, options?: CallOptions): Promise<string> {
    const call = reading(['v1', 'estimates', id], { query, accept: 'text/html' });
    return awaitedText(this.#settings, call, options);
  }

  /**
   * The estimate as a UBL 2.1 Quotation (ISO/IEC 19845).
   *
   * @example
   * const xml = await kingplank.estimates.quotation(id, { customer: 'J. Example' });
   */
  quotation(
    id: string,
    query: Pick<ReportQuery, 'customer' | 'validUntil'> = {},
    options?: CallOptions,
  ): Answer<string> {
    const call = reading(['v1', 'estimates', id], { query, accept: 'application/xml' });
    return text(this.#settings, call, options);
  }

  /**
   * The priced lines as CSV (RFC 4180).
   *
   * @example
   * const csv = await kingplank.estimates.csv(id);
   */
  csv(id: string, options?: CallOptions): Answer<string> {
    return text(this.#settings, reading(['v1', 'estimates', id], { accept: 'text/csv' }), options);
  }
}
