import type { Transaction } from '../persistence/database.js';
import { LetterheadRow } from './letterhead.entity.js';

export type LetterheadContent = Pick<LetterheadRow, 'lines' | 'logoDescription' | 'logo'>;
export type LetterheadState = LetterheadContent & Pick<LetterheadRow, 'version'>;

/** Every organisation has a letterhead; until somebody writes it, it is this one. */
const blank: LetterheadState = { lines: [], logoDescription: null, logo: null, version: 0 };

/** The letterhead of the organisation of the transaction. */
export class LetterheadRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): LetterheadRepository {
    return new LetterheadRepository(tx);
  }

  async get(organisationId: string): Promise<LetterheadState> {
    return (await this.tx.findOneBy(LetterheadRow, { organisationId })) ?? blank;
  }

  /** False when the version is no longer the one that was read. */
  async write(
    organisationId: string,
    version: number,
    { lines, logoDescription, logo }: LetterheadContent,
  ): Promise<boolean> {
    const content = [[...lines], logoDescription, logo === null ? null : Buffer.from(logo)];
    const written =
      version === 0
        ? await this.tx.query<readonly unknown[]>(
            `INSERT INTO letterhead (organisation_id, lines, logo_description, logo) VALUES ($1, $2, $3, $4)
         ON CONFLICT (organisation_id) DO NOTHING RETURNING version`,
            [organisationId, ...content],
          )
        : (
            await this.tx.query<readonly [readonly unknown[], number]>(
              `UPDATE letterhead SET lines = $3, logo_description = $4, logo = $5, version = version + 1, updated_at = now()
         WHERE organisation_id = $1 AND version = $2 RETURNING version`,
              [organisationId, version, ...content],
            )
          )[0];
    return written.length === 1;
  }
}
