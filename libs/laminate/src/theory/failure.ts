import type { PlyBreakingStrain, PlyElastic, PlyStrength } from '../ply/ply.js';

export type Criterion = 'max-stress' | 'max-strain' | 'tsai-hill' | 'tsai-wu' | 'hoffman';
export const criteria: readonly Criterion[] = ['max-stress', 'max-strain', 'tsai-hill', 'tsai-wu', 'hoffman'];

export type FailureMode =
  'fibre-tension' | 'fibre-compression' | 'matrix-tension' | 'matrix-compression' | 'shear';

/** Stress in a ply's axes, [σ1, σ2, τ12]. */
export type Stress = readonly [number, number, number];

export interface PlyLimits {
  readonly elastic: PlyElastic;
  readonly strength: PlyStrength;
  readonly breakingStrain: PlyBreakingStrain;
}

export interface Onset {
  /** Multiplier on the applied load at which the criterion is met; 0 when the resting stress alone meets it. */
  readonly factor: number;
  readonly mode: FailureMode;
}

/**
 * The load multiplier λ ≥ 0 at which resting + λ applied stress meets a criterion; undefined when it never does.
 *
 * Source: [JONES-1999] chapter 2; [AZZI-TSAI-1965]; [TSAI-WU-1971]; [HOFFMAN-1967]
 * Worked: test/reference/cases/laminate-failure.ts
 */
export function onsetOf(
  criterion: Criterion,
  limits: PlyLimits,
  resting: Stress,
  applied: Stress,
): Onset | undefined {
  const factor = factorOf(criterion, limits, resting, applied);
  if (factor === undefined) return undefined;
  const stress = [0, 1, 2].map((i) => resting[i] + factor * applied[i]);
  return { factor, mode: modeAt(limits.strength, [stress[0], stress[1], stress[2]]) };
}

function factorOf(
  criterion: Criterion,
  limits: PlyLimits,
  resting: Stress,
  applied: Stress,
): number | undefined {
  switch (criterion) {
    case 'max-stress':
      return linearFactor(stressCaps(limits.strength), resting, applied);
    case 'max-strain':
      return linearFactor(
        strainCaps(limits.breakingStrain),
        strainOf(limits.elastic, resting),
        strainOf(limits.elastic, applied),
      );
    case 'tsai-hill':
      return hillFactor(limits.strength, resting, applied);
    case 'tsai-wu':
      return quadraticFactor(tensorOf(limits.strength, 'tsai-wu'), resting, applied);
    case 'hoffman':
      return quadraticFactor(tensorOf(limits.strength, 'hoffman'), resting, applied);
  }
}

type Caps = readonly (readonly [tension: number, compression: number])[];

const stressCaps = (s: PlyStrength): Caps => [
  [s.tensionAlongMPa, s.compressionAlongMPa],
  [s.tensionAcrossMPa, s.compressionAcrossMPa],
  [s.shearMPa, s.shearMPa],
];

const strainCaps = (e: PlyBreakingStrain): Caps => [
  [e.tensionAlong, e.compressionAlong],
  [e.tensionAcross, e.compressionAcross],
  [e.shear, e.shear],
];

const strainOf = (
  { youngAlongMPa, youngAcrossMPa, poissonRatio, shearModulusMPa }: PlyElastic,
  [s1, s2, t]: Stress,
): Stress => [
  (s1 - poissonRatio * s2) / youngAlongMPa,
  s2 / youngAcrossMPa - (poissonRatio * s1) / youngAlongMPa,
  t / shearModulusMPa,
];

function linearFactor(caps: Caps, resting: Stress, applied: Stress): number | undefined {
  const factors = caps.flatMap(([tension, compression], i) => {
    const isOver = resting[i] >= tension || resting[i] <= -compression;
    if (isOver) return [0];
    if (applied[i] === 0) return [];
    return [((applied[i] > 0 ? tension : -compression) - resting[i]) / applied[i]];
  });
  return factors.length === 0 ? undefined : Math.min(...factors);
}

/** F1 σ1 + F2 σ2 + F11 σ1² + F22 σ2² + F66 τ² + 2 F12 σ1 σ2 = 1. */
interface Tensor {
  readonly f1: number;
  readonly f2: number;
  readonly f11: number;
  readonly f22: number;
  readonly f66: number;
  readonly f12: number;
}

function tensorOf(s: PlyStrength, kind: 'tsai-wu' | 'hoffman'): Tensor {
  const f11 = 1 / (s.tensionAlongMPa * s.compressionAlongMPa);
  const f22 = 1 / (s.tensionAcrossMPa * s.compressionAcrossMPa);
  return {
    f1: 1 / s.tensionAlongMPa - 1 / s.compressionAlongMPa,
    f2: 1 / s.tensionAcrossMPa - 1 / s.compressionAcrossMPa,
    f11,
    f22,
    f66: 1 / s.shearMPa ** 2,
    f12: kind === 'tsai-wu' ? -Math.sqrt(f11 * f22) / 2 : -f11 / 2,
  };
}

function quadraticFactor(f: Tensor, r: Stress, m: Stress): number | undefined {
  const square = f.f11 * m[0] ** 2 + f.f22 * m[1] ** 2 + f.f66 * m[2] ** 2 + 2 * f.f12 * m[0] * m[1];
  const slope =
    f.f1 * m[0] +
    f.f2 * m[1] +
    2 *
      (f.f11 * r[0] * m[0] + f.f22 * r[1] * m[1] + f.f66 * r[2] * m[2] + f.f12 * (r[0] * m[1] + r[1] * m[0]));
  const rest =
    f.f1 * r[0] +
    f.f2 * r[1] +
    f.f11 * r[0] ** 2 +
    f.f22 * r[1] ** 2 +
    f.f66 * r[2] ** 2 +
    2 * f.f12 * r[0] * r[1] -
    1;
  return firstRoot(square, slope, rest);
}

/** Where a λ² + b λ + c rises to 0 for λ ≥ 0; c < 0 means the resting state is sound. */
function firstRoot(a: number, b: number, c: number): number | undefined {
  if (c >= 0) return 0;
  if (a <= 0) return b > 0 ? -c / b : undefined;
  const root = Math.sqrt(b * b - 4 * a * c);
  return b >= 0 ? (-2 * c) / (b + root) : (root - b) / (2 * a);
}

/** The strengths change with the sign of each stress, so the quadratic is solved between the places where a sign turns. */
function hillFactor(strength: PlyStrength, resting: Stress, applied: Stress): number | undefined {
  const turns = [0, 1]
    .map((i) => -resting[i] / applied[i])
    .filter((turn) => turn > 0 && Number.isFinite(turn))
    .sort((x, y) => x - y);
  const starts = [0, ...turns];
  for (const [i, start] of starts.entries()) {
    const end = turns[i] ?? Number.POSITIVE_INFINITY;
    const inside = Number.isFinite(end) ? (start + end) / 2 : start + 1;
    const factor = hillRoot(strength, resting, applied, inside);
    if (factor !== undefined && factor <= end) return Math.max(factor, start);
  }
  return undefined;
}

function hillRoot(s: PlyStrength, r: Stress, m: Stress, inside: number): number | undefined {
  const along = r[0] + inside * m[0] >= 0 ? s.tensionAlongMPa : s.compressionAlongMPa;
  const across = r[1] + inside * m[1] >= 0 ? s.tensionAcrossMPa : s.compressionAcrossMPa;
  const tensor: Tensor = {
    f1: 0,
    f2: 0,
    f11: 1 / along ** 2,
    f22: 1 / across ** 2,
    f66: 1 / s.shearMPa ** 2,
    f12: -0.5 / along ** 2,
  };
  return quadraticFactor(tensor, r, m);
}

/** The part of the stress that is nearest its own strength names the mode. */
export function modeAt(s: PlyStrength, [s1, s2, t]: Stress): FailureMode {
  const fibre = s1 >= 0 ? s1 / s.tensionAlongMPa : -s1 / s.compressionAlongMPa;
  const matrix = s2 >= 0 ? s2 / s.tensionAcrossMPa : -s2 / s.compressionAcrossMPa;
  const shear = Math.abs(t) / s.shearMPa;
  if (fibre >= matrix && fibre >= shear) return s1 >= 0 ? 'fibre-tension' : 'fibre-compression';
  if (matrix >= shear) return s2 >= 0 ? 'matrix-tension' : 'matrix-compression';
  return 'shear';
}
