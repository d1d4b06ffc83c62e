import { describe, expect, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { readDelimited } from './delimited.js';
import { inventedPack, inventedPacks } from '../../../../test/samples/invented-price-list.js';
import { decimalOf, takeSheet, type SheetChoices } from './supplier-sheet.js';

const list = inventedPacks.slice(0, 2);
const usual: SheetChoices = {
  meanings: ['sku', 'price'],
  decimalMark: '.',
  breaks: 'keep',
  unknown: 'fault',
};
const taken = (text: string, choices: Partial<SheetChoices> = {}) =>
  takeSheet(list, readDelimited(text), { ...usual, ...choices });

describe('cells from a spreadsheet', () => {
  test('are read as a general CSV library reads them, whatever stands in the quotes', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', '7', ' ', ';') });
    const rows = fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(rows, (cells) => {
        const quoted = cells.map((row) => row.map((text) => `"${text.replaceAll('"', '""')}"`).join(','));
        const text = ['a,b,c', ...quoted].join('\r\n');
        expect(readDelimited(text).rows).toEqual(parse(text));
      }),
    );
  });

  test('pasted cells are parted by tabs and may hold commas; a mark that does not close is named', () => {
    expect(readDelimited('Number\tPrice\nA-1\t1,50\n').rows).toEqual([
      ['Number', 'Price'],
      ['A-1', '1,50'],
    ]);
    expect(readDelimited('a,b\n1,"2\n')).toEqual({ rows: [['a', 'b']], unreadableRow: 2 });
    expect(readDelimited('a,b\n1,\n').rows[1]).toEqual(['1', '']);
  });
});

describe('a number of a sheet', () => {
  test.each([
    ['1,234.50', '.', '1234.50'],
    ['1.234,50', ',', '1234.50'],
    ['€ 12.5', '.', '12.5'],
    ['12,50 EUR', ',', '12.50'],
    ["1'200", '.', '1200'],
    ['12,50', '.', undefined],
    ['1,2345', '.', undefined],
    ['-3', '.', undefined],
    ['on request', '.', undefined],
  ] as const)('%s with "%s" is %s', (text, mark, read) => expect(decimalOf(text, mark)).toBe(read));
});

describe("a supplier's sheet taken into a price list", () => {
  test('changes the packs that it names and leaves the others; other digits of the same amount are no change', () => {
    const found = taken('No,Price\nA-1,21.90\n\nA-2,7\n');
    expect([found.changed, found.same, found.faults]).toEqual([['A-1'], ['A-2'], []]);
    expect(found.packs).toEqual([inventedPack('A-1', '21.90', '19.20'), list[1]]);
    expect(found.rowOf.get('A-2')).toBe(4);
    expect(taken('No,Price\nA-1,21.90\n', { breaks: 'drop' }).packs[0].prices).toEqual([
      { fromPacks: 1, price: '21.90' },
    ]);
  });

  test('every fault is told at once, with the row and the heading', () => {
    const { faults } = taken('No,Price\nA-1,dear\n,3\nB-9,4\nA-1,5\n');
    expect(faults).toEqual([
      { code: 'twice', row: 5, text: 'A-1', firstRow: 2 },
      { code: 'notNumber', row: 2, column: 'Price', text: 'dear' },
      { code: 'noNumber', row: 3 },
      { code: 'unknown', row: 4, text: 'B-9' },
    ]);
    expect(taken('No,Price\nB-9,4\n', { unknown: 'leave-out' })).toMatchObject({
      leftOut: ['B-9'],
      faults: [],
      packs: list,
    });
  });

  test('columns that do not say enough are refused', () => {
    const codes = (text: string, meanings: SheetChoices['meanings']) =>
      taken(text, { meanings }).faults.map(({ code }) => code);
    expect(codes('No,Price\nA-1,1\n', [undefined, 'price'])).toEqual(['noNumberColumn']);
    expect(codes('No,Price\nA-1,1\n', ['sku', undefined])).toEqual(['nothingToTake']);
    expect(codes('No,Price\nA-1,1\n', ['sku', 'sku'])).toEqual(['nothingToTake', 'twiceMeant']);
    expect(codes('No,Price\n', ['sku', 'price'])).toEqual(['noRows']);
  });
});
