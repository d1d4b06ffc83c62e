import type { Transaction } from '../persistence/database.js';
import { PhotographRow } from './photograph.entity.js';

export type NewPhotograph = Omit<PhotographRow, 'rootId' | 'organisationId' | 'addedAt'>;
/** What is known of a photograph without its picture. */
export type PhotographNote = Omit<PhotographRow, 'picture' | 'rootId' | 'organisationId'>;

/** Photographs of an estimate and its revisions. */
export class PhotographsRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): PhotographsRepository {
    return new PhotographsRepository(tx);
  }

  /** By number, pictures included. */
  of(rootId: string): Promise<PhotographRow[]> {
    return this.tx.find(PhotographRow, { where: { rootId }, order: { number: 'ASC' } });
  }

  notesOf(rootId: string): Promise<PhotographNote[]> {
    return this.tx.find(PhotographRow, {
      select: {
        number: true,
        caption: true,
        xMm: true,
        yMm: true,
        directionDeg: true,
        widthPx: true,
        heightPx: true,
        addedAt: true,
      },
      where: { rootId },
      order: { number: 'ASC' },
    });
  }

  find(rootId: string, number: number): Promise<PhotographRow | null> {
    return this.tx.findOneBy(PhotographRow, { rootId, number });
  }

  /** In the place of an earlier one of the same number; returns the moment at which the database wrote it. */
  async put(rootId: string, one: NewPhotograph): Promise<Date> {
    const [{ addedAt }] = await this.tx.query<readonly Written[]>(
      `${INSERT}
       ON CONFLICT (root_id, number) DO UPDATE SET caption = $3, x_mm = $4, y_mm = $5, direction_deg = $6,
         picture = $7, width_px = $8, height_px = $9, added_at = now()
       RETURNING added_at AS "addedAt"`,
      valuesOf(rootId, one),
    );
    return addedAt;
  }

  /** Leaves an earlier one of the same number alone; returns when it was written, undefined when it was not. */
  async add(rootId: string, one: NewPhotograph): Promise<Date | undefined> {
    const written = await this.tx.query<readonly Written[]>(
      `${INSERT} ON CONFLICT (root_id, number) DO NOTHING RETURNING added_at AS "addedAt"`,
      valuesOf(rootId, one),
    );
    return written.at(0)?.addedAt;
  }

  /** False when there was none. */
  async remove(rootId: string, number: number): Promise<boolean> {
    const [, count] = await this.tx.query<readonly [unknown, number]>(
      'DELETE FROM photograph WHERE root_id = $1 AND number = $2',
      [rootId, number],
    );
    return count === 1;
  }
}

interface Written {
  readonly addedAt: Date;
}

const INSERT = `INSERT INTO photograph
         (root_id, organisation_id, number, caption, x_mm, y_mm, direction_deg, picture, width_px, height_px)
       VALUES ($1, kingplank_organisation(), $2, $3, $4, $5, $6, $7, $8, $9)`;

const valuesOf = (rootId: string, one: NewPhotograph): readonly unknown[] => [
  rootId,
  one.number,
  one.caption,
  one.xMm,
  one.yMm,
  one.directionDeg,
  Buffer.from(one.picture),
  one.widthPx,
  one.heightPx,
];
