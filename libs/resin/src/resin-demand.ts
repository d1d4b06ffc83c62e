import type { Filler, Hardener, ResinSystem } from '#lib/catalogue';
import { problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { assumptionsOf, computeChecked, type Figure } from '#lib/provenance';
import { faultsIn, numberFaults } from '#lib/asking';
import {
  assumptionFrom,
  catalogueIn,
  enteredIn,
  enteredOrAssumed,
  type ProcessAssumption,
} from '#lib/asking';
import { mixedDensity, mixedResinInVolume, partsByMassFromVolume, thickenedDensity } from './mixing.js';
import { demandQuestions, type ResinDemandRequest, type ResinStepRequest } from './resin-request.js';
import { defaultWaste, stepDefinitions, type StepCode } from './step-definitions.js';
import { basisOf } from './step-net.js';
import { wasteVolume } from './step-volumes.js';

/** What one step takes, waste apart; masses to a tenth of a gram, so that batches and bill can agree exactly. */
export interface StepDemand {
  /** Place of the step in the request, from 0. */
  readonly index: number;
  /** Kind of step that uses resin. */
  readonly step: StepCode;
  /** Name of the step for the crew. */
  readonly title: string;
  /** How many units of its driver the step has, such as square metres. */
  readonly units: number;
  /** Mix that stays in the work of this step. */
  readonly netL: number;
  /** Mix that the step loses. */
  readonly wasteL: number;
  /** Mix that the step needs with its losses. */
  readonly totalL: number;
  /** Resin to weigh for the step. */
  readonly resinG: number;
  /** Hardener to weigh for the step. */
  readonly hardenerG: number;
  /** Filler to stir in for the step. */
  readonly fillerG: number;
  /** Code of the filler that thickens the mix; absent for neat resin. */
  readonly filler?: string;
  /** Filler to 100 parts of mixed resin, by mass. */
  readonly fillerPartsPerHundred: number;
  /** Mass of the step's mix, filler included. */
  readonly totalKg: number;
  /** Density of the mix, filler included. */
  readonly densityGPerCm3: number;
  /** How the quantities of the step were worked out. */
  readonly why: {
    /** Derivation of the volume that stays in the work. */
    readonly netL: Figure<'l'>;
    /** Derivation of the mass that is mixed. */
    readonly mixedG: Figure<'g'>;
  };
}

export interface ResinDemand {
  /** Code of the resin demanded. */
  readonly resin: string;
  /** Code of the hardener demanded with it. */
  readonly hardener: string;
  /** Grams of hardener to 100 g of resin. */
  readonly partsByMass: number;
  /** Millilitres of hardener to 100 ml of resin. */
  readonly partsByVolume: number;
  /** Density of resin and hardener mixed, without filler. */
  readonly mixedDensityGPerCm3: number;
  /** Demand of each step of the work, in its order. */
  readonly steps: readonly StepDemand[];
  /** Demand of all steps together. */
  readonly totals: {
    /** What ends up in the repair, without losses. */
    readonly netL: number;
    /** What stays in pots, rollers and brushes. */
    readonly wasteL: number;
    /** What must be mixed in all. */
    readonly totalL: number;
    /** Resin component of the whole demand. */
    readonly resinG: number;
    /** Hardener component of the whole demand. */
    readonly hardenerG: number;
    /** Fillers of all steps, each kind with its mass. */
    readonly fillers: readonly {
      /** Code of the filler. */
      readonly filler: string;
      /** Mass of the filler over all steps. */
      readonly massG: number;
    }[];
  };
  /** Rates and losses that nobody stated. */
  readonly assumptions: readonly ProcessAssumption[];
}

/** Resin, hardener and filler for each step from its own basis; waste stands apart. */
export function resinDemand(request: ResinDemandRequest): Outcome<ResinDemand> {
  const problems = demandFaults(request);
  if (problems.length > 0) return refusal(...problems);
  const hardener = hardenerOf(request.resin, request.hardener);
  if (hardener === undefined) return refusal(unknownHardener(request));
  const density = mixedDensityOf(request.resin, hardener);
  const steps = request.steps.map((step, index) => demandOf({ request, hardener, density, step, index }));
  return success({
    resin: request.resin.code,
    hardener: hardener.code,
    partsByMass: hardener.partsByMass.value,
    partsByVolume: hardener.partsByVolume.value,
    mixedDensityGPerCm3: density.value,
    steps,
    totals: totalsOf(steps),
    assumptions: assumptionsIn(steps),
  });
}

interface StepInContext {
  readonly request: ResinDemandRequest;
  readonly hardener: Hardener;
  readonly density: Figure<'g/cm3'>;
  readonly step: ResinStepRequest;
  readonly index: number;
}

function demandOf({ request, hardener, density, step, index }: StepInContext): StepDemand {
  const at = `/steps/${index}`;
  const { netL, units } = basisOf(step).net(step, at, density);
  const waste = computeChecked(wasteVolume, { netL, wasteFraction: wasteOf(request, step, at) });
  const filler = fillerOf(request, step);
  const mix = thickened(step, filler, density, at);
  const total = enteredIn('l', netL.value + waste.value, 'volume with waste', at);
  const mixedG = computeChecked(mixedResinInVolume, {
    volumeL: { ...total, origin: sumOrigin(netL, waste) },
    thickenedDensity: mix.density,
    partsPerHundred: mix.parts,
  });
  const masses = massesOf(mixedG.value, hardener.partsByMass.value, mix.parts.value);
  return {
    index,
    step: step.step,
    title: step.title ?? stepDefinitions[step.step].title,
    units,
    netL: netL.value,
    wasteL: waste.value,
    totalL: netL.value + waste.value,
    ...masses,
    ...(filler === undefined ? {} : { filler: filler.code }),
    fillerPartsPerHundred: mix.parts.value,
    totalKg: (masses.resinG + masses.hardenerG + masses.fillerG) / 1000,
    densityGPerCm3: mix.density.value,
    why: { netL, mixedG },
  };
}

const sumOrigin = (net: Figure<'l'>, waste: Figure<'l'>): Figure<'l'>['origin'] => ({
  kind: 'computed',
  formula: 'arithmetic.sum',
  title: 'Net and waste',
  symbol: 'Σ',
  cite: { source: 'ARITHMETIC' },
  inputs: { net, waste },
});

/** Rounded to a tenth of a gram, what a shop scale shows; the hardener follows the rounded resin. */
export function massesOf(
  mixedG: number,
  partsByMass: number,
  fillerParts: number,
): { readonly resinG: number; readonly hardenerG: number; readonly fillerG: number } {
  const resinG = toTenths((mixedG * 100) / (100 + partsByMass));
  const hardenerG = toTenths((resinG * partsByMass) / 100);
  return { resinG, hardenerG, fillerG: toTenths(((resinG + hardenerG) * fillerParts) / 100) };
}

export const toTenths = (mass: number): number => Math.round(mass * 10) / 10;

function thickened(
  step: ResinStepRequest,
  filler: Filler | undefined,
  density: Figure<'g/cm3'>,
  at: string,
): { readonly density: Figure<'g/cm3'>; readonly parts: Figure<'phr'> } {
  if (filler === undefined) return { density, parts: enteredIn('phr', 0, 'no filler', at) };
  const parts =
    step.fillerPartsPerHundred === undefined
      ? catalogueIn('phr', filler.partsPerHundred, 'parts of filler', {
          item: filler.code,
          field: 'partsPerHundred',
        })
      : enteredIn('phr', step.fillerPartsPerHundred, 'parts of filler', `${at}/fillerPartsPerHundred`);
  const fillerDensity = catalogueIn('g/cm3', filler.trueDensityGPerCm3, 'true density of the filler', {
    item: filler.code,
    field: 'trueDensityGPerCm3',
  });
  return {
    parts,
    density: computeChecked(thickenedDensity, {
      mixedDensity: density,
      partsPerHundred: parts,
      fillerDensity,
    }),
  };
}

/** The filler named, or the first one given whose main use this is, or else the first that serves it. */
function fillerOf({ fillers }: ResinDemandRequest, step: ResinStepRequest): Filler | undefined {
  const use = stepDefinitions[step.step].filler;
  if (step.filler === 'none' || (use === undefined && step.filler === undefined)) return undefined;
  if (step.filler !== undefined) return fillers.find(({ code }) => code === step.filler);
  return (
    fillers.find(({ uses }) => uses[0] === use) ??
    fillers.find(({ uses }) => use !== undefined && uses.includes(use))
  );
}

const wasteOf = (request: ResinDemandRequest, step: ResinStepRequest, at: string): Figure<'1'> =>
  enteredOrAssumed('1', step.wasteFraction ?? request.wasteFraction, 'waste as a share of net', {
    at: step.wasteFraction === undefined ? '/wasteFraction' : `${at}/wasteFraction`,
    ...defaultWaste,
  });

const hardenerOf = (resin: ResinSystem, code: string): Hardener | undefined =>
  resin.hardeners.find((hardener) => hardener.code === code);

export const mixedDensityOf = (resin: ResinSystem, hardener: Hardener): Figure<'g/cm3'> =>
  computeChecked(mixedDensity, {
    partsByMass: catalogueIn('phr', hardener.partsByMass, 'hardener by mass', {
      item: resin.code,
      field: `${hardener.code}/partsByMass`,
    }),
    resinDensity: catalogueIn('g/cm3', resin.densityGPerCm3, 'density of the resin', {
      item: resin.code,
      field: 'densityGPerCm3',
    }),
    hardenerDensity: catalogueIn('g/cm3', hardener.densityGPerCm3, 'density of the hardener', {
      item: resin.code,
      field: `${hardener.code}/densityGPerCm3`,
    }),
  });

function totalsOf(steps: readonly StepDemand[]): ResinDemand['totals'] {
  const sum = (pick: (step: StepDemand) => number): number =>
    steps.reduce((total, step) => total + pick(step), 0);
  const fillers = [...new Set(steps.flatMap(({ filler }) => filler ?? []))].map((filler) => ({
    filler,
    massG: toTenths(sum((step) => (step.filler === filler ? step.fillerG : 0))),
  }));
  return {
    netL: sum(({ netL }) => netL),
    wasteL: sum(({ wasteL }) => wasteL),
    totalL: sum(({ totalL }) => totalL),
    resinG: toTenths(sum(({ resinG }) => resinG)),
    hardenerG: toTenths(sum(({ hardenerG }) => hardenerG)),
    fillers,
  };
}

function assumptionsIn(steps: readonly StepDemand[]): readonly ProcessAssumption[] {
  const found = steps.flatMap(({ why }) => assumptionsOf(why.mixedG)).flatMap(assumptionFrom);
  return [...new Map(found.map((assumption) => [assumption.at, assumption])).values()];
}

const demandFaults = (request: ResinDemandRequest): readonly Problem[] => [
  ...faultsIn(request, demandQuestions),
  ...demandContradictions(request),
];

/** What answers that are good by themselves cannot be together; a step of an unknown kind has no basis to judge by. */
export function demandContradictions(request: ResinDemandRequest): readonly Problem[] {
  const known = hardenerOf(request.resin, request.hardener);
  return [
    ...resinFaults(request.resin),
    ...(known === undefined ? [unknownHardener(request)] : []),
    ...request.steps.flatMap((step, index) =>
      Object.hasOwn(stepDefinitions, step.step)
        ? [
            ...basisOf(step).faults(step, `/steps/${index}`),
            ...fillerFaults(request, step, `/steps/${index}`),
          ]
        : [],
    ),
  ];
}

const unknownHardener = ({ resin, hardener }: ResinDemandRequest): Problem =>
  problem('unknown-code', '/hardener', {
    value: hardener,
    kind: `hardener of ${resin.code}`,
    known: resin.hardeners.map(({ code }) => code).join(', '),
  });

/** A ratio of zero, or weights and volumes that tell two different ratios, would spoil every batch. */
export function resinFaults(resin: ResinSystem): readonly Problem[] {
  return resin.hardeners.flatMap((hardener, index) => {
    const at = `/resin/hardeners/${index}`;
    const numbers = [
      ...numberFaults(`${at}/partsByMass/value`, hardener.partsByMass.value, {
        above: 0,
        upTo: 200,
        unit: 'parts',
      }),
      ...numberFaults(`${at}/partsByVolume/value`, hardener.partsByVolume.value, {
        above: 0,
        upTo: 200,
        unit: 'parts',
      }),
      ...numberFaults(`${at}/densityGPerCm3/value`, hardener.densityGPerCm3.value, {
        above: 0.5,
        upTo: 3,
        unit: 'g/cm3',
      }),
      ...numberFaults('/resin/densityGPerCm3/value', resin.densityGPerCm3.value, {
        above: 0.5,
        upTo: 3,
        unit: 'g/cm3',
      }),
    ];
    return numbers.length > 0 ? numbers : ratioContradiction(resin, hardener, at);
  });
}

const RATIO_TOLERANCE = 0.08;

function ratioContradiction(resin: ResinSystem, hardener: Hardener, at: string): readonly Problem[] {
  const byVolume = partsByMassFromVolume.evaluate({
    partsByVolume: enteredIn('phr by volume', hardener.partsByVolume.value, '', at).value,
    hardenerDensity: enteredIn('g/cm3', hardener.densityGPerCm3.value, '', at).value,
    resinDensity: enteredIn('g/cm3', resin.densityGPerCm3.value, '', at).value,
  });
  if (Math.abs(byVolume / hardener.partsByMass.value - 1) <= RATIO_TOLERANCE) return [];
  return [
    problem('contradiction', `${at}/partsByMass/value`, {
      other: `${at}/partsByVolume/value`,
      why: `by volume and density it would be ${byVolume.toFixed(1)} parts by mass`,
    }),
  ];
}

function fillerFaults(
  { fillers }: ResinDemandRequest,
  step: ResinStepRequest,
  at: string,
): readonly Problem[] {
  const isKnown =
    step.filler === undefined || step.filler === 'none' || fillers.some(({ code }) => code === step.filler);
  if (!isKnown)
    return [
      problem('unknown-code', `${at}/filler`, {
        value: String(step.filler),
        kind: 'filler',
        known: [...fillers.map(({ code }) => code), 'none'].join(', '),
      }),
    ];
  const use = stepDefinitions[step.step].filler;
  const isServed =
    step.filler !== undefined || use === undefined || fillers.some(({ uses }) => uses.includes(use));
  return isServed
    ? []
    : [problem('missing', '/fillers', { expected: `a filler for ${use}, or "none" at ${at}/filler` })];
}
