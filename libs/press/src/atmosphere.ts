import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

const SEA_LEVEL_PA = 101325;
const SEA_LEVEL_K = 288.15;
const LAPSE_K_PER_M = 0.0065;
/** g0 M/(R* L) of the standard atmosphere. */
const EXPONENT = 5.25588;
/** Radius of the earth in the standard, m. */
const EARTH_M = 6_356_766;

/** Geopotential from geometric altitude, m: H = r0 Z/(r0 + Z). Source: [US-STD-ATM-1976]. */
export const geopotentialM = (geometricM: number): number => (EARTH_M * geometricM) / (EARTH_M + geometricM);

/**
 * Pressure of the standard atmosphere, Pa: p = 101325 (1 - 0.0065 H/288.15)^5.25588, H geopotential m.
 *
 * Valid:  the troposphere, -5000 to 11,000 m; the day's weather moves it by 3 % either way.
 * Source: [ICAO-7488], [US-STD-ATM-1976]
 * Worked: test/reference/cases/cure-air.ts
 */
export const standardPressurePa = (altitudeM: number): number =>
  SEA_LEVEL_PA * (1 - (LAPSE_K_PER_M * altitudeM) / SEA_LEVEL_K) ** EXPONENT;

export const ambientPressure = defineFormula({
  id: 'process.ambient-pressure',
  title: 'Air pressure at an altitude',
  cite: { source: 'US-STD-ATM-1976' },
  inputs: {
    altitudeM: { symbol: 'H', unit: 'm', meaning: 'altitude above the sea', from: -500, upTo: 5000 },
  },
  output: { symbol: 'p', unit: 'kPa', meaning: 'pressure of the air' },
  evaluate: ({ altitudeM }) => inUnit('kPa', standardPressurePa(altitudeM) / 1000),
  worked: [{ at: 'handbook table 1, 1000 m', given: { altitudeM: 1000 }, printed: '89.875' }],
});

/** A bag presses with what the pump takes away, never with the whole air. */
export const vacuumPressure = defineFormula({
  id: 'process.vacuum-pressure',
  title: 'Pressure of a vacuum bag',
  cite: { source: 'TM-1-1500-204-23-11', clause: 'negative pressure' },
  inputs: {
    ambient: { symbol: 'p', unit: 'kPa', meaning: 'pressure of the air', above: 0, upTo: 110 },
    vacuumFraction: {
      symbol: 'v',
      unit: '1',
      meaning: 'share of the air that the pump takes away',
      from: 0,
      upTo: 0.98,
    },
  },
  output: { symbol: 'p_v', unit: 'kPa', meaning: 'pressure of the bag' },
  evaluate: ({ ambient, vacuumFraction }) => inUnit('kPa', ambient * vacuumFraction),
  // 22 inHg of 29.92 is 0.7353 of 101.325 kPa: 74.5 kPa, the 10.8 psi that the manual prints.
  worked: [
    {
      at: '22 inHg at sea level, printed as 10.8 psi',
      given: { ambient: 101.325, vacuumFraction: 0.7353 },
      printed: '74.5',
    },
  ],
});

/** Time to empty a tight bag: t = (V/S) ln(p0/p1). */
export const pumpDownTime = defineFormula({
  id: 'process.pump-down-time',
  title: 'Time to pump a bag down',
  cite: { source: 'VACUUM-GUIDE', clause: 'example A' },
  inputs: {
    volumeL: { symbol: 'V', unit: 'l', meaning: 'air in the bag', above: 0 },
    pumpLPerMin: { symbol: 'S', unit: 'l/min', meaning: 'free flow of the pump', above: 0 },
    fromKPa: { symbol: 'p0', unit: 'kPa', meaning: 'pressure at the start', above: 0 },
    toKPa: { symbol: 'p1', unit: 'kPa', meaning: 'pressure at the end', above: 0 },
  },
  output: { symbol: 't', unit: 'min', meaning: 'time' },
  evaluate: ({ volumeL, pumpLPerMin, fromKPa, toKPa }) =>
    inUnit('min', (volumeL / pumpLPerMin) * Math.log(fromKPa / toKPa)),
  worked: [
    {
      at: 'by hand: 20 l at 50 l/min from 101.3 to 10 kPa, 0.4 ln 10.13',
      given: { volumeL: 20, pumpLPerMin: 50, fromKPa: 101.3, toKPa: 10 },
      printed: '0.926',
    },
  ],
});

/** Flow that leaks into a bag: q = V dp/dt. */
export const leakLoad = defineFormula({
  id: 'process.leak-load',
  title: 'Leak of a bag from its drop test',
  cite: { source: 'VACUUM-GUIDE' },
  inputs: {
    volumeL: { symbol: 'V', unit: 'l', meaning: 'air in the bag', above: 0 },
    dropKPa: { symbol: 'Δp', unit: 'kPa', meaning: 'loss of vacuum, pump shut off', from: 0 },
    minutes: { symbol: 'Δt', unit: 'min', meaning: 'time of the test', above: 0 },
  },
  output: { symbol: 'q', unit: 'kPa.l/min', meaning: 'leak' },
  evaluate: ({ volumeL, dropKPa, minutes }) => inUnit('kPa.l/min', (volumeL * dropKPa) / minutes),
  // 1 inHg (3.386 kPa) a minute in 20 l is 67.7 kPa l/min, which is 11.3 mbar l/s.
  worked: [
    {
      at: 'by hand: 1 inHg a minute in 20 l',
      given: { volumeL: 20, dropKPa: 3.38639, minutes: 1 },
      printed: '67.7',
    },
  ],
});

export const atmosphereFormulas = [ambientPressure, vacuumPressure, pumpDownTime, leakLoad];
