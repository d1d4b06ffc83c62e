import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

/** Standard gravity, m/s2: exact by definition. */
const GRAVITY = 9.80665;

export const weightPressure = defineFormula({
  id: 'process.weight-pressure',
  title: 'Pressure of weights',
  cite: { source: 'ARITHMETIC', note: 'p = m g / A' },
  inputs: {
    massKg: { symbol: 'm', unit: 'kg', meaning: 'mass of the weights', from: 0 },
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'area they press on', above: 0 },
  },
  output: { symbol: 'p', unit: 'kPa', meaning: 'pressure' },
  evaluate: ({ massKg, areaM2 }) => inUnit('kPa', (massKg * GRAVITY) / areaM2 / 1000),
  // 25 kg x 9.80665 / 0.05 m2 = 4903 Pa.
  worked: [{ at: 'by hand: 25 kg on 0.05 m2', given: { massKg: 25, areaM2: 0.05 }, printed: '4.9' }],
});

export const weightNeeded = defineFormula({
  id: 'process.weight-needed',
  title: 'Mass of weights for a pressure',
  cite: { source: 'ARITHMETIC', note: 'm = p A / g' },
  inputs: {
    pressureKPa: { symbol: 'p', unit: 'kPa', meaning: 'pressure', from: 0 },
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'area', from: 0 },
  },
  output: { symbol: 'm', unit: 'kg', meaning: 'mass of weights' },
  evaluate: ({ pressureKPa, areaM2 }) => inUnit('kg', (pressureKPa * 1000 * areaM2) / GRAVITY),
  // 2 kPa on 0.1 m2 is 200 N, 20.4 kg: the bag of 20 kg on 0.1 m2 that gives about 2 kPa.
  worked: [{ at: 'by hand: 2 kPa on 0.1 m2', given: { pressureKPa: 2, areaM2: 0.1 }, printed: '20.4' }],
});

/**
 * Uniform pressure that bends a flat strip of core onto a camber: M = E I/R = p L2/8, so p = 8 E t3/(12 R L2).
 *
 * Valid:  plain core, elastic; scored sheet needs almost none.
 */
export const camberPressure = defineFormula({
  id: 'process.camber-pressure',
  title: 'Pressure to bend core onto the camber',
  cite: { source: 'ARITHMETIC', note: 'beam under uniform load, M = pL²/8 = EI/R' },
  inputs: {
    modulusMPa: { symbol: 'E', unit: 'MPa', meaning: 'modulus of the core along the curve', above: 0 },
    thicknessMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the core', above: 0 },
    radiusMm: { symbol: 'R', unit: 'mm', meaning: 'radius of the camber', above: 0 },
    lengthMm: { symbol: 'L', unit: 'mm', meaning: 'length of the piece along the curve', above: 0 },
  },
  output: { symbol: 'p', unit: 'kPa', meaning: 'pressure' },
  evaluate: ({ modulusMPa, thicknessMm, radiusMm, lengthMm }) =>
    inUnit('kPa', (1000 * 8 * modulusMPa * thicknessMm ** 3) / (12 * radiusMm * lengthMm ** 2)),
  // 8 x 100 x 12.7^3 / (12 x 5000 x 400^2) = 1,638,706 / 9.6e9 = 1.707e-4 MPa.
  worked: [
    {
      at: 'by hand: foam of 100 MPa, 12.7 mm, 5 m radius, 400 mm long',
      given: { modulusMPa: 100, thicknessMm: 12.7, radiusMm: 5000, lengthMm: 400 },
      printed: '0.17',
    },
  ],
});

export const weightFormulas = [weightPressure, weightNeeded, camberPressure];
