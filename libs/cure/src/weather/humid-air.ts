import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

/** Magnus form e = a exp(bT/(c+T)), hPa and degC. */
export interface MagnusCoefficients {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** Source: [WMO-8], -45 to 60 degC. The set this room uses. */
export const wmoMagnus: MagnusCoefficients = { a: 6.112, b: 17.62, c: 243.12 };
/** Source: [ALDUCHOV-ESKRIDGE-1996] eq. 21, -40 to 50 degC. */
export const alduchovEskridge: MagnusCoefficients = { a: 6.1094, b: 17.625, c: 243.04 };

/**
 * Saturation vapour pressure over water, hPa: e_s = a exp(bT/(c+T)).
 *
 * Valid:  0.05 to 0.31 % below the handbook table from 5 to 50 degC.
 * Source: [WMO-8]
 * Worked: test/reference/cases/cure-air.ts
 */
export const saturationPressureHPa = (
  temperatureC: number,
  { a, b, c }: MagnusCoefficients = wmoMagnus,
): number => a * Math.exp((b * temperatureC) / (c + temperatureC));

/** Relative humidity (%) from air temperature and dew point. Source: [WMO-8]. */
export const humidityFromDewPoint = (
  temperatureC: number,
  dewPointC: number,
  set: MagnusCoefficients = wmoMagnus,
): number => (100 * saturationPressureHPa(dewPointC, set)) / saturationPressureHPa(temperatureC, set);

/** Dew point, degC: gamma = ln(RH/100) + bT/(c+T); Td = c gamma/(b - gamma). Source: [WMO-8]. */
export function dewPointOf(
  temperatureC: number,
  relativeHumidityPercent: number,
  { b, c }: MagnusCoefficients = wmoMagnus,
): number {
  const gamma = Math.log(relativeHumidityPercent / 100) + (b * temperatureC) / (c + temperatureC);
  return (c * gamma) / (b - gamma);
}

const WATER_VAPOUR_G_K_PER_J = 216.7;
const ZERO_C_IN_K = 273.15;

/** Water in the air, g/m3: 216.7 e/T. Source: [WMO-8] vapour pressure, ideal gas. */
export const absoluteHumidity = (temperatureC: number, relativeHumidityPercent: number): number =>
  (WATER_VAPOUR_G_K_PER_J * saturationPressureHPa(temperatureC) * (relativeHumidityPercent / 100)) /
  (temperatureC + ZERO_C_IN_K);

/**
 * Saturation vapour pressure in its full form, Pa, T in K; the yardstick that the Magnus form is held against.
 *
 * Source: [SONNTAG-1994]
 * Worked: test/reference/cases/cure-air.ts
 */
export function fullSaturationPressurePa(temperatureC: number): number {
  const t = temperatureC + ZERO_C_IN_K;
  return Math.exp(
    -6096.9385 / t + 21.2409642 - 2.711193e-2 * t + 1.673952e-5 * t * t + 2.433502 * Math.log(t),
  );
}

export const dewPoint = defineFormula({
  id: 'process.dew-point',
  title: 'Dew point of the air',
  cite: { source: 'WMO-8', clause: 'Magnus form' },
  inputs: {
    airC: { symbol: 'T', unit: 'degC', meaning: 'temperature of the air', from: -45, upTo: 60 },
    relativeHumidity: { symbol: 'RH', unit: '%', meaning: 'relative humidity', above: 0, upTo: 100 },
  },
  output: { symbol: 'Td', unit: 'degC', meaning: 'dew point' },
  evaluate: ({ airC, relativeHumidity }) => inUnit('degC', dewPointOf(airC, relativeHumidity)),
  worked: [
    {
      at: "maker's dew point table, 10 degC and 85 %",
      given: { airC: 10, relativeHumidity: 85 },
      printed: '7.6',
    },
    {
      at: "maker's dew point table, 20 degC and 50 %",
      given: { airC: 20, relativeHumidity: 50 },
      printed: '9.3',
    },
  ],
});

export const humidAirFormulas = [dewPoint];
