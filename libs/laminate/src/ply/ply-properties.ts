import { liesWithin, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { classMethods } from './class-methods.js';
import { micromechanicsMethod } from './micromechanics.js';
import type { PlyBasis, PlyMethod, PlyMethodName, PlyProperties } from './ply-method.js';
import { numberFaults } from '#lib/asking';
import { yardstickMethod } from './yardstick-method.js';

export const plyMethods: readonly PlyMethod[] = [yardstickMethod, ...classMethods, micromechanicsMethod];

export const findPlyMethod = (name: string): PlyMethod | undefined =>
  plyMethods.find((method) => method.name === name);

export interface PlyRequest extends PlyBasis {
  readonly method: PlyMethodName;
}

/** Properties of one ply by one named method; outside the method's validity it refuses. */
export function plyProperties(request: PlyRequest): Outcome<PlyProperties> {
  const method = findPlyMethod(request.method);
  if (method === undefined) {
    return refusal(
      problem('not-one-of', '/method', {
        value: String(request.method),
        choices: plyMethods.map(({ name }) => name).join(', '),
      }),
    );
  }
  const problems = [...basisFaults(request), ...methodFaults(method, request)];
  return problems.length > 0 ? refusal(...problems) : success(method.propertiesOf(request));
}

export function basisFaults({ resin, fibreMassFraction }: PlyBasis): readonly Problem[] {
  return [
    ...numberFaults('/fibreMassFraction', fibreMassFraction, { above: 0, below: 1 }),
    ...numberFaults('/resin/densityKgPerM3', resin.densityKgPerM3, { above: 900, upTo: 2000 }),
    ...numberFaults('/resin/youngMPa', resin.youngMPa, { above: 0, upTo: 20_000 }),
    ...numberFaults('/resin/poissonRatio', resin.poissonRatio, { from: 0, below: 0.5 }),
    ...(resin.shearModulusMPa === undefined
      ? []
      : numberFaults('/resin/shearModulusMPa', resin.shearModulusMPa, { above: 0, upTo: 10_000 })),
  ];
}

export function methodFaults(
  method: PlyMethod,
  { layup, fibreMassFraction, resin }: PlyBasis,
): readonly Problem[] {
  const layupFault = method.layups.includes(layup)
    ? []
    : [
        problem('not-supported', '/layup', {
          why: `${method.title} gives no ${layup} ply; it gives ${method.layups.join(', ')}`,
        }),
      ];
  const chemistryFault = method.chemistries.includes(resin.chemistry)
    ? []
    : [
        problem('not-one-of', '/resin/chemistry', {
          value: String(resin.chemistry),
          choices: method.chemistries.join(', '),
        }),
      ];
  const isFraction = fibreMassFraction > 0 && fibreMassFraction < 1;
  const rangeFault =
    !isFraction || liesWithin(fibreMassFraction, { from: method.from, upTo: method.upTo })
      ? []
      : [
          problem('not-supported', '/fibreMassFraction', {
            why: `${method.title} holds for fibre mass fractions from ${method.from} to ${method.upTo}, and ${fibreMassFraction} lies outside`,
          }),
        ];
  return [...layupFault, ...chemistryFault, ...rangeFault];
}

export interface PropertySpread {
  readonly property:
    | 'youngAlongMPa'
    | 'youngAcrossMPa'
    | 'shearModulusMPa'
    | 'poissonRatio'
    | 'tensionAlongMPa'
    | 'compressionAlongMPa';
  readonly values: readonly { readonly method: PlyMethodName; readonly value: number }[];
  readonly low: number;
  readonly high: number;
  /** Highest less lowest, over their mean. */
  readonly spreadFraction: number;
}

export interface MethodSpread {
  readonly properties: readonly PropertySpread[];
  readonly leftOut: readonly { readonly method: PlyMethodName; readonly problems: readonly Problem[] }[];
}

/** The same ply by every method that covers it, side by side and never blended. */
export function spreadOverMethods(basis: PlyBasis): Outcome<MethodSpread> {
  const problems = basisFaults(basis);
  if (problems.length > 0) return refusal(...problems);
  const answers = plyMethods.map((method) => ({ method, faults: methodFaults(method, basis) }));
  const plies = answers
    .filter(({ faults }) => faults.length === 0)
    .map(({ method }) => method.propertiesOf(basis));
  return success({
    properties: spreadProperties.flatMap((property) => spreadOf(property, plies)),
    leftOut: answers
      .filter(({ faults }) => faults.length > 0)
      .map(({ method, faults }) => ({ method: method.name, problems: faults })),
  });
}

const spreadProperties: readonly PropertySpread['property'][] = [
  'youngAlongMPa',
  'youngAcrossMPa',
  'shearModulusMPa',
  'poissonRatio',
  'tensionAlongMPa',
  'compressionAlongMPa',
];

function spreadOf(
  property: PropertySpread['property'],
  plies: readonly PlyProperties[],
): readonly PropertySpread[] {
  const values = plies.flatMap((ply) => {
    const value =
      property === 'tensionAlongMPa' || property === 'compressionAlongMPa'
        ? ply.strength?.[property]
        : ply[property];
    return value === undefined ? [] : [{ method: ply.method, value }];
  });
  if (values.length === 0) return [];
  const low = Math.min(...values.map(({ value }) => value));
  const high = Math.max(...values.map(({ value }) => value));
  return [{ property, values, low, high, spreadFraction: (high - low) / ((high + low) / 2) }];
}
