import {
  balsaEdgeDays,
  cureFactor,
  dryingDays,
  absentPerDayWorked,
  meanAbsentPerDayWorked,
  weatherLostPerDayWorked,
} from '#lib/calendar';
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

const abroad = { lossFraction: 0.25, workingDaysAWeek: 5 } as const;
export const absences: readonly PublishedCase[] = [
  {
    // By hand: at four days in five each day of work takes 1.25 working days; a quarter more in five days a week is 0.35 d.
    id: 'calendar-absence-stated',
    room: 'calendar',
    title: 'Days lost for each day worked by a crew that comes on four days in five',
    source: 'ARITHMETIC',
    locus: 'worked by hand',
    unit: 'd',
    printed: '0.35',
    kind: 'by-hand',
    ours: () => absentPerDayWorked({ attendanceFraction: 0.8, lossFraction: 0, workingDaysAWeek: 5 }, 0.9),
  },
  {
    // By hand: of the days on which a crew comes a quarter is lost: 1/0.75 - 1 = 1/3 of a working day, 7/5 of that.
    id: 'calendar-absence-weather',
    room: 'calendar',
    title: 'Days lost to weather alone, one working day in four',
    source: 'ARITHMETIC',
    locus: 'mean of a geometric count of days, worked by hand',
    unit: 'd',
    printed: '0.467',
    kind: 'by-hand',
    ours: () => weatherLostPerDayWorked(abroad),
  },
  {
    // By hand: the mean of 1, 1.25 and 1.9 is 1.38333; 0.38333 x 7/5 = 0.53667.
    id: 'calendar-absence-usual',
    room: 'calendar',
    title: 'Days lost for each day worked where nobody says how often the crew comes',
    source: 'ARITHMETIC',
    locus: 'mean of the judged triangle, worked by hand',
    unit: 'd',
    printed: '0.5367',
    kind: 'by-hand',
    ours: () => meanAbsentPerDayWorked({ lossFraction: 0, workingDaysAWeek: 5 }),
  },
  {
    // Thirty days planned, fifty-eight stayed: 1.93 times. With five days worked a week the long end gives 30 + 21.4 x 0.9 x 7/5 = 57.0.
    id: 'calendar-absence-told',
    room: 'calendar',
    title: 'Days ashore where thirty were planned, at the long end of absence',
    source: 'JOB-DAYS-ASHORE-2014',
    locus: 'days planned and days stayed',
    unit: 'd',
    printed: '58',
    tolerance: {
      absolute: 1.5,
      because:
        'the long end was rounded to 1.9; that all five days of each week were planned as work is supposed',
    },
    ours: () => 30 + ((30 * 5) / 7) * absentPerDayWorked({ lossFraction: 0, workingDaysAWeek: 5 }, 1),
  },
];
