import type { Letterhead as DocumentLetterhead } from '#lib/drawings';
import type { LetterheadState } from './letterhead.repository.js';

/** What stands at the head of reports, job packs and change orders. */
export interface OrganisationLetterhead {
  /** The name of the organisation. */
  readonly name: string;
  /** Address and contacts under the name, line by line. */
  readonly lines: readonly string[];
  /** Words for those who cannot see the logo. */
  readonly logoDescription?: string;
  /** The logo; absent when none was set. */
  readonly logo?: LogoLink;
}

export interface LogoLink {
  /** Address of the logo. */
  readonly href: string;
  /** Form that the logo is kept in. */
  readonly mediaType: 'image/png';
}

export const letterheadView = (
  name: string,
  { lines, logoDescription, logo }: LetterheadState,
): OrganisationLetterhead => ({
  name,
  lines,
  ...(logoDescription === null ? {} : { logoDescription }),
  ...(logo === null ? {} : { logo: { href: '/v1/letterhead/logo', mediaType: 'image/png' } }),
});

/** The same as a document shows it. */
export const letterheadOf = (
  name: string,
  { lines, logoDescription, logo }: LetterheadState,
): DocumentLetterhead => ({
  name,
  lines,
  ...(logo === null
    ? {}
    : {
        logo: {
          type: 'image/png',
          base64: Buffer.from(logo).toString('base64'),
          description: logoDescription ?? name,
        },
      }),
});
