import { defineFormula } from '#lib/provenance';
import { degC, kelvinFromDegC } from '#lib/units';
import { inUnit } from '#lib/asking';

/** Molar gas constant, kJ/(mol K): exact since 2019. */
export const GAS_CONSTANT_KJ = 0.008314462618;

/** Temperature at which the catalogue's hours of a cure stand. */
export const CURE_REFERENCE_C = 25;

/**
 * How much faster a reaction runs at `toC` than at `fromC`: exp[Ea/R (1/T1 - 1/T2)].
 *
 * Ea  activationEnergyKJPerMol  kJ/mol   fromC, toC  degC
 *
 * Valid:  one mechanism in control over the range.
 * Source: [ARRHENIUS]
 * Worked: test/reference/cases/cure-rates.ts
 */
export const rateRatioOf = (activationEnergyKJPerMol: number, fromC: number, toC: number): number =>
  Math.exp(
    (activationEnergyKJPerMol / GAS_CONSTANT_KJ) *
      (1 / kelvinFromDegC(degC(fromC)) - 1 / kelvinFromDegC(degC(toC))),
  );

/** The activation energy (kJ/mol) that two times at two temperatures imply. */
export const energyFromTimes = (first: TimeAt, second: TimeAt): number =>
  (GAS_CONSTANT_KJ * Math.log(first.time / second.time)) /
  (1 / kelvinFromDegC(degC(first.temperatureC)) - 1 / kelvinFromDegC(degC(second.temperatureC)));

export interface TimeAt {
  readonly temperatureC: number;
  readonly time: number;
}

const temperature = (symbol: string, meaning: string) =>
  ({ symbol, unit: 'degC', meaning, above: -60, upTo: 300 }) as const;

export const rateRatio = defineFormula({
  id: 'process.rate-ratio',
  title: 'Ratio of cure rates at two temperatures',
  cite: { source: 'ARRHENIUS' },
  inputs: {
    activationEnergy: { symbol: 'Ea', unit: 'kJ/mol', meaning: 'activation energy', above: 0, upTo: 200 },
    fromC: temperature('T1', 'reference temperature'),
    toC: temperature('T2', 'temperature of the resin'),
  },
  output: { symbol: 'k2/k1', unit: '1', meaning: 'how much faster it cures' },
  evaluate: ({ activationEnergy, fromC, toC }) => inUnit('1', rateRatioOf(activationEnergy, fromC, toC)),
  // 55,000/8.314463 x (1/293.15 - 1/303.15) = 6614.98 x 1.125266e-4 = 0.744362; exp = 2.1051.
  worked: [
    {
      at: 'by hand: 55 kJ/mol from 20 to 30 degC',
      given: { activationEnergy: 55, fromC: 20, toC: 30 },
      printed: '2.105',
    },
  ],
});

/** A time known at two temperatures, carried to a third along one activation energy. */
export const timeBetweenTemperatures = defineFormula({
  id: 'process.time-between-temperatures',
  title: 'Time at a temperature, from times at two others',
  cite: { source: 'CURE-APP-NOTE', clause: 'Fig. 2' },
  inputs: {
    timeA: { symbol: 't_A', unit: 'min', meaning: 'time at the first temperature', above: 0 },
    temperatureA: temperature('T_A', 'first temperature'),
    timeB: { symbol: 't_B', unit: 'min', meaning: 'time at the second temperature', above: 0 },
    temperatureB: temperature('T_B', 'second temperature'),
    atC: temperature('T', 'temperature asked for'),
  },
  output: { symbol: 't', unit: 'min', meaning: 'time at the temperature asked for' },
  evaluate: ({ timeA, temperatureA, timeB, temperatureB, atC }) => {
    const energy = energyFromTimes(
      { temperatureC: temperatureA, time: timeA },
      { temperatureC: temperatureB, time: timeB },
    );
    return inUnit('min', timeA / rateRatioOf(energy, temperatureA, atC));
  },
  worked: [
    {
      at: '95 % cure in 16.4 min at 150 degC and 4.2 min at 200 degC; printed for 170 degC',
      given: { timeA: 16.4, temperatureA: 150, timeB: 4.2, temperatureB: 200, atC: 170 },
      printed: '9.2',
    },
  ],
});

/** The most a pot can heat itself when nothing is lost: heat of reaction over specific heat. */
export const adiabaticRise = defineFormula({
  id: 'process.adiabatic-rise',
  title: 'Ceiling of self-heating',
  cite: { source: 'LEE-LOOS-SPRINGER-1982', note: '473.6 J/g; specific heat from memory' },
  inputs: {
    heatJPerG: { symbol: 'H', unit: 'J/g', meaning: 'heat of reaction', above: 0, upTo: 1000 },
    specificHeatJPerGK: { symbol: 'cp', unit: 'J/gK', meaning: 'specific heat', above: 0.1, upTo: 5 },
  },
  output: { symbol: 'ΔT', unit: 'K', meaning: 'rise if no heat is lost' },
  evaluate: ({ heatJPerG, specificHeatJPerGK }) => inUnit('K', heatJPerG / specificHeatJPerGK),
  worked: [
    {
      at: 'prepreg resin, 473.6 J/g over 1.26 J/gK',
      given: { heatJPerG: 473.6, specificHeatJPerGK: 1.26 },
      printed: '375.9',
    },
  ],
});

export const arrheniusFormulas = [rateRatio, timeBetweenTemperatures, adiabaticRise];
