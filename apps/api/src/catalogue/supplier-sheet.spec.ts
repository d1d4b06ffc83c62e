import { describe, expect, test } from '@jest/globals';
import type { PriceList } from '#lib/catalogue';
import { sheetTaken, type SupplierSheet } from './supplier-sheet.js';
import { HttpProblem, type LocatedProblem } from '../edge/problems.js';

const pack = (sku: string, ...prices: readonly string[]) => ({
  sku,
  name: `Invented pack ${sku}`,
  supplier: 'chandlery-a',
  content: { material: 'core-balsa-150', quantity: 1, unit: 'm2' as const },
  prices: prices.map((price, at) => ({ fromPacks: at === 0 ? 1 : 6 * at, price })),
  massKg: 1,
  hazardous: false,
  oversize: false,
});
const packs = [pack('A-1', '20.40', '19.20'), pack('A-2', '7.00'), pack('B-7', '1234.50')];
const list: PriceList = {
  code: 'invented',
  name: 'Invented',
  currency: 'EUR',
  validFrom: '2026-01-01',
  validTo: '2027-01-01',
  invented: true,
  pricesIncludeTax: false,
  suppliers: [],
  packs,
};

const asked: SupplierSheet = {
  cells: '',
  columns: [
    { heading: 'Article', means: 'sku' },
    { heading: 'Net', means: 'price' },
  ],
  decimalMark: ',',
  breaks: 'keep',
  unknownSkus: 'refuse',
};
function faultsOf(sheet: Partial<SupplierSheet>): readonly LocatedProblem[] {
  try {
    sheetTaken(list, { ...asked, ...sheet });
    return [];
  } catch (failure) {
    if (failure instanceof HttpProblem) return failure.problems;
    throw failure;
  }
}

describe("a supplier's sheet taken by the service", () => {
  test('changes the packs that it names, and nothing else of them', () => {
    const taken = sheetTaken(list, {
      ...asked,
      cells: 'Article;Net;Note\nA-1;1.020,50;x\n\nB-7;1.234,50;y\n',
    });
    expect(taken.packs).toEqual([pack('A-1', '1020.50', '19.20'), ...packs.slice(1)]);
    expect(taken).toMatchObject({ namedCount: 2, leftOut: [] });
  });

  test('is refused with every fault by its row and column', () => {
    const cells = 'Article;Net\nA-1;20.40\nA-3;1,00\nA-1;2,00\n;3,00\nA-2;on request\n';
    expect(
      faultsOf({ cells }).map(({ code, row, column, facts }) => [code, row, column, facts.known]),
    ).toEqual([
      ['not-in-form', 2, 'Net', undefined],
      ['unknown-code', 3, 'Article', expect.stringContaining('A-1')],
      ['duplicate', 4, 'Article', undefined],
      ['missing', 5, 'Article', undefined],
      ['not-in-form', 6, 'Net', undefined],
    ]);
  });

  test('names headings that are not there, and what is missing among the meanings', () => {
    const faults = faultsOf({
      cells: 'Number;Net\nA-1;2,00\n',
      columns: [
        { heading: 'Article', means: 'price' },
        { heading: 'Net', means: 'price' },
      ],
    });
    expect(faults.map(({ code, at }) => [code, at])).toEqual([
      ['missing', '/columns'],
      ['not-one-of', '/columns/0/heading'],
      ['duplicate', '/columns/1/means'],
    ]);
    expect(faultsOf({ cells: 'Article;Net\nA-1;"2' }).map(({ at }) => at)).toEqual(['/cells']);
  });
});
