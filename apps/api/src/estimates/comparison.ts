import {
  changeOrder,
  compareRevisions,
  reMeasured,
  type ChangeOrder,
  type LineChange,
  type ReMeasured,
  type RevisionComparison,
  type TotalChange,
} from '#lib/costing';
import { pricedDocumentOf, type Estimate } from '#lib/estimate';
import { mapValue, type Outcome } from '#lib/kernel';
import type { MoneyJson } from '#lib/money';
import type { EstimateRow } from './estimate.entity.js';
import { storedEstimate } from './estimate.mapper.js';
import type { RevisionMark } from './stored-estimate.js';

/** What changed from one estimate to another, line by line. */
export interface Comparison {
  /** The earlier of the two. */
  readonly before: ComparedEstimate;
  /** The later of the two. */
  readonly after: ComparedEstimate;
  /** Changed figures of the scope, such as the opened area. */
  readonly figures: readonly FigureChange[];
  /** Currency of all differences (ISO 4217). */
  readonly currency: string;
  /** Changed lines: by how much, because of how much more of it and because of its rate. */
  readonly lines: readonly LineChange[];
  /** Changed sections, then every step from the sum of the lines to the sum with tax. */
  readonly totals: readonly TotalChange[];
  /** Later net sum less the earlier, without tax. */
  readonly difference: MoneyJson;
  /** Of the amount without tax before; absent when that was nothing. */
  readonly shareOfBefore?: number;
}

/** One of two estimates that are compared. */
export interface ComparedEstimate {
  /** Id of the estimate that is compared. */
  readonly id: string;
  /** When it was made (RFC 3339). */
  readonly createdAt: string;
  /** Which revision of the job it is. */
  readonly revision: RevisionMark;
  /** Edition of the catalogue it was priced with. */
  readonly edition: string;
  /** Version of the program that made it. */
  readonly engineVersion: string;
}

/** A figure of the summary that differs between two estimates. */
export interface FigureChange {
  /** Which figure of the summary changed. */
  readonly code: string;
  /** Name of that figure. */
  readonly name: string;
  /** Unit of both values. */
  readonly unit: string;
  /** The figure in the earlier estimate. */
  readonly before: number;
  /** The figure in the later estimate. */
  readonly after: number;
}

/** Refused where the two are in different currencies, because nothing is converted. */
export const comparisonOf = (before: EstimateRow, after: EstimateRow): Outcome<Comparison> =>
  mapValue(pricedComparison(before, after), ({ lines, totals, ...sums }) => ({
    before: about(before),
    after: about(after),
    figures: figureChanges(before.result, after.result),
    ...sums,
    lines: lines.filter(({ change }) => change !== 'same'),
    totals: totals.filter(
      ({ code, difference }) => Number(difference.amount) !== 0 || !isSection(code, before, after),
    ),
  }));

/** The change order of a revision: against the revision before it, with the sum that was agreed first. */
export const changeOrderOf = ({ first, before, after }: Revised): Outcome<ChangeOrder> =>
  mapValue(pricedComparison(before, after), (comparison) =>
    changeOrder(comparison, {
      number: after.revisionNumber,
      reference: after.reference ?? after.title,
      reason: after.revisionReason ?? '',
      date: after.createdAt.toISOString().slice(0, 10),
      extraDays: Math.round(after.result.summary.workingDays.p50 - before.result.summary.workingDays.p50),
      firstSum: pricedDocumentOf(first.result).net,
      ...byRatesOf(first.result, after.result),
    }),
  );

/** The offer of the first issue says by which rates what is found is charged or credited. */
function byRatesOf(first: Estimate, after: Estimate): { readonly byRates?: ReMeasured } {
  if (first.totals.currency !== after.totals.currency) return {};
  const { unitRates, authorisation } = first.totals.offer;
  return {
    byRates: reMeasured({
      agreed: unitRates,
      found: after.totals.offer.unitRates,
      provisional: pricedDocumentOf(first).provisional,
      authorisedH: authorisation.labourH,
      expectedH: after.summary.labourMeanH,
    }),
  };
}

/** A revision, the one before it, and the first of them all. */
export interface Revised {
  readonly first: EstimateRow;
  readonly before: EstimateRow;
  readonly after: EstimateRow;
}

const pricedComparison = (before: EstimateRow, after: EstimateRow): Outcome<RevisionComparison> =>
  compareRevisions(
    pricedDocumentOf(before.result),
    pricedDocumentOf(after.result),
    after.revisionReason === null ? {} : { overall: after.revisionReason },
  );

function about(row: EstimateRow): ComparedEstimate {
  const { id, createdAt, revision } = storedEstimate(row);
  return { id, createdAt, revision, edition: row.edition, engineVersion: row.engineVersion };
}

const isSection = (code: string, ...rows: readonly EstimateRow[]): boolean =>
  rows.some(({ result }) => result.sections.some((section) => section.code === code));

const figures: readonly {
  readonly code: string;
  readonly name: string;
  readonly unit: string;
  readonly of: (estimate: Estimate) => number;
}[] = [
  {
    code: 'damagedAreaM2',
    name: 'Damaged area, likely',
    unit: 'm2',
    of: ({ scope }) => scope.damagedAreaM2.p50,
  },
  { code: 'openedAreaM2', name: 'Opened area', unit: 'm2', of: ({ summary }) => summary.openedAreaM2 },
  { code: 'cutLengthM', name: 'Length of cut', unit: 'm', of: ({ summary }) => summary.cutLengthM },
  { code: 'coreSheets', name: 'Sheets of core', unit: 'each', of: ({ summary }) => summary.coreSheets },
  { code: 'mixedResinL', name: 'Mixed resin', unit: 'l', of: ({ summary }) => summary.mixedResinL },
  { code: 'labourH', name: 'Labour, likely', unit: 'h', of: ({ summary }) => summary.labourH.p50 },
  {
    code: 'workingDays',
    name: 'Working days, likely',
    unit: 'd',
    of: ({ summary }) => summary.workingDays.p50,
  },
];

export const figureChanges = (before: Estimate, after: Estimate): readonly FigureChange[] =>
  figures
    .map(({ code, name, unit, of }) => ({ code, name, unit, before: of(before), after: of(after) }))
    .filter((change) => change.before !== change.after);
