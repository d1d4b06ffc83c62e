import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

const strip = {
  pressureKPa: { symbol: 'q', unit: 'kPa', meaning: 'load on the skin', from: 0 },
  spanMm: { symbol: 'L', unit: 'mm', meaning: 'span between supports', above: 0 },
  thicknessMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the skin', above: 0 },
} as const;

/**
 * Sag of a strip of skin alone between supports, simply supported: 5 q L4/(384 E I).
 *
 * Valid:  a long panel with its short side across the supports; a square one sags about a third of it, and large sags
 *         stretch the skin and stop short of the figure. It errs to the safe side.
 */
export const skinSag = defineFormula({
  id: 'process.skin-sag',
  title: 'Sag of the inner skin alone',
  cite: { source: 'CIVIL-BEAM-TABLE', clause: 'simply supported, uniform load' },
  inputs: { ...strip, modulusMPa: { symbol: 'E', unit: 'MPa', meaning: 'modulus of the skin', above: 0 } },
  output: { symbol: 'δ', unit: 'mm', meaning: 'sag at midspan' },
  evaluate: ({ pressureKPa, spanMm, thicknessMm, modulusMPa }) =>
    inUnit('mm', (5 * (pressureKPa / 1000) * spanMm ** 4) / (384 * modulusMPa * (thicknessMm ** 3 / 12))),
  // 5 x 0.002 x 300^4/(384 x 9000 x 3^3/12) = 8.1e7/7.776e6 = 10.4 mm.
  worked: [
    {
      at: 'by hand: 2 kPa on 3 mm of 9 GPa over 300 mm',
      given: { pressureKPa: 2, spanMm: 300, thicknessMm: 3, modulusMPa: 9000 },
      printed: '10.4',
    },
  ],
});

/** Bending stress of the same strip: 6 q L2/(8 t2). */
export const skinStress = defineFormula({
  id: 'process.skin-stress',
  title: 'Bending stress of the inner skin alone',
  cite: { source: 'CIVIL-BEAM-TABLE', clause: 'simply supported, uniform load' },
  inputs: strip,
  output: { symbol: 'σ', unit: 'MPa', meaning: 'bending stress at midspan' },
  evaluate: ({ pressureKPa, spanMm, thicknessMm }) =>
    inUnit('MPa', (6 * (pressureKPa / 1000) * spanMm ** 2) / (8 * thicknessMm ** 2)),
  // 6 x 0.002 x 300^2/(8 x 9) = 15 MPa.
  worked: [
    {
      at: 'by hand: 2 kPa on 3 mm over 300 mm',
      given: { pressureKPa: 2, spanMm: 300, thicknessMm: 3 },
      printed: '15.0',
    },
  ],
});

/** Spacing of props that keeps the sag of the bay within a limit; the end bay of a continuous strip: q L4/(185 E I). */
export const propSpacing = defineFormula({
  id: 'process.prop-spacing',
  title: 'Spacing of props under the inner skin',
  cite: { source: 'FROM-MEMORY', note: 'propped cantilever, maximum deflection qL⁴/185EI' },
  inputs: {
    pressureKPa: { symbol: 'q', unit: 'kPa', meaning: 'load on the skin', above: 0 },
    sagMm: { symbol: 'δ', unit: 'mm', meaning: 'sag allowed', above: 0 },
    thicknessMm: strip.thicknessMm,
    modulusMPa: { symbol: 'E', unit: 'MPa', meaning: 'modulus of the skin', above: 0 },
  },
  output: { symbol: 'L', unit: 'mm', meaning: 'spacing of props' },
  evaluate: ({ pressureKPa, sagMm, thicknessMm, modulusMPa }) =>
    inUnit('mm', ((sagMm * 185 * modulusMPa * thicknessMm ** 3) / 12 / (pressureKPa / 1000)) ** 0.25),
  // 1 x 185 x 9000 x 27/12/0.002 = 1.873e9; fourth root 208.0 mm.
  worked: [
    {
      at: 'by hand: 2 kPa on 3 mm of 9 GPa, 1 mm',
      given: { pressureKPa: 2, sagMm: 1, thicknessMm: 3, modulusMPa: 9000 },
      printed: '208',
    },
  ],
});

export const innerSkinFormulas = [skinSag, skinStress, propSpacing];
