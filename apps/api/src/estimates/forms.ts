import { Injectable } from '@nestjs/common';
import { stringify } from 'csv-stringify/sync';
import type { EstimateLine } from '#lib/estimate';
import { CSV_TYPE } from '../http/media.js';
import type { EstimateRow } from './estimate.entity.js';

/** An estimate in a form other than JSON. */
export interface Form {
  readonly type: string;
  readonly extension: string;
  readonly write: (row: EstimateRow, history: FormHistory) => Promise<string | Uint8Array>;
}

/** What a printed report says about the estimate's revisions. */
export interface FormHistory {
  readonly revisions: readonly EstimateRow[];
}

/** The forms `GET /v1/estimates/{id}` can give beside JSON, by media type. Add a form here and it is negotiated. */
@Injectable()
export class EstimateForms {
  private readonly forms: readonly Form[] = [linesAsCsv];

  find(type: string): Form | undefined {
    return this.forms.find((form) => form.type === type);
  }
}

const columns = [
  'code', 'section', 'title', 'kind', 'partOrLabour', 'causeClass', 'material', 'unit', 'netQuantity', 'wasteQuantity', 'purchaseQuantity',
  'pricedPer', 'pricedQuantity', 'unitPrice', 'amount', 'currency', 'amountLow', 'amountHigh', 'taxGroup',
] as const;

/** RFC 4180, one line of the estimate a row; texts that a spreadsheet would run as a formula are defused. */
const linesAsCsv: Form = {
  type: CSV_TYPE,
  extension: 'csv',
  write: ({ result }) => Promise.resolve(stringify(result.lines.map(csvLine), { header: true, columns: [...columns], record_delimiter: 'windows', escape_formulas: true })),
};

const csvLine = ({ unitPrice, amount, amountRange, ...line }: EstimateLine) => ({
  ...line,
  material: line.material ?? '',
  unitPrice: unitPrice.amount,
  amount: amount.amount,
  currency: amount.currency,
  amountLow: amountRange.low.amount,
  amountHigh: amountRange.high.amount,
});
