import type { Answer } from './answer.js';
import { json, nothing, reading, versioned, writing } from './resource.js';
import type { Settings } from './settings.js';
import type { CallOptions } from './transport.js';
import type { AnswerOf, BodyOf, Versioned } from './types.js';

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
  list(options?: CallOptions): Answer<AnswerOf<'/v1/keys', 'get'>> {
    return json(this.#settings, reading(['v1', 'keys']), options);
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
  list(options?: CallOptions): Answer<AnswerOf<'/v1/organisations', 'get'>> {
    return json(this.#settings, reading(['v1', 'organisations']), options);
  }

  /**
   * Adds an organisation.
   *
   * @example
   * const { id } = await kingplank.organisations.create({ name: 'Example Surveys' });
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
