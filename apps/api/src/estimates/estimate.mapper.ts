import { Defect } from '#lib/kernel';
import { findCurrency, type MoneyJson } from '#lib/money';
import type { DefectRecord } from '#lib/estimate';
import type { ClientSecret } from '../access/holders.js';
import { rounded } from '../edge/precision.js';
import type { EstimateRow } from './estimate.entity.js';
import type { WrittenEstimate } from './estimating.js';
import type { EstimateSummary, RevisionMark, StoredEstimate } from './stored-estimate.js';

/** What the service knows beside the estimate itself. */
export interface Circumstances {
  readonly id: string;
  readonly organisationId: string;
  readonly createdByKeyId: string;
  readonly revision: RevisionMark;
}

export type SummaryRow = Omit<EstimateRow, 'input' | 'result' | 'derivations'>;

/** A new row; the documents are the very texts that the engine wrote. */
export interface NewEstimateRow extends Omit<SummaryRow, 'createdAt'> {
  readonly input: DefectRecord;
  readonly resultJson: string;
  /** Null where they are worked out again when asked for. */
  readonly derivations: Uint8Array | null;
}

export function rowOf(
  { id, organisationId, createdByKeyId, revision }: Circumstances,
  record: DefectRecord,
  made: WrittenEstimate,
): NewEstimateRow {
  const { totals, provenance, summary } = made;
  return {
    id,
    organisationId,
    createdByKeyId,
    title: made.title,
    reference: made.reference ?? null,
    rootId: revision.rootId,
    revisionNumber: revision.number,
    revisionReason: revision.reason ?? null,
    engineVersion: provenance.engineVersion,
    edition: provenance.edition,
    catalogueHash: provenance.catalogueHash,
    inputHash: made.inputHash,
    currency: totals.currency,
    netAmount: totals.net.amount,
    taxAmount: totals.tax.amount,
    totalAmount: totals.total.amount,
    totalP10Amount: totals.range.p10.amount,
    totalP50Amount: totals.range.p50.amount,
    totalP90Amount: totals.range.p90.amount,
    labourH: summary.labourH.p50,
    verdict: summary.verdict,
    input: record,
    resultJson: made.resultJson,
    derivations: made.derivations,
  };
}

/** A `StoredEstimate` as JSON text, around the document as it was written; a page is given its secret with it. */
export function storedJson(row: SummaryRow, resultJson: string, secret?: ClientSecret): string {
  const frame = JSON.stringify({ ...frameOf(row), ...secret });
  return `${frame.slice(0, -1)},"estimate":${resultJson}}`;
}

export const storedEstimate = (row: EstimateRow): StoredEstimate => ({
  ...frameOf(row),
  estimate: row.result,
});

const frameOf = (row: SummaryRow): Omit<StoredEstimate, 'estimate'> => ({
  id: row.id,
  createdAt: row.createdAt.toISOString(),
  revision: revisionOf(row),
  inputHash: row.inputHash,
});

export const summaryOfRow = (row: SummaryRow): EstimateSummary => ({
  id: row.id,
  createdAt: row.createdAt.toISOString(),
  title: row.title,
  ...(row.reference === null ? {} : { reference: row.reference }),
  revision: revisionOf(row),
  total: moneyOf(row.totalAmount, row.currency),
  totalP10: moneyOf(row.totalP10Amount, row.currency),
  totalP90: moneyOf(row.totalP90Amount, row.currency),
  labourH: rounded(row.labourH, 'h'),
  verdict: row.verdict,
  engineVersion: row.engineVersion,
  edition: row.edition,
});

const revisionOf = (row: SummaryRow): RevisionMark => ({
  rootId: row.rootId,
  number: row.revisionNumber,
  ...(row.revisionReason === null ? {} : { reason: row.revisionReason }),
});

/** `numeric(20, 4)` shows four decimals; the currency has as many as it has. */
export function moneyOf(amount: string, code: string): MoneyJson {
  const currency = findCurrency(code);
  if (currency === undefined) throw new Defect(`A stored amount is in ${code}, which is not a currency`);
  const [whole, part = ''] = amount.split('.');
  const { minorDigits } = currency;
  return {
    amount: minorDigits === 0 ? whole : `${whole}.${part.padEnd(minorDigits, '0').slice(0, minorDigits)}`,
    currency: code,
  };
}
