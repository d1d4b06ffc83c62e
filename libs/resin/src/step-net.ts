import { computeChecked, sumOf, type Figure } from '#lib/provenance';
import type { Problem } from '#lib/kernel';
import { countFaults, numberFaults, optionalFaults, type Bounds } from '#lib/asking';
import { assumedIn, enteredIn, enteredOrAssumed, workedOut } from '#lib/asking';
import type { PlyToWet, ResinStepRequest } from './resin-request.js';
import { stepDefinitions, type StepBasis } from './step-definitions.js';
import { bedVolume, filmVolume, kerfVolume, plyResin, pottingVolume, sectionVolume } from './step-volumes.js';

/** Net volume of the stuff a step puts down, thickened where the step is thickened; and how many units of work it is. */
export interface StepNet {
  readonly netL: Figure<'l'>;
  /** m2, m, holes or m2 of ply, whichever the pace is counted by. */
  readonly units: number;
}

interface Basis {
  readonly faults: (step: ResinStepRequest, at: string) => readonly Problem[];
  readonly net: (step: ResinStepRequest, at: string, mixedDensityGPerCm3: Figure<'g/cm3'>) => StepNet;
}

const area: Bounds = { from: 0, upTo: 1000, unit: 'm2' };
const one = { value: 1, because: 'one coat unless more are asked for', cite: { source: 'COMMON-PRACTICE' } };

const film: Basis = {
  faults: (step, at) => [
    ...numberFaults(`${at}/areaM2`, step.areaM2, area),
    ...optionalFaults(`${at}/litresPerM2`, step.litresPerM2, { above: 0, upTo: 10, unit: 'l/m2' }),
    ...optionalFaults(`${at}/coats`, step.coats, { from: 1, upTo: 20, unit: 'coats' }),
  ],
  net: (step, at) => ({
    units: (step.areaM2 ?? 0) * (step.coats ?? 1),
    netL: computeChecked(filmVolume, {
      areaM2: enteredIn('m2', step.areaM2 ?? 0, 'area', `${at}/areaM2`),
      litresPerM2: amountOf('l/m2', step, step.litresPerM2, `${at}/litresPerM2`),
      coats:
        step.coats === undefined
          ? assumedIn('1', one, 'coats', `${at}/coats`)
          : enteredIn('1', step.coats, 'coats', `${at}/coats`),
    }),
  }),
};

const bed: Basis = {
  faults: (step, at) => [
    ...numberFaults(`${at}/areaM2`, step.areaM2, area),
    ...optionalFaults(`${at}/thicknessMm`, step.thicknessMm, { above: 0, upTo: 50, unit: 'mm' }),
  ],
  net: (step, at) => ({
    units: step.areaM2 ?? 0,
    netL: computeChecked(bedVolume, {
      areaM2: enteredIn('m2', step.areaM2 ?? 0, 'area', `${at}/areaM2`),
      thicknessMm: amountOf('mm', step, step.thicknessMm, `${at}/thicknessMm`),
    }),
  }),
};

const section: Basis = {
  faults: (step, at) => [
    ...numberFaults(`${at}/lengthM`, step.lengthM, { from: 0, upTo: 10000, unit: 'm' }),
    ...optionalFaults(`${at}/widthMm`, step.widthMm, { above: 0, upTo: 500, unit: 'mm' }),
    ...numberFaults(`${at}/heightMm`, step.heightMm, { above: 0, upTo: 200, unit: 'mm' }),
  ],
  net: (step, at) => ({
    units: step.lengthM ?? 0,
    netL: computeChecked(sectionVolume, {
      lengthM: enteredIn('m', step.lengthM ?? 0, 'length', `${at}/lengthM`),
      widthMm: amountOf('mm', step, step.widthMm, `${at}/widthMm`),
      heightMm: enteredIn('mm', step.heightMm ?? 0, 'height', `${at}/heightMm`),
    }),
  }),
};

const allOpen = {
  value: 1,
  low: 0.3,
  high: 1,
  because: 'scores pressed full from both sides',
  cite: { source: 'FROM-MEMORY' },
};

const kerfs: Basis = {
  faults: (step, at) => [
    ...numberFaults(`${at}/areaM2`, step.areaM2, area),
    ...numberFaults(`${at}/spacingMm`, step.spacingMm, { above: 0, upTo: 500, unit: 'mm' }),
    ...numberFaults(`${at}/widthMm`, step.widthMm, { above: 0, upTo: 10, unit: 'mm' }),
    ...numberFaults(`${at}/depthMm`, step.depthMm, { above: 0, upTo: 100, unit: 'mm' }),
    ...optionalFaults(`${at}/openFraction`, step.openFraction, { from: 0, upTo: 1, unit: '' }),
  ],
  net: (step, at) => ({
    units: step.areaM2 ?? 0,
    netL: computeChecked(kerfVolume, {
      areaM2: enteredIn('m2', step.areaM2 ?? 0, 'area', `${at}/areaM2`),
      spacingMm: enteredIn('mm', step.spacingMm ?? 1, 'spacing of the scores', `${at}/spacingMm`),
      widthMm: enteredIn('mm', step.widthMm ?? 0, 'width of a score', `${at}/widthMm`),
      depthMm: enteredIn('mm', step.depthMm ?? 0, 'depth of a score', `${at}/depthMm`),
      openFraction: enteredOrAssumed('1', step.openFraction, 'share of the score that fills', {
        at: `${at}/openFraction`,
        ...allOpen,
      }),
    }),
  }),
};

const plies: Basis = {
  faults: (step, at) => [
    ...countFaults(`${at}/plies`, step.plies?.length ?? 0, { least: 1, most: 200 }),
    ...(step.plies ?? []).flatMap((ply, index) => plyFaults(ply, `${at}/plies/${index}`)),
  ],
  net: (step, at, density) => {
    const parts = (step.plies ?? []).map((ply, index) => plyFigure(ply, `${at}/plies/${index}`));
    const mass = sumOf(
      'g',
      'mixed resin in all plies',
      Object.fromEntries(parts.map((part, index) => [`ply${index + 1}`, part])),
    );
    return {
      units: (step.plies ?? []).reduce((sum, ply) => sum + ply.areaM2, 0),
      netL: workedOut('l', mass.value / density.value / 1000, 'net volume', {
        formula: 'process.volume-of-mass',
        title: 'Volume of a mass of mixed resin',
        symbol: 'V',
        cite: { source: 'ARITHMETIC' },
        inputs: { mass, density },
      }),
    };
  },
};

const plyFaults = (ply: PlyToWet, at: string): readonly Problem[] => [
  ...numberFaults(`${at}/areaM2`, ply.areaM2, area),
  ...numberFaults(`${at}/arealMassGPerM2`, ply.arealMassGPerM2, { above: 0, upTo: 10000, unit: 'g/m2' }),
  ...numberFaults(`${at}/fibreMassFraction`, ply.fibreMassFraction, { above: 0.1, below: 0.95, unit: '' }),
];

const plyFigure = (ply: PlyToWet, at: string): Figure<'g'> =>
  computeChecked(plyResin, {
    arealMassGPerM2: enteredIn('g/m2', ply.arealMassGPerM2, 'dry areal mass', `${at}/arealMassGPerM2`),
    areaM2: enteredIn('m2', ply.areaM2, 'area', `${at}/areaM2`),
    fibreMassFraction: enteredIn(
      '1',
      ply.fibreMassFraction,
      'fibre mass fraction',
      `${at}/fibreMassFraction`,
    ),
  });

const holes: Basis = {
  faults: (step, at) => [
    ...numberFaults(`${at}/holes`, step.holes, { from: 0, upTo: 100000, unit: 'holes' }),
    ...numberFaults(`${at}/diameterMm`, step.diameterMm, { above: 0, upTo: 200, unit: 'mm' }),
    ...numberFaults(`${at}/depthMm`, step.depthMm, { above: 0, upTo: 200, unit: 'mm' }),
  ],
  net: (step, at) => ({
    units: step.holes ?? 0,
    netL: computeChecked(pottingVolume, {
      holes: enteredIn('1', step.holes ?? 0, 'holes', `${at}/holes`),
      diameterMm: enteredIn('mm', step.diameterMm ?? 1, 'diameter of the emptied core', `${at}/diameterMm`),
      depthMm: enteredIn('mm', step.depthMm ?? 1, 'depth to fill', `${at}/depthMm`),
    }),
  }),
};

const bases: Readonly<Record<StepBasis, Basis>> = { film, bed, section, kerfs, plies, holes };

export const basisOf = (step: ResinStepRequest): Basis => bases[stepDefinitions[step.step].basis];

function amountOf<U extends string>(
  unit: U,
  step: ResinStepRequest,
  given: number | undefined,
  at: string,
): Figure<U> {
  const { amount } = stepDefinitions[step.step];
  return amount === undefined || given !== undefined
    ? enteredIn(unit, given ?? 0, 'amount of the step', at)
    : assumedIn(unit, amount, 'amount of the step', at);
}
