import type { Request } from 'express';
import { annexNames, type Letterhead, type Photograph } from '#lib/drawings';
import { statedUnitsOf } from '../edge/units.js';
import type { ReaderChoice, ReportSubject } from '../documents/render.js';
import type { ChangeOrder } from '#lib/costing';
import { comparisonOf, figureChanges, type FigureChange } from './comparison.js';
import type { EstimateRow } from './estimate.entity.js';
import { moneyOf, type SummaryRow } from './estimate.mapper.js';

/** An estimate with what came before it, as a report tells it. */
export interface Lineage {
  readonly row: EstimateRow;
  /** The revision before, when there is one. */
  readonly before?: EstimateRow;
  /** All revisions up to this one, first to last. */
  readonly history: readonly SummaryRow[];
  readonly letterhead: Letterhead;
  readonly photographs: readonly Photograph[];
  /** Changes with every photograph. */
  readonly photographsVersion: string;
  /** Changes with everything that the letterhead shows. */
  readonly issuerVersion: string;
}

/** What a report or a drawing is made of. */
export const subjectOf = (
  { row, before, history, letterhead, photographs }: Lineage,
  reader: ReaderChoice,
): ReportSubject => ({
  estimate: row.result,
  record: row.input,
  reader,
  issue: {
    id: row.id,
    madeAt: row.createdAt.toISOString(),
    letterhead,
    photographs,
    revision: row.revisionNumber,
    history: history.map((one) => ({
      number: one.revisionNumber,
      madeAt: one.createdAt.toISOString(),
      total: moneyOf(one.totalAmount, one.currency),
      ...(one.revisionReason === null ? {} : { reason: one.revisionReason }),
    })),
    changes: before === undefined ? [] : changesBetween(before, row),
  },
});

/** Sums are compared in one currency only; figures always. */
function changesBetween(before: EstimateRow, after: EstimateRow): ReportSubject['issue']['changes'] {
  const comparison = comparisonOf(before, after);
  if (!comparison.ok) return figureChanges(before.result, after.result).map(figureChange);
  const changed = comparison.value.totals.filter(({ difference }) => Number(difference.amount) !== 0);
  return [
    ...comparison.value.figures.map(figureChange),
    ...changed.map(({ name, before: then, after: now }) => ({
      kind: 'sum' as const,
      what: name,
      before: then,
      after: now,
    })),
  ];
}

const figureChange = ({ name, unit, before, after }: FigureChange) => ({
  kind: 'figure' as const,
  what: name,
  unit,
  before,
  after,
});

/** The same for a change order: the letterhead and the issue of the revision, and what is to be signed. */
export const changeOrderSubject = (
  lineage: Lineage,
  reader: ReaderChoice,
  order: ChangeOrder,
): ReportSubject => {
  const subject = subjectOf(lineage, reader);
  return { ...subject, issue: { ...subject.issue, changeOrder: order } };
};

/** How the caller wants to read it: the language decides numbers, dates, units and paper, until `Accept-Units` or the query say otherwise. */
export function readerOf(request: Request, wish: ReaderWish, recordLocale: string | undefined): ReaderChoice {
  const [asked] = request.acceptsLanguages();
  const wanted = asked === undefined || asked === '*' ? (recordLocale ?? 'en-GB') : asked;
  const locale = isLocale(wanted) ? wanted : 'en-GB';
  const units = statedUnitsOf(request) ?? (isAmerican(locale) ? 'us' : 'si');
  return {
    locale,
    units,
    paper: wish.paper ?? (units === 'us' ? 'letter' : 'a4'),
    purpose: wish.purpose ?? 'condition',
    ...annexesIn(wish.annexes),
  };
}

/** What a caller may ask of a document besides its language. */
interface ReaderWish {
  readonly paper?: ReaderChoice['paper'];
  readonly purpose?: ReaderChoice['purpose'];
  readonly annexes?: string;
}

/** In the order of the report, however they were asked for. */
function annexesIn(said: string | undefined): Pick<ReaderChoice, 'annexes'> {
  if (said === undefined) return {};
  if (said === 'all') return { annexes: annexNames };
  const wanted = said.split(',');
  return { annexes: annexNames.filter((name) => wanted.includes(name)) };
}

const isAmerican = (locale: string): boolean => new Intl.Locale(locale).region === 'US';

function isLocale(tag: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag).length > 0;
  } catch {
    return false;
  }
}
