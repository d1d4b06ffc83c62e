import {
  energyFromTimes,
  equivalentAges,
  hoursToAge,
  rateRatioOf,
  temperatureAdjustedAge,
  temperatureTimeSum,
  timeBetweenTemperatures,
} from '#lib/cure';
import type { PublishedCase } from '../published-case.js';

type Given = Readonly<Record<string, number>>;
const valueOf = (formula: { readonly evaluate: (given: never) => number }, given: Given): number =>
  (formula.evaluate as (values: Given) => number)(given);

export const rates: readonly PublishedCase[] = [
  {
    id: 'process-rate-halving',
    room: 'cure',
    title: 'Energy at which ten kelvin from 20 degC double the rate',
    source: 'MAKER-HALVING',
    locus: 'each 18 degF halves the gel time',
    unit: 'times',
    printed: '2.0',
    ours: () => rateRatioOf(51.216, 20, 30),
  },
  {
    id: 'process-rate-55',
    room: 'cure',
    title: 'Rate at 30 against 20 degC, 55 kJ/mol',
    source: 'ARRHENIUS',
    locus: 'definition',
    unit: 'times',
    printed: '2.105',
    kind: 'by-hand',
    ours: () => rateRatioOf(55, 20, 30),
  },
  {
    id: 'process-energy-95',
    room: 'cure',
    title: 'Energy from 95 % cure in 16.4 min at 150 and 4.2 min at 200 degC',
    source: 'CURE-APP-NOTE',
    locus: 'Fig. 2, derived',
    unit: 'kJ/mol',
    printed: '45.35',
    kind: 'by-hand',
    ours: () => energyFromTimes({ temperatureC: 150, time: 16.4 }, { temperatureC: 200, time: 4.2 }),
  },
  {
    id: 'process-time-170',
    room: 'cure',
    title: 'Time to 95 % cure at 170 degC from its neighbours',
    source: 'CURE-APP-NOTE',
    locus: 'Fig. 2',
    unit: 'min',
    printed: '9.2',
    ours: () =>
      valueOf(timeBetweenTemperatures, {
        timeA: 16.4,
        temperatureA: 150,
        timeB: 4.2,
        temperatureB: 200,
        atC: 170,
      }),
  },
  {
    id: 'process-energy-elastomer',
    room: 'cure',
    title: 'Energy from use times of 20 min at 5 and 10 min at 25 degC',
    source: 'TM-10-8110-201',
    locus: 'para 5-14 c, derived',
    unit: 'kJ/mol',
    printed: '23.9',
    kind: 'by-hand',
    ours: () => energyFromTimes({ temperatureC: 5, time: 20 }, { temperatureC: 25, time: 10 }),
  },
  {
    id: 'process-time-elastomer-15',
    room: 'cure',
    title: 'Use time of the elastomer at 15 degC from its neighbours',
    source: 'TM-10-8110-201',
    locus: 'para 5-14 c',
    unit: 'min',
    printed: '15',
    ours: () =>
      valueOf(timeBetweenTemperatures, { timeA: 20, temperatureA: 5, timeB: 10, temperatureB: 25, atC: 15 }),
    disagreement: {
      oursShouldBe: 13.97,
      relative: 1e-3,
      reason:
        'the manual prints use times in steps of five minutes, evenly spaced; one activation energy gives 14.0 between them',
    },
  },
];

export const maturities: readonly PublishedCase[] = [
  {
    id: 'process-nurse-saul',
    room: 'cure',
    title: 'Maturity of 28 days at 15 degC, datum -11 degC',
    source: 'NURSE-SAUL',
    locus: 'worked example',
    unit: 'degC d',
    printed: '728',
    ours: () => temperatureTimeSum([{ duration: 28, temperatureC: 15 }], -11),
  },
  {
    id: 'process-adjusted-10',
    room: 'cure',
    title: 'Temperature-adjusted age of a day at 10 degC',
    source: 'FIB-MC-2010',
    locus: 'temperature-adjusted age, derived',
    unit: 'd',
    printed: '0.6161',
    kind: 'by-hand',
    ours: () => temperatureAdjustedAge([{ duration: 1, temperatureC: 10 }]),
  },
  {
    id: 'process-adjusted-20',
    room: 'cure',
    title: "Temperature-adjusted age of a day at 20 degC: the code's own rounding",
    source: 'FIB-MC-2010',
    locus: 'temperature-adjusted age, derived',
    unit: 'd',
    printed: '0.998',
    kind: 'by-hand',
    ours: () => temperatureAdjustedAge([{ duration: 1, temperatureC: 20 }]),
  },
  {
    id: 'process-adjusted-30',
    room: 'cure',
    title: 'Temperature-adjusted age of a day at 30 degC',
    source: 'FIB-MC-2010',
    locus: 'temperature-adjusted age, derived',
    unit: 'd',
    printed: '1.5662',
    kind: 'by-hand',
    ours: () => temperatureAdjustedAge([{ duration: 1, temperatureC: 30 }]),
  },
  {
    id: 'process-adjusted-mixed',
    room: 'cure',
    title: 'One day at 5, two at 12, three at 25 degC',
    source: 'FIB-MC-2010',
    locus: 'temperature-adjusted age, derived',
    unit: 'd',
    printed: '5.6038',
    kind: 'by-hand',
    ours: () =>
      temperatureAdjustedAge([
        { duration: 1, temperatureC: 5 },
        { duration: 2, temperatureC: 12 },
        { duration: 3, temperatureC: 25 },
      ]),
  },
  {
    id: 'process-age-integral',
    room: 'cure',
    title: 'Equivalent age at 25 degC of a day that swings 8 K about 18 degC',
    source: 'ARITHMETIC',
    locus: 'midpoint sum over every second of the day',
    unit: 'h',
    printed: '15.3472',
    kind: 'independent-method',
    ours: () => {
      const temperaturesC = Float64Array.from(
        { length: 49 },
        (_, step) => 18 + 8 * Math.cos((2 * Math.PI * (step / 2 - 6)) / 24),
      );
      return equivalentAges(
        { stepH: 0.5, temperaturesC },
        { referenceC: 25, activationEnergyKJPerMol: 55, stopsBelowC: 0 },
      )[48];
    },
    tolerance: {
      relative: 0.0005,
      because:
        'straight lines over half hours cut a swing of 8 K by at most 8 (pi/24)^2/8 = 0.017 K, 0.13 % of the rate, by turns down and up',
    },
  },
  {
    id: 'process-age-inverse',
    room: 'cure',
    title: 'Hours to an age at the reference temperature',
    source: 'ARITHMETIC',
    locus: 'identity',
    unit: 'h',
    printed: '7.25',
    kind: 'limit',
    ours: () =>
      hoursToAge(
        equivalentAges(
          { stepH: 0.5, temperaturesC: new Float64Array(40).fill(25) },
          { referenceC: 25, activationEnergyKJPerMol: 55, stopsBelowC: 5 },
        ),
        0.5,
        7.25,
      ) ?? Number.NaN,
  },
];
