import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

const squareMetres = { symbol: 'A', unit: 'm2', meaning: 'area', from: 0, upTo: 1000 } as const;
const metres = { symbol: 'L', unit: 'm', meaning: 'length', from: 0, upTo: 10000 } as const;
const litres = { symbol: 'V', unit: 'l', meaning: 'net volume' } as const;

/** A film: so many litres on each square metre, so many times. */
export const filmVolume = defineFormula({
  id: 'process.film-volume',
  title: 'Resin in coats over an area',
  cite: { source: 'MAKER-EPOXY-ESTIMATE', clause: 'term of the roll coats' },
  inputs: {
    areaM2: squareMetres,
    litresPerM2: {
      symbol: 'v',
      unit: 'l/m2',
      meaning: 'resin on a square metre, each coat',
      from: 0,
      upTo: 10,
    },
    coats: { symbol: 'n', unit: '1', meaning: 'number of coats', from: 0, upTo: 20 },
  },
  output: litres,
  evaluate: ({ areaM2, litresPerM2, coats }) => inUnit('l', areaM2 * litresPerM2 * coats),
  // The maker prints 0.0075 US gal on a square foot for three roll coats with 15 % waste: 0.3056 l/m2, or 0.1019 a coat.
  worked: [
    {
      at: '0.0075 US gal/ft2 for three coats, 56 ft2',
      given: { areaM2: 5.2026, litresPerM2: 0.10186, coats: 3 },
      printed: '1.59',
    },
  ],
});

/** A bed: one millimetre over one square metre is one litre. */
export const bedVolume = defineFormula({
  id: 'process.bed-volume',
  title: 'Resin in a bed of stated thickness',
  cite: { source: 'MAKER-NOTCH', note: 'a 1/4 in notch leaves 0.89 mm, 0.89 l/m2' },
  inputs: {
    areaM2: squareMetres,
    thicknessMm: { symbol: 't', unit: 'mm', meaning: 'mean thickness of the bed', from: 0, upTo: 50 },
  },
  output: litres,
  evaluate: ({ areaM2, thicknessMm }) => inUnit('l', areaM2 * thicknessMm),
  worked: [
    { at: '1/4 in notch, one square metre', given: { areaM2: 1, thicknessMm: 0.89 }, printed: '0.89' },
  ],
});

/** A section run along a length: the undercut under a lip, the saw cut itself. */
export const sectionVolume = defineFormula({
  id: 'process.section-volume',
  title: 'Resin in a section along a length',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    lengthM: metres,
    widthMm: { symbol: 'w', unit: 'mm', meaning: 'width of the section', from: 0, upTo: 500 },
    heightMm: { symbol: 'h', unit: 'mm', meaning: 'height of the section', from: 0, upTo: 200 },
  },
  output: litres,
  evaluate: ({ lengthM, widthMm, heightMm }) => inUnit('l', (lengthM * widthMm * heightMm) / 1000),
  // 25 mm x 12.7 mm x 1000 mm is 317,500 mm3, 0.3175 l; 4 x 15.7 x 1000 is 62,800 mm3, 0.0628 l.
  worked: [
    {
      at: 'by hand: 25 mm under a lip in 12.7 mm core, one metre',
      given: { lengthM: 1, widthMm: 25, heightMm: 12.7 },
      printed: '0.32',
    },
    {
      at: 'by hand: a 4 mm cut through 15.7 mm, one metre',
      given: { lengthM: 1, widthMm: 4, heightMm: 15.7 },
      printed: '0.063',
    },
  ],
});

/** The scores of contour sheet, both ways; `openFraction` is how far they stand open on the camber. */
export const kerfVolume = defineFormula({
  id: 'process.kerf-volume',
  title: 'Resin in the scores of contour sheet',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    areaM2: squareMetres,
    spacingMm: { symbol: 's', unit: 'mm', meaning: 'spacing of the scores', above: 0, upTo: 500 },
    widthMm: { symbol: 'w', unit: 'mm', meaning: 'width of a score', from: 0, upTo: 10 },
    depthMm: { symbol: 'd', unit: 'mm', meaning: 'depth of a score', from: 0, upTo: 100 },
    openFraction: { symbol: 'φ', unit: '1', meaning: 'share of the score that fills', from: 0, upTo: 1 },
  },
  output: litres,
  evaluate: ({ areaM2, spacingMm, widthMm, depthMm, openFraction }) =>
    inUnit('l', (2 * areaM2 * widthMm * depthMm * openFraction) / spacingMm),
  // 25 mm squares are 80 m of score on a square metre; 1 mm x 7.62 mm x 80,000 mm is 609,600 mm3.
  worked: [
    {
      at: 'by hand: 25 mm squares, 1 mm wide, 60 % of 12.7 mm deep',
      given: { areaM2: 1, spacingMm: 25, widthMm: 1, depthMm: 7.62, openFraction: 1 },
      printed: '0.61',
    },
  ],
});

/** Resin that a dry fabric takes at its fibre mass fraction. */
export const plyResin = defineFormula({
  id: 'process.ply-resin',
  title: 'Resin to wet a ply',
  cite: { source: 'MAKER-FABRICATING-BASICS', clause: 'equation' },
  inputs: {
    arealMassGPerM2: {
      symbol: 'w',
      unit: 'g/m2',
      meaning: 'dry areal mass of the fabric',
      from: 0,
      upTo: 10000,
    },
    areaM2: squareMetres,
    fibreMassFraction: {
      symbol: 'ψ',
      unit: '1',
      meaning: 'fibre mass fraction of the laid ply',
      above: 0.1,
      below: 0.95,
    },
  },
  output: { symbol: 'm_r', unit: 'g', meaning: 'mixed resin in the ply' },
  evaluate: ({ arealMassGPerM2, areaM2, fibreMassFraction }) =>
    inUnit('g', (arealMassGPerM2 * areaM2 * (1 - fibreMassFraction)) / fibreMassFraction),
  worked: [
    {
      at: '600 g of fabric at 60 % fibre',
      given: { arealMassGPerM2: 600, areaM2: 1, fibreMassFraction: 0.6 },
      printed: '400.0',
    },
  ],
});

/** Filled holes: a cylinder each, as wide as it was drilled or reamed. */
export const pottingVolume = defineFormula({
  id: 'process.potting-volume',
  title: 'Resin in potted holes',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    holes: { symbol: 'n', unit: '1', meaning: 'number of holes', from: 0, upTo: 100000 },
    diameterMm: { symbol: 'D', unit: 'mm', meaning: 'diameter of the emptied core', above: 0, upTo: 200 },
    depthMm: { symbol: 'h', unit: 'mm', meaning: 'depth to fill', above: 0, upTo: 200 },
  },
  output: litres,
  evaluate: ({ holes, diameterMm, depthMm }) =>
    inUnit('l', (holes * Math.PI * diameterMm ** 2 * depthMm) / 4e6),
  // pi/4 x 25 mm x 25 mm x 12.7 mm is 6,234 mm3; with 50 mm it is 24,936 mm3.
  worked: [
    {
      at: 'by hand: 25 mm ream in 12.7 mm core',
      given: { holes: 1, diameterMm: 25, depthMm: 12.7 },
      printed: '0.006',
    },
    {
      at: 'by hand: 50 mm ream in 12.7 mm core',
      given: { holes: 1, diameterMm: 50, depthMm: 12.7 },
      printed: '0.025',
    },
  ],
});

/** What stays in pots, rollers and on the floor. */
export const wasteVolume = defineFormula({
  id: 'process.waste-volume',
  title: 'Resin wasted',
  cite: { source: 'MAKER-WASTE', note: '15 to 20 %' },
  inputs: {
    netL: { symbol: 'V', unit: 'l', meaning: 'net volume', from: 0 },
    wasteFraction: {
      symbol: 'k',
      unit: '1',
      meaning: 'waste as a share of the net volume',
      from: 0,
      upTo: 2,
    },
  },
  output: { symbol: 'V_w', unit: 'l', meaning: 'volume wasted' },
  evaluate: ({ netL, wasteFraction }) => inUnit('l', netL * wasteFraction),
  worked: [{ at: 'by hand: 4 l at 18 %', given: { netL: 4, wasteFraction: 0.18 }, printed: '0.72' }],
});

export const stepVolumeFormulas = [
  filmVolume,
  bedVolume,
  sectionVolume,
  kerfVolume,
  plyResin,
  pottingVolume,
  wasteVolume,
];
