import { defineFormula } from '#lib/provenance';
import { fraction, kg, lFromMm3, mm, mm2FromM2, mm3 } from '#lib/units';

export const stackHeight = defineFormula({
  id: 'coring.stack-height',
  title: 'Height of new core with its bond lines',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    coreMm: { symbol: 't', unit: 'mm', meaning: 'new core, all layers', above: 0 },
    bondLineMm: { symbol: 'b', unit: 'mm', meaning: 'one bond line', from: 0 },
    bondLineCount: {
      symbol: 'n',
      unit: '1',
      meaning: 'bond lines of paste: as many as layers of core, and one under a skin that is bedded again',
      from: 1,
    },
    wetLineMm: {
      symbol: 'w',
      unit: 'mm',
      meaning: 'resin under a skin that is laid wet on the core',
      from: 0,
    },
  },
  output: { symbol: 'H', unit: 'mm', meaning: 'height of the stack' },
  evaluate: ({ coreMm, bondLineMm, bondLineCount, wetLineMm }) =>
    mm(coreMm + bondLineCount * bondLineMm + wetLineMm),
  worked: [
    {
      at: 'by hand: 9.5 + 2 x 1.1, the old skin bedded again',
      given: { coreMm: 9.5, bondLineMm: 1.1, bondLineCount: 2, wetLineMm: 0 },
      printed: '11.7',
    },
    {
      at: 'by hand: 12.7 + 0.9 + 0.1, a skin laid wet',
      given: { coreMm: 12.7, bondLineMm: 0.9, bondLineCount: 1, wetLineMm: 0.1 },
      printed: '13.7',
    },
  ],
});

export const flushness = defineFormula({
  id: 'coring.flush',
  title: 'Stack against cavity; positive stands proud',
  cite: {
    source: 'DECK-REPAIR-PRACTICE',
    note: 'core and glue lines must not be higher than the old core, or the skin sits high',
  },
  inputs: {
    stackMm: { symbol: 'H', unit: 'mm', meaning: 'height of the stack', above: 0 },
    cavityMm: { symbol: 'h', unit: 'mm', meaning: 'height of the cavity', above: 0 },
  },
  output: { symbol: 'f', unit: 'mm', meaning: 'how far the new skin sits above the old' },
  evaluate: ({ stackMm, cavityMm }) => mm(stackMm - cavityMm),
  worked: [{ at: 'by hand: 11.7 - 12.7', given: { stackMm: 11.7, cavityMm: 12.7 }, printed: '-1.0' }],
});

/**
 * Two families of cuts cross in squares, so what both take is counted once.
 * By hand: 25 mm squares, 1 mm wide, 0.6 x 12.7 = 7.62 mm deep: (2/25 - 1/625) x 7.62 = 0.0784 x 7.62 = 0.597 mm = 0.597 l/m2.
 */
export const kerfVolume = defineFormula({
  id: 'coring.kerf-volume',
  title: 'Resin that fills the kerfs of scored sheet',
  cite: { source: 'ARITHMETIC', note: 'kerf width times depth times length of line; crossings once' },
  inputs: {
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'scored core', from: 0 },
    spacingMm: { symbol: 's', unit: 'mm', meaning: 'side of the squares', above: 0 },
    kerfMm: { symbol: 'w', unit: 'mm', meaning: 'width of a kerf', above: 0 },
    depthMm: { symbol: 'd', unit: 'mm', meaning: 'depth of a kerf', above: 0 },
  },
  output: { symbol: 'V', unit: 'l', meaning: 'resin in the kerfs' },
  evaluate: ({ areaM2, spacingMm, kerfMm, depthMm }) =>
    lFromMm3(mm3(mm2FromM2(areaM2) * ((2 * kerfMm) / spacingMm - (kerfMm / spacingMm) ** 2) * depthMm)),
  worked: [
    {
      at: 'derived: 25 mm squares, 1 mm kerf, 60 % of 12.7 mm, one square metre',
      given: { areaM2: 1, spacingMm: 25, kerfMm: 1, depthMm: 7.62 },
      printed: '0.6',
    },
  ],
});

/**
 * A strip of unit width bent to a radius needs M = E t^3 / (12 R); an even pressure p over its length L, held at the ends,
 * gives at most p L^2 / 8. Equal where R = 2 E t^3 / (3 p L^2).
 * By hand: E 100, t 10, p 0.002, L 500: 2 x 100 x 1000 / (3 x 0.002 x 250000) = 200000 / 1500 = 133.3 mm.
 */
export const bendRadius = defineFormula({
  id: 'coring.bend-radius',
  title: 'Tightest radius to which a plain sheet is pressed',
  cite: { source: 'ARITHMETIC', note: 'elastic strip under an even pressure, held at both ends' },
  inputs: {
    modulusMPa: { symbol: 'E', unit: 'MPa', meaning: 'modulus of the core along its face', above: 0 },
    thicknessMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the layer', above: 0 },
    pressureMPa: { symbol: 'p', unit: 'MPa', meaning: 'pressure that holds it down', above: 0 },
    lengthMm: { symbol: 'L', unit: 'mm', meaning: 'length of the piece across the camber', above: 0 },
  },
  output: { symbol: 'R', unit: 'mm', meaning: 'tightest radius' },
  evaluate: ({ modulusMPa, thicknessMm, pressureMPa, lengthMm }) =>
    mm((2 * modulusMPa * thicknessMm ** 3) / (3 * pressureMPa * lengthMm ** 2)),
  worked: [
    {
      at: 'by hand, above',
      given: { modulusMPa: 100, thicknessMm: 10, pressureMPa: 0.002, lengthMm: 500 },
      printed: '133.3',
    },
  ],
});

/**
 * What stays between a piece and the cambered skin when the pressure bends it only part of the way.
 * By hand: L 200, R 3000, bent to 12000: 40000 / 8 x (1/3000 - 1/12000) = 5000 x 0.00025 = 1.25 mm.
 */
export const camberGap = defineFormula({
  id: 'coring.camber-gap',
  title: 'Gap left under a piece on a cambered deck',
  cite: { source: 'ARITHMETIC', note: 'rise of a shallow arc, L^2 / (8 R), for the missing curvature' },
  inputs: {
    lengthMm: { symbol: 'L', unit: 'mm', meaning: 'length of the piece across the camber', above: 0 },
    deckRadiusMm: { symbol: 'R', unit: 'mm', meaning: 'radius of the deck', above: 0 },
    bentRadiusMm: {
      symbol: 'r',
      unit: 'mm',
      meaning: 'radius to which the pressure bends the piece',
      above: 0,
    },
  },
  output: { symbol: 'g', unit: 'mm', meaning: 'gap at the middle or the ends' },
  evaluate: ({ lengthMm, deckRadiusMm, bentRadiusMm }) =>
    mm((lengthMm ** 2 / 8) * Math.max(0, 1 / deckRadiusMm - 1 / bentRadiusMm)),
  worked: [
    {
      at: 'by hand, above',
      given: { lengthMm: 200, deckRadiusMm: 3000, bentRadiusMm: 12000 },
      printed: '1.25',
    },
  ],
});

/** By hand: 1 m2 x 12.7 mm x 150 kg/m3 = 1.905 kg. */
export const coreMass = defineFormula({
  id: 'coring.core-mass',
  title: 'Mass of core',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'area', from: 0 },
    thicknessMm: { symbol: 't', unit: 'mm', meaning: 'thickness', above: 0 },
    densityKgPerM3: { symbol: 'ρ', unit: 'kg/m3', meaning: 'density', above: 0 },
  },
  output: { symbol: 'm', unit: 'kg', meaning: 'mass' },
  evaluate: ({ areaM2, thicknessMm, densityKgPerM3 }) => kg(areaM2 * (thicknessMm / 1000) * densityKgPerM3),
  worked: [
    { at: 'by hand, above', given: { areaM2: 1, thicknessMm: 12.7, densityKgPerM3: 150 }, printed: '1.905' },
  ],
});

/** 1 m2 x 12.7 mm x 140 kg/m3 from 150 % to 12 % moisture: 1.778 x 1.38 = 2.45 kg. */
export const waterLeaving = defineFormula({
  id: 'coring.water-leaving',
  title: 'Water that leaves with the old core',
  cite: { source: 'ARITHMETIC', note: 'oven-dry mass times the fall in moisture content' },
  inputs: {
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'old core taken out', from: 0 },
    thicknessMm: { symbol: 't', unit: 'mm', meaning: 'its thickness', above: 0 },
    dryDensityKgPerM3: { symbol: 'ρd', unit: 'kg/m3', meaning: 'its oven-dry density', above: 0 },
    moistureFraction: {
      symbol: 'MC',
      unit: '1',
      meaning: 'its moisture, parts of oven-dry mass',
      from: 0,
      upTo: 8,
    },
    soundMoistureFraction: { symbol: 'MC0', unit: '1', meaning: 'moisture of sound core', from: 0, upTo: 1 },
  },
  output: { symbol: 'W', unit: 'kg', meaning: 'water above that of sound core' },
  evaluate: ({ areaM2, thicknessMm, dryDensityKgPerM3, moistureFraction, soundMoistureFraction }) =>
    kg(areaM2 * (thicknessMm / 1000) * dryDensityKgPerM3 * (moistureFraction - soundMoistureFraction)),
  worked: [
    {
      at: 'derived: 1 m2, 12.7 mm, 140 kg/m3, 150 % to 12 %',
      given: {
        areaM2: 1,
        thicknessMm: 12.7,
        dryDensityKgPerM3: 140,
        moistureFraction: 1.5,
        soundMoistureFraction: 0.12,
      },
      printed: '2.45',
    },
  ],
});

export const bondResin = defineFormula({
  id: 'coring.bond-volume',
  title: 'Filled resin in the bond lines',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'bonded area', from: 0 },
    bondLineMm: { symbol: 'b', unit: 'mm', meaning: 'one bond line', from: 0 },
    bondLineCount: { symbol: 'n', unit: '1', meaning: 'bond lines', from: 1 },
  },
  output: { symbol: 'V', unit: 'l', meaning: 'filled resin' },
  evaluate: ({ areaM2, bondLineMm, bondLineCount }) =>
    lFromMm3(mm3(mm2FromM2(areaM2) * bondLineMm * bondLineCount)),
  worked: [
    {
      at: 'by hand: 1 m2 x 0.89 mm x 2',
      given: { areaM2: 1, bondLineMm: 0.89, bondLineCount: 2 },
      printed: '1.78',
    },
  ],
});

/** By hand: 0.5 m2 of 1.5 m2 is 1 less 1/3: 0.667. */
export const wasteShare = defineFormula({
  id: 'coring.waste-share',
  title: 'Share of bought sheet that does not end up in the deck',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    netM2: { symbol: 'a', unit: 'm2', meaning: 'core pieces', above: 0 },
    boughtM2: { symbol: 'A', unit: 'm2', meaning: 'sheets cut', above: 0 },
  },
  output: { symbol: 'w', unit: '1', meaning: 'waste share' },
  evaluate: ({ netM2, boughtM2 }) => fraction(1 - netM2 / boughtM2),
  worked: [{ at: 'by hand, above', given: { netM2: 0.5, boughtM2: 1.5 }, printed: '0.667' }],
});
