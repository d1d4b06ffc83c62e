import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { PriceList } from '#lib/catalogue';
import { readDelimited } from './delimited.js';
import { takeSheet, type SheetChoices, type Target } from './supplier-sheet.js';
import { sheetTaken, type SupplierSheet } from '../../../api/src/catalogue/supplier-sheet.js';
import { HttpProblem, type LocatedProblem } from '../../../api/src/edge/problems.js';

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

describe('a sheet at the desk', () => {
  test('comes to the same as by the service, whose reader and rules were written apart', () => {
    const cell = fc.constantFrom(
      'A-1',
      'A-2',
      'B-7',
      'A-9',
      '',
      ' ',
      '12',
      '1,5',
      '1.234,5',
      '12.5',
      '€ 3',
      'x',
      '-2',
    );
    const means = fc.constantFrom<Target>('price', 'stock', 'massKg', 'name');
    const rows = fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 5 });
    const mark = fc.constantFrom<'.' | ','>('.', ',');
    const breaks = fc.constantFrom<'keep' | 'drop'>('keep', 'drop');
    const unknown = fc.constantFrom<SheetChoices['unknown']>('fault', 'leave-out');
    fc.assert(
      fc.property(
        fc.record({ texts: rows, meaning: means, decimalMark: mark, ways: breaks, others: unknown }),
        (given) => {
          const { texts, meaning, decimalMark, ways, others } = given;
          const cells = [['Article', 'Value', 'Note'], ...texts].map((row) => row.join('\t')).join('\n');
          const desk = takeSheet(packs, readDelimited(cells), {
            meanings: ['sku', meaning, undefined],
            decimalMark,
            breaks: ways,
            unknown: others,
          });
          const sheet: SupplierSheet = {
            cells,
            columns: [
              { heading: 'Article', means: 'sku' },
              { heading: 'Value', means: meaning },
            ],
            decimalMark,
            breaks: ways,
            unknownSkus: others === 'fault' ? 'refuse' : 'leave-out',
          };
          const faults = faultsOf(sheet);
          expect(faults.length > 0).toBe(desk.faults.length > 0);
          expect(new Set(faults.map(({ row }) => row))).toEqual(new Set(desk.faults.map(({ row }) => row)));
          if (faults.length === 0) {
            expect(sheetTaken(list, sheet).packs).toEqual(desk.packs);
            expect(sheetTaken(list, sheet).leftOut).toEqual(desk.leftOut);
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});
