import {
  screwAllowable,
  battenSag,
  battenScrewLoad,
  lagAllowable,
  lagConstantSi,
  planBondPressure,
  pumpDownTime,
  screwConstantSi,
  screwUltimate,
  standardPressurePa,
  vacuumPressure,
  weightNeeded,
  weightPressure,
} from '#lib/press';
import type { PublishedCase } from '../published-case.js';

type Given = Readonly<Record<string, number>>;
const valueOf = (formula: { readonly evaluate: (given: never) => number }, given: Given): number =>
  (formula.evaluate as (values: Given) => number)(given);

const N_PER_LBF = 4.4482216152605;
const KPA_PER_PSI = 6.894757293168;
const KPA_PER_INHG = 3.386389;

const lag = (gravity: number, diameterIn: number, printed: string): PublishedCase => ({
  id: `process-lag-${gravity}-${diameterIn}`,
  room: 'press',
  title: `Allowable withdrawal of a ${diameterIn} in lag screw, specific gravity ${gravity}`,
  source: 'NDS-2015',
  locus: 'table 12.2A',
  unit: 'lbf/in',
  printed,
  ours: () => valueOf(lagAllowable, { gravity, diameterMm: diameterIn * 25.4, threadMm: 25.4 }) / N_PER_LBF,
});

const fromMemory = (one: PublishedCase): PublishedCase => ({ ...one, locus: `${one.locus}, from memory` });

/** More cells of the table of lag screws, and of the one of wood screws. */
export const moreScrews: readonly PublishedCase[] = [
  ...[
    lag(0.42, 0.25, '173'),
    lag(0.42, 0.3125, '205'),
    lag(0.5, 0.3125, '266'),
    lag(0.5, 0.375, '305'),
    lag(0.5, 0.5, '378'),
    lag(0.55, 0.375, '352'),
    lag(0.55, 0.5, '437'),
    lag(0.67, 0.25, '349'),
    lag(0.67, 0.5, '587'),
  ].map(fromMemory),
  ...(
    [
      [0.42, 0.164, '82'],
      [0.5, 0.164, '117'],
      [0.5, 0.19, '135'],
      [0.55, 0.216, '186'],
    ] as const
  ).map(([gravity, diameterIn, printed]): PublishedCase => ({
    id: `process-wood-screw-${gravity}-${diameterIn}`,
    room: 'press',
    title: `Allowable withdrawal of a ${diameterIn} in wood screw, specific gravity ${gravity}`,
    source: 'NDS-2015',
    locus: 'table 12.2B, from memory',
    unit: 'lbf/in',
    printed,
    ours: () =>
      valueOf(screwAllowable, { gravity, diameterMm: diameterIn * 25.4, threadMm: 25.4 }) / N_PER_LBF,
  })),
];

export const screws: readonly PublishedCase[] = [
  lag(0.42, 0.375, '235'),
  lag(0.5, 0.25, '225'),
  lag(0.55, 0.25, '260'),
  {
    id: 'process-screw-constant',
    room: 'press',
    title: 'Wood screw constant 15,700 in newtons and millimetres',
    source: 'FPL-GTR-282-CH8',
    locus: 'eq. 8-10, as tested in an open module',
    unit: 'N/mm2',
    printed: '108.25',
    ours: () => screwConstantSi(15700),
  },
  {
    id: 'process-lag-constant',
    room: 'press',
    title: 'Lag screw constant 8,100 in newtons and millimetres',
    source: 'FPL-GTR-282-CH8',
    locus: 'eq. 8-14, as quoted',
    unit: 'N/mm^1.75',
    printed: '125.4',
    ours: () => lagConstantSi(8100),
  },
  {
    id: 'process-screw-oak',
    room: 'press',
    title: 'Ultimate withdrawal of a No. 8 screw, one inch in wood of 0.7',
    source: 'FPL-GTR-282-CH8',
    locus: 'worked example on a page that quotes it',
    unit: 'lbf',
    printed: '1262',
    ours: () =>
      valueOf(screwUltimate, { gravity: 0.7, diameterMm: 0.164 * 25.4, threadMm: 25.4 }) / N_PER_LBF,
  },
];

export const battens: readonly PublishedCase[] = [
  {
    id: 'process-batten-sag',
    room: 'press',
    title: 'Sag of a 70 x 20 mm batten under 30 kPa, screws at 200 mm',
    source: 'CIVIL-BEAM-TABLE',
    locus: 'case 5',
    unit: 'mm',
    printed: '0.0208',
    kind: 'by-hand',
    ours: () =>
      valueOf(battenSag, { lineLoad: 2.1, spacingMm: 200, modulusMPa: 9000, widthMm: 70, heightMm: 20 }),
  },
  {
    id: 'process-batten-pull',
    room: 'press',
    title: 'Pull on its screws',
    source: 'CIVIL-BEAM-TABLE',
    locus: 'uniform load',
    unit: 'N',
    printed: '420',
    kind: 'by-hand',
    ours: () => valueOf(battenScrewLoad, { pressureKPa: 30, widthMm: 70, spacingMm: 200 }),
  },
];

const poundsOf = (psi: number, squareInches: number): number =>
  valueOf(weightNeeded, { pressureKPa: psi * KPA_PER_PSI, areaM2: squareInches * 0.0254 ** 2 }) / 0.45359237;

export const vacuum: readonly PublishedCase[] = [
  {
    id: 'process-vacuum-half-m2',
    room: 'press',
    title: 'Load of 7.5 psi on half a square metre',
    source: 'WHY-VACUUM-BAG',
    locus: 'rudder example',
    unit: 'lbf',
    printed: '5812',
    ours: () => poundsOf(7.5, 0.5 / 0.0254 ** 2),
    tolerance: { absolute: 2, because: 'the page rounds the area to square inches' },
  },
  {
    id: 'process-vacuum-22',
    room: 'press',
    title: 'Pressure of a bag at 22 inHg',
    source: 'TM-1-1500-204-23-11',
    locus: 'negative pressure, para (2)',
    unit: 'psi',
    printed: '10.8',
    ours: () =>
      valueOf(vacuumPressure, { ambient: 101.325, vacuumFraction: (22 * KPA_PER_INHG) / 101.325 }) /
      KPA_PER_PSI,
  },
  {
    id: 'process-vacuum-1500',
    room: 'press',
    title: 'Pressure of a bag at 80 % vacuum and 1500 m',
    source: 'US-STD-ATM-1976',
    locus: 'derived from the standard atmosphere',
    unit: 'kPa',
    printed: '67.64',
    kind: 'by-hand',
    ours: () => valueOf(vacuumPressure, { ambient: standardPressurePa(1500) / 1000, vacuumFraction: 0.8 }),
  },
  {
    id: 'process-vacuum-panel',
    room: 'press',
    title: 'Load of 10 psi on a panel of 12 by 48 in',
    source: 'VACUUM-PRACTITIONERS',
    locus: 'answer of November 2007',
    unit: 'lbf',
    printed: '5760',
    ours: () => poundsOf(10, 12 * 48),
  },
  {
    id: 'process-square-foot-ton',
    room: 'press',
    title: 'The whole air on a square foot, in tons of 2000 lb',
    source: 'COMMON-PRACTICE',
    locus: 'about 15 psi on a square foot is roughly a ton at most',
    unit: 'ton',
    printed: '1',
    ours: () => poundsOf(15, 144) / 2000,
  },
  {
    id: 'process-vacuum-ideal',
    room: 'press',
    title: 'The whole air at the sea on 10 by 10 in',
    source: 'TM-1-1500-204-23-11',
    locus: 'vacuum pressure: 14.7 psi',
    unit: 'lbf',
    printed: '1470',
    ours: () => (standardPressurePa(0) / 1000 / KPA_PER_PSI) * 100,
  },
  {
    id: 'process-pump-room',
    room: 'press',
    title: 'Pump that empties 1000 m3 from 1000 to 200 mbar in ten minutes',
    source: 'VACUUM-GUIDE',
    locus: 'example A',
    unit: 'm3/min',
    printed: '160',
    ours: () => valueOf(pumpDownTime, { volumeL: 1000, pumpLPerMin: 1, fromKPa: 100, toKPa: 20 }) / 10,
    disagreement: { oursShouldBe: 160.944, relative: 1e-5, reason: 'the page rounds ln 5 = 1.609 to 1.6' },
  },
  {
    id: 'process-pump-bag',
    room: 'press',
    title: 'Time of a 50 l/min pump on a 20 l bag, 1013 to 100 mbar',
    source: 'VACUUM-GUIDE',
    locus: 'its formula',
    unit: 'min',
    printed: '0.9262',
    kind: 'by-hand',
    ours: () => valueOf(pumpDownTime, { volumeL: 20, pumpLPerMin: 50, fromKPa: 101.3, toKPa: 10 }),
  },
];

export const weights: readonly PublishedCase[] = [
  {
    id: 'process-weight-25',
    room: 'press',
    title: 'Pressure of 25 kg on 0.05 m2',
    source: 'ARITHMETIC',
    locus: 'm g/A',
    unit: 'kPa',
    printed: '4.9',
    kind: 'by-hand',
    ours: () => valueOf(weightPressure, { massKg: 25, areaM2: 0.05 }),
  },
  {
    id: 'process-weight-bag',
    room: 'press',
    title: 'Pressure of a 20 kg bag on a tenth of a square metre',
    source: 'COMMON-PRACTICE',
    locus: 'only about 2 kPa against 69 kPa of vacuum',
    unit: 'kPa',
    printed: '2',
    ours: () => valueOf(weightPressure, { massKg: 20, areaM2: 0.1 }),
  },
  {
    id: 'process-vacuum-plan-sea',
    room: 'press',
    title: 'Vacuum that the planner counts on at the sea, 75 %',
    source: 'US-STD-ATM-1976',
    locus: 'derived from the standard atmosphere',
    unit: 'kPa',
    printed: '75.99',
    kind: 'by-hand',
    ours: () => {
      const outcome = planBondPressure({
        areaM2: 1,
        lengthMm: 1000,
        widthMm: 1000,
        innerSkin: { thicknessMm: 3, spanMm: 300, isAirtight: true },
      });
      return outcome.ok
        ? (outcome.value.options.find(({ method }) => method === 'vacuum')?.availableKPa ?? Number.NaN)
        : Number.NaN;
    },
  },
];
