import type { BasketOrder } from '../basket/basket.js';
import type { RevisionComparison } from '../revisions.js';

/** A cell is text or a number; numbers are written as they are. */
export type Cell = string | number;

const LINE_END = '\r\n';

/** A plain number, which no spreadsheet takes for a formula although it may begin with a minus. */
const isPlainNumber = (text: string): boolean => /^-?\d+(\.\d+)?$/.test(text);

/** Whether a spreadsheet would run a text as a formula, also behind blanks and in full-width form. */
export const runsInSpreadsheet = (text: string): boolean =>
  /^\s*[=+\-@\t\r\n＝＋－＠]/.test(text) && !isPlainNumber(text);

/** What would be run gets an apostrophe in front. */
const neutral = (text: string): string => (runsInSpreadsheet(text) ? `'${text}` : text);

function field(cell: Cell): string {
  const text = typeof cell === 'number' ? String(cell) : neutral(cell);
  return /[",\r\n;]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rows as RFC 4180 writes them: commas, CRLF, quotes doubled, a header line. */
export const csv = (header: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  [header, ...rows].map((row) => row.map(field).join(',')).join(LINE_END) + LINE_END;

export function basketCsv({ lines, orders, total }: BasketOrder): string {
  const header = [
    'supplier',
    'sku',
    'name',
    'packCount',
    'quantityPerPack',
    'quantity',
    'unit',
    'unitPrice',
    'amount',
    'cutFee',
    'currency',
    'hazardous',
    'oversize',
  ];
  const rows = lines.map((line): readonly Cell[] => [
    line.supplier,
    line.sku,
    line.name,
    line.packCount,
    line.quantityPerPack,
    line.quantity,
    line.unit,
    line.unitPrice.amount,
    line.amount.amount,
    line.cutFee.amount,
    line.amount.currency,
    String(line.hazardous),
    String(line.oversize),
  ]);
  const charge = (supplier: string, name: string, amount: string): readonly Cell[] => [
    supplier,
    '',
    name,
    '',
    '',
    '',
    '',
    '',
    amount,
    '',
    total.currency,
    '',
    '',
  ];
  const charges = orders.flatMap((order) => [
    charge(order.supplier, 'delivery', order.delivery.amount),
    charge(order.supplier, 'hazard surcharge', order.hazardSurcharge.amount),
    charge(order.supplier, 'oversize freight', order.oversizeFreight.amount),
    charge(order.supplier, 'total of supplier', order.total.amount),
  ]);
  return csv(header, [...rows, ...charges, charge('', 'total', total.amount)]);
}

export function comparisonCsv({
  lines,
  totals,
  currency,
}: Pick<RevisionComparison, 'lines' | 'totals' | 'currency'>): string {
  const header = [
    'code',
    'title',
    'change',
    'quantityBefore',
    'quantityAfter',
    'unit',
    'before',
    'after',
    'difference',
    'becauseOfQuantity',
    'becauseOfRate',
    'currency',
    'because',
  ];
  const rows = lines.map((line): readonly Cell[] => [
    line.code,
    line.title,
    line.change,
    line.quantityBefore,
    line.quantityAfter,
    line.unit,
    line.before.amount,
    line.after.amount,
    line.difference.amount,
    line.becauseOfQuantity.amount,
    line.becauseOfRate.amount,
    currency,
    line.because.join('; '),
  ]);
  const sums = totals.map((total): readonly Cell[] => [
    total.code,
    total.name,
    'total',
    '',
    '',
    '',
    total.before.amount,
    total.after.amount,
    total.difference.amount,
    '',
    '',
    currency,
    '',
  ]);
  return csv(header, [...rows, ...sums]);
}
