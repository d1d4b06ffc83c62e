import { computeChecked, defineFormula, derived, entered, fromCatalogue, type Figure } from '#lib/provenance';
import type { Reinforcement } from '#lib/catalogue';
import { fraction, g, gPerM2, kg, kgFromG, m2FromMm2, mm2 } from '#lib/units';

/** Glass in a ply, overlaps counted twice where they lie double. */
export const glassMass = defineFormula({
  id: 'laminate.glass-mass',
  title: 'Glass in a ply',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'area of glass laid, overlaps twice', from: 0 },
    arealMassGPerM2: { symbol: 'w', unit: 'g/m2', meaning: 'dry fibre mass per area', above: 0, upTo: 5000 },
  },
  output: { symbol: 'mg', unit: 'kg', meaning: 'dry glass in the ply' },
  evaluate: ({ areaM2, arealMassGPerM2 }) => kgFromG(g(areaM2 * arealMassGPerM2)),
  worked: [
    { at: 'by hand: 0.8 m2 of 600 g/m2', given: { areaM2: 0.8, arealMassGPerM2: 600 }, printed: '0.48' },
  ],
});

/** Resin that wets a mass of glass to a fibre fraction. */
export const resinMass = defineFormula({
  id: 'laminate.resin-mass',
  title: 'Resin in a ply from its glass',
  cite: { source: 'ARITHMETIC', clause: 'mass balance' },
  inputs: {
    glassKg: { symbol: 'mg', unit: 'kg', meaning: 'dry glass in the ply', from: 0 },
    fibreMassFraction: { symbol: 'ψ', unit: '1', meaning: 'fibre mass fraction', from: 0.1, upTo: 0.8 },
  },
  output: { symbol: 'mr', unit: 'kg', meaning: 'mixed resin in the ply, no waste' },
  evaluate: ({ glassKg, fibreMassFraction }) => kg((glassKg * (1 - fibreMassFraction)) / fibreMassFraction),
  worked: [
    {
      at: 'FAA AC 43.13-1B p. 3-3: resin equal to cloth at half by mass',
      given: { glassKg: 0.3, fibreMassFraction: 0.5 },
      printed: '0.3',
    },
  ],
});

export interface PlyMassBasis {
  readonly material: Reinforcement;
  readonly fibreMassFraction: number;
  /** Where the fraction was typed; the catalogue's when absent. */
  readonly fractionAt?: string;
}

export interface PlyMass {
  readonly glassKg: Figure<'kg'>;
  readonly resinKg: Figure<'kg'>;
}

export function plyMass(
  { material, fibreMassFraction, fractionAt }: PlyMassBasis,
  areaM2: Figure<'m2'>,
): PlyMass {
  const areal = material.arealMassGPerM2;
  const arealMassGPerM2 = fromCatalogue('g/m2', gPerM2(areal.value), `glass in ${material.name}`, {
    item: material.code,
    field: 'arealMassGPerM2',
    cite: areal.cite,
    ...(areal.low === undefined ? {} : { low: areal.low }),
    ...(areal.high === undefined ? {} : { high: areal.high }),
  });
  const glassKg = computeChecked(glassMass, { areaM2, arealMassGPerM2 });
  const meaning = `fibre mass fraction of ${material.name}`;
  const psi =
    fractionAt === undefined
      ? fromCatalogue('1', fraction(fibreMassFraction), meaning, {
          item: material.code,
          field: 'fibreMassFraction',
          cite: material.fibreMassFraction.cite,
        })
      : entered('1', fraction(fibreMassFraction), meaning, fractionAt);
  return { glassKg, resinKg: computeChecked(resinMass, { glassKg, fibreMassFraction: psi }) };
}

/** An area that geometry worked out from the figures named. */
export const areaFigure = (
  areaMm2: number,
  meaning: string,
  inputs: Readonly<Record<string, Figure>>,
): Figure<'m2'> =>
  derived('m2', m2FromMm2(mm2(areaMm2)), meaning, {
    formula: 'geometry.area',
    title: 'Area of an outline',
    symbol: 'A',
    cite: { source: 'ARITHMETIC', clause: 'offset and area of a polygon' },
    inputs,
  });
