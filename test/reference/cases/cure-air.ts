import {
  absoluteHumidity,
  alduchovEskridge,
  clearSkyEmissivity,
  dewPointOf,
  fullSaturationPressurePa,
  humidityFromDewPoint,
  nightCoolingK,
  saturationPressureHPa,
  wmoMagnus,
  type MagnusCoefficients,
} from '#lib/cure';
import { inUnit } from '#lib/asking';
import { geopotentialM, standardPressurePa } from '#lib/press';
import type { PublishedCase } from '../published-case.js';

const fahrenheit = (celsius: number): number => (celsius * 9) / 5 + 32;
const PA_PER_PSI = 6894.757293168;

const humidity = (
  name: string,
  set: MagnusCoefficients,
  [airC, dewC, printed]: readonly [number, number, string],
): PublishedCase => ({
  id: `process-humidity-${name}-${airC}-${dewC}`,
  room: 'cure',
  title: `Relative humidity at ${airC} degC with dew point ${dewC} degC, ${name} coefficients`,
  source: 'METEO-LIBRARY-TESTS',
  locus: 'test of relative humidity from dew point',
  unit: '%',
  printed,
  ours: () => humidityFromDewPoint(airC, dewC, set),
  tolerance: {
    absolute: 1e-9,
    because: 'printed in full by a program; exponentials differ in the last bits',
  },
  kind: 'independent-method',
});

/** Sky temperature by Swinbank's relation, 0.0552 T^1.5, which knows nothing of the dew point: 0.0552 x 283.15^1.5. */
export const nightSkies: readonly PublishedCase[] = [
  {
    id: 'cure-night-sky-swinbank',
    room: 'cure',
    title: 'Temperature of a clear sky over air of 10 degC with a dew point of 5 degC',
    source: 'SWINBANK-1963',
    locus: 'sky temperature',
    unit: 'K',
    printed: '263.0',
    ours: () => 283.15 * clearSkyEmissivity.evaluate({ dewC: inUnit('degC', 5) }) ** 0.25,
    tolerance: {
      absolute: 1,
      because: 'another relation for the same sky; they part by a kelvin or so with the dew point',
    },
    kind: 'independent-method',
  },
  {
    id: 'cure-night-deck-balance',
    room: 'cure',
    title:
      'Deck under a clear sky, air 10 degC, dew point 5 degC, wind 2 m/s: what it loses it gets from the air',
    source: 'MCADAMS-1954',
    locus: 'h = 5.7 + 3.8 v',
    unit: 'W/m2',
    printed: '0.0',
    ours: () => {
      const deckK = 283.15 - nightCoolingK({ airC: 10, dewC: 5, windMPerS: 2, cloudShare: 0 });
      return 0.9 * 5.670374e-8 * (deckK ** 4 - 0.740825 * 283.15 ** 4) - 13.3 * (283.15 - deckK);
    },
    tolerance: {
      absolute: 0.05,
      because: 'the balance is solved to rounding; half a unit of the last digit',
    },
    kind: 'independent-method',
  },
];

export const humidities: readonly PublishedCase[] = [
  humidity('alduchov', alduchovEskridge, [20, 15, '72.93876680928582']),
  humidity('alduchov', alduchovEskridge, [25, 20, '73.8025121880607']),
  humidity('alduchov', alduchovEskridge, [30, 25, '74.62820502423823']),
  humidity('alduchov', alduchovEskridge, [10, 8, '87.38323744820416']),
  humidity('wmo', wmoMagnus, [20, 15, '72.95185312581116']),
  humidity('wmo', wmoMagnus, [25, 20, '73.81500029087906']),
  humidity('wmo', wmoMagnus, [30, 25, '74.6401272083123']),
  humidity('wmo', wmoMagnus, [10, 8, '87.39018119185337']),
];

const dewTable = (
  airC: number,
  relativeHumidity: number,
  printed: string,
  disagreement?: PublishedCase['disagreement'],
): PublishedCase => ({
  id: `process-dew-${airC}-${relativeHumidity}`,
  room: 'cure',
  title: `Dew point at ${airC} degC and ${relativeHumidity} %`,
  source: 'DEWPOINT-TABLE-MAKER',
  locus: 'table 2',
  unit: 'degC',
  printed,
  ours: () => dewPointOf(airC, relativeHumidity),
  ...(disagreement === undefined ? {} : { disagreement }),
});
const otherCoefficients =
  'the table was made with a formula that it does not state; the difference is below a tenth of a kelvin, against a margin of three';

export const dewPoints: readonly PublishedCase[] = [
  dewTable(10, 85, '7.6'),
  dewTable(16, 50, '5.6'),
  dewTable(20, 50, '9.3'),
  dewTable(15, 70, '9.5', { oursShouldBe: 9.569316, relative: 1e-6, reason: otherCoefficients }),
  dewTable(20, 65, '13.3', { oursShouldBe: 13.217377, relative: 1e-6, reason: otherCoefficients }),
  {
    id: 'process-dew-22-78',
    room: 'cure',
    title: "Dew point at 22 degC and 78 %, with the exercise's own coefficients",
    source: 'DEWPOINT-SOLVED-86009',
    locus: 'answer',
    unit: 'degC',
    printed: '17.98',
    ours: () => dewPointOf(22, 78, { a: 6.112, b: 17.27, c: 237.7 }),
  },
  {
    id: 'process-dew-70F-65',
    room: 'cure',
    title: 'Dew point at 70 degF and 65 %',
    source: 'DEWPOINT-CHART-DEGF',
    locus: 'chart',
    unit: 'degF',
    printed: '57',
    ours: () => fahrenheit(dewPointOf((70 - 32) / 1.8, 65)),
    disagreement: {
      oursShouldBe: 57.68929,
      relative: 1e-6,
      reason: 'the chart seems to cut the fraction off; 57.7 would round to 58',
    },
  },
  {
    id: 'process-water-0-100',
    room: 'cure',
    title: 'Water in saturated air at 0 degC',
    source: 'HUMIDITY-TABLE',
    locus: 'table',
    unit: 'g/m3',
    printed: '4.8',
    ours: () => absoluteHumidity(0, 100),
  },
  {
    id: 'process-water-25-50',
    room: 'cure',
    title: 'Water in air at 25 degC and 50 %',
    source: 'HUMIDITY-TABLE',
    locus: 'row +25 degC',
    unit: 'g/m3',
    printed: '11.5',
    ours: () => absoluteHumidity(25, 50),
  },
];

const magnusIsRounder = {
  relative: 0.004,
  because: 'the Magnus form is an approximation: 0.05 to 0.31 % below the handbook table from 5 to 50 degC',
} as const;
const fullIsClose = {
  relative: 0.0003,
  because: 'another full equation: within 0.012 % of the handbook table',
} as const;
const saturation = (airC: number, printed: string): readonly PublishedCase[] => [
  {
    id: `process-saturation-magnus-${airC}`,
    room: 'cure',
    title: `Saturation pressure at ${airC} degC, Magnus form`,
    source: 'ASHRAE-HOF-2017',
    locus: 'chapter 1 table 3',
    unit: 'Pa',
    printed,
    ours: () => 100 * saturationPressureHPa(airC),
    tolerance: magnusIsRounder,
  },
  {
    id: `process-saturation-full-${airC}`,
    room: 'cure',
    title: `Saturation pressure at ${airC} degC, full form`,
    source: 'ASHRAE-HOF-2017',
    locus: 'chapter 1 table 3',
    unit: 'Pa',
    printed,
    ours: () => fullSaturationPressurePa(airC),
    tolerance: fullIsClose,
  },
];
export const saturationPressures: readonly PublishedCase[] = [
  ...saturation(5, '872.6'),
  ...saturation(25, '3169.7'),
  ...saturation(50, '12351.3'),
];

const printedOverWater: readonly (readonly [number, string])[] = [
  [-20, '125.40'],
  [-10, '286.27'],
  [10, '1227.2'],
  [20, '2337.3'],
  [30, '4243.0'],
  [40, '7377.7'],
];

/** Another table, made with another equation, and reaching below freezing: over water, as dew is. */
export const saturationFromMeteorology: readonly PublishedCase[] = printedOverWater.flatMap(
  ([airC, printed]): readonly PublishedCase[] => [
    {
      id: `process-saturation-goff-magnus-${airC}`,
      room: 'cure',
      title: `Saturation pressure over water at ${airC} degC, Magnus form`,
      source: 'SMITHSONIAN-1951',
      locus: 'table over water, from memory',
      unit: 'Pa',
      printed,
      ours: () => 100 * saturationPressureHPa(airC),
      tolerance: {
        relative: 0.005,
        because: 'the Magnus form is an approximation, and the table stands on an equation of 1946',
      },
    },
    {
      id: `process-saturation-goff-full-${airC}`,
      room: 'cure',
      title: `Saturation pressure over water at ${airC} degC, full form`,
      source: 'SMITHSONIAN-1951',
      locus: 'table over water, from memory',
      unit: 'Pa',
      printed,
      ours: () => fullSaturationPressurePa(airC),
      tolerance: {
        relative: 0.002,
        because: 'two equations of different age; they part by 0.15 % at -20 degC',
      },
    },
  ],
);

const standard = (altitudeM: number, printed: string): PublishedCase => ({
  id: `process-air-H${altitudeM}`,
  room: 'press',
  title: `Pressure at a geopotential altitude of ${altitudeM} m`,
  source: 'US-STD-ATM-1976',
  locus: 'table, from memory',
  unit: 'Pa',
  printed,
  ours: () => standardPressurePa(altitudeM),
});
const geometric = (altitudeM: number, printed: string): PublishedCase => ({
  id: `process-air-Z${altitudeM}`,
  room: 'press',
  title: `Pressure at a geometric altitude of ${altitudeM} m`,
  source: 'US-STD-ATM-1976',
  locus: 'table, from memory',
  unit: 'Pa',
  printed,
  ours: () => standardPressurePa(geopotentialM(altitudeM)),
});

export const higherAtmospheres: readonly PublishedCase[] = [
  standard(500, '95461'),
  standard(2000, '79495'),
  standard(5000, '54020'),
  standard(10_000, '26436'),
  standard(11_000, '22632'),
  geometric(1000, '89876'),
  geometric(3000, '70121'),
  geometric(5000, '54048'),
];

export const atmospheres: readonly PublishedCase[] = [
  {
    id: 'process-air--500',
    room: 'press',
    title: 'Pressure 500 m below the sea',
    source: 'ASHRAE-HOF-2017',
    locus: 'chapter 1 table 1',
    unit: 'Pa',
    printed: '107478',
    ours: () => standardPressurePa(-500),
  },
  {
    id: 'process-air-0',
    room: 'press',
    title: 'Pressure at the sea',
    source: 'ASHRAE-HOF-2017',
    locus: 'chapter 1 table 1',
    unit: 'Pa',
    printed: '101325',
    ours: () => standardPressurePa(0),
  },
  {
    id: 'process-air-1000',
    room: 'press',
    title: 'Pressure at 1000 m',
    source: 'ASHRAE-HOF-2017',
    locus: 'chapter 1 table 1',
    unit: 'Pa',
    printed: '89875',
    ours: () => standardPressurePa(1000),
  },
  {
    id: 'process-air-1000-library',
    room: 'press',
    title: 'Pressure at 1000 m',
    source: 'METEO-LIBRARY-TESTS',
    locus: 'test of pressure from altitude',
    unit: 'Pa',
    printed: '89874.75',
    ours: () => standardPressurePa(1000),
    kind: 'independent-method',
    tolerance: {
      relative: 3e-6,
      because: 'that library uses an inverse form whose eight-digit constants are raised to the power 5.26',
    },
  },
  {
    id: 'process-air-Z2000',
    room: 'press',
    title: 'Pressure at a geometric altitude of 2000 m',
    source: 'US-STD-ATM-1976',
    locus: 'table',
    unit: 'Pa',
    printed: '79501',
    ours: () => standardPressurePa(geopotentialM(2000)),
  },
  {
    id: 'process-air-Z4000',
    room: 'press',
    title: 'Pressure at a geometric altitude of 4000 m',
    source: 'US-STD-ATM-1976',
    locus: 'table',
    unit: 'Pa',
    printed: '61660',
    ours: () => standardPressurePa(geopotentialM(4000)),
  },
  {
    id: 'process-air-Z-2000',
    room: 'press',
    title: 'Pressure at a geometric altitude of -2000 m',
    source: 'US-STD-ATM-1976',
    locus: 'table',
    unit: 'Pa',
    printed: '1.2778e5',
    ours: () => standardPressurePa(geopotentialM(-2000)),
  },
  {
    id: 'process-air-5000ft',
    room: 'press',
    title: 'Pressure at 5000 ft',
    source: 'STD-ATM-REFERENCE-PAGES',
    locus: 'imperial table',
    unit: 'psi',
    printed: '12.228',
    ours: () => standardPressurePa(5000 * 0.3048) / PA_PER_PSI,
  },
  {
    id: 'process-air-10000ft',
    room: 'press',
    title: 'Pressure at 10,000 ft',
    source: 'STD-ATM-REFERENCE-PAGES',
    locus: 'table 1',
    unit: 'psi',
    printed: '10.108',
    ours: () => standardPressurePa(10000 * 0.3048) / PA_PER_PSI,
    disagreement: {
      oursShouldBe: 10.1065,
      relative: 2e-5,
      reason: "the page's table does not follow its own equation, which gives 10.107",
    },
  },
];
