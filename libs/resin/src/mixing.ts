import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

/** Hardener in a batch weighed to a ratio of parts by mass. */
export const hardenerInBatch = defineFormula({
  id: 'process.hardener-in-batch',
  title: 'Hardener in a batch, by mass',
  cite: { source: 'TM-1-1500-204-23-1', clause: 'step (d)' },
  inputs: {
    mixedG: { symbol: 'm', unit: 'g', meaning: 'mass of resin and hardener together', from: 0 },
    partsByMass: {
      symbol: 'h',
      unit: 'phr',
      meaning: 'parts of hardener to 100 parts of resin, by mass',
      above: 0,
      upTo: 200,
    },
  },
  output: { symbol: 'm_h', unit: 'g', meaning: 'hardener in the batch' },
  evaluate: ({ mixedG, partsByMass }) => inUnit('g', (mixedG * partsByMass) / (100 + partsByMass)),
  worked: [{ at: 'epoxy abrasion coat, 100 : 10', given: { mixedG: 110, partsByMass: 10 }, printed: '10.0' }],
});

/** A ratio by volume weighed out. */
export const partsByMassFromVolume = defineFormula({
  id: 'process.parts-by-mass-from-volume',
  title: 'Parts by mass from parts by volume',
  cite: { source: 'MAKER-RATIO-SHEET', clause: 'typical liquid properties' },
  inputs: {
    partsByVolume: {
      symbol: 'v',
      unit: 'phr by volume',
      meaning: 'parts of hardener to 100 parts of resin, by volume',
      above: 0,
      upTo: 200,
    },
    hardenerDensity: {
      symbol: 'ρ_h',
      unit: 'g/cm3',
      meaning: 'density of the hardener',
      above: 0.5,
      upTo: 3,
    },
    resinDensity: { symbol: 'ρ_r', unit: 'g/cm3', meaning: 'density of the resin', above: 0.5, upTo: 3 },
  },
  output: { symbol: 'h', unit: 'phr', meaning: 'parts of hardener to 100 parts of resin, by mass' },
  evaluate: ({ partsByVolume, hardenerDensity, resinDensity }) =>
    inUnit('phr', (partsByVolume * hardenerDensity) / resinDensity),
  worked: [
    {
      at: '100 : 22 by volume is 100 : 20 by weight',
      given: { partsByVolume: 22, hardenerDensity: 0.909, resinDensity: 1 },
      printed: '20.0',
    },
  ],
});

/** Density of mixed resin and hardener: the volumes of the parts add. */
export const mixedDensity = defineFormula({
  id: 'process.mixed-density',
  title: 'Density of mixed resin and hardener',
  cite: { source: 'MIX-BY-VOLUMES' },
  inputs: {
    partsByMass: {
      symbol: 'h',
      unit: 'phr',
      meaning: 'parts of hardener to 100 parts of resin, by mass',
      above: 0,
      upTo: 200,
    },
    resinDensity: { symbol: 'ρ_r', unit: 'g/cm3', meaning: 'density of the resin', above: 0.5, upTo: 3 },
    hardenerDensity: {
      symbol: 'ρ_h',
      unit: 'g/cm3',
      meaning: 'density of the hardener',
      above: 0.5,
      upTo: 3,
    },
  },
  output: { symbol: 'ρ', unit: 'g/cm3', meaning: 'density of the mixed resin' },
  evaluate: ({ partsByMass, resinDensity, hardenerDensity }) =>
    inUnit('g/cm3', (100 + partsByMass) / (100 / resinDensity + partsByMass / hardenerDensity)),
  // 100 g at 1.15 is 86.957 ml, 20 g at 1.00 is 20.000 ml; 120 g in 106.957 ml is 1.1220 g/ml.
  worked: [
    {
      at: 'by hand: 100 g at 1.15 and 20 g at 1.00',
      given: { partsByMass: 20, resinDensity: 1.15, hardenerDensity: 1 },
      printed: '1.122',
    },
  ],
});

/** Density of a thickened mix; bulk density of the filler is for scoops, never for this. */
export const thickenedDensity = defineFormula({
  id: 'process.thickened-density',
  title: 'Density of thickened resin',
  cite: { source: 'MIX-BY-VOLUMES' },
  inputs: {
    mixedDensity: { symbol: 'ρ', unit: 'g/cm3', meaning: 'density of the mixed resin', above: 0.5, upTo: 3 },
    partsPerHundred: {
      symbol: 'f',
      unit: 'phr',
      meaning: 'parts of filler to 100 parts of mixed resin, by mass',
      from: 0,
      upTo: 300,
    },
    fillerDensity: {
      symbol: 'ρ_f',
      unit: 'g/cm3',
      meaning: 'true density of the filler',
      above: 0.05,
      upTo: 5,
    },
  },
  output: { symbol: 'ρ_t', unit: 'g/cm3', meaning: 'density of the thickened resin' },
  evaluate: ({ mixedDensity: density, partsPerHundred, fillerDensity }) =>
    inUnit('g/cm3', (100 + partsPerHundred) / (100 / density + partsPerHundred / fillerDensity)),
  worked: [
    {
      at: 'by hand: 100 g at 1.12 and 5 g of silica at 2.2',
      given: { mixedDensity: 1.12, partsPerHundred: 5, fillerDensity: 2.2 },
      printed: '1.147',
    },
    {
      at: 'by hand: 100 g at 1.12 and 20 g of spheres at 0.20',
      given: { mixedDensity: 1.12, partsPerHundred: 20, fillerDensity: 0.2 },
      printed: '0.634',
    },
  ],
});

/** Mixed resin (without its filler) in a volume of thickened resin. */
export const mixedResinInVolume = defineFormula({
  id: 'process.mixed-resin-in-volume',
  title: 'Mixed resin in a volume of thickened resin',
  cite: { source: 'MIX-BY-VOLUMES' },
  inputs: {
    volumeL: { symbol: 'V', unit: 'l', meaning: 'volume of the thickened resin', from: 0 },
    thickenedDensity: {
      symbol: 'ρ_t',
      unit: 'g/cm3',
      meaning: 'density of the thickened resin',
      above: 0.05,
      upTo: 5,
    },
    partsPerHundred: {
      symbol: 'f',
      unit: 'phr',
      meaning: 'parts of filler to 100 parts of mixed resin, by mass',
      from: 0,
      upTo: 300,
    },
  },
  output: { symbol: 'm', unit: 'g', meaning: 'mixed resin without filler' },
  evaluate: ({ volumeL, thickenedDensity: density, partsPerHundred }) =>
    inUnit('g', (volumeL * 1000 * density) / (1 + partsPerHundred / 100)),
  // 189 ml at 0.634 g/ml is 119.8 g, of which 100/120 is resin: 99.9 g.
  worked: [
    {
      at: 'by hand: 189 ml of the sphere mix above',
      given: { volumeL: 0.189, thickenedDensity: 0.634, partsPerHundred: 20 },
      printed: '99.9',
    },
  ],
});

export const mixingFormulas = [
  hardenerInBatch,
  partsByMassFromVolume,
  mixedDensity,
  thickenedDensity,
  mixedResinInVolume,
];
