import 'reflect-metadata';
import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { catalogueTables, rowsOf } from './catalogue-rows.js';
import { csvOf, documentsFrom } from './csv-documents.js';
import { classOf } from './dto/documents.js';
import { PackDto } from './dto/prices.dto.js';

describe('the catalogue as tables', () => {
  test.each(catalogueTables)('every shipped %s survives a journey through CSV', (table) => {
    const documents = rowsOf(shippedCatalogue, table).map(({ body }) => body);
    expect(documentsFrom(csvOf(documents), (raw) => classOf(table, raw))).toEqual(documents);
  });

  test('a price stays text and a quantity becomes a number', () => {
    expect(
      documentsFrom(
        'sku,prices.0.fromPacks,prices.0.price,content.quantity\r\nA,1,12.50,2.50\r\n',
        () => PackDto,
      ),
    ).toEqual([{ sku: 'A', prices: [{ fromPacks: 1, price: '12.50' }], content: { quantity: 2.5 } }]);
  });

  test('a text that a spreadsheet would run comes back as it was', () => {
    const packs = [{ sku: '=1+1', name: "'quoted" }];
    expect(csvOf(packs)).toContain("'=1+1");
    expect(documentsFrom(csvOf(packs), () => PackDto)).toEqual(packs);
  });

  test('a table that is none is refused', () => {
    for (const csv of [
      'a,b\n1\n',
      'a,"b\n',
      '__proto__,b\n1,2\n',
      'a,a\n1,2\n',
      'constructor.x\n1\n',
      '',
      'sku,name\n',
      'sku;name\nA;B\n',
    ]) {
      expect(() => documentsFrom(csv, () => PackDto)).toThrow();
    }
  });
});
