import type { Letterhead as DocumentLetterhead } from '#lib/drawings';
import type { LetterheadState } from './letterhead.repository.js';

/** What stands at the head of reports, job packs and change orders. */
export interface OrganisationLetterhead {
  /** The name of the organisation. */
  readonly name: string;
  readonly lines: readonly string[];
  readonly logoDescription?: string;
  readonly logo?: LogoLink;
}

export interface LogoLink {
  readonly href: string;
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
