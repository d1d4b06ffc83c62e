import { parse } from 'csv-parse/sync';
import type { Pack, PriceList } from '#lib/catalogue';
import { nearest, pointer, problem, type Problem } from '#lib/kernel';
import { HttpProblem, summaryOf, type LocatedProblem } from '../edge/problems.js';

/** What a column of a supplier's sheet can say of a pack. */
export const columnMeanings = ['sku', 'name', 'supplier', 'price', 'stock', 'massKg'] as const;
export type ColumnMeaning = (typeof columnMeanings)[number];

/** A supplier's own table, with what its columns mean. */
export interface SupplierSheet {
  /** Cells parted by tabs, semicolons or commas, whichever the headings have most of. */
  readonly cells: string;
  readonly columns: readonly { readonly heading: string; readonly means: ColumnMeaning }[];
  readonly decimalMark: '.' | ',';
  /** What becomes of prices from more packs on. */
  readonly breaks: 'keep' | 'drop';
  /** What becomes of rows whose SKU is not in the list. */
  readonly unknownSkus: 'refuse' | 'leave-out';
}

/** A price list with what a sheet says, and which SKUs that concerned. */
export interface SheetOutcome {
  readonly packs: readonly Pack[];
  /** How many packs of the list the sheet names. */
  readonly namedCount: number;
  readonly leftOut: readonly string[];
}

/** Packs matched by their SKU, with what the sheet says of them. @throws {HttpProblem} unprocessable, with every fault by row and column */
export function sheetTaken(list: PriceList, sheet: SupplierSheet): SheetOutcome {
  const table = tableOf(sheet.cells);
  refuseAny(columnFaults(table, sheet));
  const rows = rowsOf(table, sheet);
  const known = new Map(list.packs.map((pack) => [pack.sku, pack]));
  refuseAny(rows.flatMap((row) => rowFaults(row, { known, rows, sheet })));
  const said = new Map(rows.map((row) => [row.sku, row]));
  const leftOut = rows.map(({ sku }) => sku).filter((sku) => !known.has(sku));
  return {
    packs: list.packs.map((pack) => packWith(pack, said.get(pack.sku), sheet)),
    namedCount: rows.length - leftOut.length,
    leftOut,
  };
}

type Table = readonly (readonly string[])[];

function tableOf(cells: string): Table {
  try {
    return parse(cells, {
      bom: true,
      delimiter: delimiterOf(cells),
      relax_column_count: true,
      relax_quotes: false,
    });
  } catch {
    throw refusal([problem('not-in-form', '/cells', { value: 'the table', form: QUOTED })]);
  }
}

const QUOTED = 'rows of cells in which every quotation mark is closed and doubled inside';
const delimiters = ['\t', ';', ','] as const;

function delimiterOf(cells: string): string {
  const [headings] = cells.split(/\r?\n/, 1);
  const counts = delimiters.map((mark) => headings.split(mark).length);
  return delimiters[counts.indexOf(Math.max(...counts))];
}

function columnFaults([headings = [], ...rows]: Table, { columns }: SupplierSheet): readonly Problem[] {
  const meanings = columns.map(({ means }) => means);
  const heads = headings.map((heading) => heading.trim());
  return [
    ...(meanings.includes('sku')
      ? []
      : [problem('missing', '/columns', { expected: 'the column that means sku' })]),
    ...(meanings.some((means) => means !== 'sku')
      ? []
      : [
          problem('missing', '/columns', {
            expected: 'a column to take over, such as the one that means price',
          }),
        ]),
    ...(rows.length > 0 ? [] : [problem('too-few', '/cells', { count: rows.length, least: 1 })]),
    ...columns.flatMap(({ heading, means }, index) => [
      ...(heads.includes(heading)
        ? []
        : [
            problem('not-one-of', pointer('/columns', index, 'heading'), {
              value: JSON.stringify(heading),
              choices: heads.map((head) => JSON.stringify(head)).join(', '),
            }),
          ]),
      ...(meanings.indexOf(means) === index
        ? []
        : [problem('duplicate', pointer('/columns', index, 'means'), { value: means })]),
    ]),
  ];
}

interface Cell {
  readonly text: string;
  readonly column: string;
}

interface Row {
  /** As a spreadsheet counts them: the headings are row 1. */
  readonly row: number;
  readonly sku: string;
  readonly said: Readonly<Partial<Record<ColumnMeaning, Cell>>>;
}

/** Empty rows are passed over, but counted; an empty cell says nothing. */
function rowsOf([headings, ...rows]: Table, { columns }: SupplierSheet): readonly Row[] {
  const heads = headings.map((heading) => heading.trim());
  return rows.flatMap((texts, at) => {
    const said: Row['said'] = Object.fromEntries(
      columns.flatMap(({ heading, means }) => {
        const text = (texts[heads.indexOf(heading)] ?? '').trim();
        return text === '' ? [] : [[means, { text, column: heading }] as const];
      }),
    );
    return texts.every((text) => text.trim() === '')
      ? []
      : [{ row: at + 2, sku: said.sku?.text ?? '', said }];
  });
}

interface Context {
  readonly known: ReadonlyMap<string, Pack>;
  readonly rows: readonly Row[];
  readonly sheet: SupplierSheet;
}

function rowFaults(row: Row, { known, rows, sheet }: Context): readonly LocatedProblem[] {
  const column = sheet.columns.find(({ means }) => means === 'sku')?.heading ?? '';
  const at = (found: Problem, in_ = column): LocatedProblem => ({ ...found, row: row.row, column: in_ });
  const { sku } = row;
  if (sku === '') return [at(problem('missing', '/cells', { expected: 'the SKU of a pack' }))];
  const first = rows.find((other) => other.sku === sku);
  if (first !== row) return [at(problem('duplicate', '/cells', { value: sku }))];
  if (!known.has(sku)) return sheet.unknownSkus === 'refuse' ? [at(unknownSku(sku, [...known.keys()]))] : [];
  return numbers.flatMap((means) => {
    const cell = row.said[means];
    return cell === undefined || decimalOf(cell.text, sheet.decimalMark) !== undefined
      ? []
      : [at(notNumber(cell.text, sheet.decimalMark), cell.column)];
  });
}

const numbers = ['price', 'stock', 'massKg'] as const;

const unknownSku = (sku: string, known: readonly string[]): Problem =>
  problem('unknown-code', '/cells', {
    value: sku,
    kind: 'SKU of this price list',
    known: nearest(sku, known).join(', '),
  });

const notNumber = (text: string, mark: '.' | ','): Problem =>
  problem('not-in-form', '/cells', {
    value: JSON.stringify(text.slice(0, 60)),
    form: `a number of 0 or more with a decimal ${mark === '.' ? 'point' : 'comma'}`,
  });

/** A number as a sheet writes it, with a sign of money and thousands in groups, as plain decimal text. */
export function decimalOf(text: string, mark: '.' | ','): string | undefined {
  const bare = text.replace(/^[^\d.,-]+|[^\d.,]+$/g, '').replace(/[\s'\u00A0\u2009\u202F]/g, '');
  const group = mark === '.' ? ',' : '\\.';
  const form = new RegExp(`^(?:\\d+|\\d{1,3}(?:${group}\\d{3})+)(?:\\${mark}\\d{1,6})?$`);
  return form.test(bare) ? bare.replace(new RegExp(group, 'g'), '').replace(',', '.') : undefined;
}

/** What the row does not say stays. */
function packWith(pack: Pack, row: Row | undefined, { decimalMark, breaks }: SupplierSheet): Pack {
  if (row === undefined) return pack;
  const { name, supplier } = row.said;
  const [price, stock, massKg] = numbers.map((means) => decimalOf(row.said[means]?.text ?? '', decimalMark));
  return {
    ...pack,
    name: name?.text ?? pack.name,
    supplier: supplier?.text ?? pack.supplier,
    prices: price === undefined ? pack.prices : pricesWith(price, pack, breaks),
    massKg: massKg === undefined ? pack.massKg : Number(massKg),
    ...(stock === undefined ? {} : { stock: Number(stock) }),
  };
}

/** The same amount in other digits is no change. */
function pricesWith(price: string, { prices }: Pack, breaks: SupplierSheet['breaks']): Pack['prices'] {
  const [first, ...more] = prices;
  const kept = Number(first.price) === Number(price) ? first : { ...first, price };
  return breaks === 'keep' ? [kept, ...more] : [kept];
}

function refuseAny(problems: readonly LocatedProblem[]): void {
  if (problems.length > 0) throw refusal(problems);
}

const refusal = (problems: readonly LocatedProblem[]): HttpProblem =>
  new HttpProblem('unprocessable', { detail: summaryOf(problems), problems });
