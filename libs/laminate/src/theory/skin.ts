import { breakingStrainOf, type PlyBreakingStrain } from '../ply/ply.js';
import { invertSymmetric } from './compliance.js';
import type { LaidPly } from './layup.js';
import { writeQBar, writeTurn } from './stiffness.js';

/** Direction and sign of a pull on a skin. */
export const pulls = ['tension-along', 'compression-along', 'tension-across', 'compression-across'] as const;

/** A skin as a membrane: the core keeps it flat, so that only A counts. */
export interface SkinMeasure {
  readonly thicknessMm: number;
  /** [11, 12, 16, 22, 26, 66], N/mm. */
  readonly aNPerMm: Float64Array;
  /** 1/a11, 1/a22, 1/a66: force per width for unit strain with the other directions free. */
  readonly alongNPerMm: number;
  readonly acrossNPerMm: number;
  readonly shearNPerMm: number;
  /** Force per width at which the first ply breaks, in the order of `pulls`; empty when a ply has no strengths. */
  readonly strengthNPerMm: readonly number[];
}

/** One ply's limit: its turn, and the strains it breaks at over the method's own partial factors. */
export interface LimitLayer {
  readonly cos: number;
  readonly sin: number;
  readonly limits: PlyBreakingStrain;
}

/** Extensional stiffness of a few plies, packed, and their limits. */
export interface Membrane {
  readonly thicknessMm: number;
  readonly aNPerMm: Float64Array;
  readonly layers: readonly LimitLayer[];
  readonly hasLimits: boolean;
}

export function membraneOf(plies: readonly LaidPly[]): Membrane {
  const a = new Float64Array(6);
  const q = new Float64Array(6);
  const turn = new Float64Array(2);
  const layers = plies.flatMap((ply) => {
    writeTurn(turn, 0, ply.angleDeg);
    writeQBar(ply, turn, q, 0);
    for (let i = 0; i < 6; i += 1) a[i] += q[i] * ply.thicknessMm;
    const limits = limitsOf(ply);
    return limits === undefined ? [] : [{ cos: turn[0], sin: turn[1], limits }];
  });
  return {
    thicknessMm: plies.reduce((sum, ply) => sum + ply.thicknessMm, 0),
    aNPerMm: a,
    layers,
    hasLimits: layers.length === plies.length,
  };
}

function limitsOf(ply: LaidPly): PlyBreakingStrain | undefined {
  const strain = breakingStrainOf(ply);
  const factors = ply.partialFactors;
  if (strain === undefined || factors === undefined) return strain;
  return {
    tensionAlong: strain.tensionAlong / factors.tensionAlong,
    compressionAlong: strain.compressionAlong / factors.compressionAlong,
    tensionAcross: strain.tensionAcross / factors.tensionAcross,
    compressionAcross: strain.compressionAcross / factors.compressionAcross,
    shear: strain.shear / factors.shear,
  };
}

export const measureSkin = (plies: readonly LaidPly[]): SkinMeasure => measureMembrane(membraneOf(plies));

export function measureMembrane(membrane: Membrane): SkinMeasure {
  const a = new Float64Array(6);
  invertSymmetric(membrane.aNPerMm, a);
  return {
    thicknessMm: membrane.thicknessMm,
    aNPerMm: membrane.aNPerMm,
    alongNPerMm: 1 / a[0],
    acrossNPerMm: 1 / a[3],
    shearNPerMm: 1 / a[5],
    strengthNPerMm: membrane.hasLimits
      ? [0, 1, 2, 3].map((pull) => membraneStrength(a, membrane.layers, pull))
      : [],
  };
}

/**
 * Force per width at which the first layer meets one of its limit strains under a single pull.
 *
 * Valid:  maximum strain, plies held flat by the core.
 * Source: [JONES-1999] chapters 2 and 4
 */
export function membraneStrength(a: Float64Array, layers: readonly LimitLayer[], pull: number): number {
  const sign = pull % 2 === 0 ? 1 : -1;
  const isAlong = pull < 2;
  const x = sign * (isAlong ? a[0] : a[1]);
  const y = sign * (isAlong ? a[1] : a[3]);
  const shear = sign * (isAlong ? a[2] : a[4]);
  let most = 0;
  for (let i = 0; i < layers.length; i += 1) most = Math.max(most, useOf(layers[i], x, y, shear));
  return 1 / most;
}

/** Share of the limits that a unit pull uses up. */
function useOf({ cos, sin, limits }: LimitLayer, x: number, y: number, shear: number): number {
  const along = cos * cos * x + sin * sin * y + cos * sin * shear;
  const across = sin * sin * x + cos * cos * y - cos * sin * shear;
  const slide = 2 * cos * sin * (y - x) + (cos * cos - sin * sin) * shear;
  return Math.max(
    along >= 0 ? along / limits.tensionAlong : -along / limits.compressionAlong,
    across >= 0 ? across / limits.tensionAcross : -across / limits.compressionAcross,
    Math.abs(slide) / limits.shear,
  );
}
