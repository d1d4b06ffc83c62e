import { csv } from '#lib/costing';
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

/** The priced lines for a spreadsheet, numbers with a point as in the JSON. */
export const linesCsv = ({ lines }: Estimate): string =>
  csv(
    columns.map(([name]) => name),
    lines.map((line) => columns.map(([, value]) => value(line))),
  );
