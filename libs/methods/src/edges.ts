import { inUnit } from '#lib/asking';
import { defineFormula } from '#lib/provenance';

/** Flange that a taper of the outer skin lands on, with a little to grind. */
export const flangeForTaper = defineFormula({
  id: 'methods.flange-for-taper',
  title: 'Flange for a taper',
  cite: { source: 'ARITHMETIC', note: 'f = k t + 10 mm' },
  inputs: {
    ratio: { symbol: 'k', unit: '1', meaning: 'taper ratio', from: 3, upTo: 100 },
    skinMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the skin', above: 0, upTo: 60 },
  },
  output: { symbol: 'f', unit: 'mm', meaning: 'flange' },
  evaluate: ({ ratio, skinMm }) => inUnit('mm', ratio * skinMm + 10),
  // 12 x 3 + 10
  worked: [{ at: 'by hand: 12:1 on 3 mm', given: { ratio: 12, skinMm: 3 }, printed: '46' }],
});

/** Paste in a metre of routed strip. */
export const pastePerMetre = defineFormula({
  id: 'methods.paste-per-metre',
  title: 'Paste in a metre of strip',
  cite: { source: 'ARITHMETIC', note: 'V = w t' },
  inputs: {
    widthMm: { symbol: 'w', unit: 'mm', meaning: 'width of the strip', above: 0, upTo: 300 },
    coreMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the core', above: 0, upTo: 120 },
  },
  output: { symbol: 'V', unit: 'l/m', meaning: 'paste in a metre' },
  evaluate: ({ widthMm, coreMm }) => inUnit('l/m', (widthMm * coreMm) / 1000),
  // 50 x 12.7 = 635 ml
  worked: [{ at: 'by hand: 50 mm of 12.7 mm core', given: { widthMm: 50, coreMm: 12.7 }, printed: '0.635' }],
});

export const edgeFormulas = [flangeForTaper, pastePerMetre];

/** More than this in a metre is filled in two lifts. Source: [FROM-MEMORY]. */
export const LIFT_L_PER_M = 0.5;
export const liftsFor = (litresPerM: number): number => Math.max(1, Math.ceil(litresPerM / LIFT_L_PER_M));
