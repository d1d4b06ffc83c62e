import { path, versioned } from './resource.js';
import { send, type CallOptions, type ClientOptions } from './transport.js';
import type { AnswerOf, BodyOf, Versioned } from './types.js';

export type OrganisationLetterhead = AnswerOf<'/v1/letterhead', 'get'>;

/** What stands at the head of the documents of the own organisation. */
export class Letterhead {
  readonly #client: ClientOptions;

  constructor(client: ClientOptions) {
    this.#client = client;
  }

  /** With the ETag that a change of lines or logo must name. */
  get(options?: CallOptions): Promise<Versioned<OrganisationLetterhead>> {
    return versioned(this.#client, { method: 'GET', path: path('v1', 'letterhead') }, options);
  }

  set(
    letterhead: BodyOf<'/v1/letterhead', 'put'>,
    options: CallOptions & { readonly ifMatch: string },
  ): Promise<Versioned<OrganisationLetterhead>> {
    return versioned(
      this.#client,
      { method: 'PUT', path: path('v1', 'letterhead'), body: letterhead },
      options,
    );
  }

  /** The logo as it is printed, as PNG. */
  async logo(options?: CallOptions): Promise<Uint8Array> {
    const response = await send(
      this.#client,
      { method: 'GET', path: path('v1', 'letterhead', 'logo'), accept: 'image/png' },
      options,
    );
    return new Uint8Array(await response.arrayBuffer());
  }

  /** A PNG or JPEG; the service judges its content. */
  setLogo(
    picture: Uint8Array,
    options: CallOptions & { readonly ifMatch: string },
  ): Promise<Versioned<OrganisationLetterhead>> {
    return versioned(
      this.#client,
      { method: 'PUT', path: path('v1', 'letterhead', 'logo'), body: picture, contentType: 'image/png' },
      options,
    );
  }

  async removeLogo(options: CallOptions & { readonly ifMatch: string }): Promise<void> {
    await send(this.#client, { method: 'DELETE', path: path('v1', 'letterhead', 'logo') }, options);
  }
}
