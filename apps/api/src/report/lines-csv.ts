import { stringify } from 'csv-stringify/sync';
import type { Estimate, EstimateLine } from '#lib/estimate';

const columns: readonly (readonly [string, (line: EstimateLine) => string | number])[] = [
  ['code', ({ code }) => code],
  ['section', ({ section }) => section],
  ['title', ({ title }) => title],
  ['kind', ({ kind }) => kind],
  ['partOrLabour', ({ partOrLabour }) => partOrLabour],
  ['causeClass', ({ causeClass }) => causeClass],
  ['material', ({ material }) => material ?? ''],
  ['unit', ({ unit }) => unit],
  ['netQuantity', ({ netQuantity }) => netQuantity],
  ['wasteQuantity', ({ wasteQuantity }) => wasteQuantity],
  ['purchaseQuantity', ({ purchaseQuantity }) => purchaseQuantity],
  ['pricedQuantity', ({ pricedQuantity }) => pricedQuantity],
  ['unitPrice', ({ unitPrice }) => unitPrice.amount],
  ['amount', ({ amount }) => amount.amount],
  ['amountLow', ({ amountRange }) => amountRange.low.amount],
  ['amountHigh', ({ amountRange }) => amountRange.high.amount],
  ['currency', ({ amount }) => amount.currency],
  ['depreciable', ({ depreciable }) => String(depreciable)],
  ['taxGroup', ({ taxGroup }) => taxGroup],
  ['packs', ({ packs }) => packs.map(({ sku, count }) => `${count} x ${sku}`).join('; ')],
];

/**
 * The priced lines for a spreadsheet: RFC 4180, UTF-8, numbers with a point as in the JSON.
 * Text that a spreadsheet would run as a formula is marked as text by a leading apostrophe.
 */
export const linesCsv = ({ lines }: Estimate): string =>
  stringify(lines.map((line) => columns.map(([, value]) => inert(value(line)))), {
    header: true, columns: columns.map(([name]) => ({ key: name, header: name })), record_delimiter: 'windows',
  });

/** Numbers stay numbers, negative ones too. */
const inert = (value: string | number): string =>
  (typeof value === 'string' && /^[=+\-@\t\r]/.test(value) && !/^-?\d+(\.\d+)?$/.test(value) ? `'${value}` : String(value));
