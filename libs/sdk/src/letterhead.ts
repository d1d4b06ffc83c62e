import type { Answer } from './answer.js';
import { download, nothing, reading, versioned, writing, type Download } from './resource.js';
import type { Settings } from './settings.js';
import type { CallOptions } from './transport.js';
import type { AnswerOf, BodyOf, Versioned } from './types.js';

export type OrganisationLetterhead = AnswerOf<'/v1/letterhead', 'get'>;

/** What stands at the head of the documents of the own organisation. */
export class Letterhead {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * With the ETag that a change of lines or logo must name.
   *
   * @example
   * const { value, etag } = await kingplank.letterhead.get();
   */
  get(options?: CallOptions): Answer<Versioned<OrganisationLetterhead>> {
    return versioned(this.#settings, reading(['v1', 'letterhead']), options);
  }

  /**
   * Sets the lines of text.
   *
   * @example
   * await kingplank.letterhead.set({ lines: ['Example Surveys'] }, { ifMatch: etag });
   */
  set(
    letterhead: BodyOf<'/v1/letterhead', 'put'>,
    options: CallOptions & { readonly ifMatch: string },
  ): Answer<Versioned<OrganisationLetterhead>> {
    return versioned(this.#settings, writing('PUT', ['v1', 'letterhead'], { body: letterhead }), options);
  }

  /**
   * The logo as it is printed, as PNG.
   *
   * @example
   * const { blob } = await kingplank.letterhead.logo();
   */
  logo(options?: CallOptions): Answer<Download> {
    return download(this.#settings, reading(['v1', 'letterhead', 'logo'], { accept: 'image/png' }), options);
  }

  /**
   * Sets the logo: a PNG or a JPEG; the service judges its content.
   *
   * @example
   * await kingplank.letterhead.setLogo(bytes, { type: 'image/png', ifMatch: etag });
   */
  setLogo(
    picture: Uint8Array,
    options: CallOptions & { readonly ifMatch: string; readonly type?: 'image/png' | 'image/jpeg' },
  ): Answer<Versioned<OrganisationLetterhead>> {
    const call = writing('PUT', ['v1', 'letterhead', 'logo'], {
      body: picture,
      contentType: options.type ?? 'image/png',
    });
    return versioned(this.#settings, call, options);
  }

  /**
   * Takes the logo away.
   *
   * @example
   * await kingplank.letterhead.removeLogo({ ifMatch: etag });
   */
  removeLogo(options: CallOptions & { readonly ifMatch: string }): Answer<void> {
    return nothing(this.#settings, writing('DELETE', ['v1', 'letterhead', 'logo']), options);
  }
}
