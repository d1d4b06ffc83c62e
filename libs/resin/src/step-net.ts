import { computeChecked, sumOf, type Figure } from '#lib/provenance';
import { pointer, problem, type Problem } from '#lib/kernel';
import { assumedIn, enteredIn, workedOut, answeredIn } from '#lib/asking';
import { resinStepQuestions, type PlyToWet, type ResinStepRequest } from './resin-request.js';
import { stepDefinitions, type StepBasis } from './step-definitions.js';
import { bedVolume, filmVolume, kerfVolume, plyResin, pottingVolume, sectionVolume } from './step-volumes.js';

/** Net volume of the stuff a step puts down, thickened where the step is thickened; and how many units of work it is. */
export interface StepNet {
  readonly netL: Figure<'l'>;
  /** m2, m, holes or m2 of ply, whichever the pace is counted by. */
  readonly units: number;
}

interface Basis {
  /** What this basis cannot be reckoned without, or what contradicts itself in it. */
  readonly faults: (step: ResinStepRequest, at: string) => readonly Problem[];
  readonly net: (step: ResinStepRequest, at: string, mixedDensityGPerCm3: Figure<'g/cm3'>) => StepNet;
}

/** What must be said for a basis, though another basis can do without it. */
const needs =
  (...names: readonly (keyof ResinStepRequest & keyof typeof resinStepQuestions)[]) =>
  (step: ResinStepRequest, at: string): readonly Problem[] =>
    names.flatMap((name) =>
      step[name] === undefined
        ? [problem('missing', pointer(at, name), { expected: resinStepQuestions[name].meaning })]
        : [],
    );

const one = { value: 1, because: 'one coat unless more are asked for', cite: { source: 'COMMON-PRACTICE' } };

const film: Basis = {
  faults: needs('areaM2'),
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
  faults: needs('areaM2'),
  net: (step, at) => ({
    units: step.areaM2 ?? 0,
    netL: computeChecked(bedVolume, {
      areaM2: enteredIn('m2', step.areaM2 ?? 0, 'area', `${at}/areaM2`),
      thicknessMm: amountOf('mm', step, step.thicknessMm, `${at}/thicknessMm`),
    }),
  }),
};

const section: Basis = {
  faults: needs('lengthM', 'heightMm'),
  net: (step, at) => ({
    units: step.lengthM ?? 0,
    netL: computeChecked(sectionVolume, {
      lengthM: enteredIn('m', step.lengthM ?? 0, 'length', `${at}/lengthM`),
      widthMm: amountOf('mm', step, step.widthMm, `${at}/widthMm`),
      heightMm: enteredIn('mm', step.heightMm ?? 0, 'height', `${at}/heightMm`),
    }),
  }),
};

/** Scores as wide as they lie apart leave no core between them. */
const overlapFaults = ({ spacingMm, widthMm }: ResinStepRequest, at: string): readonly Problem[] =>
  spacingMm === undefined || widthMm === undefined || widthMm < spacingMm
    ? []
    : [
        problem('contradiction', pointer(at, 'widthMm'), {
          other: pointer(at, 'spacingMm'),
          why: `scores ${widthMm} mm wide do not fit ${spacingMm} mm apart`,
        }),
      ];

const kerfs: Basis = {
  faults: (step, at) => [
    ...needs('areaM2', 'spacingMm', 'widthMm', 'depthMm')(step, at),
    ...overlapFaults(step, at),
  ],
  net: (step, at) => ({
    units: step.areaM2 ?? 0,
    netL: computeChecked(kerfVolume, {
      areaM2: enteredIn('m2', step.areaM2 ?? 0, 'area', `${at}/areaM2`),
      spacingMm: enteredIn('mm', step.spacingMm ?? 1, 'spacing of the scores', `${at}/spacingMm`),
      widthMm: enteredIn('mm', step.widthMm ?? 0, 'width of a score', `${at}/widthMm`),
      depthMm: enteredIn('mm', step.depthMm ?? 0, 'depth of a score', `${at}/depthMm`),
      openFraction: answeredIn(resinStepQuestions.openFraction, step.openFraction, `${at}/openFraction`),
    }),
  }),
};

const plies: Basis = {
  faults: needs('plies'),
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
  faults: needs('holes', 'diameterMm', 'depthMm'),
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
  const { amount, title } = stepDefinitions[step.step];
  const meaning = `amount for "${step.title ?? title}"`;
  return amount === undefined || given !== undefined
    ? enteredIn(unit, given ?? 0, meaning, at)
    : assumedIn(unit, amount, meaning, at);
}
