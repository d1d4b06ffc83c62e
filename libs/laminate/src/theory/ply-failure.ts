import { complianceOf } from './compliance.js';
import { onsetOf, type Criterion, type FailureMode, type PlyLimits, type Stress } from './failure.js';
import { breakingStrainOf, type Ply } from '../ply/ply.js';
import { noClimate, noLoads, responseOf, type Climate, type Loads, type Response } from './response.js';
import { stiffnessOf } from './stiffness.js';

export interface PlyFailure {
  readonly plyIndex: number;
  readonly face: 'bottom' | 'top';
  readonly mode: FailureMode;
  /** Multiplier on the given loads. */
  readonly loadFactor: number;
}

/** The first ply to meet the criterion as the loads grow in proportion; the climate's stresses rest unchanged. */
export function firstPlyFailure(
  plies: readonly Ply[],
  loads: Loads,
  climate: Climate,
  criterion: Criterion,
): PlyFailure | undefined {
  return firstAmong(plies, plies.map(limitsOf), { loads, climate, criterion, skip: new Set() });
}

interface Case {
  readonly loads: Loads;
  readonly climate: Climate;
  readonly criterion: Criterion;
  /** Plies out of the count, because nothing is left of them to fail. */
  readonly skip: ReadonlySet<number>;
}

const limitsOf = (ply: Ply): PlyLimits | undefined => {
  const breakingStrain = breakingStrainOf(ply);
  return ply.strength === undefined || breakingStrain === undefined
    ? undefined
    : { elastic: ply, strength: ply.strength, breakingStrain };
};

function firstAmong(
  plies: readonly Ply[],
  limits: readonly (PlyLimits | undefined)[],
  { loads, climate, criterion, skip }: Case,
): PlyFailure | undefined {
  const stiffness = stiffnessOf(plies);
  const laminate = { plies, stiffness, compliance: complianceOf(stiffness) };
  const applied = responseOf(laminate, loads, noClimate);
  const resting = responseOf(laminate, noLoads, climate);
  let first: PlyFailure | undefined;
  for (const [plyIndex, limit] of limits.entries()) {
    if (limit === undefined || skip.has(plyIndex)) continue;
    for (const face of ['bottom', 'top'] as const) {
      const level = 3 * plyIndex + (face === 'bottom' ? 0 : 2);
      const onset = onsetOf(criterion, limit, stressAt(resting, level), stressAt(applied, level));
      if (onset !== undefined && (first === undefined || onset.factor < first.loadFactor)) {
        first = { plyIndex, face, mode: onset.mode, loadFactor: onset.factor };
      }
    }
  }
  return first;
}

const stressAt = ({ stressMPa }: Response, level: number): Stress => [
  stressMPa[3 * level],
  stressMPa[3 * level + 1],
  stressMPa[3 * level + 2],
];

/** What is left of a ply's moduli after a failure: the share of E1 after a fibre failure, of E2, G12 and ν12 after a matrix failure. */
export interface Degradation {
  readonly fibreFraction: number;
  readonly matrixFraction: number;
}

export interface ProgressiveFailure {
  readonly events: readonly PlyFailure[];
  /** Largest load factor the laminate carries on the way. */
  readonly ultimateFactor: number;
  /** Place in `events` at which it is reached. */
  readonly ultimateEvent: number;
}

/**
 * Failure order by discounting plies: after each failure the ply keeps the stated shares of its moduli, and the loads start anew.
 *
 * It ends when every ply has lost its fibres, or when the laminate carries less than a tenth of its best.
 * A ply whose matrix failed is asked again with its reduced moduli; its strengths stay.
 * Valid:  a bookkeeping of load shedding, not a damage model; the shares are assumptions of the caller.
 * Source: [JONES-1999] chapter 4
 */
export function progressiveFailure(
  plies: readonly Ply[],
  loads: Loads,
  climate: Climate,
  rule: { readonly criterion: Criterion; readonly degradation: Degradation },
): ProgressiveFailure | undefined {
  const limits = plies.map(limitsOf);
  const current = [...plies];
  const state = { events: new Array<PlyFailure>(), spent: new Set<number>(), cracked: new Set<number>() };
  let best = 0;
  while (state.spent.size < plies.length) {
    const live = limits.map((limit, i) => limit && { ...limit, elastic: current[i] });
    const failure = firstAmong(current, live, {
      loads,
      climate,
      criterion: rule.criterion,
      skip: state.spent,
    });
    if (failure === undefined) break;
    state.events.push(failure);
    best = Math.max(best, failure.loadFactor);
    if (failure.loadFactor < best / 10) break;
    current[failure.plyIndex] = degraded(current[failure.plyIndex], failure, rule.degradation, state);
  }
  if (state.events.length === 0) return undefined;
  return {
    events: state.events,
    ultimateFactor: best,
    ultimateEvent: state.events.findIndex(({ loadFactor }) => loadFactor === best),
  };
}

interface Spending {
  readonly spent: Set<number>;
  readonly cracked: Set<number>;
}

/** A second matrix failure of the same ply leaves it with its fibres only, so that it cannot be counted for ever. */
function degraded(
  ply: Ply,
  { plyIndex, mode }: PlyFailure,
  { fibreFraction, matrixFraction }: Degradation,
  state: Spending,
): Ply {
  const isFibre = mode === 'fibre-tension' || mode === 'fibre-compression';
  if (isFibre || state.cracked.has(plyIndex)) state.spent.add(plyIndex);
  state.cracked.add(plyIndex);
  const matrix = {
    youngAcrossMPa: ply.youngAcrossMPa * matrixFraction,
    shearModulusMPa: ply.shearModulusMPa * matrixFraction,
    poissonRatio: ply.poissonRatio * matrixFraction,
  };
  return isFibre
    ? { ...ply, ...matrix, youngAlongMPa: ply.youngAlongMPa * fibreFraction }
    : { ...ply, ...matrix };
}
