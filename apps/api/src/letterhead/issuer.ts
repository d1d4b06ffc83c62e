import type { Letterhead } from '#lib/drawings';
import { organisationIn } from '../access/organisation.js';
import type { Transaction } from '../persistence/database.js';
import { letterheadOf } from './letterhead-view.js';
import { LetterheadRepository } from './letterhead.repository.js';

/** Who issues a document, as it is printed. */
export interface Issuer {
  readonly letterhead: Letterhead;
  /** Changes with everything that the letterhead shows. */
  readonly issuerVersion: string;
}

/** The issuer of the documents of an organisation, in the transaction of whoever prints one. */
export async function issuerIn(tx: Transaction, organisationId: string): Promise<Issuer> {
  const organisation = await organisationIn(tx, organisationId);
  const letterhead = await LetterheadRepository.in(tx).get(organisationId);
  return {
    letterhead: letterheadOf(organisation.name, letterhead),
    issuerVersion: `organisation ${organisation.version}, letterhead ${letterhead.version}`,
  };
}
