import type { PackInput } from 'kingplank-sdk';
import type { Delimited } from './delimited.js';

/** What a column of a supplier's sheet can mean. */
export const targets = ['sku', 'name', 'supplier', 'price', 'stock', 'massKg'] as const;
export type Target = (typeof targets)[number];

export interface SheetChoices {
  /** What each column means; undefined is left out. */
  readonly meanings: readonly (Target | undefined)[];
  readonly decimalMark: '.' | ',';
  /** What becomes of prices from more packs on where the price of one pack is another. */
  readonly breaks: 'keep' | 'drop';
  /** What becomes of rows whose number is not in the list. */
  readonly unknown: 'fault' | 'leave-out';
}

export type SheetFaultCode =
  | 'noNumberColumn'
  | 'twiceMeant'
  | 'nothingToTake'
  | 'noNumber'
  | 'twice'
  | 'unknown'
  | 'notNumber'
  | 'quote'
  | 'noRows';

export interface SheetFault {
  readonly code: SheetFaultCode;
  /** As a spreadsheet counts them: the headings are row 1. */
  readonly row?: number;
  /** The heading of the column. */
  readonly column?: string;
  readonly text?: string;
  /** Of a number that stands twice: the row of the first. */
  readonly firstRow?: number;
}

/** What a price list becomes by a sheet. With faults nothing of it is taken. */
export interface TakenSheet {
  readonly packs: readonly PackInput[];
  readonly changed: readonly string[];
  readonly same: readonly string[];
  readonly leftOut: readonly string[];
  readonly faults: readonly SheetFault[];
  /** The row that each number came from. */
  readonly rowOf: ReadonlyMap<string, number>;
}

/** Packs of the list with what the sheet says of them, matched by their number; every fault with its row and column. */
export function takeSheet(packs: readonly PackInput[], table: Delimited, choices: SheetChoices): TakenSheet {
  const general = [...tableFaults(table), ...meaningFaults(table, choices.meanings)];
  const rows = general.length > 0 ? [] : readRows(table, choices);
  const known = new Map(packs.map((pack) => [pack.sku, pack]));
  const outcomes = rows.map((row) => outcomeOf(row, known.get(row.sku), choices));
  const named = (kind: Outcome['kind']) => outcomes.filter((one) => one.kind === kind).map(({ sku }) => sku);
  const given = new Map(outcomes.map(({ sku, pack }) => [sku, pack]));
  return {
    packs: packs.map((pack) => given.get(pack.sku) ?? pack),
    changed: named('changed'),
    same: named('same'),
    leftOut: named('left-out'),
    faults: [...general, ...repeated(rows), ...outcomes.flatMap(({ faults }) => faults)],
    rowOf: new Map(rows.map(({ sku, row }) => [sku, row])),
  };
}

const tableFaults = ({ rows, unreadableRow }: Delimited): readonly SheetFault[] => {
  if (unreadableRow !== undefined) return [{ code: 'quote', row: unreadableRow }];
  return rows.length < 2 ? [{ code: 'noRows' }] : [];
};

function meaningFaults({ rows: [heads = []] }: Delimited, meanings: SheetChoices['meanings']) {
  const said = meanings.filter((one) => one !== undefined);
  const faults: SheetFault[] = said.includes('sku') ? [] : [{ code: 'noNumberColumn' }];
  if (said.every((one) => one === 'sku')) faults.push({ code: 'nothingToTake' });
  for (const [at, one] of meanings.entries())
    if (one !== undefined && meanings.indexOf(one) < at)
      faults.push({ code: 'twiceMeant', column: heads[at], text: one });
  return faults;
}

interface ReadRow {
  readonly row: number;
  readonly sku: string;
  /** Cells that say something, with the heading they stand under. */
  readonly cells: readonly { readonly target: Target; readonly text: string; readonly column: string }[];
}

/** Rows without any text are passed over, but counted. */
const readRows = ({ rows: [heads, ...rows] }: Delimited, { meanings }: SheetChoices): readonly ReadRow[] =>
  rows.flatMap((texts, at) => {
    const cells = meanings.flatMap((target, column) => {
      const text = (texts[column] ?? '').trim();
      return target === undefined || text === '' ? [] : [{ target, text, column: heads[column] }];
    });
    const sku = cells.find(({ target }) => target === 'sku')?.text ?? '';
    return texts.every((text) => text.trim() === '') ? [] : [{ row: at + 2, sku, cells }];
  });

function repeated(rows: readonly ReadRow[]): readonly SheetFault[] {
  const first = new Map<string, number>();
  return rows.flatMap(({ sku, row }): readonly SheetFault[] => {
    const firstRow = first.get(sku);
    if (firstRow === undefined) first.set(sku, row);
    return firstRow === undefined || sku === '' ? [] : [{ code: 'twice', row, text: sku, firstRow }];
  });
}

interface Outcome {
  readonly sku: string;
  readonly kind: 'changed' | 'same' | 'left-out' | 'faulty';
  readonly pack?: PackInput;
  readonly faults: readonly SheetFault[];
}

function outcomeOf(row: ReadRow, known: PackInput | undefined, choices: SheetChoices): Outcome {
  const { sku } = row;
  const faulty = (faults: readonly SheetFault[]): Outcome => ({ sku, kind: 'faulty', faults });
  if (sku === '') return faulty([{ code: 'noNumber', row: row.row }]);
  if (known === undefined)
    return choices.unknown === 'leave-out'
      ? { sku, kind: 'left-out', faults: [] }
      : faulty([{ code: 'unknown', row: row.row, text: sku }]);
  const faults = numberFaults(row, choices);
  if (faults.length > 0) return faulty(faults);
  const pack = packWith(known, row, choices);
  const isSame = JSON.stringify(pack) === JSON.stringify(known);
  return { sku, kind: isSame ? 'same' : 'changed', pack, faults: [] };
}

const numbers: readonly Target[] = ['price', 'stock', 'massKg'];

const numberFaults = ({ row, cells }: ReadRow, { decimalMark }: SheetChoices): readonly SheetFault[] =>
  cells
    .filter(({ target, text }) => numbers.includes(target) && decimalOf(text, decimalMark) === undefined)
    .map(({ column, text }) => ({ code: 'notNumber', row, column, text }));

/** A number as a sheet writes it, with a sign of money and with thousands in groups, as plain decimal text. */
export function decimalOf(text: string, mark: SheetChoices['decimalMark']): string | undefined {
  const bare = text.replace(/^[^\d.,-]+|[^\d.,]+$/g, '').replace(/[\s'\u00A0\u2009\u202F]/g, '');
  const group = mark === '.' ? ',' : '\\.';
  const form = new RegExp(`^(?:\\d+|\\d{1,3}(?:${group}\\d{3})+)(?:\\${mark}\\d{1,6})?$`);
  if (!form.test(bare)) return undefined;
  return bare.replace(new RegExp(group, 'g'), '').replace(',', '.');
}

/** The pack with what the row says; what it does not say stays. */
function packWith(known: PackInput, { cells }: ReadRow, { decimalMark, breaks }: SheetChoices): PackInput {
  const said = Object.fromEntries(cells.map(({ target, text }) => [target, text]));
  const decimal = (text: string | undefined): string | undefined =>
    text === undefined ? undefined : decimalOf(text, decimalMark);
  const [price, stock, massKg] = [said.price, said.stock, said.massKg].map(decimal);
  return {
    ...known,
    name: said.name ?? known.name,
    supplier: said.supplier ?? known.supplier,
    prices: price === undefined ? known.prices : pricesFrom(price, known, breaks),
    massKg: massKg === undefined ? known.massKg : Number(massKg),
    ...(stock === undefined ? {} : { stock: Number(stock) }),
  };
}

/** The same amount in other digits ("20.4" for "20.40") is no change. */
function pricesFrom(
  price: string,
  { prices }: PackInput,
  breaks: SheetChoices['breaks'],
): PackInput['prices'] {
  const [first, ...more] = prices;
  const kept = Number(first.price) === Number(price) ? first : { ...first, price };
  return breaks === 'keep' ? [kept, ...more] : [kept];
}
