import { inUnit } from '#lib/asking';
import { defineFormula } from '#lib/provenance';

/** Diameter of the pocket that a tool through the hole leaves: hole and reach on both sides. */
export const pocketDiameter = defineFormula({
  id: 'methods.pocket-diameter',
  title: 'Diameter of the pocket round a hole',
  cite: { source: 'ARITHMETIC', note: 'D = d + 2 r' },
  inputs: {
    holeMm: { symbol: 'd', unit: 'mm', meaning: 'diameter of the hole', above: 0, upTo: 200 },
    reachMm: { symbol: 'r', unit: 'mm', meaning: 'reach from the side of the hole', from: 0, upTo: 200 },
  },
  output: { symbol: 'D', unit: 'mm', meaning: 'diameter of the pocket' },
  evaluate: ({ holeMm, reachMm }) => inUnit('mm', holeMm + 2 * reachMm),
  // 6.35 + 2 x 25.4 = 57.15
  worked: [
    { at: 'by hand: 1/4 in hole, 1 in of reach', given: { holeMm: 6.35, reachMm: 25.4 }, printed: '57.15' },
  ],
});

/** Volume of a round plug as thick as the core: V = π/4 D² t. */
export const plugVolume = defineFormula({
  id: 'methods.plug-volume',
  title: 'Volume of a plug',
  cite: { source: 'ARITHMETIC', note: 'V = π/4 D² t' },
  inputs: {
    diameterMm: { symbol: 'D', unit: 'mm', meaning: 'diameter of the pocket', above: 0, upTo: 600 },
    coreMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the core', above: 0, upTo: 120 },
  },
  output: { symbol: 'V', unit: 'ml', meaning: 'volume' },
  evaluate: ({ diameterMm, coreMm }) => inUnit('ml', ((Math.PI / 4) * diameterMm ** 2 * coreMm) / 1000),
  // π/4 x 31.75² x 12.7 = 10,055 mm3
  worked: [
    {
      at: 'by hand: 1 1/4 in pocket in 1/2 in core',
      given: { diameterMm: 31.75, coreMm: 12.7 },
      printed: '10.05',
    },
  ],
});

const MM2_PER_M2 = 1e6;

/** Holes in a square metre of a square grid. */
export const holesPerM2 = defineFormula({
  id: 'methods.holes-per-m2',
  title: 'Holes of a square grid in a square metre',
  cite: { source: 'ARITHMETIC', note: 'n = 1/s²' },
  inputs: { spacingMm: { symbol: 's', unit: 'mm', meaning: 'spacing', above: 0, upTo: 2000 } },
  output: { symbol: 'n', unit: '1/m2', meaning: 'holes in a square metre' },
  evaluate: ({ spacingMm }) => inUnit('1/m2', MM2_PER_M2 / spacingMm ** 2),
  // 1e6/152.4² = 43.06
  worked: [{ at: 'by hand: one hole to each 6 in square', given: { spacingMm: 152.4 }, printed: '43.1' }],
});

/** What a gap under a skin holds, before waste. */
export const gapVolume = defineFormula({
  id: 'methods.gap-volume',
  title: 'Volume of a gap under a skin',
  cite: { source: 'ARITHMETIC', note: 'V = g A' },
  inputs: {
    gapMm: { symbol: 'g', unit: 'mm', meaning: 'height of the gap', above: 0, upTo: 20 },
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'area', above: 0, upTo: 10 },
  },
  output: { symbol: 'V', unit: 'l', meaning: 'volume' },
  evaluate: ({ gapMm, areaM2 }) => inUnit('l', gapMm * areaM2),
  // 1 mm x 1 m2 = 1e6 mm3
  worked: [{ at: 'by hand: 1 mm under 1 m2', given: { gapMm: 1, areaM2: 1 }, printed: '1.0' }],
});

export const holeFormulas = [pocketDiameter, plugVolume, holesPerM2, gapVolume];

/** A pour above either of these is laid in two or more: it heats. Source: [FROM-MEMORY]; a professional fills large old openings in stages. */
export const POUR_ML = 100;
export const POUR_DEPTH_MM = 15;

/** Pours in which one plug is filled. */
export const poursFor = (volumeMl: number, depthMm: number): number =>
  Math.max(1, Math.ceil(volumeMl / POUR_ML), Math.ceil(depthMm / POUR_DEPTH_MM));
