import type { Answer } from './answer.js';
import { json, nothing, reading, versioned, writing } from './resource.js';
import type { Settings } from './settings.js';
import type { CallOptions } from './transport.js';
import type { AnswerOf, BodyOf, QueryOf, Versioned } from './types.js';

/** Keys that programs sign in with. */
export class Keys {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * The keys there are; their secrets are shown once, when they are made.
   *
   * @example
   * const keys = await kingplank.keys.list();
   */
  list(query?: QueryOf<'/v1/keys', 'get'>, options?: CallOptions): Answer<AnswerOf<'/v1/keys', 'get'>> {
    return json(this.#settings, reading(['v1', 'keys'], { query }), options);
  }

  /**
   * Makes a key; the answer is the only place that shows its secret.
   *
   * @example
   * const { key } = await kingplank.keys.create({ name: 'yard planner', roles: ['integrator'] });
   */
  create(key: BodyOf<'/v1/keys', 'post'>, options?: CallOptions): Answer<AnswerOf<'/v1/keys', 'post'>> {
    return json(this.#settings, writing('POST', ['v1', 'keys'], { body: key }), options);
  }

  /**
   * One key, with the ETag that revoking it must name.
   *
   * @example
   * const { value, etag } = await kingplank.keys.get(id);
   */
  get(id: string, options?: CallOptions): Answer<Versioned<AnswerOf<'/v1/keys/{id}', 'get'>>> {
    return versioned(this.#settings, reading(['v1', 'keys', id]), options);
  }

  /**
   * Makes a key in the place of another, which goes on for a while; the answer alone shows the new one.
   *
   * @example
   * const { key } = await kingplank.keys.renew(id, { overlapHours: 24 });
   */
  renew(
    id: string,
    renewal: BodyOf<'/v1/keys/{id}/renewal', 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<'/v1/keys/{id}/renewal', 'post'>> {
    return json(this.#settings, writing('POST', ['v1', 'keys', id, 'renewal'], { body: renewal }), options);
  }

  /**
   * Who made, renewed and revoked a key.
   *
   * @example
   * const { items } = await kingplank.keys.history(id);
   */
  history(id: string, options?: CallOptions): Answer<AnswerOf<'/v1/keys/{id}/history', 'get'>> {
    return json(this.#settings, reading(['v1', 'keys', id, 'history']), options);
  }

  /**
   * Makes a key worthless at once.
   *
   * @example
   * await kingplank.keys.revoke(id, { ifMatch: etag });
   */
  revoke(id: string, options: CallOptions & { readonly ifMatch: string }): Answer<void> {
    return nothing(this.#settings, writing('DELETE', ['v1', 'keys', id]), options);
  }
}

/** The organisations that work with the service. */
export class Organisations {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * All organisations.
   *
   * @example
   * const organisations = await kingplank.organisations.list();
   */
  list(
    query?: QueryOf<'/v1/organisations', 'get'>,
    options?: CallOptions,
  ): Answer<AnswerOf<'/v1/organisations', 'get'>> {
    return json(this.#settings, reading(['v1', 'organisations'], { query }), options);
  }

  /**
   * Adds an organisation; the answer alone shows the key of its admin.
   *
   * @example
   * const { id, adminKey } = await kingplank.organisations.create({ name: 'Example Surveys' });
   */
  create(
    organisation: BodyOf<'/v1/organisations', 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<'/v1/organisations', 'post'>> {
    return json(this.#settings, writing('POST', ['v1', 'organisations'], { body: organisation }), options);
  }

  /**
   * One organisation, with the ETag that a change must name.
   *
   * @example
   * const { value, etag } = await kingplank.organisations.get(id);
   */
  get(id: string, options?: CallOptions): Answer<Versioned<AnswerOf<'/v1/organisations/{id}', 'get'>>> {
    return versioned(this.#settings, reading(['v1', 'organisations', id]), options);
  }

  /**
   * Changes an organisation by an RFC 7396 merge patch.
   *
   * @example
   * await kingplank.organisations.change(id, { name: 'Example Marine Surveys' }, { ifMatch: etag });
   */
  change(
    id: string,
    patch: BodyOf<'/v1/organisations/{id}', 'patch'>,
    options: CallOptions & { readonly ifMatch: string },
  ): Answer<AnswerOf<'/v1/organisations/{id}', 'patch'>> {
    const call = writing('PATCH', ['v1', 'organisations', id], {
      body: patch,
      contentType: 'application/merge-patch+json',
    });
    return json(this.#settings, call, options);
  }
}

/** Keys and secrets that may stand in a page of a shop. */
export class ShopPages {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * Keys for pages.
   *
   * @example
   * const { items } = await kingplank.pages.keys();
   */
  keys(
    query?: QueryOf<'/v1/publishable-keys', 'get'>,
    options?: CallOptions,
  ): Answer<AnswerOf<'/v1/publishable-keys', 'get'>> {
    return json(this.#settings, reading(['v1', 'publishable-keys'], { query }), options);
  }

  /**
   * Makes a key for the pages of some origins. It makes estimates and lists none.
   *
   * @example
   * const { key } = await kingplank.pages.createKey({ name: 'Shop', origins: ['https://shop.example'], perMinute: 60, perMinutePerVisitor: 10, perDay: 500 });
   */
  createKey(
    key: BodyOf<'/v1/publishable-keys', 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<'/v1/publishable-keys', 'post'>> {
    return json(this.#settings, writing('POST', ['v1', 'publishable-keys'], { body: key }), options);
  }

  /**
   * A key for pages, with the ETag that revoking it must name.
   *
   * @example
   * const { etag } = await kingplank.pages.key(id);
   */
  key(id: string, options?: CallOptions): Answer<Versioned<AnswerOf<'/v1/publishable-keys/{id}', 'get'>>> {
    return versioned(this.#settings, reading(['v1', 'publishable-keys', id]), options);
  }

  /**
   * Makes a key for pages worthless, and every secret that was given out for it.
   *
   * @example
   * await kingplank.pages.revokeKey(id, { ifMatch: etag });
   */
  revokeKey(id: string, options: CallOptions & { readonly ifMatch: string }): Answer<void> {
    return nothing(this.#settings, writing('DELETE', ['v1', 'publishable-keys', id]), options);
  }

  /**
   * A secret under which the page of one customer makes one estimate.
   *
   * @example
   * const { clientSecret } = await kingplank.pages.openSession({ reference: 'order-1007' });
   */
  openSession(
    session: BodyOf<'/v1/client-sessions', 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<'/v1/client-sessions', 'post'>> {
    return json(this.#settings, writing('POST', ['v1', 'client-sessions'], { body: session }), options);
  }
}

/** Who did what. */
export class Audit {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * What was done in the organisation, newest first.
   *
   * @example
   * const { items } = await kingplank.audit.list({ subject: 'edition' });
   */
  list(query?: QueryOf<'/v1/audit', 'get'>, options?: CallOptions): Answer<AnswerOf<'/v1/audit', 'get'>> {
    return json(this.#settings, reading(['v1', 'audit'], { query }), options);
  }
}

/** Whether the service is there. */
export class Health {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * Does the process answer?
   *
   * @example
   * await kingplank.health.live();
   */
  live(options?: CallOptions): Answer<AnswerOf<'/health/live', 'get'>> {
    return json(this.#settings, reading(['health', 'live']), options);
  }

  /**
   * Can it take work?
   *
   * @example
   * await kingplank.health.ready();
   */
  ready(options?: CallOptions): Answer<AnswerOf<'/health/ready', 'get'>> {
    return json(this.#settings, reading(['health', 'ready']), options);
  }
}
