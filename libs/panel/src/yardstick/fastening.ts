import { mPa, newton } from '#lib/units';
import { defineFormula } from '#lib/provenance';

/** By hand: 8 N.m is 8000 N.mm; 8000/(0.2 x 8) = 5000 N. The 0.2 is for dry steel threads; greased ones clamp harder. */
export const clampForceOfTorque = defineFormula({
  id: 'panel.fastening.clamp-force',
  title: 'Clamp force of a tightened bolt',
  cite: { source: 'FROM-MEMORY', note: 'nut factor 0.2, dry threads; spread a quarter either way' },
  inputs: {
    torqueNmm: { symbol: 'T', unit: 'N.mm', meaning: 'tightening torque', above: 0 },
    boltMm: { symbol: 'd_b', unit: 'mm', meaning: 'bolt diameter', above: 0 },
    nutFactor: { symbol: 'K', unit: '1', meaning: 'nut factor', from: 0.1, upTo: 0.35 },
  },
  output: { symbol: 'F', unit: 'N', meaning: 'clamp force' },
  evaluate: ({ torqueNmm, boltMm, nutFactor }) => newton(torqueNmm / (nutFactor * boltMm)),
  worked: [{ at: 'by hand', given: { torqueNmm: 8000, boltMm: 8, nutFactor: 0.2 }, printed: '5000' }],
});

/** By hand: a 24 mm washer on an 8 mm hole: pi/4 (576 - 64) = 402.12 mm2; 2000/402.12 = 4.974. */
export const bearingOfWasher = defineFormula({
  id: 'panel.fastening.washer-bearing',
  title: 'Pressure of a round washer',
  cite: { source: 'PANEL-DERIVED', note: 'force over ring area' },
  inputs: {
    forceN: { symbol: 'F', unit: 'N', meaning: 'clamp or pull on the bolt', from: 0 },
    washerMm: { symbol: 'd_w', unit: 'mm', meaning: 'washer diameter', above: 0 },
    holeMm: { symbol: 'd_h', unit: 'mm', meaning: 'hole diameter', from: 0 },
  },
  output: { symbol: 'p', unit: 'MPa', meaning: 'pressure under the washer' },
  evaluate: ({ forceN, washerMm, holeMm }) => mPa(forceN / ((Math.PI / 4) * (washerMm ** 2 - holeMm ** 2))),
  worked: [{ at: 'by hand', given: { forceN: 2000, washerMm: 24, holeMm: 8 }, printed: '4.974' }],
});

/** By hand: 3000/(8 x 5) = 75. */
export const bearingOfBolt = defineFormula({
  id: 'panel.fastening.bolt-bearing',
  title: 'Bearing stress of a bolt on what it bears against',
  cite: { source: 'PANEL-DERIVED', note: 'force over projected area' },
  inputs: {
    forceN: { symbol: 'F', unit: 'N', meaning: 'shear on the bolt', from: 0 },
    boltMm: { symbol: 'd_b', unit: 'mm', meaning: 'bolt diameter', above: 0 },
    bearingMm: { symbol: 't', unit: 'mm', meaning: 'thickness that bears', above: 0 },
  },
  output: { symbol: 'sigma_b', unit: 'MPa', meaning: 'bearing stress' },
  evaluate: ({ forceN, boltMm, bearingMm }) => mPa(forceN / (boltMm * bearingMm)),
  worked: [{ at: 'by hand', given: { forceN: 3000, boltMm: 8, bearingMm: 5 }, printed: '75' }],
});

/** By hand: 4000/(400 x 16) = 0.625. */
export const punchingShear = defineFormula({
  id: 'panel.fastening.punching-shear',
  title: 'Core shear round a backing plate',
  cite: { source: 'PANEL-DERIVED', note: 'pull over perimeter times distance between skin middles' },
  inputs: {
    pullN: { symbol: 'F', unit: 'N', meaning: 'pull on the fitting', from: 0 },
    perimeterMm: { symbol: 'u', unit: 'mm', meaning: 'perimeter of the plate or washers', above: 0 },
    leverMm: { symbol: 'd', unit: 'mm', meaning: 'distance between skin middles', above: 0 },
  },
  output: { symbol: 'tau', unit: 'MPa', meaning: 'core shear round the plate' },
  evaluate: ({ pullN, perimeterMm, leverMm }) => mPa(pullN / (perimeterMm * leverMm)),
  worked: [{ at: 'by hand', given: { pullN: 4000, perimeterMm: 400, leverMm: 16 }, printed: '0.625' }],
});

export const fasteningFormulas = [clampForceOfTorque, bearingOfWasher, bearingOfBolt, punchingShear] as const;
