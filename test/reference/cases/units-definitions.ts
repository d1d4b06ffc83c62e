import { readQuantity } from '#lib/units';
import type { PublishedCase } from '../published-case.js';

/** Exact by definition since the international yard and pound agreement of 1959. */
export const unitDefinitions: readonly PublishedCase[] = [
  {
    id: 'units-inch',
    room: 'units',
    title: 'One inch in millimetres',
    source: 'YARD-POUND-1959',
    locus: 'definition',
    unit: 'mm',
    printed: '25.4',
    ours: () => Number(readQuantity('1 in', 'length')),
    tolerance: { absolute: 0, because: 'exact by definition' },
  },
  {
    id: 'units-pound',
    room: 'units',
    title: 'One pound in kilograms',
    source: 'YARD-POUND-1959',
    locus: 'definition',
    unit: 'kg',
    printed: '0.45359237',
    ours: () => Number(readQuantity('1 lb', 'mass')),
    tolerance: { absolute: 0, because: 'exact by definition' },
  },
];
