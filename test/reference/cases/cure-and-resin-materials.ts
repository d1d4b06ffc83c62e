import {
  equilibriumMoisture,
  greatestMoisture,
  moistureContent,
  practicalSpreadingRate,
  sinkMoisture,
  spotMean,
  spreadingRate,
  thinnedSolids,
} from '#lib/cure';
import { hardenerInBatch, partsByMassFromVolume, plyResin, thickenedDensity } from '#lib/resin';
import { massConcentration } from '#lib/cautions';
import type { PublishedCase } from '../published-case.js';

type Given = Readonly<Record<string, number>>;
const valueOf = (formula: { readonly evaluate: (given: never) => number }, given: Given): number =>
  (formula.evaluate as (values: Given) => number)(given);

const emc = (
  airC: number,
  relativeHumidity: number,
  printed: string,
  disagreement?: PublishedCase['disagreement'],
): PublishedCase => ({
  id: `process-emc-${airC}-${relativeHumidity}`,
  room: 'cure',
  title: `Moisture of wood in air of ${airC} degC and ${relativeHumidity} %`,
  source: 'FPL-GTR-282-CH4',
  locus: 'table 4-2',
  unit: '%',
  printed,
  ours: () => equilibriumMoisture(airC, relativeHumidity / 100),
  ...(disagreement === undefined ? {} : { disagreement }),
});

/** The rest of the row of 70 degF. */
export const moistureRow: readonly PublishedCase[] = (
  [
    [10, '2.5'],
    [15, '3.5'],
    [20, '4.5'],
    [25, '5.4'],
    [35, '6.9'],
    [40, '7.7'],
    [45, '8.5'],
    [50, '9.2'],
    [55, '10.1'],
    [60, '11.0'],
    [65, '12.0'],
    [70, '13.1'],
    [80, '16.0'],
    [90, '20.5'],
  ] as const
).map(([relativeHumidity, printed]) => ({
  ...emc(21.1, relativeHumidity, printed),
  locus: 'table 4-2, row of 70 degF, from memory',
}));

export const moistures: readonly PublishedCase[] = [
  emc(21.1, 5, '1.3'),
  emc(21.1, 30, '6.2'),
  emc(21.1, 75, '14.4'),
  emc(21.1, 95, '23.9'),
  emc(37.8, 50, '8.7'),
  emc(37.8, 90, '19.5'),
  emc(21.1, 85, '17.9', {
    oursShouldBe: 17.952229,
    relative: 1e-6,
    reason:
      'the table is cut or made with an earlier fit; the handbook says that a tenth of a per cent is not meaningful',
  }),
  {
    id: 'process-emc-140F',
    room: 'cure',
    title: 'Moisture of wood in air of 140 degF and 55 %',
    source: 'EMC-ENCYCLOPAEDIA',
    locus: 'example',
    unit: '%',
    printed: '8.4',
    ours: () => equilibriumMoisture(60, 0.55),
  },
  {
    id: 'process-mc-247',
    room: 'cure',
    title: 'Moisture of a sample of 247 g wet and 183 g dry',
    source: 'MOISTURE-FORUM-EXAMPLE',
    locus: 'post',
    unit: '%',
    printed: '34.97',
    ours: () => valueOf(moistureContent, { wetG: 247, dryG: 183 }),
  },
  {
    id: 'process-sink-balsa',
    room: 'cure',
    title: 'Moisture at which balsa of 0.14 sinks',
    source: 'FPL-GTR-282-CH4',
    locus: 'eq. 4-4, derived',
    unit: '%',
    printed: '614.29',
    kind: 'by-hand',
    ours: () => sinkMoisture(0.14),
  },
  {
    id: 'process-full-030',
    room: 'cure',
    title: 'Greatest moisture of wood of 0.30',
    source: 'FPL-GTR-282-CH4',
    locus: 'text beside eq. 4-3',
    unit: '%',
    printed: '267',
    ours: () => greatestMoisture(0.3),
    disagreement: {
      oursShouldBe: 268.3983,
      relative: 1e-6,
      reason: 'the printed anchor comes from 1.50 g/cm3 for the cell wall, the printed equation from 1.54',
    },
  },
  {
    id: 'process-full-090',
    room: 'cure',
    title: 'Greatest moisture of wood of 0.90',
    source: 'FPL-GTR-282-CH4',
    locus: 'text beside eq. 4-3',
    unit: '%',
    printed: '44',
    ours: () => greatestMoisture(0.9),
    disagreement: {
      oursShouldBe: 46.17605,
      relative: 1e-6,
      reason: 'the printed anchor comes from 1.50 g/cm3 for the cell wall, the printed equation from 1.54',
    },
  },
];

export const mixes: readonly PublishedCase[] = [
  {
    id: 'process-mix-100-10',
    room: 'resin',
    title: 'Hardener in 110 g mixed at 100 : 10',
    source: 'TM-1-1500-204-23-1',
    locus: 'step (d)',
    unit: 'g',
    printed: '10.0',
    ours: () => valueOf(hardenerInBatch, { mixedG: 110, partsByMass: 10 }),
  },
  {
    id: 'process-mix-500',
    room: 'resin',
    title: 'Hardener in 500 g mixed of 400 and 100',
    source: 'TM-55-1905-223-SDC',
    locus: 'para 8-24',
    unit: 'g',
    printed: '100',
    ours: () => valueOf(hardenerInBatch, { mixedG: 500, partsByMass: 25 }),
  },
  {
    id: 'process-mix-100-22',
    room: 'resin',
    title: 'Parts by weight of 100 : 22 by volume with the densities of the catalogue',
    source: 'MAKER-RATIO-SHEET',
    locus: 'typical liquid properties',
    unit: 'parts',
    printed: '20',
    ours: () =>
      valueOf(partsByMassFromVolume, { partsByVolume: 22, hardenerDensity: 1.045, resinDensity: 1.15 }),
  },
  {
    id: 'process-mix-3to1',
    room: 'resin',
    title: 'Weight ratio of 3 : 1 by volume',
    source: 'TM-10-8110-201',
    locus: 'para 5-14 c',
    unit: 'ratio',
    printed: '2.3',
    ours: () =>
      100 /
      valueOf(partsByMassFromVolume, {
        partsByVolume: 100 / 3,
        hardenerDensity: 1 / 0.7667,
        resinDensity: 1,
      }),
  },
  {
    id: 'process-mix-silica',
    room: 'resin',
    title: 'Density of resin with 5 parts of silica',
    source: 'MIX-BY-VOLUMES',
    locus: 'definition; silica density from memory',
    unit: 'g/cm3',
    printed: '1.1468',
    kind: 'by-hand',
    ours: () => valueOf(thickenedDensity, { mixedDensity: 1.12, partsPerHundred: 5, fillerDensity: 2.2 }),
  },
  {
    id: 'process-mix-spheres',
    room: 'resin',
    title: 'Density of resin with 18 % of hollow spheres by volume',
    source: 'SUPPLIER-SPHERES',
    locus: '0.19 g/cm3 and 18 % read, resin 1.15 assumed',
    unit: 'g/cm3',
    printed: '0.9772',
    kind: 'by-hand',
    ours: () =>
      valueOf(thickenedDensity, {
        mixedDensity: 1.15,
        partsPerHundred: (100 * 0.18 * 0.19) / (0.82 * 1.15),
        fillerDensity: 0.19,
      }),
  },
  {
    id: 'process-ply-14',
    room: 'resin',
    title: 'Resin for 6 kg of glass at 30 % fibre',
    source: 'MAKER-FABRICATING-BASICS',
    locus: 'example',
    unit: 'kg',
    printed: '14',
    ours: () => valueOf(plyResin, { arealMassGPerM2: 6000, areaM2: 1, fibreMassFraction: 0.3 }) / 1000,
  },
  {
    id: 'process-ply-400',
    room: 'resin',
    title: 'Resin for 600 g of fabric at 60 % fibre',
    source: 'MAKER-FABRICATING-BASICS',
    locus: 'equation',
    unit: 'g',
    printed: '400',
    ours: () => valueOf(plyResin, { arealMassGPerM2: 600, areaM2: 1, fibreMassFraction: 0.6 }),
  },
  {
    id: 'process-ply-70',
    room: 'resin',
    title: 'Resin for 100 g of glass at a fibre fraction of 0.5882',
    source: 'LIGHT-AIRCRAFT-LAYUP',
    locus: '100 : 70',
    unit: 'g',
    printed: '70',
    ours: () => valueOf(plyResin, { arealMassGPerM2: 100, areaM2: 1, fibreMassFraction: 0.5882 }),
  },
];

const M2_PER_FT2 = 0.09290304;
const L_PER_GAL = 3.785411784;
const ft2PerGal = (m2PerL: number): number => (m2PerL * L_PER_GAL) / M2_PER_FT2;
const rate = (volumeSolids: number, dryFilmUm: number): number =>
  valueOf(spreadingRate, { volumeSolids, dryFilmUm });
const table = (volumeSolids: number, dryFilmUm: number, printed: string): PublishedCase => ({
  id: `process-tsr-${volumeSolids}-${dryFilmUm}`,
  room: 'cure',
  title: `Spreading rate at ${volumeSolids} % solids and ${dryFilmUm} um dry`,
  source: 'MAKER-SPREADING-RATE',
  locus: 'table',
  unit: 'm2/l',
  printed,
  ours: () => rate(volumeSolids, dryFilmUm),
});

export const coatings: readonly PublishedCase[] = [
  table(45, 200, '2.3'),
  table(55, 75, '7.3'),
  table(60, 150, '4.0'),
  table(80, 100, '8.0'),
  table(90, 225, '4.0'),
  {
    id: 'process-tsr-us',
    room: 'cure',
    title: 'Spreading rate at 65 % solids and 5 mil dry',
    source: 'MAKER-SPREADING-RATE',
    locus: 'US example',
    unit: 'ft2/gal',
    printed: '208.52',
    ours: () => ft2PerGal(rate(65, 5 * 25.4)),
    tolerance: { absolute: 0.023, because: 'the source rounds 1604.17 ft2 mil/gal to 1604' },
  },
  {
    id: 'process-gal-mil',
    room: 'cure',
    title: 'One gallon at one mil',
    source: 'MAKER-SPREADING-RATE',
    locus: 'US example',
    unit: 'ft2',
    printed: '1604',
    ours: () => ft2PerGal(rate(100, 25.4)),
  },
  {
    id: 'process-thinned',
    room: 'cure',
    title: 'Solids of 50 % thinned by 10 %',
    source: 'COATINGS-TRADE-NOTES',
    locus: 'worked example',
    unit: '%',
    printed: '45.45',
    ours: () => valueOf(thinnedSolids, { volumeSolids: 50, thinner: 10 }),
  },
  {
    id: 'process-thinned-rate',
    room: 'cure',
    title: 'Spreading rate at 45.45 % and 60 um',
    source: 'COATINGS-TRADE-NOTES',
    locus: 'worked example',
    unit: 'm2/l',
    printed: '7.57',
    ours: () => rate(45.45, 60),
  },
  {
    id: 'process-practical',
    room: 'cure',
    title: '100 ft2/gal less 30 %',
    source: 'COATINGS-TRADE-NOTES',
    locus: 'example',
    unit: 'ft2/gal',
    printed: '70',
    ours: () => valueOf(practicalSpreadingRate, { theoretical: 100, lossFraction: 0.3 }),
  },
  {
    id: 'process-spot',
    room: 'cure',
    title: 'A spot of 2.4, 2.6 and 2.9 mil',
    source: 'WEAVER-2006',
    locus: 'SSPC-PA 2',
    unit: 'mil',
    printed: '2.6',
    ours: () => spotMean([2.4, 2.6, 2.9]),
  },
];

const vapour = (
  name: string,
  [ppm, molarMass, printed]: readonly [number, number, string],
  disagreement?: PublishedCase['disagreement'],
): PublishedCase => ({
  id: `process-vapour-${name}-${ppm}`,
  room: 'cautions',
  title: `${ppm} ppm of ${name}`,
  source: name === 'acetone' ? 'OSHA-LIMITS' : 'NIOSH-POCKET-GUIDE',
  locus: 'conversion',
  unit: 'mg/m3',
  printed,
  ours: () => valueOf(massConcentration, { ppm, molarMass }),
  ...(disagreement === undefined ? {} : { disagreement }),
});

export const vapours: readonly PublishedCase[] = [
  vapour('hexamethylene diisocyanate', [0.005, 168.2, '0.035'], {
    oursShouldBe: 0.034397,
    relative: 1e-4,
    reason: 'the pocket guide rounds its limit of 0.005 ppm up; its own factor of 6.88 gives 0.0344',
  }),
  vapour('styrene', [1, 104.15, '4.26']),
  vapour('hexamethylene diisocyanate', [1, 168.2, '6.88']),
  vapour('acetone', [1000, 58.08, '2.4e3']),
  vapour('styrene', [50, 104.15, '215'], {
    oursShouldBe: 212.98569,
    relative: 1e-6,
    reason: 'the pocket guide prints 215, another body 213; the conversion gives 213',
  }),
];
