import { landscape, lineElements, portrait, standardScales } from '#lib/drawings';
import type { PublishedCase } from '../published-case.js';

const scaleCase = (index: number, printed: string, real: number): PublishedCase => ({
  id: `drawings-scale-${printed.replace(':', '-to-')}`,
  room: 'drawings',
  title: `Recommended scale ${printed}`,
  source: 'ISO-5455',
  locus: 'table of recommended scales',
  unit: '1',
  printed: String(real),
  ours: () => standardScales[index].factor,
  tolerance: { absolute: 0, because: 'a ratio of whole numbers' },
});

/** The series from 50:1 down to 1:100 in the order of the table. */
export const recommendedScales: readonly PublishedCase[] = [
  scaleCase(0, '50:1', 50),
  scaleCase(1, '20:1', 20),
  scaleCase(2, '10:1', 10),
  scaleCase(3, '5:1', 5),
  scaleCase(4, '2:1', 2),
  scaleCase(5, '1:1', 1),
  scaleCase(6, '1:2', 0.5),
  scaleCase(7, '1:5', 0.2),
  scaleCase(8, '1:10', 0.1),
  scaleCase(9, '1:20', 0.05),
  scaleCase(10, '1:50', 0.02),
  scaleCase(11, '1:100', 0.01),
];

const element = (name: string, printed: string, ours: () => number): PublishedCase => ({
  id: `drawings-line-${name.replaceAll(' ', '-')}`,
  room: 'drawings',
  title: `Line element: ${name}`,
  source: 'ISO-128-2',
  locus: 'table of line elements',
  unit: 'd',
  printed,
  ours,
});

/** Lengths in line widths d. */
export const lineElementLengths: readonly PublishedCase[] = [
  element('dash', '12', () => lineElements('hidden')[0]),
  element('gap', '3', () => lineElements('hidden')[1]),
  element('long dash', '24', () => lineElements('centre')[0]),
  element('dot', '0.5', () => lineElements('centre')[2]),
  element('dot of a dotted line', '0.5', () => lineElements('dotted')[0]),
  element('gap of a dotted line', '3', () => lineElements('dotted')[1]),
  element('wide to narrow', '2', () => lineElements('wide to narrow')[0]),
];

const paper = (id: string, printed: string, ours: () => number): PublishedCase => ({
  id: `drawings-a4-${id}`,
  room: 'drawings',
  title: `A4, ${id}`,
  source: 'ISO-216',
  locus: 'A series',
  unit: 'mm',
  printed,
  ours,
  tolerance: { absolute: 0, because: 'exact by definition' },
});

export const paperSizes: readonly PublishedCase[] = [
  paper('width', '210', () => portrait('a4').widthMm),
  paper('height', '297', () => portrait('a4').heightMm),
  paper('landscape-width', '297', () => landscape('a4').widthMm),
];
