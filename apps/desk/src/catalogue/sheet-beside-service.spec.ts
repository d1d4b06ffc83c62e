import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { readDelimited } from './delimited.js';
import { takeSheet, type SheetChoices, type Target } from './supplier-sheet.js';
import { sheetTaken, type SupplierSheet } from '../../../api/src/catalogue/supplier-sheet.js';
import { faultsOfSheet, inventedList, inventedPacks } from '../../../../test/samples/invented-price-list.js';

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
          const desk = takeSheet(inventedPacks, readDelimited(cells), {
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
          const faults = faultsOfSheet(sheet);
          expect(faults.length > 0).toBe(desk.faults.length > 0);
          expect(new Set(faults.map(({ row }) => row))).toEqual(new Set(desk.faults.map(({ row }) => row)));
          if (faults.length === 0) {
            expect(sheetTaken(inventedList, sheet).packs).toEqual(desk.packs);
            expect(sheetTaken(inventedList, sheet).leftOut).toEqual(desk.leftOut);
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});
