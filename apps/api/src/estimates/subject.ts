import type { Request } from 'express';
import { unitsOf } from '../http/units.js';
import type { ReaderChoice, ReportSubject } from '../report/render.js';
import { compared, type Comparison } from './comparison.js';
import type { EstimateRow } from './estimate.entity.js';
import { moneyOf, storedEstimate, type SummaryRow } from './estimate.mapper.js';

/** An estimate with what came before it, as a report tells it. */
export interface Lineage {
  readonly row: EstimateRow;
  /** The revision before, when there is one. */
  readonly before?: EstimateRow;
  /** All revisions up to this one, first to last. */
  readonly history: readonly SummaryRow[];
  readonly organisationName: string;
}

/** What a report or a drawing is made of. */
export const subjectOf = ({ row, before, history, organisationName }: Lineage, reader: ReaderChoice): ReportSubject => ({
  estimate: row.result,
  record: row.input,
  reader,
  issue: {
    id: row.id,
    madeAt: row.createdAt.toISOString(),
    letterhead: { name: organisationName, lines: [] },
    revision: row.revisionNumber,
    history: history.map((one) => ({
      number: one.revisionNumber, madeAt: one.createdAt.toISOString(), reason: one.revisionReason ?? 'First issue', total: amountText(one.totalAmount, one.currency),
    })),
    changes: before === undefined ? [] : changesIn(comparisonOf(before, row)),
  },
});

const changesIn = ({ figures, sections, total }: Comparison): ReportSubject['issue']['changes'] => [
  ...figures.map(({ name, unit, before, after }) => ({ what: name, before: `${before} ${unit}`, after: `${after} ${unit}` })),
  ...sections.map(({ title, before, after }) => ({ what: title, before: `${before.amount} ${before.currency}`, after: `${after.amount} ${after.currency}` })),
  { what: 'Total', before: `${total.before.amount} ${total.before.currency}`, after: `${total.after.amount} ${total.after.currency}` },
];

export const comparisonOf = (before: EstimateRow, after: EstimateRow): Comparison => compared(sideOf(before), sideOf(after));

const sideOf = (row: EstimateRow) => {
  const { id, createdAt, revision, estimate } = storedEstimate(row);
  return { about: { id, createdAt, revision, edition: row.edition, engineVersion: row.engineVersion }, estimate };
};

function amountText(amount: string, currency: string): string {
  const money = moneyOf(amount, currency);
  return `${money.amount} ${money.currency}`;
}

/** How the caller wants to read it: `Accept-Language` for numbers and dates, `Accept-Units: us` for US customary units. */
export function readerOf(request: Request, paper: ReaderChoice['paper'] | undefined, recordLocale: string | undefined): ReaderChoice {
  const [asked] = request.acceptsLanguages();
  const wanted = asked === undefined || asked === '*' ? recordLocale ?? 'en-GB' : asked;
  const units = unitsOf(request);
  return { locale: isLocale(wanted) ? wanted : 'en-GB', units, paper: paper ?? (units === 'us' ? 'letter' : 'a4') };
}

function isLocale(tag: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag).length > 0;
  } catch {
    return false;
  }
}
