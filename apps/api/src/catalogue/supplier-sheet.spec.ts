import { describe, expect, test } from '@jest/globals';
import { sheetTaken } from './supplier-sheet.js';
import {
  faultsOfSheet,
  inventedList,
  inventedPack,
  inventedPacks,
  usualSheet,
} from '../../../../test/samples/invented-price-list.js';

describe("a supplier's sheet taken by the service", () => {
  test('changes the packs that it names, and nothing else of them', () => {
    const taken = sheetTaken(inventedList, {
      ...usualSheet,
      cells: 'Article;Net;Note\nA-1;1.020,50;x\n\nB-7;1.234,50;y\n',
    });
    expect(taken.packs).toEqual([inventedPack('A-1', '1020.50', '19.20'), ...inventedPacks.slice(1)]);
    expect(taken).toMatchObject({ namedCount: 2, leftOut: [] });
  });

  test('is refused with every fault by its row and column', () => {
    const cells = 'Article;Net\nA-1;20.40\nA-3;1,00\nA-1;2,00\n;3,00\nA-2;on request\n';
    expect(
      faultsOfSheet({ cells }).map(({ code, row, column, facts }) => [code, row, column, facts.known]),
    ).toEqual([
      ['not-in-form', 2, 'Net', undefined],
      ['unknown-code', 3, 'Article', expect.stringContaining('A-1')],
      ['duplicate', 4, 'Article', undefined],
      ['missing', 5, 'Article', undefined],
      ['not-in-form', 6, 'Net', undefined],
    ]);
  });

  test('names headings that are not there, and what is missing among the meanings', () => {
    const faults = faultsOfSheet({
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
    expect(faultsOfSheet({ cells: 'Article;Net\nA-1;"2' }).map(({ at }) => at)).toEqual(['/cells']);
  });
});
