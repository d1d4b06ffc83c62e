import { balsaEdgeDays, cureFactor, dryingDays } from '#lib/calendar';
import type { PublishedCase } from '../published-case.js';

/** Days of the waiting table, each at a printed temperature: the anchors themselves, and one between them by hand. */
const edge = (deckC: number, printed: string, absolute: number): PublishedCase => ({
  id: `calendar-edge-days-${deckC}`,
  room: 'calendar',
  title: `Days of a damp balsa edge under a lip at ${deckC} degC`,
  source: 'TRADE-DRYING-TABLE',
  locus: 'row of the damp balsa edge',
  unit: 'd',
  printed,
  kind: 'by-hand',
  tolerance: { absolute, because: 'read off the table as printed, which gives 7 to 10 d at 21 degC' },
  ours: () => balsaEdgeDays(deckC),
});

export const edgeTable: readonly PublishedCase[] = [
  edge(5, '30', 0),
  edge(15, '15', 0),
  edge(21, '8.5', 1.5),
  edge(35, '4', 0),
  {
    // By hand: half-way from 5 to 15 degC in the logarithm is the root of 30 x 15 = 21.21.
    id: 'calendar-edge-days-10',
    room: 'calendar',
    title: 'Days of a damp balsa edge half-way between 5 and 15 degC',
    source: 'TRADE-DRYING-TABLE',
    locus: 'straight in the logarithm, worked by hand',
    unit: 'd',
    printed: '21.21',
    kind: 'by-hand',
    ours: () => balsaEdgeDays(10),
  },
];

/** Factors of 55 kJ/mol from 21 degC, exp(6615 (1/T - 1/294.15)), computed apart with 8.314 J/(mol K). */
const factor = (deckC: number, printed: string): PublishedCase => ({
  id: `calendar-cure-factor-${deckC}`,
  room: 'calendar',
  title: `How much longer than at 21 degC a coat takes at ${deckC} degC`,
  source: 'ARRHENIUS',
  locus: '55 kJ/mol; two digits of a table worked out apart with 6600 K',
  unit: '1',
  printed,
  kind: 'independent-method',
  tolerance: {
    relative: 0.005,
    because: 'the table rounds the activation temperature of 6615 K to 6600 K: 0.3 % at 5 degC',
  },
  ours: () => cureFactor(deckC),
});

export const cureTable: readonly PublishedCase[] = [
  factor(5, '3.64'),
  factor(10, '2.39'),
  factor(15, '1.60'),
  factor(21, '1'),
  factor(25, '0.74'),
  factor(35, '0.36'),
];

const shed = { shelter: 'shed', core: 'balsa', deckC: 18 } as const;
export const dryingRows: readonly PublishedCase[] = [
  {
    // Two professional logs show no wait in a heated shop once the rot is out; three days is the longest that is told.
    id: 'calendar-drying-shed-least',
    room: 'calendar',
    title: 'Least days of drying in a heated shop, rot cut out',
    source: 'JOB-DECK-LOG-2023',
    locus: 'openings ground and patterned two days after the edges were filled',
    unit: 'd',
    printed: '0',
    ours: () => dryingDays(shed).low,
  },
  {
    // By hand: ln((25 - 9)/(12 - 9)) over itself is 1: the row stands for 25 %.
    id: 'calendar-drying-damp-is-the-row',
    room: 'calendar',
    title: 'A core of 25 % waits as long as the row of its shelter',
    source: 'ARITHMETIC',
    locus: 'worked by hand',
    unit: 'd',
    printed: '2.00',
    kind: 'by-hand',
    ours: () => dryingDays({ shelter: 'tent', core: 'balsa', deckC: 18, moisturePercent: 25 }).likely,
  },
  {
    // By hand: ln((18 - 9)/3)/ln(16/3) = 1.0986/1.6740 = 0.6563, of 2 days.
    id: 'calendar-drying-18-percent',
    room: 'calendar',
    title: 'A core of 18 % under a tent',
    source: 'ARITHMETIC',
    locus: 'exponential approach to 9 %, worked by hand',
    unit: 'd',
    printed: '1.31',
    kind: 'by-hand',
    ours: () => dryingDays({ shelter: 'tent', core: 'balsa', deckC: 18, moisturePercent: 18 }).likely,
  },
  {
    id: 'calendar-drying-dry-core',
    room: 'calendar',
    title: 'A core of 12 % waits for nothing',
    source: 'ARITHMETIC',
    locus: 'worked by hand',
    unit: 'd',
    printed: '0',
    kind: 'by-hand',
    ours: () => dryingDays({ shelter: 'tent', core: 'balsa', deckC: 18, moisturePercent: 12 }).likely,
  },
];
