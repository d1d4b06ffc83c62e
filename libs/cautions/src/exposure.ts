import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

/** Litres of a mole of gas at 25 degC and one atmosphere, as exposure limits are converted. */
const MOLE_L = 24.45;

export const massConcentration = defineFormula({
  id: 'process.mass-concentration',
  title: 'Vapour in the air by mass',
  cite: { source: 'NIOSH-POCKET-GUIDE', clause: 'conversion factors' },
  inputs: {
    ppm: { symbol: 'C', unit: 'ppm', meaning: 'vapour by volume', from: 0 },
    molarMass: { symbol: 'M', unit: 'g/mol', meaning: 'molar mass', above: 0 },
  },
  output: { symbol: 'c', unit: 'mg/m3', meaning: 'vapour by mass' },
  evaluate: ({ ppm, molarMass }) => inUnit('mg/m3', (ppm * molarMass) / MOLE_L),
  worked: [
    { at: 'styrene, 1 ppm', given: { ppm: 1, molarMass: 104.15 }, printed: '4.26' },
    { at: 'hexamethylene diisocyanate, 1 ppm', given: { ppm: 1, molarMass: 168.2 }, printed: '6.88' },
  ],
});

export const exposureFormulas = [massConcentration];
