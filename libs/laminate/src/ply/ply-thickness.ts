import { fraction, gPerM2, mm } from '#lib/units';
import { defineFormula } from '#lib/provenance';

const WORK_RANGE = 'fibre mass fractions from 0.1 to 0.8 cover sprayed mat to prepreg';

/** Thickness of the solid part of a ply: glass volume plus resin volume per area; voids are not counted. */
export const plyThickness = defineFormula({
  id: 'laminate.ply-thickness',
  title: 'Ply thickness from areal mass and fibre fraction',
  cite: {
    source: 'ARITHMETIC',
    clause: 'mass balance',
    note: `the class and small-craft forms are this one with their own densities; ${WORK_RANGE}`,
  },
  inputs: {
    arealMassGPerM2: { symbol: 'w', unit: 'g/m2', meaning: 'dry fibre mass per area', above: 0, upTo: 5000 },
    fibreMassFraction: { symbol: 'ψ', unit: '1', meaning: 'fibre mass fraction', from: 0.1, upTo: 0.8 },
    fibreDensityKgPerM3: { symbol: 'ρf', unit: 'kg/m3', meaning: 'fibre density', above: 1000, upTo: 3000 },
    resinDensityKgPerM3: {
      symbol: 'ρr',
      unit: 'kg/m3',
      meaning: 'cured resin density',
      above: 900,
      upTo: 2000,
    },
  },
  output: { symbol: 't', unit: 'mm', meaning: 'ply thickness' },
  evaluate: (given) => mm(thicknessOf(given)),
  worked: [
    {
      at: 'BV NR546 section 5, layer geometry',
      given: {
        arealMassGPerM2: 1000,
        fibreMassFraction: 0.5,
        fibreDensityKgPerM3: 2570,
        resinDensityKgPerM3: 1200,
      },
      printed: '1.222',
    },
    {
      at: 'GL lamina, 304 g/m2 at 0.7',
      given: {
        arealMassGPerM2: 304,
        fibreMassFraction: 0.7,
        fibreDensityKgPerM3: 2540,
        resinDensityKgPerM3: 1200,
      },
      printed: '0.228256467942',
    },
  ],
});

/** The small-craft yardstick's glass form; it is `plyThickness` with densities of 2560 and 1200 kg/m3. */
export const yardstickThickness = defineFormula({
  id: 'laminate.yardstick-thickness',
  title: 'Ply thickness of E-glass, small-craft yardstick',
  cite: { source: 'ISO-12215-5-2008', clause: 'Annex C' },
  inputs: {
    arealMassGPerM2: { symbol: 'w', unit: 'g/m2', meaning: 'dry fibre mass per area', above: 0, upTo: 5000 },
    fibreMassFraction: { symbol: 'ψ', unit: '1', meaning: 'fibre mass fraction', from: 0.2, upTo: 0.7 },
  },
  output: { symbol: 't', unit: 'mm', meaning: 'ply thickness' },
  evaluate: ({ arealMassGPerM2: w, fibreMassFraction: psi }) =>
    mm(((w / 1000) * (2.56 / psi - 1.36)) / 3.072),
  worked: [
    { at: 'table C.3', given: { arealMassGPerM2: 1000, fibreMassFraction: 0.3 }, printed: '2.34' },
    { at: 'table C.3', given: { arealMassGPerM2: 1000, fibreMassFraction: 0.5 }, printed: '1.22' },
    { at: 'table C.3', given: { arealMassGPerM2: 1000, fibreMassFraction: 0.66 }, printed: '0.82' },
  ],
});

export const resinPerArea = defineFormula({
  id: 'laminate.resin-per-area',
  title: 'Resin in a ply from areal mass and fibre fraction',
  cite: { source: 'ARITHMETIC', clause: 'mass balance' },
  inputs: {
    arealMassGPerM2: { symbol: 'w', unit: 'g/m2', meaning: 'dry fibre mass per area', above: 0, upTo: 5000 },
    fibreMassFraction: { symbol: 'ψ', unit: '1', meaning: 'fibre mass fraction', from: 0.1, upTo: 0.8 },
  },
  output: { symbol: 'wr', unit: 'g/m2', meaning: 'mixed resin in the ply, no waste' },
  evaluate: ({ arealMassGPerM2: w, fibreMassFraction: psi }) => gPerM2((w * (1 - psi)) / psi),
  worked: [
    {
      at: 'FAA AC 43.13-1B p. 3-3: resin equal to cloth is half by mass',
      given: { arealMassGPerM2: 300, fibreMassFraction: 0.5 },
      printed: '300',
    },
    {
      at: 'by hand: 450 x 0.7 / 0.3',
      given: { arealMassGPerM2: 450, fibreMassFraction: 0.3 },
      printed: '1050',
    },
  ],
});

export const fibreVolumeFraction = defineFormula({
  id: 'laminate.fibre-volume-fraction',
  title: 'Fibre volume fraction from fibre mass fraction',
  cite: { source: 'LR-SSC-2020', clause: 'Pt 8 Ch 3, 1.8.3' },
  inputs: {
    fibreMassFraction: { symbol: 'W', unit: '1', meaning: 'fibre mass fraction', from: 0.05, upTo: 0.9 },
    fibreDensityKgPerM3: { symbol: 'ζf', unit: 'kg/m3', meaning: 'fibre density', above: 1000, upTo: 3000 },
    resinDensityKgPerM3: {
      symbol: 'ζr',
      unit: 'kg/m3',
      meaning: 'cured resin density',
      above: 900,
      upTo: 2000,
    },
  },
  output: { symbol: 'V', unit: '1', meaning: 'fibre volume fraction, no voids' },
  evaluate: ({ fibreMassFraction, fibreDensityKgPerM3, resinDensityKgPerM3 }) =>
    fraction(volumeFractionOf(fibreMassFraction, fibreDensityKgPerM3, resinDensityKgPerM3)),
  worked: [
    // By hand: 0.5/2560 = 1.953125e-4; 0.5/1200 = 4.166667e-4; share 1.953125/6.119792 = 0.319149.
    {
      at: 'by hand from the volumes of 0.5 kg of each',
      given: { fibreMassFraction: 0.5, fibreDensityKgPerM3: 2560, resinDensityKgPerM3: 1200 },
      printed: '0.319149',
    },
  ],
});

/** Low fibre content asks for more thickness: the class minimum stands for half glass by mass. */
export const lowFibreThicknessFactor = defineFormula({
  id: 'laminate.low-fibre-thickness-factor',
  title: 'Minimum thickness correction for low fibre content',
  cite: { source: 'LR-SSC-2020', clause: 'Pt 8 Ch 3, 2.4.2' },
  inputs: {
    fibreMassFraction: {
      symbol: 'fc',
      unit: '1',
      meaning: 'fibre mass fraction of the laminate',
      from: 0.25,
      upTo: 0.5,
    },
  },
  output: { symbol: 'k', unit: '1', meaning: 'multiplier on the minimum thickness' },
  evaluate: ({ fibreMassFraction }) => fraction(1.65 - 1.3 * fibreMassFraction),
  worked: [{ at: 'quoted in the rule text', given: { fibreMassFraction: 0.35 }, printed: '1.195' }],
});

export interface ThicknessBasis {
  readonly arealMassGPerM2: number;
  readonly fibreMassFraction: number;
  readonly fibreDensityKgPerM3: number;
  readonly resinDensityKgPerM3: number;
}

/** `plyThickness` on plain numbers: t = w [1/ρf + (1 - ψ)/(ψ ρr)], g/m2 over kg/m3 being mm. */
export const thicknessOf = ({
  arealMassGPerM2: w,
  fibreMassFraction: psi,
  fibreDensityKgPerM3,
  resinDensityKgPerM3,
}: ThicknessBasis): number => w * (1 / fibreDensityKgPerM3 + (1 - psi) / (psi * resinDensityKgPerM3));

/** `fibreVolumeFraction` on plain numbers. */
export function volumeFractionOf(
  fibreMassFraction: number,
  fibreDensityKgPerM3: number,
  resinDensityKgPerM3: number,
): number {
  const fibre = fibreMassFraction / fibreDensityKgPerM3;
  return fibre / (fibre + (1 - fibreMassFraction) / resinDensityKgPerM3);
}

/**
 * Fibre mass fraction of a mixed stack: ψ = Σw / Σ(w/ψ).
 *
 * With it the thickness of the whole equals the sum of the plies, because resin masses add.
 * Source: [ARITHMETIC] mass balance
 */
export function stackFibreFraction(
  plies: readonly { readonly arealMassGPerM2: number; readonly fibreMassFraction: number }[],
): number {
  const fibre = plies.reduce((sum, ply) => sum + ply.arealMassGPerM2, 0);
  const all = plies.reduce((sum, ply) => sum + ply.arealMassGPerM2 / ply.fibreMassFraction, 0);
  return fibre / all;
}
