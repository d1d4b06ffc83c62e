import { json, path, versioned } from './resource.js';
import { send, type CallOptions, type ClientOptions } from './transport.js';
import type { AnswerOf, BodyOf, QueryOf, Versioned } from './types.js';

/** Collections whose entries belong to an edition of the catalogue. */
export type Collection = 'materials' | 'price-lists' | 'labour-rates' | 'sources';

type ListPath<C extends Collection> = `/v1/${C}`;
type ItemPath<C extends Collection> = `/v1/${C}/{code}`;

/** Entries of one collection: read from the current edition, written to a draft. */
export class Shelf<C extends Collection> {
  readonly #client: ClientOptions;
  readonly #collection: C;

  constructor(client: ClientOptions, collection: C) {
    this.#client = client;
    this.#collection = collection;
  }

  list(query?: QueryOf<ListPath<C>, 'get'>, options?: CallOptions): Promise<AnswerOf<ListPath<C>, 'get'>> {
    return json(this.#client, { method: 'GET', path: path('v1', this.#collection), query }, options);
  }

  /** With the ETag that a change must name. */
  get(
    code: string,
    query: { readonly edition?: string } = {},
    options?: CallOptions,
  ): Promise<Versioned<AnswerOf<ItemPath<C>, 'get'>>> {
    return versioned(
      this.#client,
      { method: 'GET', path: path('v1', this.#collection, code), query },
      options,
    );
  }

  add(
    entry: BodyOf<ListPath<C>, 'post'>,
    query: { readonly edition: string },
    options?: CallOptions,
  ): Promise<AnswerOf<ListPath<C>, 'post'>> {
    return json(
      this.#client,
      { method: 'POST', path: path('v1', this.#collection), query, body: entry },
      options,
    );
  }

  /** RFC 7396 merge patch; `options.ifMatch` is the ETag that was read. */
  change(
    code: string,
    patch: Readonly<Record<string, unknown>>,
    options: CallOptions & { readonly edition: string; readonly ifMatch: string },
  ): Promise<AnswerOf<ItemPath<C>, 'patch'>> {
    return json(
      this.#client,
      {
        method: 'PATCH',
        path: path('v1', this.#collection, code),
        query: { edition: options.edition },
        body: patch,
        contentType: 'application/merge-patch+json',
      },
      options,
    );
  }

  async remove(
    code: string,
    options: CallOptions & { readonly edition: string; readonly ifMatch: string },
  ): Promise<void> {
    await send(
      this.#client,
      { method: 'DELETE', path: path('v1', this.#collection, code), query: { edition: options.edition } },
      options,
    );
  }
}

/** States of the catalogue: one is current, drafts are worked on, published ones never change. */
export class Editions {
  readonly #client: ClientOptions;

  constructor(client: ClientOptions) {
    this.#client = client;
  }

  list(options?: CallOptions): Promise<AnswerOf<'/v1/editions', 'get'>> {
    return json(this.#client, { method: 'GET', path: '/v1/editions' }, options);
  }

  draft(
    edition: BodyOf<'/v1/editions', 'post'>,
    options?: CallOptions,
  ): Promise<AnswerOf<'/v1/editions', 'post'>> {
    return json(this.#client, { method: 'POST', path: '/v1/editions', body: edition }, options);
  }

  get(code: string, options?: CallOptions): Promise<Versioned<AnswerOf<'/v1/editions/{code}', 'get'>>> {
    return versioned(this.#client, { method: 'GET', path: path('v1', 'editions', code) }, options);
  }

  publish(
    code: string,
    options: CallOptions & { readonly ifMatch: string },
  ): Promise<AnswerOf<'/v1/editions/{code}/publication', 'post'>> {
    return json(this.#client, { method: 'POST', path: path('v1', 'editions', code, 'publication') }, options);
  }
}
