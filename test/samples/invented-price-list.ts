import type { PriceList } from '#lib/catalogue';
import { sheetTaken, type SupplierSheet } from '../../apps/api/src/catalogue/supplier-sheet.js';
import { HttpProblem, type LocatedProblem } from '../../apps/api/src/edge/problems.js';

/** A pack of an invented list: its first price from one pack on, each further one from six more. */
export const inventedPack = (sku: string, ...prices: readonly string[]) => ({
  sku,
  name: `Invented pack ${sku}`,
  supplier: 'chandlery-a',
  content: { material: 'core-balsa-150', quantity: 1, unit: 'm2' as const },
  prices: prices.map((price, at) => ({ fromPacks: at === 0 ? 1 : 6 * at, price })),
  massKg: 1,
  hazardous: false,
  oversize: false,
});

export const inventedPacks = [
  inventedPack('A-1', '20.40', '19.20'),
  inventedPack('A-2', '7.00'),
  inventedPack('B-7', '1234.50'),
];

export const inventedList: PriceList = {
  code: 'invented',
  name: 'Invented',
  currency: 'EUR',
  validFrom: '2026-01-01',
  validTo: '2027-01-01',
  invented: true,
  pricesIncludeTax: false,
  suppliers: [],
  packs: inventedPacks,
};

/** Two columns by the headings of the supplier, a comma for the decimals. */
export const usualSheet: SupplierSheet = {
  cells: '',
  columns: [
    { heading: 'Article', means: 'sku' },
    { heading: 'Net', means: 'price' },
  ],
  decimalMark: ',',
  breaks: 'keep',
  unknownSkus: 'refuse',
};

/** What the service says against a sheet for the invented list. */
export function faultsOfSheet(sheet: Partial<SupplierSheet>): readonly LocatedProblem[] {
  try {
    sheetTaken(inventedList, { ...usualSheet, ...sheet });
    return [];
  } catch (failure) {
    if (failure instanceof HttpProblem) return failure.problems;
    throw failure;
  }
}
