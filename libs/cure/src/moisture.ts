import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

/**
 * Moisture that wood comes to in steady air, %: Simpson's adsorption form.
 *
 * W, K, K1, K2 are quadratics of temperature in degC; h is relative humidity as a fraction.
 * Valid:  -1.1 to 132 degC, 5 to 95 % humidity; a tenth of a per cent is not meaningful, says the handbook.
 * Source: [FPL-GTR-282-CH4] eq. 4-5
 * Worked: test/reference/cases/cure-and-resin-materials.ts
 */
export function equilibriumMoisture(temperatureC: number, humidityFraction: number): number {
  const t = temperatureC;
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = k * humidityFraction;
  return (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh));
}

export const equilibriumMoistureContent = defineFormula({
  id: 'process.equilibrium-moisture',
  title: 'Moisture that wood comes to in steady air',
  cite: { source: 'FPL-GTR-282-CH4', clause: 'eq. 4-5' },
  inputs: {
    airC: { symbol: 'T', unit: 'degC', meaning: 'temperature of the air', from: -1.1, upTo: 132 },
    relativeHumidity: { symbol: 'RH', unit: '%', meaning: 'relative humidity', from: 5, upTo: 95 },
  },
  output: { symbol: 'EMC', unit: '%', meaning: 'moisture content' },
  evaluate: ({ airC, relativeHumidity }) => inUnit('%', equilibriumMoisture(airC, relativeHumidity / 100)),
  worked: [
    { at: 'table 4-2, 21.1 degC and 75 %', given: { airC: 21.1, relativeHumidity: 75 }, printed: '14.4' },
    { at: 'table 4-2, 21.1 degC and 5 %', given: { airC: 21.1, relativeHumidity: 5 }, printed: '1.3' },
  ],
});

export const moistureContent = defineFormula({
  id: 'process.moisture-content',
  title: 'Moisture content of a plug, weighed wet and dry',
  cite: { source: 'MOISTURE-FORUM-EXAMPLE' },
  inputs: {
    wetG: { symbol: 'm_w', unit: 'g', meaning: 'mass wet', above: 0 },
    dryG: { symbol: 'm_d', unit: 'g', meaning: 'mass oven-dry', above: 0 },
  },
  output: { symbol: 'MC', unit: '%', meaning: 'moisture content' },
  evaluate: ({ wetG, dryG }) => inUnit('%', (100 * (wetG - dryG)) / dryG),
  worked: [{ at: 'wet 247 g, dry 183 g', given: { wetG: 247, dryG: 183 }, printed: '34.97' }],
});

/** Moisture at which the wood no longer floats, %: 100 (1 - Gb)/Gb. Source: [FPL-GTR-282-CH4] eq. 4-4. */
export const sinkMoisture = (basicGravity: number): number => (100 * (1 - basicGravity)) / basicGravity;
/** Moisture of wood with every pore full, %: 100 (1.54 - Gb)/(1.54 Gb). Source: [FPL-GTR-282-CH4] eq. 4-3. */
export const greatestMoisture = (basicGravity: number): number =>
  (100 * (1.54 - basicGravity)) / (1.54 * basicGravity);

/** Water that must leave a core to dry it. */
export const waterInCore = defineFormula({
  id: 'process.water-in-core',
  title: 'Water to leave the core',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'area of wet core', from: 0 },
    thicknessMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the core', from: 0 },
    dryDensity: { symbol: 'ρ', unit: 'kg/m3', meaning: 'oven-dry density of the core', from: 0 },
    wetPercent: { symbol: 'MC1', unit: '%', meaning: 'moisture now', from: 0 },
    dryPercent: { symbol: 'MC2', unit: '%', meaning: 'moisture wanted', from: 0 },
  },
  output: { symbol: 'm', unit: 'kg', meaning: 'water' },
  evaluate: ({ areaM2, thicknessMm, dryDensity, wetPercent, dryPercent }) =>
    inUnit('kg', (areaM2 * thicknessMm * dryDensity * (wetPercent - dryPercent)) / 100 / 1000),
  // 1 m2 x 0.0127 m x 140 kg/m3 x 1.38 = 2.4536 kg.
  worked: [
    {
      at: 'by hand: 1 m2 of 12.7 mm balsa from 150 to 12 %',
      given: { areaM2: 1, thicknessMm: 12.7, dryDensity: 140, wetPercent: 150, dryPercent: 12 },
      printed: '2.45',
    },
  ],
});

export const moistureFormulas = [equilibriumMoistureContent, moistureContent, waterInCore];
