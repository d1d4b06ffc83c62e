import { inUnit } from '#lib/asking';
import { defineFormula } from '#lib/provenance';

const MM2_PER_M2 = 1e6;

/** Screws in a square metre of planked overlay. */
export const screwsPerM2 = defineFormula({
  id: 'methods.overlay-screws',
  title: 'Screws of a planked overlay in a square metre',
  cite: { source: 'ARITHMETIC', note: 'n = 1/(a b)' },
  inputs: {
    plankMm: { symbol: 'a', unit: 'mm', meaning: 'plank with its seam', above: 0, upTo: 500 },
    pitchMm: { symbol: 'b', unit: 'mm', meaning: 'pitch along the plank', above: 0, upTo: 1000 },
  },
  output: { symbol: 'n', unit: '1/m2', meaning: 'screws in a square metre' },
  evaluate: ({ plankMm, pitchMm }) => inUnit('1/m2', MM2_PER_M2 / (plankMm * pitchMm)),
  // 1e6/(50 x 200)
  worked: [{ at: 'by hand: 50 x 200 mm', given: { plankMm: 50, pitchMm: 200 }, printed: '100' }],
});

/** Caulk in a square metre of seams as deep as they are wide, before waste. */
export const caulkPerM2 = defineFormula({
  id: 'methods.overlay-caulk',
  title: 'Caulk in a square metre of seams',
  cite: { source: 'ARITHMETIC', note: 'V = s²/(a + s)' },
  inputs: {
    plankMm: { symbol: 'a', unit: 'mm', meaning: 'width of the plank', above: 0, upTo: 500 },
    seamMm: { symbol: 's', unit: 'mm', meaning: 'width and depth of the seam', above: 0, upTo: 20 },
  },
  output: { symbol: 'V', unit: 'l/m2', meaning: 'caulk in a square metre' },
  evaluate: ({ plankMm, seamMm }) => inUnit('l/m2', seamMm ** 2 / (plankMm + seamMm)),
  // 25 / 50
  worked: [
    { at: 'by hand: planks of 45, seams of 5 mm', given: { plankMm: 45, seamMm: 5 }, printed: '0.50' },
  ],
});

export const overlayFormulas = [screwsPerM2, caulkPerM2];
