import { Audit, Health, Keys, Organisations, ShopPages } from './access.js';
import { Answer } from './answer.js';
import { Editions, PriceLists, Shelf } from './catalogue.js';
import { Estimates } from './estimates.js';
import { Estimating } from './estimating.js';
import { Events, WebhookEndpoints } from './events.js';
import { Letterhead } from './letterhead.js';
import { Operations } from './operations.js';
import { filledPath, type Asked, type Request } from './request.js';
import { contentOf } from './resource.js';
import { settingsOf, type ClientOptions, type Settings } from './settings.js';
import type { CallOptions, HttpMethod } from './transport.js';
import type { Method, Path } from './types.js';
import { Webhooks } from './webhooks.js';

/**
 * The Kingplank service as typed calls.
 *
 * Every call takes `{ timeoutMs, maxRetries, signal, idempotencyKey, headers, units }`; changes carry an idempotency key
 * by themselves, so that a retry never makes a second estimate. What goes wrong is thrown as a `KingplankError`.
 *
 * @example
 * const kingplank = new Kingplank({ baseUrl: 'http://127.0.0.1:3000', apiKey });
 * const { id, estimate } = await kingplank.estimates.create(record);
 */
export class Kingplank {
  readonly estimates: Estimates;
  readonly estimating: Estimating;
  readonly operations: Operations;
  readonly letterhead: Letterhead;
  readonly editions: Editions;
  readonly materials: Shelf<'materials'>;
  readonly priceLists: PriceLists;
  readonly labourRates: Shelf<'labour-rates'>;
  readonly sources: Shelf<'sources'>;
  readonly organisations: Organisations;
  readonly keys: Keys;
  readonly pages: ShopPages;
  readonly audit: Audit;
  readonly health: Health;
  readonly events: Events;
  readonly webhookEndpoints: WebhookEndpoints;
  readonly webhooks: Webhooks;
  readonly #options: ClientOptions;
  readonly #settings: Settings;

  /** @throws {MisusedClientError} without an address or a key, or with a secret key in a browser */
  constructor(options: ClientOptions = {}) {
    const settings = settingsOf(options);
    this.#options = options;
    this.#settings = settings;
    this.estimates = new Estimates(settings);
    this.estimating = new Estimating(settings);
    this.operations = new Operations(settings);
    this.letterhead = new Letterhead(settings);
    this.editions = new Editions(settings);
    this.materials = new Shelf(settings, 'materials');
    this.priceLists = new PriceLists(settings);
    this.labourRates = new Shelf(settings, 'labour-rates');
    this.sources = new Shelf(settings, 'sources');
    this.organisations = new Organisations(settings);
    this.keys = new Keys(settings);
    this.pages = new ShopPages(settings);
    this.audit = new Audit(settings);
    this.health = new Health(settings);
    this.events = new Events(settings);
    this.webhookEndpoints = new WebhookEndpoints(settings);
    this.webhooks = new Webhooks(settings);
  }

  /**
   * The same client with other options, e.g. the key of another organisation.
   *
   * @example
   * const theirs = kingplank.withOptions({ apiKey: theirKey });
   */
  withOptions(options: ClientOptions): Kingplank {
    return new Kingplank({ ...this.#options, ...options });
  }

  /**
   * Any operation of the contract, typed by its path: for what has no method of its own.
   *
   * @example
   * const why = await kingplank.request('get', '/v1/estimates/{id}/lines/{code}/why', { path: { id, code } });
   */
  request<P extends Path, M extends Method>(
    method: M,
    path: P,
    request: Request<P, M>,
    options: CallOptions = {},
  ): Answer<Asked<P, M>> {
    const call = {
      ...request,
      method: methodNames[method],
      path: filledPath(path, request.path ?? {}),
    };
    return new Answer(this.#settings, call, options, contentOf<Asked<P, M>>(request.accept));
  }
}

const methodNames: Readonly<Record<Method, HttpMethod>> = {
  get: 'GET',
  post: 'POST',
  put: 'PUT',
  patch: 'PATCH',
  delete: 'DELETE',
};
