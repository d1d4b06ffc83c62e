import type { Answer } from './answer.js';
import { Pages } from './pages.js';
import { json, nothing, reading, versioned, writing } from './resource.js';
import type { Settings } from './settings.js';
import type { CallOptions } from './transport.js';
import type { AnswerOf, BodyOf, QueryOf, Versioned } from './types.js';

type EndpointsPath = '/v1/webhook-endpoints';
type EndpointPath = '/v1/webhook-endpoints/{id}';
type RenewalPath = '/v1/webhook-endpoints/{id}/secret-renewal';
type DeliveriesPath = '/v1/webhook-endpoints/{id}/deliveries';
type RepetitionPath = '/v1/webhook-endpoints/{id}/deliveries/{eventId}/repetition';
type EventsOf = AnswerOf<'/v1/events', 'get'>;

/** What happened in the organisation, for programs that cannot be called. */
export class Events {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * What happened, oldest first, to the last event there is.
   *
   * @example
   * for await (const event of kingplank.events.list({ cursor: kept })) console.log(event.type);
   */
  list(query: QueryOf<'/v1/events', 'get'> = {}, options?: CallOptions): Pages<EventsOf['items'][number]> {
    return new Pages((cursor) => this.page(cursor === undefined ? query : { ...query, cursor }, options));
  }

  /**
   * One page, with the cursor to keep for the next reading.
   *
   * @example
   * const { items, nextCursor } = await kingplank.events.page({ cursor: kept });
   */
  page(query: QueryOf<'/v1/events', 'get'> = {}, options?: CallOptions): Answer<EventsOf> {
    return json(this.#settings, reading(['v1', 'events'], { query }), options);
  }
}

/** Where an organisation wants to be told what happened. */
export class WebhookEndpoints {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * The endpoints there are; their secrets are shown once, when they are made.
   *
   * @example
   * const { items } = await kingplank.webhookEndpoints.list();
   */
  list(options?: CallOptions): Answer<AnswerOf<EndpointsPath, 'get'>> {
    return json(this.#settings, reading(['v1', 'webhook-endpoints']), options);
  }

  /**
   * Has events posted to an address; the answer is the only place that shows the secret.
   *
   * @example
   * const { secret } = await kingplank.webhookEndpoints.create({
   *   url: 'https://shop.example/kingplank-events',
   *   types: ['estimate.created'],
   * });
   */
  create(
    endpoint: BodyOf<EndpointsPath, 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<EndpointsPath, 'post'>> {
    return json(this.#settings, writing('POST', ['v1', 'webhook-endpoints'], { body: endpoint }), options);
  }

  /**
   * One endpoint, with the ETag that removing it must name.
   *
   * @example
   * const { value, etag } = await kingplank.webhookEndpoints.get(id);
   */
  get(id: string, options?: CallOptions): Answer<Versioned<AnswerOf<EndpointPath, 'get'>>> {
    return versioned(this.#settings, reading(['v1', 'webhook-endpoints', id]), options);
  }

  /**
   * Has no more events posted there.
   *
   * @example
   * await kingplank.webhookEndpoints.remove(id, { ifMatch: etag });
   */
  remove(id: string, options: CallOptions & { readonly ifMatch: string }): Answer<void> {
    return nothing(this.#settings, writing('DELETE', ['v1', 'webhook-endpoints', id]), options);
  }

  /**
   * A new secret; for the overlap both sign, so that `webhooks.unwrap` may hold either.
   *
   * @example
   * const { secret } = await kingplank.webhookEndpoints.renewSecret(id, { overlapHours: 24 });
   */
  renewSecret(
    id: string,
    renewal: BodyOf<RenewalPath, 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<RenewalPath, 'post'>> {
    const call = writing('POST', ['v1', 'webhook-endpoints', id, 'secret-renewal'], { body: renewal });
    return json(this.#settings, call, options);
  }

  /**
   * How far events came on their way to an endpoint.
   *
   * @example
   * const { items } = await kingplank.webhookEndpoints.deliveries(id);
   */
  deliveries(id: string, options?: CallOptions): Answer<AnswerOf<DeliveriesPath, 'get'>> {
    return json(this.#settings, reading(['v1', 'webhook-endpoints', id, 'deliveries']), options);
  }

  /**
   * Delivers an event once more.
   *
   * @example
   * await kingplank.webhookEndpoints.repeat(id, eventId);
   */
  repeat(id: string, eventId: string, options?: CallOptions): Answer<AnswerOf<RepetitionPath, 'post'>> {
    const parts = ['v1', 'webhook-endpoints', id, 'deliveries', eventId, 'repetition'];
    return json(this.#settings, writing('POST', parts), options);
  }
}
