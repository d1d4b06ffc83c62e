import type { Rectangle } from './plate.js';
import type { SkinValues } from './states.js';

export const largeDeflectionCite = {
  source: 'FROM-MEMORY',
  note: 'Berger 1955, one wave, edges that cannot move inwards',
};

/** Plate bending alone is fair up to half the thickness. */
export const isLarge = ({ thicknessMm }: Pick<SkinValues, 'thicknessMm'>, deflectionMm: number): boolean =>
  Math.abs(deflectionMm) > thicknessMm / 2;

export interface SaggingSkin {
  readonly deflectionMm: number;
  /** Share of the linear bending stress that is left. */
  readonly bendingShare: number;
  readonly membraneStressMPa: number;
}

/**
 * Sag of a thin skin whose edges are held, from its sag by bending alone: w (1 + 1.5 (w/t)^2) = w_linear.
 *
 * The mean stretch e = (w^2/8)(pi^2/a^2 + pi^2/b^2) makes the pull 12 D e/t^2, the same in both directions.
 * Valid:  one wave over the panel, near-isotropic skin, edges that neither sink nor move inwards; an estimate within a
 *         fifth or so, on the stiff side.
 * Source: [FROM-MEMORY] Berger's approximation of 1955.
 * Worked: libs/panel/src/plate/large-deflection.spec.ts
 */
export function largeDeflection(
  skin: SkinValues,
  { lengthXMm, widthYMm }: Rectangle,
  linearMm: number,
): SaggingSkin {
  const sign = linearMm < 0 ? -1 : 1;
  const wanted = Math.abs(linearMm) / skin.thicknessMm;
  if (!isLarge(skin, linearMm)) return { deflectionMm: linearMm, bendingShare: 1, membraneStressMPa: 0 };
  const ratio = cubicRoot(wanted);
  const deflection = ratio * skin.thicknessMm;
  const stretch = ((deflection * Math.PI) ** 2 / 8) * (1 / lengthXMm ** 2 + 1 / widthYMm ** 2);
  const held = 1 - (skin.poissonXY ** 2 * skin.modulusYMPa) / skin.modulusXMPa;
  return {
    deflectionMm: sign * deflection,
    bendingShare: ratio / wanted,
    membraneStressMPa: (Math.max(skin.modulusXMPa, skin.modulusYMPa) / held) * stretch,
  };
}

/** The one real root of 1.5 r^3 + r = wanted, by Cardano's formula. */
function cubicRoot(wanted: number): number {
  const half = wanted / 3;
  const root = Math.sqrt(half * half + (2 / 9) ** 3);
  return Math.cbrt(half + root) + Math.cbrt(half - root);
}
