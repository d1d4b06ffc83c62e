import { below, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { complianceOf, type Compliance } from './compliance.js';
import { flexuralConstants, inPlaneConstants, type EngineeringConstants } from './engineering-constants.js';
import { criteria, type Criterion } from './failure.js';
import { countFaults, numberFaults } from '#lib/asking';
import type { Ply } from '../ply/ply.js';
import {
  firstPlyFailure,
  progressiveFailure,
  type Degradation,
  type PlyFailure,
  type ProgressiveFailure,
} from './ply-failure.js';
import { noClimate, noLoads, responseOf, type Climate, type Loads, type Response } from './response.js';
import { stiffnessOf, type Stiffness } from './stiffness.js';

export const MOST_PLIES = 400;

/** First ply lowest; angles from x towards y. */
export interface LaminateRequest {
  readonly plies: readonly Ply[];
  readonly loads?: Loads;
  readonly climate?: Climate;
  readonly criteria?: readonly Criterion[];
  /** With it, the order of failures is followed by the first of `criteria`. */
  readonly degradation?: Degradation;
}

export interface LaminateAnswer {
  readonly thicknessMm: number;
  /** Stretching stiffness A, row by row. */
  readonly aNPerMm: readonly number[];
  /** Coupling stiffness B, row by row. */
  readonly bN: readonly number[];
  /** Bending stiffness D, row by row. */
  readonly dNmm: readonly number[];
  readonly complianceA: readonly number[];
  readonly complianceB: readonly number[];
  readonly complianceD: readonly number[];
  readonly reducedDNmm: readonly number[];
  /** Engineering constants in the plane. */
  readonly inPlane: {
    /** Constants when the laminate may curl. */
    readonly free: EngineeringConstants;
    /** Constants when it is kept from curling. */
    readonly heldFlat: EngineeringConstants;
  };
  /** Engineering constants in bending. */
  readonly flexural: EngineeringConstants;
  /** Largest member of B against √(A D): 0 for a symmetric laminate. */
  readonly couplingRatio: number;
  readonly midStrain?: readonly number[];
  readonly curvaturePerMm?: readonly number[];
  readonly plies?: readonly PlyAnswer[];
  readonly firstPlyFailures?: readonly ({ readonly criterion: Criterion } & Partial<PlyFailure>)[];
  readonly progressive?: ProgressiveFailure;
  readonly absent: readonly string[];
}

/** Each list is bottom, middle, top; each entry [1, 2, 12] in the ply's axes. */
export interface PlyAnswer {
  readonly stressMPa: readonly (readonly number[])[];
  readonly strain: readonly (readonly number[])[];
}

/** The whole of lamination theory for one stack, as the service gives it. */
export function laminate(request: LaminateRequest): Outcome<LaminateAnswer> {
  const problems = laminateFaults(request);
  return problems.length > 0 ? refusal(...problems) : success(answer(request));
}

function answer(request: LaminateRequest): LaminateAnswer {
  const { plies } = request;
  const stiffness = stiffnessOf(plies);
  const compliance = complianceOf(stiffness);
  return {
    ...stiffnessAnswer(stiffness, compliance),
    ...responseAnswer(request, stiffness, compliance),
    ...failureAnswer(request),
    absent: plies.some(({ strength }) => strength === undefined)
      ? ['failure of plies without strengths: their source gives none']
      : [],
  };
}

const stiffnessAnswer = (stiffness: Stiffness, compliance: Compliance) => ({
  thicknessMm: stiffness.thicknessMm,
  aNPerMm: [...stiffness.aNPerMm],
  bN: [...stiffness.bN],
  dNmm: [...stiffness.dNmm],
  complianceA: [...compliance.aMmPerN],
  complianceB: [...compliance.bPerN],
  complianceD: [...compliance.dPerNmm],
  reducedDNmm: [...compliance.reducedDNmm],
  inPlane: inPlaneConstants(compliance, stiffness.thicknessMm),
  flexural: flexuralConstants(compliance, stiffness.thicknessMm),
  couplingRatio: couplingRatio(stiffness),
});

function couplingRatio({ aNPerMm, bN, dNmm }: Stiffness): number {
  const largest = Math.max(...bN.map(Math.abs));
  return largest / Math.sqrt(Math.max(aNPerMm[0], aNPerMm[3]) * Math.max(dNmm[0], dNmm[3]));
}

function responseAnswer(
  { plies, loads, climate }: LaminateRequest,
  stiffness: Stiffness,
  compliance: Compliance,
) {
  if (loads === undefined && climate === undefined) return {};
  const response = responseOf({ plies, stiffness, compliance }, loads ?? noLoads, climate ?? noClimate);
  return {
    midStrain: [...response.midStrain],
    curvaturePerMm: [...response.curvaturePerMm],
    plies: plies.map((_, k) => plyAnswer(response, k)),
  };
}

const plyAnswer = ({ stressMPa, strain }: Response, k: number): PlyAnswer => ({
  stressMPa: [0, 3, 6].map((level) => [...stressMPa.subarray(9 * k + level, 9 * k + level + 3)]),
  strain: [0, 3, 6].map((level) => [...strain.subarray(9 * k + level, 9 * k + level + 3)]),
});

function failureAnswer({
  plies,
  loads,
  climate = noClimate,
  criteria: asked = criteria,
  degradation,
}: LaminateRequest) {
  if (loads === undefined) return {};
  const firstPlyFailures = asked.map((criterion) => ({
    criterion,
    ...firstPlyFailure(plies, loads, climate, criterion),
  }));
  if (degradation === undefined) return { firstPlyFailures };
  const progressive = progressiveFailure(plies, loads, climate, { criterion: asked[0], degradation });
  return progressive === undefined ? { firstPlyFailures } : { firstPlyFailures, progressive };
}

export function laminateFaults({
  plies,
  loads,
  climate,
  criteria: asked,
  degradation,
}: LaminateRequest): readonly Problem[] {
  const counts = countFaults('/plies', plies.length, { least: 1, most: MOST_PLIES });
  const perPly = counts.length > 0 ? [] : plies.flatMap((ply, i) => below(`/plies/${i}`, plyFaults(ply)));
  const loadFaults =
    loads === undefined
      ? []
      : [...loads.forcesNPerMm, ...loads.momentsN].flatMap((value, i) =>
          numberFaults(`/loads/${i < 3 ? 'forcesNPerMm' : 'momentsN'}/${i % 3}`, value, {}),
        );
  const climateFaults =
    climate === undefined
      ? []
      : [
          ...numberFaults('/climate/temperatureChangeK', climate.temperatureChangeK, {
            from: -300,
            upTo: 300,
          }),
          ...numberFaults('/climate/moistureChange', climate.moistureChange, { from: -0.5, upTo: 0.5 }),
        ];
  const criterionFaults = (asked ?? []).flatMap((name, i) =>
    criteria.includes(name)
      ? []
      : [problem('not-one-of', `/criteria/${i}`, { value: String(name), choices: criteria.join(', ') })],
  );
  const none = asked?.length === 0 ? countFaults('/criteria', 0, { least: 1, most: criteria.length }) : [];
  return [
    ...counts,
    ...perPly,
    ...loadFaults,
    ...climateFaults,
    ...criterionFaults,
    ...none,
    ...degradationFaults(degradation),
  ];
}

const degradationFaults = (degradation: Degradation | undefined): readonly Problem[] =>
  degradation === undefined
    ? []
    : [
        ...numberFaults('/degradation/fibreFraction', degradation.fibreFraction, { above: 0, upTo: 1 }),
        ...numberFaults('/degradation/matrixFraction', degradation.matrixFraction, { above: 0, upTo: 1 }),
      ];

/** What no real ply can have: a modulus below zero, no thickness, ν12 ν21 of 1 or more. */
export function plyFaults(ply: Ply): readonly Problem[] {
  const modulus = { above: 0, upTo: 2_000_000 };
  const single = [
    ...numberFaults('/youngAlongMPa', ply.youngAlongMPa, modulus),
    ...numberFaults('/youngAcrossMPa', ply.youngAcrossMPa, modulus),
    ...numberFaults('/shearModulusMPa', ply.shearModulusMPa, modulus),
    ...numberFaults('/poissonRatio', ply.poissonRatio, { above: -2, below: 10 }),
    ...numberFaults('/thicknessMm', ply.thicknessMm, { above: 0, upTo: 500 }),
    ...numberFaults('/angleDeg', ply.angleDeg, { from: -360, upTo: 360 }),
    ...strengthFaults(ply),
  ];
  return single.length > 0 ? single : pairFaults(ply);
}

const strengthFaults = ({ strength, breakingStrain }: Ply): readonly Problem[] => [
  ...Object.entries(strength ?? {}).flatMap(([name, value]) =>
    numberFaults(`/strength/${name}`, value, { above: 0, upTo: 20_000 }),
  ),
  ...Object.entries(breakingStrain ?? {}).flatMap(([name, value]) =>
    numberFaults(`/breakingStrain/${name}`, value, { above: 0, below: 1 }),
  ),
];

function pairFaults({ youngAlongMPa, youngAcrossMPa, poissonRatio }: Ply): readonly Problem[] {
  const product = (poissonRatio ** 2 * youngAcrossMPa) / youngAlongMPa;
  if (product < 1) return [];
  return [
    problem('contradiction', '/poissonRatio', {
      other: 'youngAlongMPa and youngAcrossMPa',
      why: `ν12 ν21 is ${product}; it must be below 1, so the ratio must be below ${Math.sqrt(youngAlongMPa / youngAcrossMPa)}`,
    }),
  ];
}
