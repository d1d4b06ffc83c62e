import type { Answer } from './answer.js';
import { json, nothing, reading, text, versioned, writing } from './resource.js';
import type { Settings } from './settings.js';
import type { CallOptions } from './transport.js';
import type { AnswerOf, BodyOf, QueryOf, Versioned } from './types.js';

/** Collections whose entries belong to an edition of the catalogue. */
export type Collection = 'materials' | 'price-lists' | 'labour-rates' | 'sources';

type ListPath<C extends Collection> = `/v1/${C}`;
type ItemPath<C extends Collection> = `/v1/${C}/{code}`;
type HistoryPath<C extends Collection> = `/v1/${C}/{code}/history`;
type ImportPath<C extends Collection> = `/v1/imports/${C}`;

interface InDraft {
  /** The draft that is changed. */
  readonly edition: string;
}

type Changing = CallOptions & InDraft & { readonly ifMatch: string };

/** Entries of one collection: read from the current edition, written to a draft. */
export class Shelf<C extends Collection> {
  readonly #settings: Settings;
  readonly #collection: C;

  constructor(settings: Settings, collection: C) {
    this.#settings = settings;
    this.#collection = collection;
  }

  /**
   * All entries of an edition.
   *
   * @example
   * const materials = await kingplank.materials.list({ edition: 'draft-2' });
   */
  list(query?: QueryOf<ListPath<C>, 'get'>, options?: CallOptions): Answer<AnswerOf<ListPath<C>, 'get'>> {
    return json(this.#settings, reading(['v1', this.#collection], { query }), options);
  }

  /**
   * All entries as CSV, in the form that `importCsv` takes.
   *
   * @example
   * const csv = await kingplank.materials.listCsv();
   */
  listCsv(query?: QueryOf<ListPath<C>, 'get'>, options?: CallOptions): Answer<string> {
    return text(this.#settings, reading(['v1', this.#collection], { query, accept: 'text/csv' }), options);
  }

  /**
   * One entry, with the ETag that a change must name.
   *
   * @example
   * const { value, etag } = await kingplank.priceLists.get('eur-demo');
   */
  get(
    code: string,
    query: { readonly edition?: string } = {},
    options?: CallOptions,
  ): Answer<Versioned<AnswerOf<ItemPath<C>, 'get'>>> {
    return versioned(this.#settings, reading(['v1', this.#collection, code], { query }), options);
  }

  /**
   * Adds an entry to a draft.
   *
   * @example
   * await kingplank.sources.add(source, { edition: draft.code });
   */
  add(
    entry: BodyOf<ListPath<C>, 'post'>,
    query: InDraft,
    options?: CallOptions,
  ): Answer<AnswerOf<ListPath<C>, 'post'>> {
    return json(
      this.#settings,
      writing('POST', ['v1', this.#collection], { query: { ...query }, body: entry }),
      options,
    );
  }

  /**
   * Changes an entry of a draft by an RFC 7396 merge patch; `options.ifMatch` is the ETag that was read.
   *
   * @example
   * await kingplank.labourRates.change(code, { currency: 'EUR' }, { edition: draft.code, ifMatch: etag });
   */
  change(
    code: string,
    patch: Readonly<Record<string, unknown>>,
    options: Changing,
  ): Answer<AnswerOf<ItemPath<C>, 'patch'>> {
    const call = writing('PATCH', ['v1', this.#collection, code], {
      query: { edition: options.edition },
      body: patch,
      contentType: 'application/merge-patch+json',
    });
    return json(this.#settings, call, options);
  }

  /**
   * Takes an entry out of a draft.
   *
   * @example
   * await kingplank.materials.remove(code, { edition: draft.code, ifMatch: etag });
   */
  remove(code: string, options: Changing): Answer<void> {
    const query = { edition: options.edition };
    return nothing(this.#settings, writing('DELETE', ['v1', this.#collection, code], { query }), options);
  }

  /**
   * Who changed an entry, when, and what it was before.
   *
   * @example
   * const history = await kingplank.materials.history('core-balsa-150');
   */
  history(
    code: string,
    query?: QueryOf<HistoryPath<C>, 'get'>,
    options?: CallOptions,
  ): Answer<AnswerOf<HistoryPath<C>, 'get'>> {
    return json(this.#settings, reading(['v1', this.#collection, code, 'history'], { query }), options);
  }

  /**
   * Takes a sheet into a draft: all of it, or none with every fault.
   *
   * @example
   * await kingplank.priceLists.importCsv(csv, { edition: draft.code });
   */
  importCsv(
    csv: string,
    query: QueryOf<ImportPath<C>, 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<ImportPath<C>, 'post'>> {
    const call = writing('POST', ['v1', 'imports', this.#collection], {
      query,
      body: csv,
      contentType: 'text/csv',
    });
    return json(this.#settings, call, options);
  }
}

type PacksPath = '/v1/price-lists/{code}/packs';
type PackPath = '/v1/price-lists/{code}/packs/{sku}';
type PriceChangesPath = '/v1/price-lists/{code}/price-changes';
type SheetsPath = '/v1/price-lists/{code}/sheets';
type StockPath = '/v1/price-lists/{code}/stock';
type PackStockPath = '/v1/price-lists/{code}/packs/{sku}/stock';
type TrialPath = '/v1/editions/{code}/trial';

/** Price lists, whose packs can be read and replaced as one sheet. */
export class PriceLists extends Shelf<'price-lists'> {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    super(settings, 'price-lists');
    this.#settings = settings;
  }

  /**
   * The packs of a price list.
   *
   * @example
   * const packs = await kingplank.priceLists.packs('eur-demo');
   */
  packs(
    code: string,
    query?: QueryOf<PacksPath, 'get'>,
    options?: CallOptions,
  ): Answer<AnswerOf<PacksPath, 'get'>> {
    return json(this.#settings, reading(['v1', 'price-lists', code, 'packs'], { query }), options);
  }

  /**
   * The packs as CSV, in the form that `replacePacks` takes.
   *
   * @example
   * const csv = await kingplank.priceLists.packsCsv('eur-demo');
   */
  packsCsv(code: string, query?: QueryOf<PacksPath, 'get'>, options?: CallOptions): Answer<string> {
    const call = reading(['v1', 'price-lists', code, 'packs'], { query, accept: 'text/csv' });
    return text(this.#settings, call, options);
  }

  /**
   * Puts a sheet in the place of all packs of a list in a draft.
   *
   * @example
   * await kingplank.priceLists.replacePacks(code, csv, { edition: draft.code, ifMatch: etag });
   */
  replacePacks(code: string, csv: string, options: Changing): Answer<AnswerOf<PacksPath, 'put'>> {
    const call = writing('PUT', ['v1', 'price-lists', code, 'packs'], {
      query: { edition: options.edition },
      body: csv,
      contentType: 'text/csv',
    });
    return json(this.#settings, call, options);
  }

  /**
   * One pack, with the ETag of its list.
   *
   * @example
   * const { value, etag } = await kingplank.priceLists.pack('eur-demo', 'SKU-1', { edition: draft.code });
   */
  pack(
    code: string,
    sku: string,
    query?: QueryOf<PackPath, 'get'>,
    options?: CallOptions,
  ): Answer<Versioned<AnswerOf<PackPath, 'get'>>> {
    return versioned(this.#settings, reading(packParts(code, sku), { query }), options);
  }

  /**
   * Puts a pack into a list of a draft, in the place of that of its SKU.
   *
   * @example
   * await kingplank.priceLists.putPack(code, pack.sku, pack, { edition: draft.code, ifMatch: etag });
   */
  putPack(
    code: string,
    sku: string,
    pack: BodyOf<PackPath, 'put'>,
    options: Changing,
  ): Answer<AnswerOf<PackPath, 'put'>> {
    const query = { edition: options.edition };
    return json(this.#settings, writing('PUT', packParts(code, sku), { query, body: pack }), options);
  }

  /**
   * Changes a pack of a draft by an RFC 7396 merge patch.
   *
   * @example
   * await kingplank.priceLists.changePack(code, sku, { stock: 12 }, { edition: draft.code, ifMatch: etag });
   */
  changePack(
    code: string,
    sku: string,
    patch: Readonly<Record<string, unknown>>,
    options: Changing,
  ): Answer<AnswerOf<PackPath, 'patch'>> {
    const call = writing('PATCH', packParts(code, sku), {
      query: { edition: options.edition },
      body: patch,
      contentType: 'application/merge-patch+json',
    });
    return json(this.#settings, call, options);
  }

  /**
   * Takes a pack out of a list of a draft.
   *
   * @example
   * await kingplank.priceLists.removePack(code, sku, { edition: draft.code, ifMatch: etag });
   */
  removePack(code: string, sku: string, options: Changing): Answer<void> {
    const query = { edition: options.edition };
    return nothing(this.#settings, writing('DELETE', packParts(code, sku), { query }), options);
  }

  /**
   * Raises or lowers prices of a list of a draft by a percentage.
   *
   * @example
   * const { changed } = await kingplank.priceLists.changePrices(
   *   code,
   *   { percent: '4.5', roundTo: '0.05' },
   *   { edition: draft.code, ifMatch: etag },
   * );
   */
  changePrices(
    code: string,
    change: BodyOf<PriceChangesPath, 'post'>,
    options: Changing,
  ): Answer<AnswerOf<PriceChangesPath, 'post'>> {
    const call = writing('POST', ['v1', 'price-lists', code, 'price-changes'], {
      query: { edition: options.edition },
      body: change,
    });
    return json(this.#settings, call, options);
  }

  /**
   * Takes a supplier's own sheet into a list of a draft, by what its columns mean.
   *
   * @example
   * const { changed } = await kingplank.priceLists.takeSheet(
   *   code,
   *   { cells, columns: [{ heading: 'Article', means: 'sku' }, { heading: 'Net', means: 'price' }], decimalMark: ',', breaks: 'keep', unknownSkus: 'refuse' },
   *   { edition: draft.code, ifMatch: etag },
   * );
   */
  takeSheet(
    code: string,
    sheet: BodyOf<SheetsPath, 'post'>,
    options: Changing,
  ): Answer<AnswerOf<SheetsPath, 'post'>> {
    const call = writing('POST', ['v1', 'price-lists', code, 'sheets'], {
      query: { edition: options.edition },
      body: sheet,
    });
    return json(this.#settings, call, options);
  }

  /**
   * What was counted of the packs of a list.
   *
   * @example
   * const { items } = await kingplank.priceLists.stock('eur-demo');
   */
  stock(code: string, options?: CallOptions): Answer<AnswerOf<StockPath, 'get'>> {
    return json(this.#settings, reading(['v1', 'price-lists', code, 'stock']), options);
  }

  /**
   * States how many packs of several SKUs there are now; in force at once, in no edition.
   *
   * @example
   * await kingplank.priceLists.countStock('eur-demo', { items: [{ sku: 'SKU-1', packs: 12 }] });
   */
  countStock(
    code: string,
    counts: BodyOf<StockPath, 'patch'>,
    options?: CallOptions,
  ): Answer<AnswerOf<StockPath, 'patch'>> {
    const call = writing('PATCH', ['v1', 'price-lists', code, 'stock'], { body: counts });
    return json(this.#settings, call, options);
  }

  /**
   * How many packs of a SKU were counted, and when.
   *
   * @example
   * const { packs, countedAt } = await kingplank.priceLists.packStock('eur-demo', 'SKU-1');
   */
  packStock(code: string, sku: string, options?: CallOptions): Answer<AnswerOf<PackStockPath, 'get'>> {
    return json(this.#settings, reading(stockParts(code, sku)), options);
  }

  /**
   * States how many packs of a SKU there are now.
   *
   * @example
   * await kingplank.priceLists.setStock('eur-demo', 'SKU-1', { packs: 11 });
   */
  setStock(
    code: string,
    sku: string,
    count: BodyOf<PackStockPath, 'put'>,
    options?: CallOptions,
  ): Answer<AnswerOf<PackStockPath, 'put'>> {
    return json(this.#settings, writing('PUT', stockParts(code, sku), { body: count }), options);
  }

  /**
   * Forgets a count, so that the stock of the edition counts again.
   *
   * @example
   * await kingplank.priceLists.forgetStock('eur-demo', 'SKU-1');
   */
  forgetStock(code: string, sku: string, options?: CallOptions): Answer<void> {
    return nothing(this.#settings, writing('DELETE', stockParts(code, sku)), options);
  }
}

const packParts = (code: string, sku: string): readonly string[] => ['v1', 'price-lists', code, 'packs', sku];

const stockParts = (code: string, sku: string): readonly string[] => [...packParts(code, sku), 'stock'];

/** States of the catalogue: one is current, drafts are worked on, published ones never change. */
export class Editions {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * All editions, newest first.
   *
   * @example
   * const editions = await kingplank.editions.list();
   */
  list(options?: CallOptions): Answer<AnswerOf<'/v1/editions', 'get'>> {
    return json(this.#settings, reading(['v1', 'editions']), options);
  }

  /**
   * Makes a draft by copying an edition.
   *
   * @example
   * const draft = await kingplank.editions.draft({ code: 'spring', title: 'Spring prices' });
   */
  draft(
    edition: BodyOf<'/v1/editions', 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<'/v1/editions', 'post'>> {
    return json(this.#settings, writing('POST', ['v1', 'editions'], { body: edition }), options);
  }

  /**
   * One edition, with the ETag that publishing must name.
   *
   * @example
   * const { etag } = await kingplank.editions.get('spring');
   */
  get(code: string, options?: CallOptions): Answer<Versioned<AnswerOf<'/v1/editions/{code}', 'get'>>> {
    return versioned(this.#settings, reading(['v1', 'editions', code]), options);
  }

  /**
   * Makes a draft the current edition: at once, or from `effectiveAt`.
   *
   * @example
   * await kingplank.editions.publish('spring', { ifMatch: etag, effectiveAt: '2027-03-01T00:00:00Z' });
   */
  publish(
    code: string,
    { effectiveAt, ...options }: CallOptions & { readonly ifMatch: string; readonly effectiveAt?: string },
  ): Answer<AnswerOf<'/v1/editions/{code}/publication', 'post'>> {
    const body = effectiveAt === undefined ? {} : { body: { effectiveAt } };
    return json(this.#settings, writing('POST', ['v1', 'editions', code, 'publication'], body), options);
  }

  /**
   * Takes back a publication before it counts; the edition is a draft again.
   *
   * @example
   * await kingplank.editions.withdraw('spring', { ifMatch: etag });
   */
  withdraw(
    code: string,
    options: CallOptions & { readonly ifMatch: string },
  ): Answer<AnswerOf<'/v1/editions/{code}/publication', 'delete'>> {
    return json(this.#settings, writing('DELETE', ['v1', 'editions', code, 'publication']), options);
  }

  /**
   * Makes what an earlier edition held current again, under a new code.
   *
   * @example
   * await kingplank.editions.restore('autumn', { code: 'autumn-again', note: 'Spring prices were wrong' });
   */
  restore(
    code: string,
    restoration: BodyOf<'/v1/editions/{code}/restoration', 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<'/v1/editions/{code}/restoration', 'post'>> {
    const call = writing('POST', ['v1', 'editions', code, 'restoration'], { body: restoration });
    return json(this.#settings, call, options);
  }

  /**
   * What an edition holds otherwise than another, field by field.
   *
   * @example
   * const { changes } = await kingplank.editions.compare('spring', { with: 'autumn' });
   */
  compare(
    code: string,
    query: QueryOf<'/v1/editions/{code}/comparison', 'get'>,
    options?: CallOptions,
  ): Answer<AnswerOf<'/v1/editions/{code}/comparison', 'get'>> {
    return json(this.#settings, reading(['v1', 'editions', code, 'comparison'], { query }), options);
  }

  /**
   * What stored estimates would come to with an edition; nothing is stored.
   *
   * @example
   * const { totals } = await kingplank.editions.tryOut('spring', { newest: 10 });
   */
  tryOut(
    code: string,
    trial: BodyOf<TrialPath, 'post'> = {},
    options?: CallOptions,
  ): Answer<AnswerOf<TrialPath, 'post'>> {
    return json(this.#settings, writing('POST', ['v1', 'editions', code, 'trial'], { body: trial }), options);
  }

  /**
   * Throws a draft away.
   *
   * @example
   * await kingplank.editions.discard('spring', { ifMatch: etag });
   */
  discard(code: string, options: CallOptions & { readonly ifMatch: string }): Answer<void> {
    return nothing(this.#settings, writing('DELETE', ['v1', 'editions', code]), options);
  }

  /**
   * What happened to an edition.
   *
   * @example
   * const history = await kingplank.editions.history('spring');
   */
  history(code: string, options?: CallOptions): Answer<AnswerOf<'/v1/editions/{code}/history', 'get'>> {
    return json(this.#settings, reading(['v1', 'editions', code, 'history']), options);
  }
}
